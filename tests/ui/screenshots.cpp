// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Draws the window of the invented sample at two sizes, light and dark: the pictures of the README, made
// again at any time and on any machine.
//   tarebowl_screenshots OUTDIR [FILE] [--size 960x540] [--colour-vision]
// Of one size only; beside each picture what three kinds of eyes see of it that do not see all colours.
#include "tests/ui/shared/colour_vision.h"
#include "ui/animals/animal_desk.h"
#include "ui/animals/animals_room.h"
#include "ui/animals/group_pane.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/diet_list.h"
#include "ui/diets/diet_list_model.h"
#include "ui/diets/diets_room.h"
#include "ui/diets/problem_files.h"
#include "ui/foods/collection_doubts.h"
#include "ui/foods/food_desk.h"
#include "ui/foods/foods_room.h"
#include "ui/frame/main_window.h"
#include "ui/frame/room_numbers.h"
#include "ui/shared/theme.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QLocale>
#include <QTemporaryDir>
#include <QTest>
#include <QTextStream>

#include <algorithm>
#include <chrono>
#include <optional>
#include <utility>
#include <vector>

namespace {

using namespace tarebowl;

struct Picture {
  QString suffix;
  QSize size;
  ui::ThemeChoice theme = ui::ThemeChoice::Light;
};

struct Wanted {
  QString folder;
  std::optional<std::filesystem::path> file{};
  std::optional<QSize> size{};
  bool colourVision = false;
};

constexpr int kPatienceMs = 120'000;  // of a machine that is busy

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
               room.desk().page()->food.record.food.name == kShownFood && room.doubts().doubts().has_value();
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

bool keep(const QPixmap& picture, const Wanted& wanted, const QString& name) {
  const QString place = QStringLiteral("%1/%2").arg(wanted.folder, name);
  if (!picture.save(place + QStringLiteral(".png"))) return false;
  if (!wanted.colourVision) return true;
  const QImage all = picture.toImage();
  return std::ranges::all_of(ui::kColourVisions, [&](ui::ColourVision eye) {
    return ui::seenBy(eye, all).save(QStringLiteral("%1-%2.png").arg(place, QLatin1String(ui::nameOf(eye))));
  });
}

/// The pictures of all rooms, into OUTDIR/ROOM-SUFFIX.png.
bool shoot(QApplication& application, const Wanted& wanted, const Picture& picture) {
  const QTemporaryDir place;  // the person's own copy of the sample is left alone
  const std::filesystem::path sample = ui::toPath(place.filePath(QStringLiteral("brackenmere.tarebowl")));
  ui::applyTheme(application, picture.theme);
  ui::MainWindow window(&diet::solve, ui::Dialogs{},
                        ui::Preferences(place.filePath(QStringLiteral("seat.ini"))), &dayOfSample);
  window.resize(picture.size);
  window.files().open(sample, true);
  window.show();
  const auto grab = [&](const QString& room) {
    QTest::qWait(250);
    return keep(window.grab(), wanted, QStringLiteral("%1-%2").arg(room, picture.suffix));
  };
  window.goToRoom(ui::kDietsNumber);
  if (!showDiet(window, wanted.file) || !grab(QStringLiteral("diets"))) return false;
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

std::vector<Picture> picturesOf(const Wanted& wanted) {
  std::vector<Picture> pictures;
  for (const auto& [name, theme] :
       {std::pair{"light", ui::ThemeChoice::Light}, std::pair{"dark", ui::ThemeChoice::Dark}}) {
    const QString suffix = QLatin1String(name);
    if (wanted.size) {
      pictures.push_back({suffix, *wanted.size, theme});
      continue;
    }
    pictures.push_back({suffix, {1366, 768}, theme});
    pictures.push_back({suffix + QStringLiteral("-large"), {1920, 1080}, theme});
  }
  return pictures;
}

std::optional<Wanted> wantedBy(const QApplication& application) {
  QCommandLineParser parser;
  const QCommandLineOption size(QStringLiteral("size"), QStringLiteral("of the window"),
                                QStringLiteral("WxH"));
  const QCommandLineOption vision(QStringLiteral("colour-vision"));
  parser.addOptions({size, vision});
  if (!parser.parse(application.arguments())) return std::nullopt;
  const QStringList places = parser.positionalArguments();
  if (places.isEmpty() || places.size() > 2 || !QDir().mkpath(places[0])) return std::nullopt;
  Wanted wanted{.folder = places[0], .colourVision = parser.isSet(vision)};
  if (places.size() == 2) wanted.file = ui::toPath(places[1]);
  if (!parser.isSet(size)) return wanted;
  const QStringList sides = parser.value(size).split(QLatin1Char('x'));
  wanted.size = QSize(sides.value(0).toInt(), sides.value(1).toInt());
  return wanted.size->isEmpty() ? std::nullopt : std::optional(wanted);
}

}  // namespace

int main(int argc, char** argv) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argc, argv);
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
  QTextStream err(stderr);
  const auto wanted = wantedBy(application);
  if (!wanted) {
    err << "usage: tarebowl_screenshots OUTDIR [FILE] [--size WxH] [--colour-vision]\n";
    return 2;
  }
  for (const Picture& picture : picturesOf(*wanted))
    if (!shoot(application, *wanted, picture)) {
      err << "could not draw the window, " << picture.suffix << '\n';
      return 1;
    }
  return 0;
}
