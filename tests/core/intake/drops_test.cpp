// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/drops.h"

#include "tests/core/intake/feeding.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <vector>

namespace tarebowl::intake {
namespace {

using namespace testing;

/// Days about 100 g that take turns between 96 and 104, so that median and MAD are plain: median 100 or near,
/// MAD 4.
DailySeries steady(std::size_t days) {
  DailySeries series{day("2026-09-01"), {}};
  for (std::size_t i = 0; i < days; ++i) series.values.emplace_back(i % 2 == 0 ? 96.0 : 104.0);
  return series;
}

DailySeries around(double mean, double sd, std::size_t days, std::mt19937& random) {
  DailySeries series{day("2026-01-01"), {}};
  std::normal_distribution<> normal(mean, sd);
  for (std::size_t i = 0; i < days; ++i) series.values.emplace_back(normal(random));
  return series;
}

TEST(Drops, ADayFarBelowTheAnimalsOwnHistoryIsFoundWithTheNumbersBehindIt) {
  DailySeries series = steady(28);
  series.values.emplace_back(60.0);
  const auto drops = dropsIn(series);
  ASSERT_EQ(drops.size(), 1U);
  EXPECT_EQ(drops[0].from, day("2026-09-29"));
  EXPECT_EQ(drops[0].lowest, 60.0);
  EXPECT_EQ(drops[0].usual, 100.0);                   // median of 14 times 96 and 14 times 104
  EXPECT_NEAR(drops[0].spread, 4.0 / 0.6745, 1e-12);  // MAD 4
  EXPECT_EQ(drops[0].known, 28U);
  EXPECT_NEAR(drops[0].share(), 0.4, 1e-12);
}

TEST(Drops, WhatIsWithinTheUsualScatterOrSmallIsNone) {
  DailySeries series = steady(28);
  series.values.emplace_back(82.0);  // 18 % below, but 3.04 spreads
  EXPECT_TRUE(dropsIn(series).empty());
  DailySeries equal{day("2026-09-01"), std::vector<std::optional<double>>(28, 100.0)};
  equal.values.emplace_back(90.0);  // never scattered, yet only 10 % below
  EXPECT_TRUE(dropsIn(equal).empty());
  equal.values.back() = 80.0;
  EXPECT_EQ(dropsIn(equal).size(), 1U);
}

TEST(Drops, DaysOfADropAreOneStretchAndNoHistory) {
  DailySeries series = steady(28);
  for (int i = 0; i < 10; ++i) series.values.emplace_back(i == 4 ? std::optional<double>() : 60.0);
  const auto drops = dropsIn(series);
  ASSERT_EQ(drops.size(), 1U);
  EXPECT_EQ(drops[0].days, 9U);
  EXPECT_EQ(drops[0].until, day("2026-10-08"));
}

TEST(Drops, AShortHistorySaysNothing) {
  DailySeries series = steady(13);
  series.values.emplace_back(10.0);
  EXPECT_TRUE(dropsIn(series).empty());
}

TEST(Drops, MissingDaysAreNotDrops) {
  DailySeries series = steady(28);
  for (int i = 0; i < 5; ++i) series.values.emplace_back();
  series.values.emplace_back(100.0);
  EXPECT_TRUE(dropsIn(series).empty());
}

TEST(Drops, AFastDayOnceAWeekIsUsualAmongItsWeekdays) {
  DailySeries series{day("2026-06-01"), {}};
  std::mt19937 random(3);
  std::normal_distribution<> scatter(0.0, 3.0);
  for (int i = 0; i < 168; ++i) series.values.emplace_back((i % 7 == 6 ? 40.0 : 100.0) + scatter(random));
  DropRule byWeekday{.historyDays = 84, .leastKnown = 8, .sameWeekdayOnly = true};
  EXPECT_FALSE(dropsIn(series).empty());
  EXPECT_TRUE(dropsIn(series, byWeekday).empty());
}

TEST(Drops, AverageDaysFindADropThatNoSingleDayShows) {
  std::mt19937 random(5);
  DailySeries series = around(100, 12, 120, random);
  for (std::size_t i = 100; i < 120; ++i) series.values[i] = *series.values[i] - 28.0;
  const DropRule weeks{.historyDays = 56, .averagedDays = 7};
  const auto drops = dropsIn(series, weeks);
  ASSERT_FALSE(drops.empty());
  EXPECT_GE(drops.front().from, dayAfter("2026-01-01", 100));
}

/// Share of days called a drop where nothing ever dropped.
double falseAlarms(const DropRule& rule, double relativeSd, std::uint32_t seed) {
  std::mt19937 random(seed);
  std::size_t called = 0;
  constexpr std::size_t kDays = 200'000;
  for (const Drop& drop : dropsIn(around(100, 100 * relativeSd, kDays, random), rule)) called += drop.days;
  return static_cast<double>(called) / static_cast<double>(kDays);
}

// With eight weeks behind it the rule is wrong on about one day in 800 where intake scatters by 10 % or 20 %
// of itself and normally (3.5 known standard deviations would be one in 4,300: the MAD of 56 days is itself
// uncertain).
TEST(Drops, FalseAlarmsAreRareAndTheirRateIsStated) {
  for (const double sd : {0.1, 0.2}) {
    const double rate = falseAlarms({}, sd, 20261126);
    EXPECT_LT(rate, 1.0 / 500.0) << sd;
    EXPECT_GT(rate, 1.0 / 2000.0) << sd;
  }
}

TEST(Drops, HalfOfTheUsualIsFoundNearlyAlwaysWhereIntakeScattersByTenPercent) {
  std::mt19937 random(17);
  int foundOn = 0;
  constexpr int kTrials = 500;
  for (int i = 0; i < kTrials; ++i) {
    DailySeries series = around(100, 10, 57, random);
    *series.values.back() -= 50.0;
    foundOn += dropsIn(series).empty() ? 0 : 1;
  }
  EXPECT_GT(foundOn, kTrials * 9 / 10);
}

}  // namespace
}  // namespace tarebowl::intake
