// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/mass_trend.h"

#include "tests/core/animal/days.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tarebowl::animal {
namespace {

using quantity::Date;
using quantity::Kilograms;

const Date kLast = day("2026-03-31");

/// Every `step` days, the last on 31 March 2026.
std::vector<MassReading> until(const std::vector<double>& kilograms, int step = 7) {
  std::vector<MassReading> series;
  std::chrono::sys_days on =
      std::chrono::sys_days(kLast) - std::chrono::days(step * (static_cast<int>(kilograms.size()) - 1));
  for (const double mass : kilograms) {
    MassReading reading;
    reading.on = on;
    reading.mass = Kilograms(mass);
    series.push_back(reading);
    on += std::chrono::days(step);
  }
  return series;
}

TEST(MassTrend, OfSteadyGrowthIsTheGrowth) {
  const auto trend = trendOn(until({1.0, 1.1, 1.21, 1.331, 1.4641}), kLast);  // a tenth more each week
  ASSERT_TRUE(trend);
  EXPECT_NEAR(trend->perWeek, 0.1, 1e-12);
  EXPECT_NEAR(trend->low, 0.1, 1e-12);
  EXPECT_NEAR(trend->high, 0.1, 1e-12);
  EXPECT_EQ(trend->readings, 5U);
  EXPECT_EQ(trend->from, day("2026-03-03"));
  EXPECT_EQ(trend->until, kLast);
}

TEST(MassTrend, IsTheMedianOfAllSlopes) {
  // log mass 0, 1, 0, 2 on days 0, 7, 14, 21: slopes per week 1, 0, 2/3, -1, 1/2, 2; median (1/2 + 2/3) / 2
  const double e = std::exp(1.0);
  const auto trend = trendOn(until({1.0, e, 1.0, e * e}), kLast);
  ASSERT_TRUE(trend);
  EXPECT_NEAR(trend->perWeek, std::expm1((1.0 / 2.0 + 2.0 / 3.0) / 2.0), 1e-12);
  // Sen's C is 1.96 sqrt(4 * 3 * 13 / 18) = 5.77 of 6 slopes: nothing is cut off
  EXPECT_NEAR(trend->low, std::expm1(-1.0), 1e-12);
  EXPECT_NEAR(trend->high, std::expm1(2.0), 1e-12);
}

TEST(MassTrend, AWrongReadingIsFlaggedAndDoesNotTurnIt) {
  const auto trend = trendOn(until({2.00, 1.99, 1.98, 1970.0, 1.96, 1.95}), kLast);
  ASSERT_TRUE(trend);
  ASSERT_EQ(trend->leftOut.size(), 1U);
  EXPECT_EQ(trend->leftOut[0].reading, 3U);
  EXPECT_EQ(trend->leftOut[0].doubt, MassDoubt::GramsAsKilograms);
  EXPECT_NEAR(trend->perWeek, -0.005, 0.0002);
  EXPECT_EQ(trend->readings, 5U);
}

TEST(MassTrend, OnlyTheLastDaysCount) {
  const auto series = until({5.0, 4.0, 3.0, 2.0, 2.0, 2.0, 2.0, 2.0}, 20);
  EXPECT_EQ(trendOn(series, kLast, 90)->perWeek, 0.0);  // 0, 20, 40, 60 and 80 days ago
  EXPECT_LT(trendOn(series, kLast, 200)->perWeek, 0.0);
}

TEST(MassTrend, IsNotToldFromTooLittle) {
  EXPECT_FALSE(trendOn(until({2.0, 2.1, 2.2}), kLast));
  EXPECT_FALSE(trendOn(until({2.0, 2.1, 2.2, 2.3}, 0), kLast)) << "all on one day";
  EXPECT_FALSE(trendOn({}, kLast));
  EXPECT_TRUE(trendOn(until({2.0, 2.1, 2.2, 2.3}), kLast));
}

}  // namespace
}  // namespace tarebowl::animal
