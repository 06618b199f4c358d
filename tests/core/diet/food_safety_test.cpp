// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/food_safety.h"

#include "core/diet/remedies.h"
#include "core/diet/solve.h"
#include "tests/core/diet/bowls.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using namespace testing;  // the bowls
using animal::CautionSeverity;
using quantity::Basis;
using quantity::Grams;
using quantity::Unit;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::UnorderedElementsAre;

constexpr std::size_t kAvocado = 2;

DietFood avocado() {
  DietFood food = makeFood("avocado", "fruit", {{"WATER", 75}, {"CA", 1000}, {"P", 50}, {"ENERC", 160}});
  food.name = "Avocado, raw";
  return food;
}

/// 1000 mg calcium are wanted; 100 g of the avocado, rich in it as none is, would bring them.
BalanceProblem withAvocado() {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].max = Grams(200);
  problem.foods[1].max = Grams(50);
  problem.foods.push_back(avocado());
  problem.reference.reset();
  problem.targets = {target("CA", {.min = 1000}, Unit::Milligram, Basis::Day)};
  return problem;
}

BalanceProblem forAParrot() {
  BalanceProblem problem = withAvocado();
  problem.eater.taxa = {"bird", "parrot"};
  return problem;
}

TEST(FoodSafety, WhatTheAnimalMustNeverHaveIsNotGiven) {
  const DietSolution answer = solve(forAParrot());
  ASSERT_EQ(answer.status, DietStatus::Compromise) << answer.reason;
  EXPECT_EQ(answer.grams.at(kAvocado), Grams(0));
  EXPECT_THAT(answer.conflict, UnorderedElementsAre("CA", "persin"));
}

TEST(FoodSafety, AProblemThatDoesNotSayWhoEatsIsSolvedAsItStandsAndTold) {
  const BalanceProblem problem = withAvocado();
  const DietSolution answer = solve(problem);
  ASSERT_EQ(answer.status, DietStatus::Balanced) << answer.reason;
  EXPECT_GT(answer.grams.at(kAvocado), Grams(0));
  const auto findings = findingsOn(problem, answer.grams);
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].ban, "persin");
  EXPECT_FALSE(findings[0].inForce);
  EXPECT_FALSE(findings[0].forbids());
}

TEST(FoodSafety, AReasonLiftsABanAndIsKept) {
  BalanceProblem problem = forAParrot();
  problem.lifted = {
      {.ban = "persin", .reason = "named so, but a squash", .who = "Vet A", .on = "2026-11-25"}};
  const DietSolution answer = solve(problem);
  ASSERT_EQ(answer.status, DietStatus::Balanced) << answer.reason;
  EXPECT_GT(answer.grams.at(kAvocado), Grams(0));
  EXPECT_EQ(findingsOn(problem, answer.grams).at(0).lifted, "named so, but a squash");
}

TEST(FoodSafety, WithoutAReasonOrForAnotherFoodNothingIsLifted) {
  BalanceProblem problem = forAParrot();
  problem.lifted = {{.ban = "persin"}, {.ban = "persin", .food = "greens", .reason = "as above"}};
  EXPECT_EQ(solve(problem).grams.at(kAvocado), Grams(0));
}

TEST(FoodSafety, ALeastAmountDoesNotForceADangerousFoodIn) {
  BalanceProblem problem = forAParrot();
  problem.foods[kAvocado].min = Grams(20);
  const DietSolution answer = solve(problem);
  ASSERT_FALSE(answer.grams.empty());
  EXPECT_EQ(answer.grams.at(kAvocado), Grams(0));
  EXPECT_THAT(findingsOn(problem, answer.grams), Contains(::testing::Property(&FoodFinding::forbids, true)));
}

TEST(FoodSafety, AnExclusionHoldsForAGroupAndForOneFoodWhoeverEats) {
  for (const bool byGroup : {true, false}) {
    BalanceProblem problem = withAvocado();
    problem.exclusions = {{.id = "no-fruit",
                           .group = byGroup ? "fruit" : "",
                           .food = byGroup ? "" : "avocado",
                           .reason = "far sweeter than wild"}};
    const DietSolution answer = solve(problem);
    EXPECT_EQ(answer.grams.at(kAvocado), Grams(0));
    EXPECT_THAT(answer.conflict, UnorderedElementsAre("CA", "no-fruit"));
  }
}

TEST(FoodSafety, AConflictNamesOnlyTheBansItNeeds) {
  BalanceProblem problem = forAParrot();
  problem.foods[kAvocado].max = Grams(1);  // it would not have helped
  EXPECT_THAT(solve(problem).conflict, ElementsAre("CA"));
}

TEST(FoodSafety, AChoiceFromAnExcludedGroupIsImpossibleAndBothAreNamed) {
  BalanceProblem problem = withAvocado();
  problem.targets.clear();
  problem.choices = {{.group = "fruit", .atLeast = 1, .atMost = {}}};
  problem.exclusions = {{.id = "no-fruit", .group = "fruit", .food = {}, .reason = "none"}};
  const DietSolution answer = solve(problem);
  EXPECT_EQ(answer.status, DietStatus::Impossible);
  EXPECT_THAT(answer.conflict, UnorderedElementsAre("choice:fruit", "no-fruit"));
}

TEST(FoodSafety, TheRemediesNeverOfferWhatTheAnimalMayNotHave) {
  BalanceProblem problem = forAParrot();
  problem.foods.pop_back();
  DietFood more = avocado();
  more.id = "avocado-dried";
  const std::vector<DietFood> larder{avocado(), more};
  EXPECT_THAT(findRemedies(problem, solve(problem), larder),
              ::testing::Each(::testing::Field(&Remedy::kind, Remedy::Kind::Raise)));
  BalanceProblem unknown = problem;
  unknown.eater.taxa.clear();
  EXPECT_THAT(findRemedies(unknown, solve(unknown), larder),
              Contains(::testing::Field(&Remedy::kind, Remedy::Kind::Add)))
      << "the food would help";
}

TEST(FoodSafety, TheRemediesDoNotRaiseWhatIsForbidden) {
  BalanceProblem problem = forAParrot();
  problem.foods[0].max = Grams(2000);
  problem.foods[kAvocado].max = Grams(10);
  problem.foods[0].max = Grams(10);
  for (const Remedy& remedy : findRemedies(problem, solve(problem), {}))
    EXPECT_FALSE(remedy.kind == Remedy::Kind::Raise && remedy.food == kAvocado);
}

TEST(FoodSafety, TheHousesOwnCautionsForbidToo) {
  BalanceProblem problem = forAParrot();
  problem.foods[0].group = "seed mix";
  problem.cautions = {{.id = "seed-mix", .groups = {"seed mix"}, .severity = CautionSeverity::Never}};
  EXPECT_EQ(solve(problem).grams.at(0), Grams(0));
}

TEST(FoodSafety, WhatIsOnlyWorthAThoughtIsToldAndGiven) {
  BalanceProblem problem = forAParrot();
  problem.foods[0].name = "Spinach, raw";
  const DietSolution answer = solve(problem);
  EXPECT_GT(answer.grams.at(0), Grams(0));
  std::vector<std::string> told;
  for (const FoodFinding& finding : findingsOn(problem, answer.grams)) told.push_back(finding.ban);
  EXPECT_THAT(told, ElementsAre("oxalate", "persin"));
}

}  // namespace
}  // namespace tarebowl::diet
