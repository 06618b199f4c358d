// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/formulation.h"

#include "core/diet/solve.h"
#include "tests/core/diet/bowls.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using namespace testing;
using quantity::Basis;
using quantity::Unit;
using solver::kInfinity;

constexpr double kTiny = 1e-12;

Formulation formulated(const BalanceProblem& problem) {
  return formulate(problem, measuresOf(problem), referenceDiet(problem));
}

void expectRow(const solver::Program& program, Eigen::Index row, double greens, double insects) {
  EXPECT_NEAR(program.rows(row, 0), greens, kTiny);
  EXPECT_NEAR(program.rows(row, 1), insects, kTiny);
}

// Per gram: greens 2 mg Ca, 0.5 mg P, 0.1 g dry matter; insects 0.4 mg Ca, 3 mg P, 0.4 g dry matter.
// Reference 200 g greens: 0.02 kg dry matter, 100 mg P.
TEST(FormulationRows, OfADailyTargetAreShareOfTheBoundAgainstOne) {
  BalanceProblem problem = greensAndInsects();
  problem.targets = {target("CA", {.min = 200, .max = 400}, Unit::Milligram, Basis::Day)};
  const Formulation formulation = formulated(problem);
  const solver::Program& program = formulation.program;
  ASSERT_EQ(program.rowCount(), 2);
  expectRow(program, 0, 0.01, 0.002);
  EXPECT_NEAR(program.rowLower[0], 1.0, kTiny);
  EXPECT_EQ(program.rowUpper[0], kInfinity);
  expectRow(program, 1, 0.005, 0.001);
  EXPECT_EQ(program.rowLower[1], -kInfinity);
  EXPECT_NEAR(program.rowUpper[1], 1.0, kTiny);
  EXPECT_THAT(formulation.rows,
              ::testing::ElementsAre(RowOrigin{0, BoundSide::Min}, RowOrigin{0, BoundSide::Max}));
}

TEST(FormulationRows, OfATargetPerDryMatterAreWrittenAgainstZero) {
  BalanceProblem problem = greensAndInsects();
  problem.targets = {target("CA", {.min = 10}, Unit::Gram, Basis::DryMatter)};
  const solver::Program program = formulated(problem).program;
  // (0.002 - 10 · 0.0001) / (10 · 0.02) and (0.0004 - 10 · 0.0004) / 0.2
  expectRow(program, 0, 0.005, -0.018);
  EXPECT_EQ(program.rowLower[0], 0.0);
}

TEST(FormulationRows, OfARatioAndAShareFollowTheirOwnMeasure) {
  BalanceProblem problem = greensAndInsects();
  problem.ratios = {ratio("CA", "P", {.min = 2})};
  problem.shares = {share("insect", {.max = 0.5}, Basis::DryMatter)};
  const solver::Program program = formulated(problem).program;
  expectRow(program, 0, (2 - 2 * 0.5) / 200, (0.4 - 2 * 3) / 200);
  EXPECT_EQ(program.rowLower[0], 0.0);
  // (group - 0.5 · all) / 0.02 kg
  expectRow(program, 1, -0.5 * 0.0001 / 0.02, 0.5 * 0.0004 / 0.02);
  EXPECT_EQ(program.rowUpper[1], 0.0);
}

TEST(FormulationRows, OfABoundOfZeroAreInTheTargetsUnit) {
  BalanceProblem problem = greensAndInsects();
  problem.targets = {target("CA", {.max = 0}, Unit::Gram, Basis::DryMatter)};
  expectRow(formulated(problem).program, 0, 0.002 / 0.02, 0.0004 / 0.02);
}

TEST(FormulationRows, OfAFoodExactlyAtTheBoundAreZeroAndNotARoundingError) {
  BalanceProblem problem = greensAndInsects();
  problem.foods = {makeFood("leaf", "leaf", {{"WATER", 0}, {"CA", 21.3}, {"FE", 0.7}})};
  problem.foods[0].eatenFraction = 0.3;
  problem.reference.reset();
  problem.ratios = {ratio("CA", "FE", {.min = 21.3 / 0.7})};
  EXPECT_EQ(formulated(problem).program.rows(0, 0), 0.0);
}

TEST(FormulationRows, CountWhatIsEatenOfAGramOffered) {
  BalanceProblem problem = greensAndInsects();
  problem.targets = {target("CA", {.min = 200}, Unit::Milligram, Basis::Day)};
  problem.foods[0].eatenFraction = 0.25;
  expectRow(formulated(problem).program, 0, 0.0025, 0.002);
}

TEST(FormulationPrice, IsTheWeightAndInfiniteWhenHard) {
  BalanceProblem problem = greensAndInsects();
  const auto rule = target("CA", {.min = 200}, Unit::Milligram, Basis::Day);
  problem.targets = {rule, rule, rule};
  problem.targets[0].weight = 3;
  problem.targets[1].weight = 0;  // nobody minds: no row
  problem.targets[2].weight = 0;
  problem.targets[2].hard = true;
  const Formulation formulation = formulated(problem);
  ASSERT_EQ(formulation.program.rowCount(), 2);
  EXPECT_EQ(formulation.program.price[0], 3.0);
  EXPECT_EQ(formulation.program.price[1], kInfinity);
  EXPECT_EQ(formulation.rows[1].measure, 2U);
}

TEST(FormulationPrice, IsNotAskedForATargetThatCannotBeCounted) {
  BalanceProblem problem = greensAndInsects();
  problem.targets = {target("CA", {.min = 1}, Unit::Gram, Basis::BodyMass)};  // no body mass known
  EXPECT_EQ(formulated(problem).program.rowCount(), 0);
}

TEST(FormulationScatter, IsTheMarginThatTheConfidenceAsksOfTargetsOnly) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0] = makeFood("greens", "leafy vegetable", {{"WATER", 90}, {"CA", 200, 30}, {"P", 50}});
  problem.targets = {target("CA", {.min = 200}, Unit::Milligram, Basis::Day)};
  problem.ratios = {ratio("CA", "P", {.min = 2})};
  EXPECT_FALSE(formulated(problem).program.scatter.has_value());
  problem.confidence = 0.95;
  const solver::Program program = formulated(problem).program;
  ASSERT_TRUE(program.scatter.has_value());
  EXPECT_NEAR((*program.scatter)(0, 0), 1.644853627 * 0.3 / 200, 1e-11);
  EXPECT_EQ((*program.scatter)(0, 1), 0.0);
  EXPECT_EQ((*program.scatter)(1, 0), 0.0);
}

TEST(FormulationScatter, IsLeftOutWhereNoScatterIsStated) {
  BalanceProblem problem = greensAndInsects();
  problem.targets = {target("CA", {.min = 200}, Unit::Milligram, Basis::Day)};
  problem.confidence = 0.95;
  EXPECT_FALSE(formulated(problem).program.scatter.has_value());
}

TEST(FormulationLimits, HoldOnWhatIsOffered) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].min = quantity::Grams(5);
  problem.foods[0].max = quantity::Grams(60);
  problem.foods[0].eatenFraction = 0.5;
  problem.foods[1].scaleStep = quantity::Grams(0.1);
  const solver::Program program = formulated(problem).program;
  EXPECT_EQ(program.lower, Eigen::Vector2d(5, 0));
  EXPECT_EQ(program.upper, Eigen::Vector2d(60, kInfinity));
  EXPECT_EQ(program.step, Eigen::Vector2d(1, 0.1));
  problem.wholeSteps = false;
  EXPECT_EQ(formulated(problem).program.step, Eigen::Vector2d(0, 0));
}

TEST(FormulationChoices, NameTheFoodsOfTheGroup) {
  BalanceProblem problem = greensAndInsects();
  problem.choices = {{.group = "insect", .atLeast = 1, .atMost = 1, .minEach = quantity::Grams(5)},
                     {.group = "leafy vegetable", .atLeast = 1, .atMost = {}}};
  const Formulation formulation = formulated(problem);
  ASSERT_EQ(formulation.program.choices.size(), 2U);
  EXPECT_THAT(formulation.choices, ::testing::ElementsAre("insect", "leafy vegetable"));
  const solver::Choice& insects = formulation.program.choices[0];
  EXPECT_THAT(insects.members, ::testing::ElementsAre(1));
  EXPECT_EQ(insects.atLeast, 1);
  EXPECT_EQ(insects.atMost, 1);
  EXPECT_EQ(insects.threshold, 5.0);
  EXPECT_EQ(formulation.program.choices[1].threshold, 1.0);  // one step of the scale: 0 g is not "used"
}

TEST(FormulationObjective, ClosestMeasuresFromTheReferenceWithFivePercentOfTheBowlAtLeast) {
  BalanceProblem problem = greensAndInsects();
  problem.reference = grams({190, 10});  // 5 % of 200 g = 10 g
  const solver::Program program = formulated(problem).program;
  EXPECT_EQ(program.centre, Eigen::Vector2d(190, 10));
  EXPECT_NEAR(program.curvature[0], 1 / (190.0 * 190.0), kTiny);
  EXPECT_NEAR(program.curvature[1], 0.01, kTiny);
  EXPECT_EQ(distanceUnits(Eigen::Vector2d(200, 0)), Eigen::Vector2d(200, 10));
}

TEST(FormulationObjective, LowestCostPricesWhatIsOffered) {
  BalanceProblem problem = greensAndInsects();
  problem.objective.kind = Objective::Kind::LowestCost;
  problem.foods[0].costPerKg = 3.2;
  problem.foods[0].eatenFraction = 0.5;
  const solver::Program program = formulated(problem).program;
  EXPECT_NEAR(program.cost[0], 0.0032, kTiny);
  EXPECT_EQ(program.cost[1], 0.0);
  EXPECT_EQ(program.curvature, Eigen::Vector2d(0, 0));
}

TEST(FormulationObjective, LowestAndHighestCountTheNutrientAsEaten) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].eatenFraction = 0.5;
  problem.objective = {Objective::Kind::Lowest, nutrient("CA")};
  EXPECT_TRUE(formulated(problem).program.cost.isApprox(Eigen::Vector2d(1, 0.4)));
  problem.objective.kind = Objective::Kind::Highest;
  EXPECT_TRUE(formulated(problem).program.cost.isApprox(Eigen::Vector2d(-1, -0.4)));
}

}  // namespace
}  // namespace tarebowl::diet
