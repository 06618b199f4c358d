// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What animals ate is the same of a server as of the file that was moved to it, though a server is asked for
// many things together, and in few ways there and back.
#include "core/store/move.h"
#include "core/store/reading.h"
#include "core/transfer/health_period.h"
#include "core/transfer/intake_period.h"
#include "core/transfer/intake_trend.h"
#include "tests/core/store/own_database.h"
#include "tests/core/store/server/slow_way.h"
#include "tests/core/transfer/brackenmere.h"

#include <gtest/gtest.h>

namespace tarebowl::transfer {
namespace {

using quantity::Date;
using store::Collection;

constexpr const char* kGroup = "dragons";
/// Of a connection over which nothing was asked before.
constexpr int kMostTrips = 3;

Date on(const char* iso) {
  return quantity::parseDate(iso).value();
}

/// The sample as a file, and the same on a server.
class IntakeOnServer : public testing::Test {
 protected:
  IntakeOnServer() {
    const std::filesystem::path file = folder / "sample.tarebowl";
    {
      Collection made = Collection::create(file, store::kKeeper);
      importSample(made, std::filesystem::path(TAREBOWL_SOURCE_DIR) / "sample-data", store::kKeeper,
                   FeedingDays::TakenIn);
    }
    const std::filesystem::path copy = folder / "copy.tarebowl";
    std::filesystem::copy_file(file, copy);
    (void)store::moveCollection(copy, database.address(), store::kKeeper);
    near.emplace(Collection::open(file, store::kNow));
    way.emplace(database.address(), std::chrono::milliseconds(2));
    far.emplace(Collection::open(way->address(), store::kNow));
  }

  template <class Read>
  auto together(const Read& read) {
    const int before = way->roundTrips();
    auto found = store::readTogether(*far, read);
    trips = way->roundTrips() - before;
    return found;
  }

  store::OwnFolder folder;
  store::OwnDatabase database{testing::UnitTest::GetInstance()->current_test_info()->name()};
  std::optional<Collection> near;
  std::optional<store::SlowWay> way;
  std::optional<Collection> far;
  int trips = 0;  ///< of the last reading
};

TEST_F(IntakeOnServer, APeriodIsTheSameInFewWays) {
  const auto read = [](const Collection& collection) {
    return readIntake(collection, kGroup, on("2026-10-20"), on("2026-11-24"));
  };
  const auto here = read(*near);
  const auto there = together(read);
  ASSERT_TRUE(here && there);
  EXPECT_FALSE(here->fed.empty());
  EXPECT_EQ(there->fed, here->fed);
  EXPECT_EQ(there->problem.foods, here->problem.foods);
  EXPECT_EQ(there->problem.energyMethod, here->problem.energyMethod);
  EXPECT_EQ(there->group.bodyMass, here->group.bodyMass);
  EXPECT_EQ(there->pans, here->pans);
  EXPECT_LE(trips, kMostTrips);
}

TEST_F(IntakeOnServer, AShortTrendAndALongOneAreTheSame) {
  for (const char* from : {"2026-10-28", "2026-03-01"}) {  // what is held in memory, and what is not
    const auto read = [&](const Collection& collection) {
      return readTrend(
          collection,
          {.group = kGroup, .from = on(from), .to = on("2026-11-24"), .subject = food::nutrients::calcium()});
    };
    const auto here = read(*near);
    const auto there = together(read);
    ASSERT_TRUE(here && there);
    EXPECT_EQ(there->problem.foods, here->problem.foods);
    EXPECT_EQ(there->pans, here->pans);
    ASSERT_EQ(there->points.size(), here->points.size());
    for (std::size_t i = 0; i < here->points.size(); ++i) {
      EXPECT_EQ(there->points[i].from, here->points[i].from);
      ASSERT_EQ(there->points[i].values.size(), here->points[i].values.size());
      for (std::size_t line = 0; line < here->points[i].values.size(); ++line)
        EXPECT_EQ(there->points[i].values[line].eaten, here->points[i].values[line].eaten);
    }
    EXPECT_EQ(there->findings, here->findings);
    EXPECT_LE(trips, kMostTrips + 1) << from;  // where another test writes between the two
  }
}

TEST_F(IntakeOnServer, HealthIsTheSameInFewWays) {
  const auto read = [](const Collection& collection) {
    return readHealth(collection, {.group = kGroup}, on("2026-08-27"), on("2026-11-24"));
  };
  const auto here = read(*near);
  const auto there = together(read);
  ASSERT_TRUE(here && there);
  ASSERT_EQ(there->bowls.size(), here->bowls.size());
  EXPECT_FALSE(here->bowls.empty());
  for (std::size_t i = 0; i < here->bowls.size(); ++i) EXPECT_EQ(there->bowls[i].foods, here->bowls[i].foods);
  EXPECT_EQ(there->diets.size(), here->diets.size());
  EXPECT_EQ(there->observations.size(), here->observations.size());
  EXPECT_EQ(there->masses.size(), here->masses.size());
  EXPECT_LE(trips, kMostTrips);
}

}  // namespace
}  // namespace tarebowl::transfer
