// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/study_report.h"

#include "tests/core/intake/feeding.h"
#include "tests/core/intake/four_days.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace tarebowl::intake {
namespace {

using namespace testing;

TEST(StudyReport, TellsOfferedLeftCorrectedAndEatenOfEachFood) {
  const StudyReport report = reportStudy(kaleAgainstCalcium(100), fourDaysOfKale(), {});
  ASSERT_EQ(report.foods.size(), 1U);
  const FoodReport& kale = report.foods[0];
  EXPECT_DOUBLE_EQ(kale.offered, 480.0);
  EXPECT_DOUBLE_EQ(kale.left, 144.0);
  EXPECT_NEAR(kale.leftAsOffered, 180.0, 1e-9);
  EXPECT_NEAR(kale.eaten, 300.0, 1e-9);
  EXPECT_EQ(kale.bowls, 3U);
  EXPECT_EQ(kale.bowlsNotKnown, 1U);
  EXPECT_EQ(report.days, 4U);
  EXPECT_EQ(report.daysKnown, 3U);
}

TEST(StudyReport, MeansHaveTheIntervalOfTheirDays) {
  const std::vector<food::NutrientId> nutrients = {food::nutrients::calcium()};
  const StudyReport report = reportStudy(kaleAgainstCalcium(100), fourDaysOfKale(), nutrients);
  const MeanOfDays mean = report.nutrients.at(0).perAnimal.value();
  EXPECT_NEAR(mean.mean, 100.0, 1e-9);  // 240, 160 and 200 mg between two
  EXPECT_NEAR(mean.dayToDaySd.value(), 20.0, 1e-9);
  // t(0.975; 2) = 4.302653; 4.302653 · 20 / sqrt(3) = 49.6828
  EXPECT_NEAR(mean.interval.value().low, 100.0 - 49.6828, 1e-3);
  EXPECT_NEAR(mean.interval.value().high, 100.0 + 49.6828, 1e-3);
}

TEST(StudyReport, StandsAsEatenAndAsOfferedAgainstTheTargets) {
  const StudyReport report = reportStudy(kaleAgainstCalcium(100), fourDaysOfKale(), {});
  // 100 g of 160 g a day among two animals: 50 g and 80 g a head.
  EXPECT_NEAR(report.asEaten.value().targets.at(0).value.value(), 100.0, 1e-9);
  EXPECT_NEAR(report.asOffered.value().targets.at(0).value.value(), 160.0, 1e-9);
}

TEST(StudyReport, AFoodOfUnknownCompositionKeepsItsGrams) {
  std::vector<EatenBowl> bowls = {eatenAsSeen(bowlOf({fed("mystery", 30, weighed(10))}))};
  const StudyReport report = reportStudy(kaleAgainstCalcium(100), bowls, {});
  EXPECT_DOUBLE_EQ(report.foods.at(0).eatenPerDay.value().mean, 20.0);
}

TEST(StudyReport, NothingFedReportsNothing) {
  const StudyReport report = reportStudy(kaleAgainstCalcium(100), {}, {});
  EXPECT_EQ(report.days, 0U);
  EXPECT_FALSE(report.asEaten);
}

}  // namespace
}  // namespace tarebowl::intake
