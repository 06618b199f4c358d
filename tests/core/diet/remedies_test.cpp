// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/remedies.h"

#include "tests/core/diet/bowls.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using namespace testing;  // the bowls
using quantity::Basis;
using quantity::Grams;
using quantity::Unit;

/// At most 200 g greens hold 400 mg calcium; 1000 mg are wanted, and little phosphorus.
BalanceProblem tooLittleCalcium() {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].max = Grams(200);
  problem.targets = {target("CA", {.min = 1000}, Unit::Milligram, Basis::Day),
                     target("P", {.max = 150}, Unit::Milligram, Basis::Day)};
  return problem;
}

DietFood limestone() {
  DietFood food = makeFood("limestone", "supplement", {{"WATER", 0}, {"CA", 38000}, {"P", 0}, {"ENERC", 0}});
  food.scaleStep = Grams(0.1);
  return food;
}

std::vector<Remedy> remediesOf(const BalanceProblem& problem, const std::vector<DietFood>& larder) {
  return findRemedies(problem, solve(problem), larder);
}

TEST(Remedies, NameTheFoodThatClosesTheGapWithItsGrams) {
  const auto found = remediesOf(tooLittleCalcium(), {limestone()});
  ASSERT_FALSE(found.empty());
  EXPECT_EQ(found[0].kind, Remedy::Kind::Add);
  EXPECT_EQ(found[0].food, 0U);
  EXPECT_NEAR(found[0].grams.value(), 1.6, 1e-12);  // 600 mg more are 1.58 g, in steps of 0.1 g
  EXPECT_TRUE(found[0].closes());
}

TEST(Remedies, AreWhatSolvingTheChangedProblemGives) {
  const BalanceProblem problem = tooLittleCalcium();
  const std::vector<DietFood> larder{
      limestone(), makeFood("kale", "leafy vegetable", {{"WATER", 90}, {"CA", 400}, {"P", 60}})};
  const auto found = remediesOf(problem, larder);
  ASSERT_GE(found.size(), 3U);
  for (const Remedy& remedy : found) {
    BalanceProblem changed = problem;
    changed.reference = referenceDiet(problem);
    if (remedy.kind == Remedy::Kind::Raise) {
      changed.foods[remedy.food].max.reset();
    } else {
      changed.foods.push_back(larder[remedy.food]);
      changed.reference->emplace_back(0.0);
      if (remedy.kind == Remedy::Kind::Replace) changed.foods[remedy.inPlaceOf].max = Grams(0);
    }
    const DietSolution answer = solve(changed);
    EXPECT_NEAR(answer.shortfall, remedy.shortfall, 1e-9);
    const std::size_t column = remedy.kind == Remedy::Kind::Raise ? remedy.food : problem.foods.size();
    EXPECT_EQ(answer.grams[column], remedy.grams);
  }
}

TEST(Remedies, OfferAFoodInPlaceOfOneOfItsGroup) {
  const auto found = remediesOf(
      tooLittleCalcium(), {makeFood("kale", "leafy vegetable", {{"WATER", 90}, {"CA", 700}, {"P", 50}})});
  const auto swap = std::ranges::find(found, Remedy::Kind::Replace, &Remedy::kind);
  ASSERT_NE(swap, found.end());
  EXPECT_EQ(swap->inPlaceOf, 0U);
  EXPECT_TRUE(swap->closes());  // 143 g kale hold 1001 mg calcium and 72 mg phosphorus
}

TEST(Remedies, NameTheMaximumOfAFoodThatIsThere) {
  BalanceProblem problem = tooLittleCalcium();
  problem.targets[0].min = 600;  // 300 g greens, with 150 mg phosphorus
  const auto found = remediesOf(problem, {});
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].kind, Remedy::Kind::Raise);
  EXPECT_EQ(found[0].food, 0U);
  EXPECT_EQ(found[0].grams, Grams(300));
  EXPECT_TRUE(found[0].closes());
}

TEST(Remedies, PreferWhatIsKnownToWhatMayOnlyLookGood) {
  const DietFood mystery = makeFood("mystery", "supplement", {{"WATER", 0}, {"CA", 38000}});
  const auto found = remediesOf(tooLittleCalcium(), {mystery, limestone()});
  ASSERT_GE(found.size(), 2U);
  EXPECT_EQ(found[0].food, 1U);
  EXPECT_EQ(found[0].known, 1.0);
  const auto unknown =
      std::ranges::find_if(found, [](const Remedy& r) { return r.kind == Remedy::Kind::Add && r.food == 0; });
  ASSERT_NE(unknown, found.end());
  EXPECT_EQ(unknown->known, 0.5);  // nobody measured its phosphorus
}

TEST(Remedies, SayWhatRemainsWhereNothingClosesTheGap) {
  DietFood little = limestone();
  little.max = Grams(1);  // 380 of the 600 mg
  const auto found = remediesOf(tooLittleCalcium(), {little});
  const auto addition = std::ranges::find(found, Remedy::Kind::Add, &Remedy::kind);
  ASSERT_NE(addition, found.end());
  // With 200 g greens 780 mg; 33 g insects add 13.2 mg and 99 of the 50 mg phosphorus left: 16 g add 6.4 mg.
  EXPECT_NEAR(addition->shortfall, (1000.0 - 780.0 - 6.4) / 1000.0, 1e-9);
  EXPECT_FALSE(addition->closes());
}

TEST(Remedies, HelpWhereHardRulesContradictEachOther) {
  BalanceProblem problem = tooLittleCalcium();
  problem.targets[0].hard = problem.targets[1].hard = true;
  const auto found = remediesOf(problem, {limestone()});
  ASSERT_FALSE(found.empty());
  EXPECT_TRUE(found[0].possible);
  EXPECT_EQ(found[0].food, 0U);
}

TEST(Remedies, FindAnotherFoodOfAGroupOfWhichTwoAreWanted) {
  BalanceProblem problem = greensAndInsects();
  problem.choices = {{.group = "insect", .atLeast = 2, .atMost = {}, .minEach = Grams(5)}};
  const auto found =
      remediesOf(problem, {limestone(), makeFood("crickets", "insect", {{"WATER", 70}, {"CA", 40}})});
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].food, 1U);
  EXPECT_GE(found[0].grams, Grams(5));
}

TEST(Remedies, TakeNoFoodForFreeWhereTheCheapestIsSought) {
  BalanceProblem problem = tooLittleCalcium();
  problem.objective.kind = Objective::Kind::LowestCost;
  problem.foods[0].costPerKg = problem.foods[1].costPerKg = 1.0;
  DietFood priced = limestone();
  for (const Remedy& remedy : remediesOf(problem, {priced})) EXPECT_EQ(remedy.kind, Remedy::Kind::Raise);
  priced.costPerKg = 3.0;
  EXPECT_EQ(remediesOf(problem, {priced}).at(0).kind, Remedy::Kind::Add);
}

TEST(Remedies, AreNoneWhereTheDietBalances) {
  BalanceProblem problem = greensAndInsects();
  problem.targets = {target("CA", {.min = 300}, Unit::Milligram, Basis::Day)};
  EXPECT_THAT(remediesOf(problem, {limestone()}), ::testing::IsEmpty());
}

}  // namespace
}  // namespace tarebowl::diet
