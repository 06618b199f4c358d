// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The window on a server that is far away: how many ways there and back each room takes until it shows what
// it has.
#include "core/diet/solve.h"
#include "core/store/feeding_verbs.h"
#include "core/store/move.h"
#include "core/transfer/sample_import.h"
#include "tests/core/store/own_database.h"
#include "tests/core/store/server/slow_way.h"
#include "tests/source_dir.h"
#include "ui/frame/main_window.h"
#include "ui/intake/intake_desk.h"
#include "ui/intake/intake_room.h"
#include "ui/shared/paths.h"

#include <QElapsedTimer>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>
#include <array>

namespace tarebowl::ui {
namespace {

using namespace std::chrono_literals;

constexpr int kPatienceMs = 120'000;
constexpr int kQuietMs = 1500;  // longer than what waits until nobody asks
const store::Author kAuthor{"Keeper A", "2026-07-19T07:30:00Z"};

constexpr int kToday = 1;
constexpr int kMostTrips = 3;
constexpr int kMostOfOpening = 80;

struct Visit {
  const char* name;
  int number;
};
constexpr std::array kRooms{Visit{"Foods", 2},   Visit{"Animals", 3}, Visit{"Diets", 4},
                            Visit{"Kitchen", 5}, Visit{"Intake", 6},  Visit{"Health", 7}};

class RoomsFarAway : public testing::Test {
 protected:
  RoomsFarAway() {
    const std::filesystem::path file = toPath(folder.filePath(QStringLiteral("sample.tarebowl")));
    {
      store::Collection made = store::Collection::create(file, kAuthor);
      transfer::importSample(made, std::filesystem::path(TAREBOWL_SOURCE_DIR) / "sample-data", kAuthor);
    }
    (void)store::moveCollection(file, database.address(), kAuthor);
    way = std::make_unique<store::SlowWay>(database.address(), 20ms);
  }
  /// Until nobody has asked the server for a while.
  int tripsOf(const MainWindow& window, const std::function<void()>& act) const {
    const int before = way->roundTrips();
    act();
    QElapsedTimer quiet;
    quiet.start();
    QElapsedTimer all;
    all.start();
    int seen = way->roundTrips();
    while (quiet.elapsed() < kQuietMs && all.elapsed() < kPatienceMs) {
      QTest::qWait(20);
      const bool works =
          !window.isWhole() || !window.collection().isIdle() || window.intake().desk().isReading();
      if (std::exchange(seen, way->roundTrips()) != way->roundTrips() || works) quiet.restart();
    }
    return way->roundTrips() - before;
  }

  QTemporaryDir folder;
  store::OwnDatabase database{testing::UnitTest::GetInstance()->current_test_info()->name()};
  std::unique_ptr<store::SlowWay> way;
};

/// On the last day of which the sample has bowls.
TEST_F(RoomsFarAway, TakeFewWaysThereAndBack) {
  MainWindow window(&diet::solve, Dialogs{}, Preferences(folder.filePath(QStringLiteral("seat.ini"))),
                    [] { return quantity::parseDate("2026-11-24").value(); });
  window.show();
  // The first room, and what the window reads of the others while nobody asks for it.
  EXPECT_LE(tripsOf(window, [&] { window.open(way->address()); }) + tripsOf(window, [] {}), kMostOfOpening);
  ASSERT_TRUE(window.collection().file());
  // The desk's copy follows what was written, over a connection of its own.
  way->countNoNewConnections();
  for (const Visit& room : kRooms)
    EXPECT_LE(tripsOf(window, [&] { window.goToRoom(room.number); }), kMostTrips) << room.name;
  store::Collection near = store::Collection::open(database.address(), kAuthor.at);
  double steps = 2.0;
  // Other tests write to the same server, and the server names moments by all that is written: what is
  // remembered is then looked at once more.
  const auto fewestTripsAfterAWrite = [&](const Visit& room) {
    constexpr int kTries = 5;
    int fewest = kMostTrips + 1;
    for (int i = 0; i < kTries && fewest > kMostTrips; ++i) {
      (void)tripsOf(window, [&] {
        window.goToRoom(kToday);
        (void)store::setToleranceRule(near, {.leastSteps = ++steps}, kAuthor);
      });
      fewest = std::min(fewest, tripsOf(window, [&] { window.goToRoom(room.number); }));
    }
    return fewest;
  };
  for (const Visit& room : kRooms)
    EXPECT_LE(fewestTripsAfterAWrite(room), kMostTrips) << room.name << " after another desk has written";
}

}  // namespace
}  // namespace tarebowl::ui
