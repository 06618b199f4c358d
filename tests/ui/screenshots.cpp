// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Draws the window of a problem file at two sizes, light and dark: the pictures of the README, made again at
// any time and on any machine. tarebowl_screenshots OUTDIR [FILE]
#include "ui/diets/diet_desk.h"
#include "ui/diets/diets_room.h"
#include "ui/diets/problem_files.h"
#include "ui/diets/problem_list.h"
#include "ui/frame/main_window.h"
#include "ui/shared/theme.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QLocale>
#include <QTest>
#include <QTextStream>

#include <optional>
#include <utility>

namespace {

using namespace tarebowl;

constexpr std::pair<const char*, QSize> kSizes[] = {{"", {1366, 768}}, {"-large", {1920, 1080}}};
constexpr int kPatienceMs = 30'000;

bool waitUntilDrawn(const ui::MainWindow& window) {
  const ui::DietsRoom& room = window.diets();
  return QTest::qWaitFor(
      [&] {
        return !room.desk().isEmpty() && !room.desk().isSolving() && room.list().model().rowCount() > 0;
      },
      kPatienceMs);
}

bool shoot(QApplication& application, const std::filesystem::path& file, ui::ThemeChoice theme, QSize size,
           const QString& target) {
  ui::applyTheme(application, theme);
  ui::MainWindow window(&diet::solve, ui::Dialogs{});
  window.resize(size);
  window.open(file);
  window.show();
  if (!waitUntilDrawn(window)) return false;
  QTest::qWait(200);
  return window.grab().save(target);
}

}  // namespace

int main(int argc, char** argv) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argc, argv);
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
  const QStringList arguments = QApplication::arguments();
  QTextStream err(stderr);
  if (arguments.size() < 2 || !QDir().mkpath(arguments[1])) {
    err << "usage: tarebowl_screenshots OUTDIR [FILE]\n";
    return 2;
  }
  const std::filesystem::path file =
      arguments.size() > 2 ? ui::toPath(arguments[2]) : ui::sampleFolder() / "tenrec-streaked.json";
  for (const auto& [name, theme] :
       {std::pair{"light", ui::ThemeChoice::Light}, std::pair{"dark", ui::ThemeChoice::Dark}})
    for (const auto& [suffix, size] : kSizes) {
      const QString target =
          QStringLiteral("%1/diets-%2%3.png").arg(arguments[1], QLatin1String(name), QLatin1String(suffix));
      if (!shoot(application, file, theme, size, target)) {
        err << "could not draw " << target << '\n';
        return 1;
      }
    }
  return 0;
}
