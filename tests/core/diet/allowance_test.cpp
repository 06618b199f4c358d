// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/allowance.h"

#include "core/diet/balance.h"
#include "core/diet/solve.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tarebowl::diet {
namespace {

using quantity::AsFedContent;
using quantity::Grams;

food::NutrientId calcium() {
  return food::findByTagname("CA").value();
}

DietFood raisin(double calciumSd) {
  DietFood food;
  food.id = "raisin";
  food::NutrientValue value{.amount = AsFedContent(50)};
  if (calciumSd > 0) value.sd = AsFedContent(calciumSd);
  food.composition.set(calcium(), value);
  return food;
}

const Allowance kReward{
    .food = "raisin", .low = Grams(1), .high = Grams(4), .purpose = Purpose::TrainingReward};

BalanceProblem rewardAlone(const DietFood& food) {
  BalanceProblem problem;
  problem.foods = {asFood(kReward, food)};
  problem.targets = {{.id = "ca",
                      .nutrient = calcium(),
                      .min = 0.5,
                      .max = std::nullopt,
                      .unit = quantity::Unit::Milligram,
                      .basis = quantity::Basis::Day,
                      .origin = {}}};
  return problem;
}

// 1 to 4 g: 2.5 g in the middle bring 1.25 mg of calcium; the amount scatters by 3 / sqrt(12) = 0.866 g,
// which is 0.433 mg.
TEST(AllowanceInTheBalance, CountsItsMiddleAndCarriesItsRangeAsUncertainty) {
  const TargetBalance balanced = balance(rewardAlone(raisin(0)), {Grams(2.5)}).targets.front();
  EXPECT_NEAR(balanced.value.value(), 1.25, 1e-12);
  EXPECT_NEAR(balanced.sd, 0.5 * 3.0 / std::sqrt(12.0), 1e-12);
}

// The food's own scatter of 20 mg in 100 g is 0.5 mg in 2.5 g: sqrt(0.433^2 + 0.5^2) = 0.6614 mg.
TEST(AllowanceInTheBalance, TheFoodsOwnScatterStays) {
  const TargetBalance balanced = balance(rewardAlone(raisin(20)), {Grams(2.5)}).targets.front();
  EXPECT_NEAR(balanced.sd, 0.661438, 1e-6);
}

TEST(AllowanceInTheBalance, TheSolverDoesNotMoveIt) {
  BalanceProblem problem = rewardAlone(raisin(0));
  problem.targets.front().min = 5.0;
  const DietSolution solution = solve(problem);
  EXPECT_EQ(solution.status, DietStatus::Compromise);
  EXPECT_EQ(solution.grams, Diet{Grams(2.5)});
}

TEST(AllowanceInTheBalance, TheSameFoodMayStandInTheBowlAsWell) {
  EXPECT_EQ(asFood(kReward, raisin(0)).id, "raisin (training-reward)");
}

}  // namespace
}  // namespace tarebowl::diet
