// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Draws the window of the invented sample at two sizes, light and dark: the pictures of the README, made
// again at any time and on any machine. tarebowl_screenshots OUTDIR [FILE]
#include "ui/animals/animal_desk.h"
#include "ui/animals/animals_room.h"
#include "ui/animals/group_pane.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/diet_list.h"
#include "ui/diets/diet_list_model.h"
#include "ui/diets/diets_room.h"
#include "ui/diets/problem_files.h"
#include "ui/foods/food_desk.h"
#include "ui/foods/foods_room.h"
#include "ui/frame/main_window.h"
#include "ui/frame/room_numbers.h"
#include "ui/shared/theme.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QLocale>
#include <QTemporaryDir>
#include <QTest>
#include <QTextStream>

#include <chrono>
#include <optional>
#include <utility>

namespace {

using namespace tarebowl;

constexpr std::pair<const char*, QSize> kSizes[] = {{"", {1366, 768}}, {"-large", {1920, 1080}}};
constexpr int kPatienceMs = 30'000;

/// The last day on which the sample was fed.
quantity::Date dayOfSample() {
  using namespace std::chrono;
  return 2026y / November / 24;
}

/// Of the Foods room's picture: the food with reports of the house's own laboratory.
constexpr const char* kShownFood = "House crickets, adult";

bool showFood(const ui::MainWindow& window) {
  ui::FoodsRoom& room = window.foods();
  if (!QTest::qWaitFor([&] { return room.desk().page().has_value(); }, kPatienceMs)) return false;
  for (const ui::FinderHit& hit : room.find(QLatin1String(kShownFood), 1)) room.goTo(hit.id);
  return QTest::qWaitFor(
      [&] {
        return room.desk().collection().isIdle() && room.desk().page() &&
               room.desk().page()->food.record.food.name == kShownFood;
      },
      kPatienceMs);
}

/// Of the Animals room's pictures: the first group.
bool showAnimals(const ui::MainWindow& window) {
  ui::AnimalsRoom& room = window.animals();
  return QTest::qWaitFor([&] { return room.desk().page().has_value() && room.desk().collection().isIdle(); },
                         kPatienceMs);
}

/// Of rooms that read what was fed.
bool showRoom(ui::MainWindow& window, int number) {
  window.goToRoom(number);
  constexpr int kUntilAskedMs = 200;  // a room asks once it is in sight
  QTest::qWait(kUntilAskedMs);
  return QTest::qWaitFor([&] { return window.collection().isIdle(); }, kPatienceMs);
}

bool waitUntilDrawn(const ui::MainWindow& window) {
  const ui::DietsRoom& room = window.diets();
  return QTest::qWaitFor(
      [&] {
        return !room.desk().isEmpty() && !room.desk().isSolving() && room.list().model().rowCount() > 0;
      },
      kPatienceMs);
}

/// Of the Diets room's pictures: a diet of the collection, unless a problem file is asked for.
constexpr const char* kShownDiet = "tenrec-evening";

bool showDiet(const ui::MainWindow& window, const std::optional<std::filesystem::path>& file) {
  ui::DietsRoom& room = window.diets();
  if (file) {
    room.openFile(*file);
    return waitUntilDrawn(window);
  }
  if (!QTest::qWaitFor([&] { return room.shelf().find(kShownDiet) != nullptr; }, kPatienceMs)) return false;
  const auto version = room.shelf().find(kShownDiet)->toOpen();
  if (!version) return false;
  room.version().open(*version);
  const auto isShown = [&] {
    return window.collection().isIdle() && room.version().isOpen() &&
           room.version().shown()->version.id == *version;
  };
  return QTest::qWaitFor(isShown, kPatienceMs) && waitUntilDrawn(window);
}

/// The pictures of all rooms, into OUTDIR/ROOM-SUFFIX.png.
bool shoot(QApplication& application, const std::optional<std::filesystem::path>& file, ui::ThemeChoice theme,
           QSize size, const QString& folder, const QString& suffix) {
  const QTemporaryDir place;  // the person's own copy of the sample is left alone
  const std::filesystem::path sample = ui::toPath(place.filePath(QStringLiteral("brackenmere.tarebowl")));
  ui::applyTheme(application, theme);
  ui::MainWindow window(&diet::solve, ui::Dialogs{},
                        ui::Preferences(place.filePath(QStringLiteral("seat.ini"))), &dayOfSample);
  window.resize(size);
  window.files().open(sample, true);
  window.show();
  const auto grab = [&](const QString& room) {
    QTest::qWait(250);
    return window.grab().save(QStringLiteral("%1/%2-%3.png").arg(folder, room, suffix));
  };
  window.goToRoom(ui::kDietsNumber);
  if (!showDiet(window, file) || !grab(QStringLiteral("diets"))) return false;
  window.goToRoom(ui::kFoodsNumber);
  if (!showFood(window) || !grab(QStringLiteral("foods"))) return false;
  window.goToRoom(ui::kAnimalsNumber);
  if (!showAnimals(window) || !grab(QStringLiteral("animals"))) return false;
  ui::GroupPane& group = window.animals().groupPane();
  group.showSheet(ui::GroupPane::Energy);
  if (!grab(QStringLiteral("energy"))) return false;
  group.showSheet(ui::GroupPane::Targets);
  if (!grab(QStringLiteral("targets"))) return false;
  for (const auto& [number, name] :
       {std::pair{ui::kTodayNumber, "today"}, std::pair{ui::kKitchenNumber, "kitchen"},
        std::pair{ui::kIntakeNumber, "intake"}, std::pair{ui::kHealthNumber, "health"}})
    if (!showRoom(window, number) || !grab(QLatin1String(name))) return false;
  return true;
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
  const auto file = arguments.size() > 2 ? std::optional(ui::toPath(arguments[2])) : std::nullopt;
  for (const auto& [name, theme] :
       {std::pair{"light", ui::ThemeChoice::Light}, std::pair{"dark", ui::ThemeChoice::Dark}})
    for (const auto& [suffix, size] : kSizes) {
      const QString both = QLatin1String(name) + QLatin1String(suffix);
      if (!shoot(application, file, theme, size, arguments[1], both)) {
        err << "could not draw the window, " << both << '\n';
        return 1;
      }
    }
  return 0;
}
