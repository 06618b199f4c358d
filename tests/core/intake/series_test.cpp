// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/series.h"

#include "tests/core/intake/feeding.h"

#include <gtest/gtest.h>

namespace tarebowl::intake {
namespace {

using namespace testing;

TEST(Series, DaysWithoutABowlStandEmptyOnTheCalendar) {
  const std::vector<DayValue> days = {{day("2026-09-01"), 10.0}, {day("2026-09-04"), 12.0}};
  const DailySeries series = onCalendar(days);
  ASSERT_EQ(series.values.size(), 4U);
  EXPECT_FALSE(series.values[1]);
  EXPECT_EQ(series.values[3], 12.0);
  EXPECT_EQ(series.dayAt(3), day("2026-09-04"));
}

TEST(Series, ARollingMeanSaysHowManyDaysStandBehindItAndKeepsItsGaps) {
  const DailySeries series{day("2026-09-01"), {10.0, 20.0, {}, {}, 30.0, 50.0}};
  const auto means = rollingMeans(series, 3, 2);
  EXPECT_FALSE(means[0].mean);  // one day
  EXPECT_DOUBLE_EQ(means[1].mean.value(), 15.0);
  EXPECT_DOUBLE_EQ(means[2].mean.value(), 15.0);
  EXPECT_EQ(means[2].days, 2U);
  EXPECT_FALSE(means[3].mean);
  EXPECT_EQ(means[3].days, 1U);
  EXPECT_FALSE(means[4].mean);
  EXPECT_DOUBLE_EQ(means[5].mean.value(), 40.0);
}

}  // namespace
}  // namespace tarebowl::intake
