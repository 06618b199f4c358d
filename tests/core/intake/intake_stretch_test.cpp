// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/intake_stretch.h"

#include "core/intake/daily_intake.h"
#include "tests/core/intake/feeding.h"
#include "tests/core/intake/four_days.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace tarebowl::intake {
namespace {

using namespace testing;

IntakeStretch stretch(const std::vector<EatenBowl>& bowls) {
  return Followed(kaleAgainstCalcium(90)).over(dayAfter("2026-09-01", 0), dayAfter("2026-09-01", 3), bowls);
}

TEST(IntakeStretch, IsOfTheDaysThatAreKnownAndSaysHowManyTheseAre) {
  const IntakeStretch days = stretch(fourDaysOfKale());
  EXPECT_EQ(days.days, 4U);
  EXPECT_EQ(days.daysKnown, 3U);
  EXPECT_EQ(days.bowls, 4U);
  EXPECT_EQ(days.bowlsKnown, 3U);
  EXPECT_DOUBLE_EQ(days.animalDays, 6.0);
  ASSERT_EQ(days.foods.size(), 1U);
  EXPECT_DOUBLE_EQ(days.foods[0].offered, 480.0);  // 3 · 160
  EXPECT_NEAR(days.foods[0].eaten, 300.0, 1e-9);   // 120 + 80 + 100
  EXPECT_EQ(days.foods[0].bowls, 3U);
  EXPECT_EQ(days.foods[0].bowlsNotKnown, 1U);
}

TEST(IntakeStretch, JudgesTheMeanDayOfOneAnimal) {
  const StretchValue calcium = stretch(fourDaysOfKale()).values.at(0);
  EXPECT_NEAR(calcium.offered.value(), 160.0, 1e-9);  // 80 g each · 2 mg/g
  EXPECT_NEAR(calcium.eaten.value(), 100.0, 1e-9);    // 300 g / 6 animal days · 2 mg/g
  EXPECT_EQ(calcium.state, diet::TargetState::Met);
}

// The same errors added up by Uncertain, over three known days of two animals.
TEST(IntakeStretch, IsAsSureAsTheSumOfItsDays) {
  const std::vector<EatenBowl> bowls = fourDaysOfKale();
  const diet::BalanceProblem made = kaleAgainstCalcium(90);
  const auto days =
      dailyIntake(bowls, Contents::ofNutrient(made.foods, made.energyMethod, food::nutrients::calcium()));
  const PeriodIntake period = overPeriod(days);
  EXPECT_NEAR(stretch(bowls).values[0].sd, period.total.sd() / 6.0, 1e-9);
}

TEST(IntakeStretch, WithoutAKnownDayNothingIsSaidOfWhatWasEaten) {
  std::vector<EatenBowl> bowls = fourDaysOfKale();
  bowls = {bowls[2]};
  const IntakeStretch day = stretch(bowls);
  EXPECT_EQ(day.daysKnown, 0U);
  EXPECT_FALSE(day.values.at(0).eaten);
  EXPECT_NEAR(day.values.at(0).offered.value(), 160.0, 1e-9);
  EXPECT_FALSE(Followed(kaleAgainstCalcium(90)).onDay(bowls).at(0));
}

TEST(IntakeStretch, ADayIsOfOneAnimal) {
  const std::vector<EatenBowl> bowls = fourDaysOfKale();
  const auto day = Followed(kaleAgainstCalcium(90)).onDay({bowls.data(), 1});
  EXPECT_NEAR(day.at(0).value(), 60.0, 1e-9);   // 120 g of two
  EXPECT_NEAR(day.at(1).value(), 120.0, 1e-9);  // · 2 mg/g
}

TEST(IntakeStretch, WithoutABowlItIsEmpty) {
  const IntakeStretch none = stretch({});
  EXPECT_EQ(none.days, 0U);
  EXPECT_TRUE(none.values.empty());
}

}  // namespace
}  // namespace tarebowl::intake
