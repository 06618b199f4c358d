// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// How long the window takes to start on a collection, beside a window of Qt that does nothing, and what it
// takes from the machine while nobody touches it. In turns: a bare window with a label, and the program's
// window until its first room, Today, is painted with what was read for it; each in a process of its own,
// from before the process begins. Then one of each is left alone for a while.
//   tarebowl_shell_start COLLECTION [REPEATS] [SECONDS OF IDLING]
#include "core/diet/solve.h"
#include "ui/frame/main_window.h"
#include "ui/shared/paths.h"
#include "ui/shared/theme.h"
#include "ui/today/today_room.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QMainWindow>
#include <QProcess>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTextStream>
#include <QThread>
#include <QTimer>

#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <functional>
#include <vector>

namespace {

using namespace tarebowl;

constexpr int kPatienceMs = 600'000;
constexpr int kSettleMs = 45'000;  // what follows the first painting, and threads that have no more to do
constexpr const char* kUsable = "usable\n";

/// Says once that the window can be used: something of it that holds was painted.
class WhenPainted : public QObject {
 public:
  explicit WhenPainted(std::function<bool()> holds) : holds_(std::move(holds)) {}

  bool eventFilter(QObject* /*watched*/, QEvent* event) override {
    if (!said_ && event->type() == QEvent::Paint && holds_()) {
      said_ = true;
      QTimer::singleShot(0, [] {  // once it is on the screen
        std::fputs(kUsable, stdout);
        std::fflush(stdout);
      });
    }
    return false;
  }

 private:
  std::function<bool()> holds_;
  bool said_ = false;
};

int runBare(QApplication& application) {
  QMainWindow window;
  auto* label = new QLabel(QStringLiteral("nothing"));
  window.setCentralWidget(label);
  window.resize(1366, 768);
  WhenPainted told([] { return true; });
  label->installEventFilter(&told);
  window.show();
  return application.exec();
}

/// As ui/run.cpp begins, with settings of nobody.
int runProgram(QApplication& application, const QString& collection) {
  const QTemporaryDir seat;
  ui::applyTheme(application, ui::ThemeChoice::Light);
  ui::MainWindow window(&diet::solve, ui::systemDialogs(),
                        ui::Preferences(seat.filePath(QStringLiteral("seat.ini"))));
  window.open(ui::toPath(collection));
  const ui::TodayRoom& today = window.today();
  WhenPainted told([&] {
    const auto rows = today.rows();
    return today.overview() && !rows.empty() && rows.front()->isVisible();
  });
  application.installEventFilter(&told);
  window.show();
  return application.exec();
}

/// A process of its own of one of the two windows.
class Window {
 public:
  explicit Window(const QStringList& arguments) {
    process_.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    clock_.start();
    process_.start(QCoreApplication::applicationFilePath(), arguments);
    while (!process_.readAllStandardOutput().contains("usable"))
      if (!process_.waitForReadyRead(kPatienceMs)) qFatal("the window never came to be usable");
    usableMs_ = static_cast<double>(clock_.nsecsElapsed()) / 1e6;
  }
  ~Window() {
    process_.kill();
    process_.waitForFinished();
  }
  Window(const Window&) = delete;
  Window& operator=(const Window&) = delete;
  Window(Window&&) = delete;
  Window& operator=(Window&&) = delete;

  [[nodiscard]] double usableMs() const { return usableMs_; }

  /// Processor time so far, of all threads, in user and kernel mode: fields 14 and 15 of proc(5)'s stat.
  [[nodiscard]] double processorMs() const {
    const QByteArray stat = read(QStringLiteral("stat"));
    const QList<QByteArray> fields = stat.mid(stat.lastIndexOf(')') + 2).split(' ');
    const double ticks = fields.value(11).toDouble() + fields.value(12).toDouble();
    return 1000.0 * ticks / static_cast<double>(sysconf(_SC_CLK_TCK));
  }
  /// How often its threads have gone to sleep so far: each time something had woken them.
  [[nodiscard]] long wakings() const {
    long sum = 0;
    for (const QString& thread :
         QDir(folder(QStringLiteral("task"))).entryList(QDir::Dirs | QDir::NoDotAndDotDot))
      sum += line(QStringLiteral("task/%1/status").arg(thread), "voluntary_ctxt_switches:");
    return sum;
  }
  /// Its own, and its share of what it has in common with others (the libraries), in MB.
  [[nodiscard]] double proportionalMB() const {
    return double(line(QStringLiteral("smaps_rollup"), "Pss:")) / 1024;
  }
  [[nodiscard]] double residentMB() const { return double(line(QStringLiteral("status"), "VmRSS:")) / 1024; }
  [[nodiscard]] long threads() const { return line(QStringLiteral("status"), "Threads:"); }

 private:
  [[nodiscard]] QString folder(const QString& name) const {
    return QStringLiteral("/proc/%1/%2").arg(process_.processId()).arg(name);
  }
  [[nodiscard]] QByteArray read(const QString& name) const {
    QFile file(folder(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
  }
  [[nodiscard]] long line(const QString& name, const char* title) const {
    for (const QByteArray& line : read(name).split('\n'))
      if (line.startsWith(title)) return line.simplified().split(' ').value(1).toLong();
    return 0;
  }

  QProcess process_;
  QElapsedTimer clock_;
  double usableMs_ = 0.0;
};

double median(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  const std::size_t half = values.size() / 2;
  return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2.0;
}

void tellIdle(QTextStream& out, const char* name, const QStringList& arguments, int seconds) {
  const Window window(arguments);
  QThread::msleep(kSettleMs);
  const double worked = window.processorMs();
  const long woken = window.wakings();
  QThread::sleep(static_cast<unsigned long>(seconds));
  out << QStringLiteral(
             "%1 idle for %2 s: %3 ms of processor, %4 wakings; %5 MB resident, %6 MB proportional, %7 "
             "threads\n")
             .arg(QLatin1String(name), -8)
             .arg(seconds)
             .arg(window.processorMs() - worked, 0, 'f', 0)
             .arg(window.wakings() - woken)
             .arg(window.residentMB(), 0, 'f', 0)
             .arg(window.proportionalMB(), 0, 'f', 0)
             .arg(window.threads());
  out.flush();
}

int measure(const QString& collection, int repeats, int idleSeconds) {
  const QStringList bareWindow{QStringLiteral("--bare")};
  const QStringList program{QStringLiteral("--window"), collection};
  QTextStream out(stdout);
  std::vector<double> bare;
  std::vector<double> whole;
  for (int i = 0; i < repeats + 1; ++i) {
    const double first = Window(bareWindow).usableMs();
    const double second = Window(program).usableMs();
    out << QStringLiteral("%1 bare %2 ms, program %3 ms\n")
               .arg(i == 0 ? QStringLiteral("warming") : QString::number(i), -8)
               .arg(first, 7, 'f', 0)
               .arg(second, 7, 'f', 0);
    out.flush();
    if (i == 0) continue;  // files come from the disk
    bare.push_back(first);
    whole.push_back(second);
  }
  out << QStringLiteral("median   bare %1 ms, program %2 ms: %3 times\n")
             .arg(median(bare), 7, 'f', 0)
             .arg(median(whole), 7, 'f', 0)
             .arg(median(whole) / median(bare), 0, 'f', 2);
  out.flush();
  if (idleSeconds > 0) {
    tellIdle(out, "bare", bareWindow, idleSeconds);
    tellIdle(out, "program", program, idleSeconds);
  }
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  const QString mode = argc > 1 ? QString::fromLocal8Bit(argv[1]) : QString();
  if (mode == QLatin1String("--bare")) {
    QApplication application(argc, argv);
    return runBare(application);
  }
  if (mode == QLatin1String("--window") && argc > 2) {
    QApplication application(argc, argv);
    return runProgram(application, QString::fromLocal8Bit(argv[2]));
  }
  const QCoreApplication application(argc, argv);
  if (argc < 2) {
    QTextStream(stderr) << "usage: tarebowl_shell_start COLLECTION [REPEATS] [SECONDS OF IDLING]\n";
    return 2;
  }
  const int repeats = argc > 2 ? std::max(1, std::atoi(argv[2])) : 9;
  return measure(mode, repeats, argc > 3 ? std::atoi(argv[3]) : 60);
}
