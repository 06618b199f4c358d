// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/study_plan.h"

#include "core/intake/student.h"
#include "tests/core/intake/feeding.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <random>
#include <vector>

namespace tarebowl::intake {
namespace {

using namespace testing;

// t(0.975; 9), printed in tables as 2.262.
TEST(Student, QuantilesAreThoseOfTheTables) {
  EXPECT_NEAR(studentQuantile(0.975, 9), 2.262, 5e-4);
  EXPECT_NEAR(studentQuantile(0.975, 1e6), 1.95996, 5e-5);
}

// Day-to-day variation 20 %, wanted ±10 %: t(17) = 2.1098, 2.1098 · 20 / sqrt(18) = 9.946 <= 10, while
// t(16) = 2.1199, 2.1199 · 20 / sqrt(17) = 10.283.
TEST(StudyPlan, DaysAreTheLeastThatReachThePrecision) {
  EXPECT_EQ(daysNeeded(20.0, {.halfWidth = 10.0}), 18);
}

// ±50 % with 20 %: t(2) = 4.3027, 4.3027 · 20 / sqrt(3) = 49.68; two days would be 12.706 · 20 / sqrt(2).
TEST(StudyPlan, AtLeastTwoDaysHoweverCoarse) {
  EXPECT_EQ(daysNeeded(20.0, {.halfWidth = 50.0}), 3);
  EXPECT_EQ(daysNeeded(0.0, {.halfWidth = 1.0}), 2);
}

TEST(StudyPlan, APrecisionOutOfReachIsSaid) {
  EXPECT_EQ(daysNeeded(100.0, {.halfWidth = 0.1}), std::nullopt);
}

RC_GTEST_PROP(StudyPlanProperty, OneDayLessWouldNotDo, ()) {
  const double sd = *rc::gen::inRange(1, 500) / 10.0;
  const Precision wish{.halfWidth = *rc::gen::inRange(20, 500) / 10.0,
                       .confidence = *rc::gen::inRange(50, 99) / 100.0};
  const auto days = daysNeeded(sd, wish);
  RC_PRE(days.has_value());
  RC_ASSERT(meanHalfWidth(sd, *days, wish.confidence) <= wish.halfWidth);
  if (*days > 2) RC_ASSERT(meanHalfWidth(sd, *days - 1, wish.confidence) > wish.halfWidth);
}

TEST(StudyPlan, VariationLeavesMissingDaysOut) {
  const DailySeries series{day("2026-09-01"), {10.0, {}, 20.0, 30.0}};
  const auto variation = variationOf(series).value();
  EXPECT_EQ(variation.days, 3U);
  EXPECT_DOUBLE_EQ(variation.mean, 20.0);
  EXPECT_DOUBLE_EQ(variation.sd, 10.0);
  EXPECT_FALSE(variationOf({day("2026-09-01"), {10.0, {}}}));
}

TEST(StudyPlan, DaysThatFollowTheOneBeforeTellLess) {
  std::mt19937 random(2);
  std::normal_distribution<> normal;
  DailySeries series{day("2020-01-01"), {}};
  double state = 0.0;
  for (int i = 0; i < 4000; ++i) {
    state = 0.5 * state + normal(random);
    series.values.emplace_back(100.0 + state);
  }
  const auto variation = variationOf(series).value();
  EXPECT_NEAR(variation.lag1, 0.5, 0.05);
  EXPECT_NEAR(variation.sdForPlanning(), variation.sd * std::sqrt(3.0), variation.sd * 0.15);  // (1.5 / 0.5)
}

// What the plan promises: of many studies as long as it says, 95 % of the intervals hold the mean, and their
// half width is as wanted on average.
TEST(StudyPlan, AStudyAsLongAsPlannedIsAsPreciseAsWanted) {
  std::mt19937 random(8);
  std::normal_distribution<> normal(100.0, 20.0);
  const int days = daysNeeded(20.0, {.halfWidth = 10.0}).value();
  int inside = 0;
  double width = 0.0;
  constexpr int kStudies = 4000;
  for (int study = 0; study < kStudies; ++study) {
    DailySeries series{day("2026-09-01"), {}};
    for (int i = 0; i < days; ++i) series.values.emplace_back(normal(random));
    const auto variation = variationOf(series).value();
    const double half = meanHalfWidth(variation.sd, days, 0.95);
    inside += std::abs(variation.mean - 100.0) <= half ? 1 : 0;
    width += half / kStudies;
  }
  EXPECT_NEAR(static_cast<double>(inside) / kStudies, 0.95, 0.012);
  EXPECT_NEAR(width, 9.946, 0.3);
}

TEST(StudyPlan, WantsAPanForEachClassOfFoodInAPlace) {
  const DayVariation variation{.mean = 100, .sd = 20, .days = 30};
  const std::vector<FedBowl> bowls = {
      bowlOf({fed("kale", 50, AllEaten{}), fed("endive", 50, AllEaten{}),
              fed("carrot", 30, AllEaten{}, "roots"), fed("limestone", 1, AllEaten{}, "mineral")}),
      bowlOf({fed("kale", 50, AllEaten{})})};
  const std::vector<std::string> unchanged = {"mineral"};
  const auto plan = planStudy(variation, {.halfWidth = 10}, bowls, unchanged).value();
  EXPECT_EQ(plan.days, 18);
  EXPECT_EQ(plan.foods.size(), 4U);
  EXPECT_EQ(plan.pans, (std::vector<PanWanted>{{"lemur house", "greens", {"kale", "endive"}},
                                               {"lemur house", "roots", {"carrot"}}}));
}

}  // namespace
}  // namespace tarebowl::intake
