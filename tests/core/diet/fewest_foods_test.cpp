// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/objective.h"
#include "core/diet/solve.h"
#include "core/exchange/problem_json.h"
#include "tests/core/diet/bowls.h"
#include "tests/core/diet/random_problem.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <limits>

namespace tarebowl::diet {
namespace {

using namespace testing;  // the bowls
using quantity::Basis;
using quantity::Grams;
using quantity::Unit;

BalanceProblem fewest(BalanceProblem problem) {
  problem.objective = {Objective::Kind::FewestFoods, {}};
  return problem;
}

/// Closest to a bowl of three foods, of which one alone has what is asked for.
BalanceProblem threeFoods() {
  BalanceProblem problem = greensAndInsects();
  problem.foods.push_back(
      makeFood("pellet", "pellet", {{"WATER", 10}, {"CA", 100}, {"P", 100}, {"ENERC", 100}}));
  problem.reference = grams({50, 50, 20});
  // 100 kcal a day: 20 + 100 + 20 of the three as they are now.
  problem.targets = {target("ENERC", {.min = 100, .max = 100}, Unit::Kilocalorie, Basis::Day)};
  return problem;
}

// Closest keeps all three; 100 kcal come from 250 g greens, 50 g insects or 100 g pellet alone, and 50 g
// insects are what is there now.
TEST(FewestFoods, OneFoodIsEnoughWhereOneHasIt) {
  EXPECT_EQ(std::ranges::count_if(solve(threeFoods()).grams, [](Grams g) { return g > Grams(0); }), 3);
  const DietSolution answer = solve(fewest(threeFoods()));
  ASSERT_EQ(answer.status, DietStatus::Balanced) << answer.reason;
  EXPECT_EQ(answer.objective, 1.0);
  EXPECT_EQ(answer.grams, grams({0, 50, 0}));
  EXPECT_EQ(answer.provenGap, 0.0);
}

TEST(FewestFoods, ALeastAmountKeepsAFoodInTheBowl) {
  BalanceProblem problem = fewest(threeFoods());
  problem.foods[0].min = Grams(25);
  problem.foods[0].max = Grams(100);
  // Greens stay, 40 kcal of them at most. With insects: 50 g and 40 g lie nearest to 50 g and 50 g.
  const DietSolution answer = solve(problem);
  EXPECT_EQ(answer.objective, 2.0);
  EXPECT_EQ(answer.grams, grams({50, 40, 0}));
}

// At most 30 g of insects, 60 kcal: another has to help.
TEST(FewestFoods, TheTargetsComeBeforeTheCount) {
  BalanceProblem problem = fewest(threeFoods());
  problem.foods[0].max = Grams(100);
  problem.foods[1].max = Grams(30);
  problem.foods[2].max = Grams(70);
  const DietSolution answer = solve(problem);
  ASSERT_EQ(answer.status, DietStatus::Balanced) << answer.reason;
  EXPECT_EQ(answer.objective, 2.0);
}

TEST(FewestFoods, IsReadAndWritten) {
  const BalanceProblem problem = fewest(threeFoods());
  const std::string text = exchange::writeProblem(problem);
  EXPECT_NE(text.find("\"fewest-foods\""), std::string::npos);
  EXPECT_EQ(exchange::parseProblem(text, "x").objective, problem.objective);
}

struct Best {
  int foods = std::numeric_limits<int>::max();
  double distance = std::numeric_limits<double>::infinity();
};

/// Every subset of the foods solved by itself.
Best bestOfSubsets(const BalanceProblem& problem, double budget) {
  Best best;
  for (unsigned subset = 0; subset < (1U << problem.foods.size()); ++subset) {
    BalanceProblem part = problem;
    part.objective = {};
    int count = 0;
    bool allowed = true;
    for (std::size_t j = 0; j < part.foods.size(); ++j) {
      const bool isIn = ((subset >> j) & 1U) != 0;
      count += isIn ? 1 : 0;
      allowed = allowed && (isIn || part.foods[j].min <= Grams(0));
      if (!isIn) part.foods[j].max = Grams(0);
    }
    if (!allowed || count > best.foods) continue;
    const DietSolution answer = solve(part);
    if (answer.grams.empty() || answer.shortfall > budget) continue;
    if (count < best.foods) best = {count, answer.objective};
    best.distance = std::min(best.distance, answer.objective);
  }
  return best;
}

RC_GTEST_PROP(FewestFoodsProperty, NoSubsetOfFewerFoodsWouldDo, ()) {
  BalanceProblem problem = drawSensibleProblem();
  problem.foods.resize(std::min<std::size_t>(problem.foods.size(), 4));
  if (problem.reference) problem.reference->resize(problem.foods.size());
  problem.confidence.reset();
  problem.objective = {};
  for (DietFood& food : problem.foods) {
    food.scaleStep = Grams(*rc::gen::element(0.5, 1.0, 5.0));
    food.max = food.scaleStep * *rc::gen::inRange(1, 12);
    food.min = std::min(food.min, *food.max);
  }
  problem.reference = referenceDiet(problem);
  const DietSolution closest = solve(problem);
  if (closest.grams.empty()) return;
  const double budget = closest.shortfall * (1.0 + 1e-6) + 1e-9;
  const DietSolution answer = solve(fewest(problem));
  RC_LOG() << exchange::writeProblem(problem);
  RC_ASSERT(!answer.grams.empty());
  RC_ASSERT(answer.provenGap == 0.0);
  RC_ASSERT(answer.shortfall <= budget * (1.0 + 1e-6) + 1e-9);
  const Best best = bestOfSubsets(problem, budget * (1.0 + 1e-9) + 1e-12);
  RC_ASSERT(static_cast<int>(answer.objective) == best.foods);
  const double distance = objectiveOf(problem, *problem.reference, answer.grams);
  RC_ASSERT(distance <= best.distance * (1.0 + 1e-6) + 1e-6);
}

}  // namespace
}  // namespace tarebowl::diet
