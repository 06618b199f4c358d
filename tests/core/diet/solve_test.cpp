// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/solve.h"

#include "core/diet/objective.h"
#include "core/diet/scale_step.h"
#include "tests/core/diet/bowls.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using namespace testing;
using quantity::Basis;
using quantity::Grams;
using quantity::Unit;

constexpr double kClose = 1e-6;

animal::Target hard(animal::Target rule) {
  rule.hard = true;
  return rule;
}

/// Continuous amounts unless a test is about the scale.
BalanceProblem anyAmount() {
  BalanceProblem problem = greensAndInsects();
  problem.wholeSteps = false;
  return problem;
}

TEST(Solve, KeepsTheReferenceWhereItMeetsEveryTarget) {
  BalanceProblem problem = greensAndInsects();
  problem.targets = {target("CA", {.min = 300, .max = 500}, Unit::Milligram, Basis::Day)};
  const DietSolution answer = solve(problem);
  EXPECT_EQ(answer.status, DietStatus::Balanced);
  EXPECT_EQ(answer.grams, grams({200, 0}));
  EXPECT_NEAR(answer.objective, 0.0, 1e-12);
  EXPECT_EQ(answer.shortfall, 0.0);
  EXPECT_EQ(answer.provenGap, 0.0);
}

// Greens give 2 mg Ca per gram. d is 200 g for greens and 10 g for insects, which give 0.4 mg. To reach 412
// mg by the least
// ((g - 200)/200)² + (i/10)²: Lagrange gives g - 200 : i = 2 · 200² : 0.4 · 10² = 2000 : 1, so greens do
// nearly all of it.
TEST(Solve, MovesTheFoodsThatMoveEasiest) {
  BalanceProblem problem = anyAmount();
  problem.targets = {hard(target("CA", {.min = 412}, Unit::Milligram, Basis::Day))};
  const DietSolution answer = solve(problem);
  ASSERT_EQ(answer.status, DietStatus::Balanced) << answer.reason;
  const double insects = 12 / (2 * 2000 + 0.4);
  EXPECT_NEAR(answer.grams[0].value(), 200 + 2000 * insects, kClose);
  EXPECT_NEAR(answer.grams[1].value(), insects, kClose);
  EXPECT_EQ(answer.balance.targets[0].state, TargetState::AtMin);
}

TEST(Solve, FindsTheCheapestBowl) {
  BalanceProblem problem = anyAmount();
  problem.objective.kind = Objective::Kind::LowestCost;
  problem.foods[0].costPerKg = 4;   // 2 mg Ca per gram: 500 mg Ca per unit of money
  problem.foods[1].costPerKg = 10;  // 3 mg P per gram
  problem.targets = {hard(target("CA", {.min = 220}, Unit::Milligram, Basis::Day)),
                     hard(target("P", {.min = 200}, Unit::Milligram, Basis::Day))};
  // Both bind: 2 g + 0.4 i = 220 and 0.5 g + 3 i = 200 at g = 100, i = 50.
  const DietSolution answer = solve(problem);
  ASSERT_EQ(answer.status, DietStatus::Balanced) << answer.reason;
  EXPECT_NEAR(answer.grams[0].value(), 100, kClose);
  EXPECT_NEAR(answer.grams[1].value(), 50, kClose);
  EXPECT_NEAR(answer.objective, 0.4 + 0.5, 1e-9);
}

TEST(Solve, FindsTheMostAndTheLeastOfANutrient) {
  BalanceProblem problem = anyAmount();
  problem.targets = {hard(target("ENERC", {.min = 80, .max = 80}, Unit::Kilocalorie, Basis::Day))};
  problem.objective = {Objective::Kind::Highest, nutrient("P")};  // insects: 1.5 mg P per kcal, greens 1.25
  DietSolution answer = solve(problem);
  ASSERT_EQ(answer.status, DietStatus::Balanced) << answer.reason;
  EXPECT_NEAR(answer.grams[1].value(), 40, kClose);
  EXPECT_NEAR(answer.objective, 120, 1e-6);
  problem.objective.kind = Objective::Kind::Lowest;
  answer = solve(problem);
  ASSERT_EQ(answer.status, DietStatus::Balanced) << answer.reason;
  EXPECT_NEAR(answer.grams[0].value(), 200, kClose);
  EXPECT_NEAR(answer.objective, 100, 1e-6);
}

TEST(Solve, SaysByHowMuchTheNearestDietMisses) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].max = Grams(50);
  problem.foods[1].max = Grams(100);
  problem.targets = {target("CA", {.min = 200}, Unit::Milligram, Basis::Day)};  // at most 100 + 40 mg
  const DietSolution answer = solve(problem);
  EXPECT_EQ(answer.status, DietStatus::Compromise);
  EXPECT_EQ(answer.grams, grams({50, 100}));
  EXPECT_NEAR(answer.shortfall, 0.3, 1e-12);
  EXPECT_EQ(answer.balance.targets[0].state, TargetState::Short);
}

TEST(Solve, SaysImpossibleWhenHardRulesContradict) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].max = Grams(50);
  problem.foods[1].max = Grams(100);
  problem.targets = {hard(target("CA", {.min = 200}, Unit::Milligram, Basis::Day))};
  const DietSolution answer = solve(problem);
  EXPECT_EQ(answer.status, DietStatus::Impossible);
  EXPECT_TRUE(answer.grams.empty());
}

TEST(Solve, SaysUnboundedWhenNothingLimitsTheObjective) {
  BalanceProblem problem = anyAmount();
  problem.objective = {Objective::Kind::Highest, nutrient("CA")};
  EXPECT_EQ(solve(problem).status, DietStatus::Unbounded);
}

TEST(Solve, GivesWholeStepsOfTheScaleAsCleanNumbers) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].scaleStep = Grams(0.1);
  problem.foods[1].scaleStep = Grams(0.1);
  problem.reference = grams({0.2, 0.1});
  problem.targets = {hard(target("CA", {.min = 0.6}, Unit::Milligram, Basis::Day)),
                     hard(target("P", {.max = 0.5}, Unit::Milligram, Basis::Day))};
  const DietSolution answer =
      solve(problem);  // 3 steps of greens: 0.6 mg Ca; 0.1 g insects too bring 0.45 mg P
  ASSERT_EQ(answer.status, DietStatus::Balanced) << answer.reason;
  EXPECT_EQ(answer.grams, grams({0.3, 0.1}));
}

TEST(Solve, TurnsAWholeEggIntoAStepOfItsOwnMass) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[1].scaleStep = Grams(55);
  problem.targets = {hard(target("P", {.min = 250}, Unit::Milligram, Basis::Day))};
  problem.foods[0].max = Grams(200);  // 100 mg P at most: one egg brings 165
  const DietSolution answer = solve(problem);
  ASSERT_EQ(answer.status, DietStatus::Balanced) << answer.reason;
  EXPECT_EQ(answer.grams[1], Grams(55));
}

TEST(Solve, OffersMoreWherePartIsLeft) {
  BalanceProblem problem = greensAndInsects();
  problem.foods.pop_back();
  problem.reference = grams({50});
  problem.foods[0].eatenFraction = 0.5;
  problem.targets = {hard(target("CA", {.min = 200}, Unit::Milligram, Basis::Day))};
  EXPECT_EQ(solve(problem).grams, grams({200}));  // half of 200 g is eaten, 2 mg per gram
}

TEST(Solve, KeepsAMarginWhereAChanceIsAsked) {
  BalanceProblem problem = anyAmount();
  problem.foods = {makeFood("greens", "leafy vegetable", {{"WATER", 90}, {"CA", 200, 40}})};
  problem.reference = grams({50});
  problem.confidence = 0.95;
  problem.targets = {hard(target("CA", {.min = 200}, Unit::Milligram, Basis::Day))};
  const DietSolution answer = solve(problem);
  ASSERT_EQ(answer.status, DietStatus::Balanced) << answer.reason;
  // x (2 - 1.644853627 · 0.4) = 200
  EXPECT_NEAR(answer.grams[0].value(), 200 / (2 - 1.644853627 * 0.4), 1e-5);
  ASSERT_TRUE(answer.balance.targets[0].chance);
  EXPECT_NEAR(*answer.balance.targets[0].chance, 0.95, 1e-6);
}

TEST(Solve, UsesAsManyFoodsOfAGroupAsTheChoiceAsks) {
  BalanceProblem problem = greensAndInsects();
  problem.foods = {makeFood("carrot", "root", {{"WATER", 88}, {"CA", 30}}),
                   makeFood("beet", "root", {{"WATER", 88}, {"CA", 20}}),
                   makeFood("turnip", "root", {{"WATER", 88}, {"CA", 25}})};
  problem.reference = grams({20, 2, 1});
  problem.choices = {{.group = "root", .atLeast = 2, .atMost = 2, .minEach = Grams(5)}};
  const DietSolution answer = solve(problem);
  ASSERT_EQ(answer.status, DietStatus::Balanced) << answer.reason;
  // Of 23 g, 5 % is 1.15 g: d is 20, 2 and 1.15. Beet up from 2 to 5 costs (3/2)², turnip left out (1/1.15)²;
  // the other way round turnip costs (4/1.15)² and beet 1.
  EXPECT_EQ(answer.grams, grams({20, 5, 0}));
  EXPECT_NEAR(answer.objective, 2.25 + 1 / (1.15 * 1.15), 1e-9);
}

TEST(Solve, PricesTheBoundsThatPush) {
  BalanceProblem problem = anyAmount();
  problem.objective.kind = Objective::Kind::LowestCost;
  problem.foods[0].costPerKg = 4;
  problem.targets = {hard(target("CA", {.min = 200}, Unit::Milligram, Basis::Day)),
                     hard(target("CA", {.max = 900}, Unit::Milligram, Basis::Day))};
  problem.foods.pop_back();
  problem.reference = grams({100});
  const DietSolution answer = solve(problem);  // 100 g cost 0.4; twice the bound costs twice as much
  ASSERT_EQ(answer.multipliers.size(), 2U);
  EXPECT_NEAR(answer.multipliers[0], 0.4, 1e-9);
  EXPECT_NEAR(answer.multipliers[1], 0.0, 1e-12);
}

TEST(Solve, PricesALimitOfWhatIsSoughtAndABoundOnDryMatter) {
  BalanceProblem problem = anyAmount();
  problem.objective = {Objective::Kind::Highest, nutrient("CA")};
  problem.targets = {hard(target("ENERC", {.max = 80}, Unit::Kilocalorie, Basis::Day))};
  DietSolution answer = solve(problem);  // 200 g greens, 400 mg Ca: twice the energy would allow 800
  ASSERT_EQ(answer.multipliers.size(), 1U) << answer.reason;
  EXPECT_NEAR(answer.multipliers[0], 400, 1e-6);

  // The most P in 80 kcal when Ca must be 10 g per kg dry matter. A kcal is 2.5 g greens (0.25 g dry matter,
  // 5 mg Ca, 1.25 mg P) or 0.5 g insects (0.2 g, 0.2 mg, 1.5 mg). With a share u from greens, 5 u + 0.2 (1 -
  // u) = m (0.25 u + 0.2 (1 - u)): u = 0.2 (m - 1) / (4.8 - 0.05 m), at m = 10: u = 18/43 and du/dm = 0.2
  // / 4.3 + 0.05 u / 4.3. P = 80 (1.5 - 0.25 u).
  problem.objective = {Objective::Kind::Highest, nutrient("P")};
  problem.targets.push_back(hard(target("CA", {.min = 10}, Unit::Gram, Basis::DryMatter)));
  answer = solve(problem);
  ASSERT_EQ(answer.multipliers.size(), 2U) << answer.reason;
  const double u = 18.0 / 43;
  EXPECT_NEAR(answer.objective, 80 * (1.5 - 0.25 * u), 1e-6);
  EXPECT_NEAR(answer.multipliers[1], -80 * 0.25 * 10 * (0.2 + 0.05 * u) / 4.3, 1e-6);
}

// Greens have 4 mg Ca for 1 of P and insects 0.13: 200 mg Ca need at least 50 mg P.
TEST(SolveConflict, NamesTheFewestRulesThatCannotHoldTogether) {
  BalanceProblem problem = anyAmount();
  problem.targets = {target("ENERC", {.min = 10}, Unit::Kilocalorie, Basis::Day),  // innocent
                     target("CA", {.min = 200, .max = 900}, Unit::Milligram, Basis::Day),
                     target("P", {.max = 40}, Unit::Milligram, Basis::Day)};
  DietSolution answer = solve(problem);
  EXPECT_EQ(answer.status, DietStatus::Compromise);
  EXPECT_THAT(answer.conflict, ::testing::ElementsAre("CA", "P"));
  for (animal::Target& rule : problem.targets) rule.hard = true;
  answer = solve(problem);
  EXPECT_EQ(answer.status, DietStatus::Impossible);
  EXPECT_THAT(answer.conflict, ::testing::ElementsAre("CA", "P"));
}

TEST(SolveConflict, HoldsWhatKeepsTheBowlFromBeingEmpty) {
  BalanceProblem problem = anyAmount();
  problem.targets = {
      target("CA", {.min = 30}, Unit::Gram, Basis::DryMatter),  // greens have 20 g per kg, insects 1
      target("ENERC", {.min = 80}, Unit::Kilocalorie, Basis::Day)};
  EXPECT_THAT(solve(problem).conflict, ::testing::ElementsAre("CA", "ENERC"));
}

TEST(SolveConflict, NamesAChoiceByItsGroup) {
  BalanceProblem problem = greensAndInsects();
  problem.targets = {hard(target("P", {.max = 100}, Unit::Milligram, Basis::Day))};
  problem.choices = {{.group = "insect", .atLeast = 1, .atMost = {}, .minEach = Grams(50)}};  // 150 mg P
  const DietSolution answer = solve(problem);
  EXPECT_EQ(answer.status, DietStatus::Impossible);
  EXPECT_THAT(answer.conflict, ::testing::ElementsAre("P", "choice:insect"));
}

TEST(SolveConflict, IsEmptyWhereTheDietBalances) {
  BalanceProblem problem = greensAndInsects();
  problem.targets = {target("CA", {.min = 300}, Unit::Milligram, Basis::Day)};
  EXPECT_THAT(solve(problem).conflict, ::testing::IsEmpty());
}

TEST(Solve, RefusesWithAReasonWhatCannotBeSolved) {
  BalanceProblem problem = greensAndInsects();
  problem.targets = {target("CA", {.min = 1}, Unit::Gram, Basis::BodyMass)};
  DietSolution answer = solve(problem);
  EXPECT_EQ(answer.status, DietStatus::Failed);
  EXPECT_EQ(answer.reason, "no-body-mass: CA");
  problem = greensAndInsects();
  problem.reference = grams({1});
  EXPECT_EQ(solve(problem).reason, "reference-size");
  problem = greensAndInsects();
  problem.objective.kind = Objective::Kind::Highest;
  EXPECT_EQ(solve(problem).reason, "objective-without-nutrient");
  problem = greensAndInsects();
  problem.foods[1].max = Grams(std::nan(""));
  EXPECT_EQ(solve(problem).reason, "not-a-number: insects");
  EXPECT_EQ(solve(BalanceProblem{}).reason, "no-foods");
  for (const double chance : {-0.1, 0.0, 0.3, 0.5, 1.0, 95.0}) {
    problem = greensAndInsects();
    problem.confidence = chance;
    EXPECT_EQ(solve(problem).reason, "confidence") << chance;
  }
}

TEST(ScaleStep, GivesTheDecimalNumberThatAPersonWouldWrite) {
  EXPECT_EQ(nearestOnScale(Grams(0.30000000000000004), Grams(0.1)), Grams(0.3));
  EXPECT_EQ(nearestOnScale(Grams(0.69), Grams(0.1)), Grams(0.7));
  EXPECT_EQ(nearestOnScale(Grams(12.4), Grams(1)), Grams(12));
  EXPECT_EQ(nearestOnScale(Grams(100), Grams(55)), Grams(110));
  EXPECT_EQ(nearestOnScale(Grams(1.0), Grams(1.0 / 3)), Grams(1.0));
  EXPECT_EQ(nearestOnScale(Grams(0.123), Grams(0)), Grams(0.123));
}

TEST(Objective, CountsInTheTradesTerms) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].costPerKg = 3;
  problem.foods[0].eatenFraction = 0.5;
  const Diet reference = grams({200, 0});
  const Diet diet = grams({100, 5});
  EXPECT_NEAR(objectiveOf(problem, reference, diet), 0.25 + 0.25, 1e-12);  // (100/200)² + (5/10)²
  problem.objective.kind = Objective::Kind::LowestCost;
  EXPECT_NEAR(objectiveOf(problem, reference, diet), 0.3, 1e-12);  // offered, not eaten
  problem.objective = {Objective::Kind::Highest, nutrient("CA")};
  EXPECT_NEAR(objectiveOf(problem, reference, diet), 100 + 2, 1e-12);  // 50 g greens eaten
}

TEST(StatusWords, AreThoseOfTheResultFile) {
  EXPECT_EQ(symbolOf(DietStatus::Balanced), "balanced");
  EXPECT_EQ(symbolOf(DietStatus::Compromise), "compromise");
  EXPECT_EQ(symbolOf(DietStatus::Impossible), "impossible");
}

// Unknown is not free of charge; the price of what is given anyway decides nothing.
TEST(Solve, SeeksNoLowestCostAmongFoodsWithoutAPrice) {
  BalanceProblem problem = greensAndInsects();
  problem.objective.kind = Objective::Kind::LowestCost;
  problem.foods[0].costPerKg = 1.0;
  EXPECT_EQ(solve(problem).status, DietStatus::Failed);
  EXPECT_EQ(solve(problem).reason, "no-price: insects");
  problem.foods[1].min = problem.foods[1].max.emplace(20.0);
  EXPECT_EQ(solve(problem).status, DietStatus::Balanced);
}

}  // namespace
}  // namespace tarebowl::diet
