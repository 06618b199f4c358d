// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/daily_intake.h"

#include "tests/core/intake/feeding.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace tarebowl::intake {
namespace {

using namespace testing;

const food::NutrientId kCalcium = food::nutrients::calcium();
const food::NutrientId kPhosphorus = food::nutrients::phosphorus();

/// Kale: 10 % dry matter, 200 mg Ca (sd 20) and 50 mg P a 100 g. Crickets: 30 %, 40 mg Ca, 300 mg P.
std::vector<diet::DietFood> foods() {
  return {foodOf("kale", 90, 200, 50, 20), foodOf("crickets", 70, 40, 300)};
}

Contents of(food::NutrientId nutrient) {
  return Contents::ofNutrient(foods(), food::EnergyMethod::Given, nutrient);
}

TEST(DailyIntake, SumsWhatWasEatenTimesItsComposition) {
  const std::vector<EatenBowl> bowls = {
      eatenAsSeen(bowlOf({fed("kale", 100, weighed(25)), fed("crickets", 10, AllEaten{}, "insects")}))};
  const auto days = dailyIntake(bowls, of(kCalcium));
  ASSERT_EQ(days.size(), 1U);
  EXPECT_DOUBLE_EQ(days[0].offered, 204.0);                               // 100 · 2 + 10 · 0.4
  EXPECT_DOUBLE_EQ(days[0].eaten.value().value(), 154.0);                 // 75 · 2 + 10 · 0.4
  EXPECT_DOUBLE_EQ(days[0].eaten.value().sd(Origin::Composition), 15.0);  // 75 · 0.2
  EXPECT_DOUBLE_EQ(days[0].coverage, 1.0);
}

TEST(DailyIntake, SelectionMovesTheRatioAwayFromWhatWasOffered) {
  const std::vector<EatenBowl> bowls = {
      eatenAsSeen(bowlOf({fed("kale", 100, weighed(100)), fed("crickets", 10, AllEaten{}, "insects")}))};
  const auto ratios = dailyRatio(bowls, of(kCalcium), of(kPhosphorus));
  EXPECT_NEAR(*ratios[0].offered, 204.0 / 80.0, 1e-12);
  EXPECT_NEAR(ratios[0].eaten.value().value(), 4.0 / 30.0, 1e-12);
}

TEST(DailyIntake, ADayWithOneFoodNotWeighedStaysMissingWithItsBounds) {
  const std::vector<EatenBowl> bowls = {
      eatenAsSeen(bowlOf({fed("kale", 100, NotWeighed{}), fed("crickets", 10, AllEaten{}, "insects")}))};
  const DayIntake day = dailyIntake(bowls, of(kCalcium)).at(0);
  EXPECT_FALSE(day.eaten);
  EXPECT_DOUBLE_EQ(day.atLeast, 4.0);
  EXPECT_DOUBLE_EQ(day.atMost, 204.0);
  EXPECT_EQ(day.itemsNotKnown, 1U);
}

TEST(DailyIntake, AFoodOfUnknownValueLowersTheCoverageAndIsNotZero) {
  const std::vector<EatenBowl> bowls = {
      eatenAsSeen(bowlOf({fed("kale", 100, AllEaten{}), fed("mystery", 10, AllEaten{}, "insects")}))};
  const DayIntake day = dailyIntake(bowls, of(kCalcium)).at(0);
  EXPECT_DOUBLE_EQ(day.eaten.value().value(), 200.0);
  // 10 g dry matter of kale; of the mystery its mass stands in for its dry matter.
  EXPECT_DOUBLE_EQ(day.coverage, 0.5);
  EXPECT_TRUE(day.unknownAdds());
}

TEST(DailyIntake, MissingDaysAreLeftOutOfTheMean) {
  const std::vector<EatenBowl> bowls = {
      eatenAsSeen(bowlOf({fed("kale", 100, AllEaten{})}, day("2026-09-01")), 1),
      eatenAsSeen(bowlOf({fed("kale", 100, NotWeighed{})}, day("2026-09-02")), 2),
      eatenAsSeen(bowlOf({fed("kale", 100, weighed(50))}, day("2026-09-03")), 3)};
  const PeriodIntake period = overPeriod(dailyIntake(bowls, of(kCalcium)));
  EXPECT_EQ(period.days, 3U);
  EXPECT_EQ(period.known, 2U);
  EXPECT_DOUBLE_EQ(period.meanPerDay.value().value(), 150.0);
  EXPECT_NEAR(*period.dayToDaySd, std::sqrt(5000.0), 1e-9);  // 200 and 100 about 150
}

TEST(DailyIntake, CompositionErrsAlikeOnAllDaysAndWeighingDoesNot) {
  std::vector<EatenBowl> bowls;
  for (int i = 0; i < 4; ++i) {
    FedItem item = fed("kale", 100, AllEaten{});
    item.offered.step = quantity::Grams(std::sqrt(12.0));  // sd 1 g, 2 mg Ca
    bowls.push_back(eatenAsSeen(bowlOf({item}, dayAfter("2026-09-01", i)), static_cast<std::uint32_t>(i)));
  }
  const PeriodIntake period = overPeriod(dailyIntake(bowls, of(kCalcium)));
  EXPECT_NEAR(period.meanPerDay.value().sd(Origin::Composition), 20.0, 1e-9);
  EXPECT_NEAR(period.meanPerDay.value().sd(Origin::Weighing), 1.0, 1e-9);  // 2 / sqrt(4)
}

TEST(DailyIntake, WaterThatErrsInBothLeavesTheRatioOfOneFoodSure) {
  const std::vector<WaterPan> pans = {pan(100, 90), pan(100, 88), pan(100, 86)};
  const std::vector<EatenBowl> bowls = {
      eatenFrom(bowlOf({fed("kale", 500, weighed(120))}), PanBook(pans), 1)};
  const auto ratio = dailyRatio(bowls, of(kCalcium), of(kPhosphorus)).at(0);
  EXPECT_NEAR(ratio.eaten.value().value(), 4.0, 1e-12);
  EXPECT_NEAR(ratio.eaten.value().sd(Origin::Water), 0.0, 1e-12);
  EXPECT_NEAR(ratio.eaten.value().sd(Origin::Composition), 0.4, 1e-12);  // calcium alone scatters, 10 % of 4
}

}  // namespace
}  // namespace tarebowl::intake
