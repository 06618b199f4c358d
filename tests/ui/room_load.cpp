// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// How the rooms bear a large collection: opens a file in the window, goes to each room, twice, and says of
// each step how long until it was shown, until all that it asked for was there, the longest time in which the
// window did not answer a hand, what its threads worked (which others on the machine do not stretch), and the
// memory that is held.
// tarebowl_room_load COLLECTION [DAY]: DAY is today to the window, such as the one after the last that was
// fed.
#include "core/diet/solve.h"
#include "ui/frame/main_window.h"
#include "ui/intake/intake_desk.h"
#include "ui/intake/intake_room.h"
#include "ui/shared/days.h"
#include "ui/shared/paths.h"
#include "ui/shared/theme.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QLocale>
#include <QTemporaryDir>
#include <QTextStream>
#include <QTimer>

#include <algorithm>
#include <array>
#include <ctime>

namespace {

using namespace tarebowl;

constexpr int kBeatMs = 2;
constexpr qint64 kQuietMs = 300;         // at rest: nothing is asked for and nothing works for so long
constexpr double kQuietShare = 0.1;      // of one processor
constexpr qint64 kPatienceMs = 600'000;  // then it is said that it never came to rest

struct Place {
  const char* name;
  int number;
};
constexpr int kIntakeNumber = 6;
constexpr std::array<Place, 7> kRooms{{{"Today", 1},
                                       {"Foods", 2},
                                       {"Animals", 3},
                                       {"Diets", 4},
                                       {"Kitchen", 5},
                                       {"Intake", kIntakeNumber},
                                       {"Health", 7}}};

double processorMs() {
  return 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC;  // of all threads
}

/// Megabytes of memory, or 0 where this system does not say.
double residentMegabytes() {
  QFile status(QStringLiteral("/proc/self/status"));
  if (!status.open(QIODevice::ReadOnly)) return 0;
  for (const QByteArray& line : status.readAll().split('\n'))
    if (line.startsWith("VmRSS:")) return line.simplified().split(' ').value(1).toDouble() / 1024;
  return 0;
}

/// How long a hand that does something at the worst moment waits for the window.
class Pulse {
 public:
  Pulse() {
    last_.start();
    QObject::connect(&beat_, &QTimer::timeout, [this] { longest_ = std::max(longest_, last_.restart()); });
    beat_.start(kBeatMs);
  }
  [[nodiscard]] qint64 longest() const { return longest_; }

 private:
  QTimer beat_;
  QElapsedTimer last_;
  qint64 longest_ = 0;
};

struct Step {
  qint64 shownMs = 0;
  qint64 restMs = -1;  ///< -1: not within the patience
  qint64 stallMs = 0;
  double workedMs = 0;
};

/// Until nothing is asked for and hardly anything works: what an errand works out counts too.
qint64 waitForRest(const ui::MainWindow& window, const QElapsedTimer& clock) {
  qint64 lastWork = clock.elapsed();
  qint64 since = lastWork;
  double worked = processorMs();
  while (clock.elapsed() < kPatienceMs) {
    QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    const qint64 now = clock.elapsed();
    if (!window.collection().isIdle() || window.intake().desk().isReading()) lastWork = since = now;
    if (now - since < kQuietMs) continue;
    const bool isQuiet = processorMs() - worked < kQuietShare * double(now - since);
    if (isQuiet && now - lastWork >= kQuietMs) return lastWork;
    if (!isQuiet) lastWork = now;
    since = now;
    worked = processorMs();
  }
  return -1;
}

template <class Act>
Step timed(const ui::MainWindow& window, const Act& act) {
  Pulse pulse;
  QElapsedTimer clock;
  clock.start();
  const double before = processorMs();
  act();
  QApplication::processEvents();
  Step step;
  step.shownMs = clock.elapsed();
  step.restMs = waitForRest(window, clock);
  step.stallMs = pulse.longest();
  step.workedMs = processorMs() - before;
  return step;
}

void tell(QTextStream& out, const QString& what, const Step& step) {
  out << QStringLiteral("%1 %2 %3 %4 %5 %6\n")
             .arg(what, -18)
             .arg(step.shownMs, 10)
             .arg(step.restMs, 10)
             .arg(step.stallMs, 10)
             .arg(step.workedMs, 10, 'f', 0)
             .arg(residentMegabytes(), 10, 'f', 0);
  out.flush();
}

}  // namespace

int main(int argc, char** argv) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argc, argv);
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
  const QStringList words = QApplication::arguments();
  const auto day = words.size() == 3 ? quantity::parseDate(words[2].toStdString()) : ui::today();
  if (words.size() < 2 || words.size() > 3 || !day) {
    QTextStream(stderr) << "usage: tarebowl_room_load COLLECTION [YYYY-MM-DD]\n";
    return 2;
  }
  QTextStream out(stdout);
  out << QStringLiteral("%1 %2 %3 %4 %5 %6\n")
             .arg(QString(), -18)
             .arg(QStringLiteral("shown ms"), 10)
             .arg(QStringLiteral("rest ms"), 10)
             .arg(QStringLiteral("stall ms"), 10)
             .arg(QStringLiteral("worked ms"), 10)
             .arg(QStringLiteral("held MB"), 10);
  const QTemporaryDir place;  // the person's own settings are left alone
  ui::applyTheme(application, ui::ThemeChoice::Light);
  ui::MainWindow window(&diet::solve, ui::Dialogs{},
                        ui::Preferences(place.filePath(QStringLiteral("seat.ini"))), [day] { return *day; });
  window.show();
  tell(out, QStringLiteral("window"), timed(window, [] {}));
  tell(out, QStringLiteral("opened"), timed(window, [&] { window.open(ui::toPath(words[1])); }));
  for (const char* time : {"", ", again"})
    for (const Place& room : kRooms)
      tell(out, QLatin1String(room.name) + QLatin1String(time),
           timed(window, [&] { window.goToRoom(room.number); }));
  window.goToRoom(kIntakeNumber);
  ui::IntakeDesk& intake = window.intake().desk();
  tell(out, QStringLiteral("Intake, all years"), timed(window, [&] { intake.showLast(0); }));
  if (!intake.groups().empty())
    tell(out, QStringLiteral("of another group"),
         timed(window, [&] { intake.show(intake.groups().back().code); }));
  return 0;
}
