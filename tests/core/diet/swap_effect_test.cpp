// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/swap_effect.h"

#include "tests/core/diet/bowls.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using namespace testing;  // the bowls
using quantity::Basis;
using quantity::Grams;
using quantity::Unit;

/// 100 g greens and 50 g insects: 220 mg Ca, 200 mg P, 140 kcal, 30 g dry matter. The greens did not arrive.
SwapRequest greensMissing(std::vector<DietFood> candidates) {
  SwapRequest request;
  request.problem = greensAndInsects();
  request.problem.targets = {target("CA", {.min = 200, .max = 300}, Unit::Milligram, Basis::Day)};
  request.problem.ratios = {ratio("CA", "P", {.min = 1.0, .max = 2.0})};
  request.approved = usualBowl();
  request.missing = {0};
  request.candidates = std::move(candidates);
  return request;
}

/// 10 g water, 300 kcal per 100 g.
DietFood pellet() {
  return makeFood("pellet", "pellet", {{"WATER", 10}, {"CA", 1000}, {"P", 500}, {"ENERC", 300}});
}

Swap of(double grams) {
  Swap swap;
  swap.parts = {{0, Grams(grams)}};
  return swap;
}

TEST(EqualAmounts, AreAsMuchDryMatterOrAsMuchEnergyAsWhatIsMissing) {
  // 100 g greens hold 10 g dry matter and 40 kcal. Of the pellet, 90 % dry matter and 3 kcal/g, that is
  // 10 / 0.9 = 11.1 g and 40 / 3 = 13.3 g.
  const EqualAmounts equal = equalAmounts(greensMissing({pellet()}), 0);
  EXPECT_EQ(equal.dryMatter, Grams(11));
  EXPECT_EQ(equal.energy, Grams(13));
}

TEST(EqualAmounts, AreInStepsOfTheScaleAndOfAllThatIsMissing) {
  DietFood fine = pellet();
  fine.scaleStep = Grams(0.1);
  SwapRequest request = greensMissing({fine});
  request.missing = {0, 1};  // 30 g dry matter, 140 kcal: 33.33 g and 46.67 g
  const EqualAmounts equal = equalAmounts(request, 0);
  EXPECT_EQ(equal.dryMatter, Grams(33.3));
  EXPECT_EQ(equal.energy, Grams(46.7));
}

TEST(EqualAmounts, AreNotSaidWhereNobodyKnows) {
  EXPECT_FALSE(equalAmounts(greensMissing({makeFood("mystery", "x", {{"WATER", 50}})}), 0).energy);
  EXPECT_FALSE(equalAmounts(greensMissing({makeFood("mystery", "x", {{"ENERC", 50}})}), 0).dryMatter);
}

TEST(SwapEffect, TellsEnergyDryMatterAndCalciumToPhosphorusBeforeAndAfter) {
  // 20 g pellets and 50 g insects: 200 + 20 mg Ca, 100 + 150 mg P, 60 + 100 kcal, 18 + 20 g dry matter.
  const SwapEffect effect = effectOf(greensMissing({pellet()}), of(20));
  EXPECT_NEAR(effect.energy.before, 140, 1e-12);
  EXPECT_NEAR(effect.energy.after, 160, 1e-12);
  EXPECT_NEAR(effect.dryMatter.before, 30, 1e-12);
  EXPECT_NEAR(effect.dryMatter.after, 38, 1e-12);
  EXPECT_NEAR(effect.calciumToPhosphorus.before.value(), 220.0 / 200.0, 1e-12);
  EXPECT_NEAR(effect.calciumToPhosphorus.after.value(), 220.0 / 250.0, 1e-12);
  EXPECT_EQ(effect.calciumToPhosphorus.rung, 1U);
}

TEST(SwapEffect, TellsWhichRungsChangeTheirState) {
  const SwapEffect effect = effectOf(greensMissing({pellet()}), of(20));
  ASSERT_EQ(effect.rungs.size(), 2U);
  EXPECT_FALSE(effect.rungs[0].changesState());  // 220 mg calcium as before
  EXPECT_TRUE(effect.rungs[1].changesState());   // Ca:P falls to 0.88
  EXPECT_EQ(effect.rungs[1].after.state, TargetState::Short);
}

TEST(SwapApproval, IsTheKeepersWithinTheGroupWhileWhatWasMetStaysMet) {
  const DietFood kale =
      makeFood("kale", "leafy vegetable", {{"WATER", 90}, {"CA", 200}, {"P", 40}, {"ENERC", 40}});
  const SwapEffect effect = effectOf(greensMissing({kale}), of(100));
  EXPECT_TRUE(effect.approval.keeperMay());
}

TEST(SwapApproval, IsTheNutritionistsAcrossGroups) {
  const SwapEffect effect = effectOf(greensMissing({pellet()}), of(21));
  EXPECT_FALSE(effect.approval.isSameGroup);
  EXPECT_FALSE(effect.approval.keeperMay());
}

TEST(SwapApproval, IsTheNutritionistsWhereATargetIsLost) {
  const DietFood pale =
      makeFood("pale", "leafy vegetable", {{"WATER", 90}, {"CA", 100}, {"P", 0}, {"ENERC", 40}});
  const SwapEffect effect = effectOf(greensMissing({pale}), of(100));  // 120 mg calcium, 150 mg P
  EXPECT_THAT(effect.approval.lost, ::testing::ElementsAre(0U, 1U));
  EXPECT_FALSE(effect.approval.keeperMay());
}

TEST(SwapApproval, IsTheNutritionistsWhereAnUnknownCouldPassAMaximum) {
  const DietFood unmeasured = makeFood("unmeasured", "leafy vegetable", {{"WATER", 90}, {"CA", 200}});
  SwapRequest request = greensMissing({unmeasured});
  request.problem.ratios.clear();
  request.problem.targets.push_back(target("P", {.max = 400}, Unit::Milligram, Basis::Day));
  const SwapEffect effect = effectOf(request, of(100));
  EXPECT_THAT(effect.approval.lost, ::testing::IsEmpty());
  EXPECT_THAT(effect.approval.doubtful, ::testing::ElementsAre(1U));
  EXPECT_THAT(effect.unknown, ::testing::ElementsAre(food::nutrients::phosphorus()));
  EXPECT_FALSE(effect.approval.keeperMay());
}

TEST(SwapApproval, StaysTheKeepersWhereAnUnknownCouldOnlyAddToAMinimum) {
  const DietFood unmeasured = makeFood("unmeasured", "leafy vegetable", {{"WATER", 90}, {"CA", 200}});
  SwapRequest request = greensMissing({unmeasured});
  request.problem.ratios.clear();
  request.problem.targets.push_back(target("P", {.min = 100}, Unit::Milligram, Basis::Day));
  EXPECT_TRUE(effectOf(request, of(100)).approval.keeperMay());
}

TEST(SwapApproval, IsTheNutritionistsWhereAFoodNeedsThought) {
  DietFood spinach =
      makeFood("greens two", "leafy vegetable", {{"WATER", 90}, {"CA", 200}, {"P", 40}, {"ENERC", 40}});
  SwapRequest request = greensMissing({spinach});
  request.problem.cautions = {{.id = "little",
                               .words = {"greens two"},
                               .severity = animal::CautionSeverity::Limit,
                               .reason = "invented",
                               .advice = "a little"}};
  const SwapEffect effect = effectOf(request, of(100));
  ASSERT_EQ(effect.cautions.size(), 1U);
  EXPECT_TRUE(effect.approval.isCautioned);
  EXPECT_FALSE(effect.approval.keeperMay());
}

TEST(SwapEffect, TellsHowWellTheGroupAteItAndLeavesUnknownUnknown) {
  SwapRequest request = greensMissing({pellet()});
  EXPECT_EQ(effectOf(request, of(20)).eatenBefore.at(0), std::nullopt);
  request.eatenBefore["pellet"] = {.fraction = 0.9, .bowls = 12};
  EXPECT_EQ(effectOf(request, of(20)).eatenBefore.at(0), (EatenBefore{0.9, 12}));
}

TEST(SwapOfChosenGrams, IsJudgedLikeOneThatIsRanked) {
  const SwapRequest request = greensMissing({pellet()});
  const Swap best = rankSwaps(request, {.pairs = SwapOptions::Pairs::Never}).singles.at(0);
  const auto same = swapOf(request, 0, best.parts[0].grams);
  ASSERT_TRUE(same);
  EXPECT_DOUBLE_EQ(same->shortfall, best.shortfall);
  EXPECT_DOUBLE_EQ(same->difference, best.difference);
  EXPECT_FALSE(swapOf(request, 0, Grams(0)));
}

TEST(SwapOfChosenGrams, IsRefusedWhereAHardRuleWouldBreak) {
  SwapRequest request = greensMissing({pellet()});
  request.problem.targets[0].hard = true;  // at most 300 mg calcium: 28 g pellets hold 280
  EXPECT_TRUE(swapOf(request, 0, Grams(28)));
  EXPECT_FALSE(swapOf(request, 0, Grams(29)));
}

}  // namespace
}  // namespace tarebowl::diet
