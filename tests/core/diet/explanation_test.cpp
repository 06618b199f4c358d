// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/explanation.h"

#include "tests/core/diet/bowls.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using namespace testing;  // the bowls
using quantity::Basis;
using quantity::Grams;
using quantity::Unit;

/// Calcium costs 4 per 2000 mg of greens, 20 per 400 mg of insects.
BalanceProblem cheapCalcium() {
  BalanceProblem problem = greensAndInsects();
  problem.wholeSteps = false;
  problem.foods[0].costPerKg = 4.0;
  problem.foods[0].max = Grams(200);  // 400 mg
  problem.foods[1].costPerKg = 20.0;
  problem.objective.kind = Objective::Kind::LowestCost;
  problem.targets = {target("CA", {.min = 300}, Unit::Milligram, Basis::Day)};
  return problem;
}

TEST(Explanation, PricesABoundPerUnitOfItself) {
  const BalanceProblem problem = cheapCalcium();
  const Explanation why = explain(problem, solve(problem));
  ASSERT_EQ(why.bounds.size(), 1U);
  EXPECT_FALSE(why.ofShortfall);
  EXPECT_FALSE(why.ofAnyAmounts);
  EXPECT_NEAR(why.bounds[0].perUnit, 0.002, 1e-9);  // 4 / 2000
  ASSERT_EQ(why.bounds[0].moves.size(), 1U);
  EXPECT_EQ(why.bounds[0].moves[0].food, 0U);
  EXPECT_NEAR(why.bounds[0].moves[0].gramsPerUnit, 0.5, 1e-6);
}

TEST(Explanation, SaysOverWhatRangeTheSameBoundsPush) {
  const BalanceProblem problem = cheapCalcium();
  const Explanation why = explain(problem, solve(problem));
  ASSERT_TRUE(why.bounds.at(0).range.has_value());
  EXPECT_FALSE(why.bounds[0].range->low.has_value());
  EXPECT_NEAR(why.bounds[0].range->high.value(), 400.0, 1e-3);  // then the greens are used up
}

TEST(Explanation, SaysOverWhatCostsTheSameFoodsStay) {
  const BalanceProblem problem = cheapCalcium();
  const Explanation why = explain(problem, solve(problem));
  ASSERT_EQ(why.costs.size(), 2U);
  EXPECT_FALSE(why.costs[0].range.high.has_value());       // far from 100, where insects are cheaper
  EXPECT_NEAR(why.costs[1].range.low.value(), 0.8, 1e-3);  // 0.8 / 400 = 4 / 2000
}

TEST(Explanation, PricesAFoodsOwnLimit) {
  BalanceProblem problem = cheapCalcium();
  problem.targets[0].min = 440;  // 40 mg more than the greens give: 100 g insects
  const Explanation why = explain(problem, solve(problem));
  ASSERT_EQ(why.foods.size(), 1U);
  EXPECT_EQ(why.foods[0].side, BoundSide::Max);
  // One gram of greens costs 0.004 and brings 2 mg, for which 5 g of insects cost 0.1.
  EXPECT_NEAR(why.foods[0].perGram, 0.004 - 0.1, 1e-9);
}

TEST(Explanation, OfACompromisePricesTheShortfall) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].max = Grams(200);
  problem.foods[1].max = Grams(0);
  problem.targets = {target("CA", {.min = 500}, Unit::Milligram, Basis::Day)};
  const Explanation why = explain(problem, solve(problem));
  EXPECT_TRUE(why.ofShortfall);
  EXPECT_TRUE(why.ofAnyAmounts);
  ASSERT_EQ(why.bounds.size(), 1U);
  EXPECT_NEAR(why.bounds[0].perUnit, 400.0 / (500.0 * 500.0), 1e-9);  // of 1 - 400 / m
  ASSERT_FALSE(why.foods.empty());
  EXPECT_NEAR(why.foods[0].perGram, -2.0 / 500.0, 1e-9);
}

/// By moving each bound that pushes a little and solving again.
void expectFiniteDifferences(const BalanceProblem& problem) {
  const Explanation why = explain(problem, solve(problem), {.ranges = false, .stop = {}});
  ASSERT_FALSE(why.bounds.empty());
  for (const BindingBound& binding : why.bounds) {
    const auto sought = [&](double bound) {
      BalanceProblem moved = problem;
      auto& target = moved.targets.at(binding.line);
      (binding.side == BoundSide::Min ? target.min : target.max) = bound;
      const DietSolution answer = solve(moved);
      return why.ofShortfall ? answer.shortfall : answer.objective;
    };
    const double step = 1e-4 * binding.bound;
    const double slope = (sought(binding.bound + step) - sought(binding.bound - step)) / (2.0 * step);
    EXPECT_NEAR(binding.perUnit, slope, 1e-4 * std::abs(slope)) << problem.targets[binding.line].id;
  }
}

TEST(Explanation, AgreesWithSolvingAgainForTheClosestDiet) {
  BalanceProblem problem = greensAndInsects();
  problem.wholeSteps = false;
  problem.targets = {target("P", {.min = 8}, Unit::Gram, Basis::DryMatter),
                     target("ENERC", {.min = 100, .max = 150}, Unit::Kilocalorie, Basis::Day),
                     target("CA", {.max = 1.5}, Unit::Gram, Basis::AsFed)};
  expectFiniteDifferences(problem);
}

TEST(Explanation, AgreesWithSolvingAgainForTheMostOfANutrient) {
  BalanceProblem problem = greensAndInsects();
  problem.wholeSteps = false;
  problem.objective = {Objective::Kind::Highest, nutrient("CA")};
  problem.targets = {target("P", {.max = 200}, Unit::Milligram, Basis::Day),
                     target("ENERC", {.max = 150}, Unit::Kilocalorie, Basis::Day)};
  expectFiniteDifferences(problem);
}

TEST(Explanation, AgreesWithSolvingAgainForACompromise) {
  BalanceProblem problem = greensAndInsects();
  problem.wholeSteps = false;
  problem.targets = {target("CA", {.min = 30}, Unit::Gram, Basis::DryMatter),
                     target("ENERC", {.min = 80}, Unit::Kilocalorie, Basis::Day)};
  expectFiniteDifferences(problem);
}

TEST(Explanation, IsEmptyWhereThereIsNoAnswer) {
  const Explanation why = explain(greensAndInsects(), DietSolution{});
  EXPECT_TRUE(why.bounds.empty());
  EXPECT_TRUE(why.leastChanges.empty());
}

}  // namespace
}  // namespace tarebowl::diet
