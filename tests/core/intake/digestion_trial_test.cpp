// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/digestion_trial.h"

#include "tests/core/intake/feeding.h"
#include "tests/core/intake/four_days.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tarebowl::intake {
namespace {

using namespace testing;

/// 25 g fresh with 20 g dry matter in 100 g, that is 5 g of dry matter.
FaecesCollected collected(const char* from, const char* until) {
  return {.group = "lemurs",
          .from = day(from),
          .until = day(until),
          .fresh = quantity::Grams(25),
          .dryMatter = 20.0,
          .values = {{food::nutrients::calcium(), 4000.0, 400.0}},
          .source = "invented"};
}

DigestionTrial trialOf(const FaecesCollected& faeces) {
  return digestionOf(faeces, kaleAgainstCalcium(90), fourDaysOfKale());
}

// On the first two days 120 + 80 = 200 g of kale were eaten: 20 g dry matter (10 g in 100 g) and 400 mg
// calcium (200 mg in 100 g).
TEST(DigestionTrial, IsWhatWasEatenLessWhatPassedOverWhatWasEatenOnDryMatter) {
  const DigestionTrial trial = trialOf(collected("2026-09-01", "2026-09-02"));
  EXPECT_EQ(trial.days, 2U);
  EXPECT_EQ(trial.daysKnown, 2U);
  ASSERT_EQ(trial.lines.size(), 2U);
  const DigestedLine& dryMatter = trial.lines[0];
  EXPECT_FALSE(dryMatter.nutrient);
  EXPECT_NEAR(dryMatter.eaten.value, 20.0, 1e-9);
  EXPECT_NEAR(dryMatter.inFaeces.value, 5.0, 1e-9);
  EXPECT_NEAR(dryMatter.apparent.value().share, 0.75, 1e-9);  // (20 - 5) / 20
  const DigestedLine& calcium = trial.lines[1];
  EXPECT_NEAR(calcium.eaten.value, 400.0, 1e-9);
  EXPECT_NEAR(calcium.inFaeces.value, 200.0, 1e-9);        // 5 g · 4000 mg / 100 g
  EXPECT_NEAR(calcium.apparent.value().share, 0.5, 1e-9);  // (400 - 200) / 400
}

// The scatter of the analysis, 10 % of 200 mg, over what was eaten: 20 / 400 = 0.05, with that of what was
// eaten.
TEST(DigestionTrial, IsAsSureAsTheAnalysisAndTheIntake) {
  const DigestedLine calcium = trialOf(collected("2026-09-01", "2026-09-02")).lines.at(1);
  EXPECT_NEAR(calcium.inFaeces.sd, 20.0, 1e-9);  // 5 g · 400 mg / 100 g
  const double ofIntake = 0.5 * calcium.eaten.sd / 400.0;
  EXPECT_NEAR(calcium.apparent.value().sd, std::hypot(0.05, ofIntake), 1e-9);
}

TEST(DigestionTrial, SaysNothingWhereADayOfTheCollectionIsNotKnown) {
  const DigestionTrial trial =
      trialOf(collected("2026-09-01", "2026-09-03"));  // the third was not weighed back
  EXPECT_EQ(trial.days, 3U);
  EXPECT_EQ(trial.daysKnown, 2U);
  for (const DigestedLine& line : trial.lines) EXPECT_FALSE(line.apparent);
}

TEST(DigestionTrial, ADayWithoutABowlIsNotKnownEither) {
  EXPECT_FALSE(trialOf(collected("2026-09-04", "2026-09-05")).lines.at(0).apparent);
}

TEST(DigestionTrial, MoreThanWasEatenIsToldAndNotClamped) {
  FaecesCollected faeces = collected("2026-09-01", "2026-09-02");
  faeces.fresh = quantity::Grams(200);  // 40 g dry matter of 20 g eaten
  EXPECT_NEAR(trialOf(faeces).lines.at(0).apparent.value().share, -1.0, 1e-9);
}

TEST(DigestionTrial, ANutrientThatNoFoodTellsIsNotDigested) {
  FaecesCollected faeces = collected("2026-09-01", "2026-09-02");
  faeces.values = {{food::nutrients::protein(), 10.0, {}}};
  const DigestedLine protein = trialOf(faeces).lines.at(1);
  EXPECT_FALSE(protein.apparent);
  EXPECT_EQ(protein.coverage, 0.0);
}

}  // namespace
}  // namespace tarebowl::intake
