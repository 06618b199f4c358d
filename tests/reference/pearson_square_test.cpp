// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/solve.h"

#include <gtest/gtest.h>

#include <vector>

// The Pearson square, an old hand method for mixing two feeds to a wanted protein content, put to the solver
// as a diet: the mixture weighs 100 g (each feed counts 1 kcal per gram, and 100 kcal are asked), so that
// grams are per cent.

namespace tarebowl::diet {
namespace {

struct Feed {
  double proteinPercent;
  std::optional<double> fixedGrams{};
};

BalanceProblem mixture(const std::vector<Feed>& feeds, double wantedPercent) {
  BalanceProblem problem;
  problem.energyMethod = food::EnergyMethod::Given;
  problem.wholeSteps = false;
  for (const Feed& feed : feeds) {
    DietFood food;
    food.id = std::to_string(problem.foods.size());
    food::NutrientValue protein;
    protein.amount = quantity::AsFedContent(feed.proteinPercent);
    food.composition.set(food::nutrients::protein(), protein);
    food::NutrientValue energy;
    energy.amount = quantity::AsFedContent(100);
    food.composition.set(food::nutrients::energy(), energy);
    if (feed.fixedGrams) food.min = quantity::Grams(*feed.fixedGrams);
    if (feed.fixedGrams) food.max = food.min;
    problem.foods.push_back(food);
  }
  problem.targets = {{.id = "size",
                      .nutrient = food::nutrients::energy(),
                      .min = 100,
                      .max = 100,
                      .unit = quantity::Unit::Kilocalorie,
                      .basis = quantity::Basis::Day,
                      .hard = true,
                      .origin = {}},
                     {.id = "protein",
                      .nutrient = food::nutrients::protein(),
                      .min = wantedPercent * 10,
                      .max = wantedPercent * 10,
                      .unit = quantity::Unit::Gram,
                      .basis = quantity::Basis::AsFed,
                      .hard = true,
                      .origin = {}}};
  return problem;
}

void expectPercent(const DietSolution& answer, const std::vector<double>& percent) {
  ASSERT_EQ(answer.status, DietStatus::Balanced) << answer.reason;
  for (std::size_t j = 0; j < percent.size(); ++j) EXPECT_NEAR(answer.grams[j].value(), percent[j], 1e-6);
}

// Montana State University Extension, animal range fact sheet on the Pearson square: printed 13.8 and 86.2 %.
TEST(PearsonSquare, OfHayAndSilageFollowsTheMontanaExample) {
  expectPercent(solve(mixture({{12.25}, {10.8}}, 11)), {100 * 0.2 / 1.45, 100 * 1.25 / 1.45});
}

// The same source: printed 97.3 and 2.7 %.
TEST(PearsonSquare, OfHayAndSupplementFollowsTheMontanaExample) {
  expectPercent(solve(mixture({{8.95}, {40}}, 9.8)), {100 * 30.2 / 31.05, 100 * 0.85 / 31.05});
}

// Inputs of Colorado State University Extension fact sheet 1.618; parts 31 and 4 by hand.
TEST(PearsonSquare, OfCornAndSoybeanMealFollowsTheColoradoInputs) {
  expectPercent(solve(mixture({{10}, {45}}, 14)), {100 * 31 / 35.0, 100 * 4 / 35.0});
}

// Inputs as printed by the trade journal Feed Strategy: 5 % of a premix without protein leaves 18/0.95
// = 18.947368 % for the rest.
TEST(PearsonSquare, WithAFixedThirdPartLeavesTheRestToTheOthers) {
  expectPercent(solve(mixture({{0, 5.0}, {9}, {44}}, 18)), {5, 68, 27});
}

// Montana State University Extension: the wanted content must lie between the two feeds'.
TEST(PearsonSquare, OutsideBothFeedsIsImpossibleWhenHard) {
  EXPECT_EQ(solve(mixture({{12}, {10}}, 14)).status, DietStatus::Impossible);
}

// And as a wish it gives the nearest mixture: all of the richer feed, 2 of the wanted 14 parts short.
TEST(PearsonSquare, OutsideBothFeedsIsTheNearestMixtureWhenWished) {
  BalanceProblem problem = mixture({{12}, {10}}, 14);
  problem.targets[1].hard = false;
  const DietSolution answer = solve(problem);
  ASSERT_EQ(answer.status, DietStatus::Compromise) << answer.reason;
  EXPECT_NEAR(answer.grams[0].value(), 100, 1e-3);  // the second stage may trade a millionth of the shortfall
  EXPECT_NEAR(answer.shortfall, 2.0 / 14, 1e-6);
  EXPECT_EQ(answer.balance.targets[1].state, TargetState::Short);
}

}  // namespace
}  // namespace tarebowl::diet
