// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/locked.h"

#include "core/diet/judged.h"
#include "tests/core/diet/bowls.h"

#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using namespace testing;
using quantity::Grams;

TEST(LockedFoods, ALockedFoodKeepsItsGramsWhateverItsLimitsAndItsStep) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].max = Grams(50);
  problem.foods[0].scaleStep = Grams(10);
  const BalanceProblem held = withLocked(problem, grams({64.3, 5}), {true, false});
  EXPECT_EQ(held.foods[0].min, Grams(64.3));
  EXPECT_EQ(held.foods[0].max, Grams(64.3));
  EXPECT_EQ(held.foods[0].scaleStep, Grams(64.3));  // a step of its own mass
  EXPECT_EQ(held.foods[1], problem.foods[1]);
}

TEST(LockedFoods, GramsOnTheScaleKeepTheScale) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].scaleStep = Grams(0.1);
  EXPECT_EQ(withLocked(problem, grams({0.3, 5}), {true, false}).foods[0].scaleStep, Grams(0.1));
  problem.wholeSteps = false;
  EXPECT_EQ(withLocked(problem, grams({0.35, 5}), {true, false}).foods[0].scaleStep, Grams(0.1));
}

// 220 mg Ca in 0.03 kg of dry matter are 7333 mg/kg.
TEST(JudgedDiet, ADietStandsWhereASolutionWould) {
  BalanceProblem problem = greensAndInsects();
  problem.targets = {target("CA", {.min = 7000}, quantity::Unit::Milligram, quantity::Basis::DryMatter)};
  const DietSolution holds = judged(problem, usualBowl());
  EXPECT_EQ(holds.status, DietStatus::Balanced);
  EXPECT_EQ(holds.grams, usualBowl());
  EXPECT_EQ(holds.multipliers.size(), 1U);
  problem.targets[0].min = 8000;
  EXPECT_EQ(judged(problem, usualBowl()).status, DietStatus::Compromise);
}

}  // namespace
}  // namespace tarebowl::diet
