// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/intake_period.h"

#include "core/intake/choice.h"
#include "core/intake/daily_intake.h"
#include "core/intake/eaten_fraction.h"
#include "tests/core/transfer/brackenmere.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace tarebowl::transfer {
namespace {

quantity::Date on(const char* iso) {
  return quantity::parseDate(iso).value();
}

/// Read in once for all of these: it takes a second.
const store::Collection& brackenmere() {
  static const OwnSample kSample(FeedingDays::TakenIn);
  return kSample.collection;
}

IntakePeriod period(const std::string& group, const char* from = "2026-07-28",
                    const char* to = "2026-11-24") {
  return readIntake(brackenmere(), group, on(from), on(to)).value();
}

/// Median over days of what is known.
double medianRatio(const IntakePeriod& of, bool offered) {
  std::vector<double> values;
  for (const intake::DayRatio& day : intake::dailyRatio(of.eaten, contentsOf(of, food::nutrients::calcium()),
                                                        contentsOf(of, food::nutrients::phosphorus()))) {
    if (offered && day.offered) values.push_back(*day.offered);
    if (!offered && day.eaten) values.push_back(day.eaten->value());
  }
  std::ranges::sort(values);
  return values.at(values.size() / 2);
}

TEST(IntakeOfTheSample, HoldsEveryDayOfEveryGroupThatIsFed) {
  for (const char* group :
       {"tenrecs", "bats", "lemurs", "squirrel-monkeys", "dragons", "young-dragons", "fennecs"}) {
    const IntakePeriod read = period(group);
    const auto days = intake::dailyIntake(read.eaten, contentsOf(read, food::nutrients::calcium()));
    EXPECT_EQ(days.size(), 120U) << group;
    EXPECT_TRUE(read.unknownFoods.empty()) << group;
    const auto known = std::ranges::count_if(days, [](const auto& day) { return day.eaten.has_value(); });
    EXPECT_GT(known, 90) << group;
  }
  EXPECT_FALSE(readIntake(brackenmere(), "nobody", on("2026-07-28"), on("2026-11-24")));
}

// First planted story.
TEST(IntakeOfTheSample, TheFennecsLeaveTheirVegetables) {
  const auto fractions = intake::learnFractions(period("fennecs").eaten);
  for (const intake::EatenFraction& food : fractions) {
    const bool isVegetable = food.foodClass.ends_with("vegetable") || food.foodClass.ends_with("root");
    if (isVegetable)
      EXPECT_LT(food.fraction, 0.5) << food.food;
    else
      EXPECT_GT(food.fraction, 0.85) << food.food;
  }
}

TEST(IntakeOfTheSample, AmongTheirVegetablesTheFennecsPickTheCarrotFirst) {
  const IntakePeriod read = period("fennecs", "2026-10-05");
  const intake::Choice choice =
      intake::choiceIn(read.eaten, {.leaveOut = {"chick-day-old", "insect-eater-pellet"}});
  ASSERT_GE(choice.foods.size(), 3U);
  EXPECT_EQ(choice.foods[0].food, "carrot-boiled");
  EXPECT_GT(choice.foods[0].interval.value().low, choice.neutral);
  EXPECT_GT(choice.bowls, 40U);
}

// Second planted story. Offered per animal in August: 6 g dandelion, 12 g endive, 3 g crickets, about 18.7 mg
// Ca and 16.2 mg P; with 15 % of the greens eaten about 3.8 mg and 10.0 mg.
TEST(IntakeOfTheSample, TheDragonsCalciumFallsBelowTheirPhosphorusWhenTheyLeaveTheirGreens) {
  const IntakePeriod before = period("dragons", "2026-07-28", "2026-08-06");
  const IntakePeriod greensLeft = period("dragons", "2026-08-07", "2026-08-16");
  EXPECT_NEAR(medianRatio(before, true), medianRatio(greensLeft, true), 0.05);
  EXPECT_GT(medianRatio(before, false), 1.0);
  EXPECT_LT(medianRatio(greensLeft, false), 0.6);
}

TEST(IntakeOfTheSample, AndSoItDoesInNovember) {
  const IntakePeriod before = period("dragons", "2026-10-20", "2026-11-07");
  const IntakePeriod greensLeft = period("dragons", "2026-11-08", "2026-11-17");
  EXPECT_LT(medianRatio(greensLeft, false), 0.95 * medianRatio(before, false));
  EXPECT_NEAR(medianRatio(greensLeft, true), medianRatio(before, true), 0.03);
}

TEST(IntakeOfTheSample, TheSlipOfThePenIsReportedAndKept) {
  const IntakePeriod read = period("dragons", "2026-09-22", "2026-09-22");
  ASSERT_EQ(read.eaten.size(), 1U);
  const auto& findings = read.eaten[0].findings;
  const auto slip =
      std::ranges::find(findings, intake::FindingKind::LeftoverAboveOffered, &intake::Finding::kind);
  ASSERT_NE(slip, findings.end());
  EXPECT_GT(slip->sds, 2.0);
  EXPECT_LT(read.eaten[0].items[slip->item].eaten.value().value(), -10.0);
}

TEST(IntakeOfTheSample, ACorrectionMakesTheMonkeysIntakeLessThanUncorrected) {
  const IntakePeriod read = period("squirrel-monkeys");
  double eaten = 0.0;
  double uncorrected = 0.0;
  std::size_t estimated = 0;
  for (const intake::EatenBowl& bowl : read.eaten)
    for (const intake::EatenItem& item : bowl.items) {
      estimated += item.estimated ? 1 : 0;
      if (!item.eaten || item.foodClass == "pellet") continue;  // pellets draw water
      eaten += item.eaten->value();
      uncorrected += item.offered - item.left.value_or(0.0) - item.spilled - item.stolen;
    }
  EXPECT_LT(eaten, uncorrected);
  EXPECT_GT(estimated, 100U);
}

}  // namespace
}  // namespace tarebowl::transfer
