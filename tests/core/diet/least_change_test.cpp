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

std::vector<LeastChange> leastChangesOf(const BalanceProblem& problem) {
  return explain(problem, solve(problem)).leastChanges;
}

TEST(LeastChange, OfAMinimumIsToWhatTheBestBowlHolds) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].max = Grams(200);  // 400 mg
  problem.foods[1].max = Grams(0);
  problem.targets = {target("CA", {.min = 500}, Unit::Milligram, Basis::Day)};
  const auto changes = leastChangesOf(problem);
  ASSERT_EQ(changes.size(), 1U);
  EXPECT_EQ(changes[0].id, "CA");
  EXPECT_EQ(changes[0].side, BoundSide::Min);
  EXPECT_EQ(changes[0].from, 500.0);
  EXPECT_NEAR(changes[0].to, 400.0, 1e-7);
  EXPECT_TRUE(changes[0].resolvesAll);
  EXPECT_TRUE(changes[0].onGrid);
}

TEST(LeastChange, IsInTheTargetsOwnUnitAndBasisThoughThatIsAFraction) {
  BalanceProblem problem = greensAndInsects();
  problem.wholeSteps = false;
  problem.targets = {
      target("CA", {.min = 30}, Unit::Gram, Basis::DryMatter),  // greens have 20 g per kg, insects 1
      target("ENERC", {.min = 80}, Unit::Kilocalorie, Basis::Day)};
  const auto changes = leastChangesOf(problem);
  ASSERT_EQ(changes.size(), 2U);
  EXPECT_NEAR(changes[0].to, 20.0, 1e-7);  // greens alone
  EXPECT_EQ(changes[1].id, "ENERC");
  EXPECT_NEAR(changes[1].to, 0.0, 1e-7);  // only the empty bowl keeps the other
}

TEST(LeastChange, OnTheScaleIsToTheNearestStep) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].scaleStep = Grams(50);  // 100 mg each
  problem.foods[1].max = Grams(0);
  problem.targets = {target("CA", {.min = 250, .max = 290}, Unit::Milligram, Basis::Day)};
  const DietSolution answer = solve(problem);
  EXPECT_TRUE(answer.conflictOnlyOnGrid);
  const auto changes = explain(problem, answer).leastChanges;
  ASSERT_EQ(changes.size(), 2U);
  EXPECT_NEAR(changes[0].to, 200.0, 1e-7);
  EXPECT_NEAR(changes[1].to, 300.0, 1e-7);
  EXPECT_EQ(changes[1].side, BoundSide::Max);
}

TEST(LeastChange, OfAChoiceIsInFoods) {
  BalanceProblem problem = greensAndInsects();
  animal::Target phosphorus = target("P", {.max = 100}, Unit::Milligram, Basis::Day);
  phosphorus.hard = true;
  problem.targets = {phosphorus};
  problem.choices = {{.group = "insect", .atLeast = 1, .atMost = {}, .minEach = Grams(50)}};  // 150 mg P
  const auto changes = leastChangesOf(problem);
  ASSERT_EQ(changes.size(), 2U);
  EXPECT_NEAR(changes[0].to, 150.0, 1e-7);
  EXPECT_EQ(changes[1].id, "choice:insect");
  EXPECT_EQ(changes[1].from, 1.0);
  EXPECT_EQ(changes[1].to, 0.0);
}

TEST(LeastChange, SaysWhereAnotherConflictRemains) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].max = Grams(200);
  problem.foods[1].max = Grams(0);
  problem.targets = {target("CA", {.min = 500}, Unit::Milligram, Basis::Day),  // 400 mg at most
                     target("P", {.min = 200}, Unit::Milligram, Basis::Day)};  // 100 mg at most
  const auto changes = leastChangesOf(problem);
  ASSERT_EQ(changes.size(), 1U);
  EXPECT_FALSE(changes[0].resolvesAll);
}

TEST(LeastChange, OfATargetWithAChanceCountsTheScatter) {
  BalanceProblem problem = greensAndInsects();
  problem.foods = {makeFood("greens", "leafy vegetable", {{"WATER", 90}, {"CA", 200, 20}})};
  problem.reference = grams({200});
  problem.foods[0].max = Grams(200);
  problem.wholeSteps = false;
  problem.confidence = 0.975;
  problem.targets = {target("CA", {.min = 500}, Unit::Milligram, Basis::Day)};
  const auto changes = leastChangesOf(problem);
  ASSERT_EQ(changes.size(), 1U);
  EXPECT_NEAR(changes[0].to, 400.0 - 1.959964 * 40.0, 1e-4);  // 400 mg with an sd of 40 mg
}

}  // namespace
}  // namespace tarebowl::diet
