// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diet_draft.h"

#include "tests/ui/diets/example_diet.h"

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using quantity::Grams;

TEST(Draft, StartsFromTheDietAsItIsNow) {
  const DietDraft draft = draftOf(exampleProblem());
  EXPECT_EQ(draft.grams, (diet::Diet{Grams(20), Grams(10), Grams(0)}));
  EXPECT_EQ(draft.locked, (std::vector<bool>{false, false, false}));
}

TEST(Draft, WithoutADietAsItIsNowStartsFromGramsAScaleCanShow) {
  diet::BalanceProblem problem = exampleProblem();
  problem.reference.reset();
  const DietDraft draft = draftOf(problem);
  for (std::size_t j = 0; j < draft.grams.size(); ++j)
    EXPECT_EQ(onScale(draft.problem, j, draft.grams[j]), draft.grams[j]) << j;
}

TEST(LockedFood, IsSolvedWithItsGramsAsBothLimits) {
  DietDraft draft = draftOf(exampleProblem());
  draft.locked[kInsects] = true;
  const diet::BalanceProblem problem = problemToSolve(draft);
  EXPECT_EQ(problem.foods[kInsects].min, Grams(10));
  EXPECT_EQ(problem.foods[kInsects].max, Grams(10));
  EXPECT_EQ(problem.foods[kLeaves].min, Grams(0));
  EXPECT_FALSE(problem.foods[kLeaves].max);
}

TEST(LockedFood, BesideItsScalesStepsIsHeldAsOneStepOfItsOwn) {
  DietDraft draft = draftOf(exampleProblem());
  draft.grams[kInsects] = Grams(9.5);
  draft.locked[kInsects] = true;
  EXPECT_EQ(problemToSolve(draft).foods[kInsects].scaleStep, Grams(9.5));
}

TEST(LockedFood, KeepsItsLimitsInTheFileThatIsSaved) {
  DietDraft draft = draftOf(exampleProblem());
  draft.locked[kLimestone] = true;
  EXPECT_EQ(problemToSave(draft).foods[kLimestone].max, Grams(1));
}

TEST(SavedProblem, TakesTheGramsShownAsTheDietAsItIsNow) {
  DietDraft draft = draftOf(exampleProblem());
  draft.grams[kLeaves] = Grams(31);
  EXPECT_EQ(problemToSave(draft).reference.value()[kLeaves], Grams(31));
}

TEST(Scale, RoundsToItsNearestStep) {
  const diet::BalanceProblem problem = exampleProblem();
  EXPECT_EQ(onScale(problem, kLeaves, Grams(12.4)), Grams(12));
  EXPECT_NEAR(onScale(problem, kLimestone, Grams(0.26)).value(), 0.3, 1e-12);
}

TEST(Scale, LeavesGramsAloneWhereWholeStepsAreNotAskedFor) {
  diet::BalanceProblem problem = exampleProblem();
  problem.wholeSteps = false;
  EXPECT_EQ(onScale(problem, kLeaves, Grams(12.4)), Grams(12.4));
}

TEST(RungBounds, AreThoseOfTheTargetRatioOrShareTheySpeakOf) {
  diet::BalanceProblem problem = exampleProblem();
  EXPECT_EQ(boundsOf(problem, {diet::TargetKind::Nutrient, kPhosphorus}), (Bounds{5.0, 9.0}));
  EXPECT_EQ(boundsOf(problem, {diet::TargetKind::Share, 0}), (Bounds{std::nullopt, 0.7}));
  setBounds(problem, {diet::TargetKind::Ratio, 0}, {1.2, 2.0});
  EXPECT_EQ(problem.ratios[0].min, 1.2);
  EXPECT_EQ(problem.ratios[0].max, 2.0);
}

}  // namespace
}  // namespace tarebowl::ui
