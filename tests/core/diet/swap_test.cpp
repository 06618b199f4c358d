// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/swap.h"

#include "core/diet/swap_effect.h"
#include "core/diet/swap_frame.h"
#include "tests/core/diet/bowls.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <stdexcept>

namespace tarebowl::diet {
namespace {

using namespace testing;  // the bowls
using quantity::Basis;
using quantity::Grams;
using quantity::Unit;
using Why = SwapRefusal::Why;

/// 100 g greens and 50 g insects; the greens did not arrive.
SwapRequest greensMissing(std::vector<DietFood> candidates) {
  SwapRequest request;
  request.problem = greensAndInsects();
  request.problem.targets = {target("CA", {.min = 200}, Unit::Milligram, Basis::Day)};
  request.approved = usualBowl();
  request.missing = {0};
  request.candidates = std::move(candidates);
  return request;
}

/// Twice as rich in everything as the greens.
DietFood richGreens() {
  return makeFood("rich greens", "leafy vegetable", {{"WATER", 80}, {"CA", 400}, {"P", 100}, {"ENERC", 80}});
}

const SwapRefusal* refusalOf(const SwapRanking& ranking, std::size_t candidate) {
  const auto found = std::ranges::find(ranking.refused, candidate, &SwapRefusal::candidate);
  return found == ranking.refused.end() ? nullptr : &*found;
}

TEST(Swap, OfAFoodForItselfIsTheIdentity) {
  const SwapRequest request = greensMissing({greensAndInsects().foods[0]});
  const SwapRanking ranking = rankSwaps(request);
  ASSERT_EQ(ranking.singles.size(), 1U);
  EXPECT_EQ(ranking.singles[0].parts[0].grams, Grams(100));
  EXPECT_EQ(ranking.singles[0].shortfall, 0.0);
  EXPECT_NEAR(ranking.singles[0].difference, 0.0, 1e-15);
  const SwapEffect effect = effectOf(request, ranking.singles[0]);
  EXPECT_EQ(effect.grams, request.approved);
  EXPECT_TRUE(effect.approval.keeperMay());
}

TEST(Swap, OfAFoodForItselfKeepsGramsThatLieBesideTheScale) {
  SwapRequest request = greensMissing({greensAndInsects().foods[0]});
  request.approved[0] = Grams(33.3);
  const SwapRanking ranking = rankSwaps(request);
  ASSERT_EQ(ranking.singles.size(), 1U);
  EXPECT_DOUBLE_EQ(ranking.singles[0].parts[0].grams.value(), 33.3);
}

TEST(Swap, TakesHalfAsMuchOfAFoodThatIsTwiceAsRich) {
  const SwapRanking ranking = rankSwaps(greensMissing({richGreens()}));
  ASSERT_EQ(ranking.singles.size(), 1U);
  EXPECT_EQ(ranking.singles[0].parts[0].grams, Grams(50));
  EXPECT_NEAR(ranking.singles[0].difference, 0.0, 1e-15);
}

TEST(Swap, PutsFirstWhatMakesNothingWorse) {
  // The bowl held 220 mg calcium, 200 of them from the greens; 200 are asked for. Kale brings them in 100 g
  // (a little more energy), cucumber of 20 mg per 100 g never does within its 200 g.
  DietFood cucumber =
      makeFood("cucumber", "leafy vegetable", {{"WATER", 95}, {"CA", 20}, {"P", 50}, {"ENERC", 10}});
  cucumber.max = Grams(200);
  const DietFood kale =
      makeFood("kale", "leafy vegetable", {{"WATER", 90}, {"CA", 200}, {"P", 50}, {"ENERC", 44}});
  const SwapRanking ranking = rankSwaps(greensMissing({cucumber, kale}));
  ASSERT_EQ(ranking.singles.size(), 2U);
  EXPECT_EQ(ranking.singles[0].parts[0].candidate, 1U);
  EXPECT_EQ(ranking.singles[0].shortfall, 0.0);
  // 40 mg from 200 g cucumber and 20 from the insects: 140 of 200 mg are lacking. 20 and 100 kcal are 13 less
  // than 95 % of the 140 that were approved.
  EXPECT_NEAR(ranking.singles[1].shortfall, 0.7 + 13.0 / 133.0, 1e-12);
}

TEST(Swap, DoesNotHoldAgainstAFoodWhatTheApprovedBowlMissed) {
  SwapRequest request = greensMissing({richGreens()});
  request.problem.targets[0].min = 440;  // the bowl held 220 mg
  EXPECT_EQ(rankSwaps(request).singles.at(0).shortfall, 0.0);
}

TEST(Swap, CountsEachNutrientAgainstWhatTheBowlHeldOrWhatIsAskedFor) {
  const SwapRequest request = greensMissing({richGreens()});
  const SwapFrame frame(request);
  // Energy: 140 kcal were in it. Calcium: 220 mg were, which is more than the 200 asked for.
  ASSERT_EQ(frame.kept().size(), 2U);
  for (const KeptNutrient& kept : frame.kept())
    EXPECT_NEAR(kept.unit, kept.nutrient == food::nutrients::energy() ? 140.0 : 220.0, 1e-12);
  SwapRequest more = greensMissing({richGreens()});
  more.problem.targets[0].min = 300;
  const SwapFrame asksMore(more);
  for (const KeptNutrient& kept : asksMore.kept())
    EXPECT_NEAR(kept.unit, kept.nutrient == food::nutrients::energy() ? 140.0 : 300.0, 1e-12);
}

TEST(Swap, DifferenceIsTheMeanOfWhatEachNutrientIsOff) {
  // 100 g of a green with half the calcium and the same energy: calcium 120 instead of 220 mg, energy as
  // before: (100/220 + 0) / 2.
  DietFood pale = makeFood("pale greens", "leafy vegetable", {{"WATER", 90}, {"CA", 100}, {"ENERC", 40}});
  pale.min = Grams(100);
  pale.max = Grams(100);
  const SwapRanking ranking = rankSwaps(greensMissing({pale}));
  ASSERT_EQ(ranking.singles.size(), 1U);
  EXPECT_NEAR(ranking.singles[0].difference, (100.0 / 220.0) / 2.0, 1e-12);
}

TEST(Swap, DoesNotBuyATargetPerEnergyWithASmallerBowl) {
  // 2 g calcium per 1000 kcal: the approved bowl held 1.57. Where only fat is to be had, every gram of it
  // lowers the calcium per energy further, yet the bowl keeps its energy to 5 %: 33 kcal are 4.1 g fat.
  const DietFood fat = makeFood("fat", "fat", {{"WATER", 0}, {"CA", 0}, {"P", 0}, {"ENERC", 800}});
  SwapRequest request = greensMissing({fat});
  request.problem.targets = {target("CA", {.min = 2}, Unit::Gram, Basis::Energy)};
  request.problem.targets[0].weight = 0.1;
  const Swap swap = rankSwaps(request, {.pairs = SwapOptions::Pairs::Never}).singles.at(0);
  EXPECT_EQ(swap.parts[0].grams, Grams(5));  // 40 kcal, as many as the greens
}

TEST(Swap, NeverGivesWhatTheHouseExcludes) {
  SwapRequest request = greensMissing({richGreens(), makeFood("pear", "fruit", {{"WATER", 84}})});
  request.problem.exclusions = {{.id = "no-fruit", .group = "fruit", .reason = "no cultivated fruit"}};
  const SwapRanking ranking = rankSwaps(request);
  ASSERT_NE(refusalOf(ranking, 1), nullptr);
  EXPECT_EQ(*refusalOf(ranking, 1), (SwapRefusal{1, Why::Banned, "no-fruit", "no cultivated fruit"}));
  EXPECT_EQ(ranking.singles.size(), 1U);
}

TEST(Swap, NeverGivesWhatTheSpeciesMustNotHave) {
  DietFood onion = makeFood("onion-raw", "vegetable", {{"WATER", 89}, {"CA", 23}, {"P", 29}, {"ENERC", 40}});
  onion.name = "Onion";
  SwapRequest request = greensMissing({onion});
  request.problem.eater.taxa = {"fox"};
  const SwapRanking ranking = rankSwaps(request);
  EXPECT_THAT(ranking.singles, ::testing::IsEmpty());
  ASSERT_NE(refusalOf(ranking, 0), nullptr);
  EXPECT_EQ(refusalOf(ranking, 0)->why, Why::Banned);
  EXPECT_FALSE(refusalOf(ranking, 0)->reason.empty());
}

TEST(Swap, TakesACookedVegetableForACookedVegetable) {
  SwapRequest request;
  request.problem.energyMethod = food::EnergyMethod::Given;
  const auto cooked = [](const char* id) {
    return makeFood(id, "cooked vegetable", {{"WATER", 90}, {"ENERC", 30}});
  };
  request.problem.foods = {cooked("carrot"), cooked("squash"),
                           makeFood("kale", "leafy vegetable", {{"WATER", 90}, {"ENERC", 30}})};
  request.problem.choices = {{.group = "cooked vegetable", .atLeast = 2, .atMost = 2, .minEach = Grams(8)}};
  request.approved = grams({10, 10, 20});
  request.missing = {0};
  request.candidates = {makeFood("endive", "leafy vegetable", {{"WATER", 94}, {"ENERC", 15}}), cooked("beet"),
                        cooked("squash"),
                        makeFood("rich beet", "cooked vegetable", {{"WATER", 50}, {"ENERC", 150}})};
  const SwapRanking ranking = rankSwaps(request, {.pairs = SwapOptions::Pairs::Never});
  ASSERT_NE(refusalOf(ranking, 0), nullptr);  // one cooked vegetable would be left
  EXPECT_EQ(refusalOf(ranking, 0)->why, Why::Structure);
  EXPECT_EQ(refusalOf(ranking, 0)->rule, "cooked vegetable");
  ASSERT_NE(refusalOf(ranking, 2), nullptr);  // more of the squash leaves one as well
  EXPECT_EQ(refusalOf(ranking, 2)->why, Why::Structure);
  ASSERT_EQ(ranking.singles.size(), 2U);
  EXPECT_EQ(ranking.singles[0].parts[0], (SwapPart{1, Grams(10)}));
  EXPECT_EQ(ranking.singles[1].parts[0], (SwapPart{3, Grams(8)}));  // 2 g would do, but 8 g are the least
}

TEST(Swap, NeverTradesAHardRule) {
  // Iron: the bowl held none, at most 1 mg may be in it. The 140 kcal that are asked for would take 20 g
  // liver beside the insects' 100; 5 g hold 1 mg iron.
  SwapRequest request = greensMissing(
      {makeFood("liver", "meat", {{"WATER", 70}, {"FE", 20}, {"CA", 0}, {"P", 0}, {"ENERC", 200}}),
       makeFood("blood meal", "meat", {{"WATER", 10}, {"FE", 200}, {"ENERC", 300}})});
  for (DietFood& food : request.problem.foods)
    food.composition.set(nutrient("FE"), {.amount = quantity::AsFedContent(0.0)});
  animal::Target iron = target("FE", {.max = 1}, Unit::Milligram, Basis::Day);
  iron.hard = true;
  request.problem.targets = {iron, target("ENERC", {.min = 140}, Unit::Kilocalorie, Basis::Day)};
  const SwapRanking ranking = rankSwaps(request, {.pairs = SwapOptions::Pairs::Never});
  ASSERT_EQ(ranking.singles.size(), 1U);
  EXPECT_EQ(ranking.singles[0].parts[0], (SwapPart{0, Grams(5)}));
  ASSERT_NE(refusalOf(ranking, 1), nullptr);  // one gram holds 2 mg
  EXPECT_EQ(refusalOf(ranking, 1)->why, Why::HardRule);
  EXPECT_EQ(refusalOf(ranking, 1)->rule, "FE");
}

TEST(Swap, LeavesOutAFoodOfUnknownWater) {
  const SwapRanking ranking = rankSwaps(greensMissing({makeFood("mystery", "vegetable", {{"CA", 100}})}));
  ASSERT_NE(refusalOf(ranking, 0), nullptr);
  EXPECT_EQ(refusalOf(ranking, 0)->why, Why::NoWater);
}

TEST(Swap, GivesMoreOfAFoodThatTheBowlHasAndNoMoreThanItsLimit) {
  SwapRequest request = greensMissing({greensAndInsects().foods[1]});
  request.problem.foods[1].max = Grams(60);
  const SwapRanking ranking = rankSwaps(request);
  ASSERT_EQ(ranking.singles.size(), 1U);
  EXPECT_EQ(ranking.singles[0].parts[0].grams, Grams(10));  // beside 50 g; every gram brings calcium
  EXPECT_EQ(effectOf(request, ranking.singles[0]).grams, grams({0, 60}));
  request.problem.foods[1].max = Grams(50);
  const SwapRanking full = rankSwaps(request);
  ASSERT_NE(refusalOf(full, 0), nullptr);
  EXPECT_EQ(refusalOf(full, 0)->why, Why::NoAmount);
}

TEST(Swap, StandsInForSeveralMissingFoodsAtOnce) {
  SwapRequest request = greensMissing({makeFood("mix", "mix", {{"WATER", 80}, {"CA", 110}, {"ENERC", 70}})});
  request.missing = {0, 1};  // 220 mg calcium, 140 kcal
  const SwapRanking ranking = rankSwaps(request);
  ASSERT_EQ(ranking.singles.size(), 1U);
  EXPECT_EQ(ranking.singles[0].parts[0].grams, Grams(200));
  EXPECT_NEAR(ranking.singles[0].difference, 0.0, 1e-15);
}

TEST(Swap, TellsWhatIsNoRequest) {
  SwapRequest request = greensMissing({richGreens()});
  request.missing.clear();
  EXPECT_THROW((void)rankSwaps(request), std::invalid_argument);
  request.missing = {7};
  EXPECT_THROW((void)rankSwaps(request), std::invalid_argument);
  request.missing = {0};
  request.move = 1.5;
  EXPECT_THROW((void)rankSwaps(request), std::invalid_argument);
  request.move = 0.0;
  request.approved.pop_back();
  EXPECT_THROW((void)rankSwaps(request), std::invalid_argument);
}

TEST(Swap, TellsTheFirstRowsOfTheFoodsOwnGroupAndCanBeCancelled) {
  SwapRequest request = greensMissing({});
  for (int i = 0; i < 1000; ++i) {
    const bool isLeaf = i >= 900;
    request.candidates.push_back(makeFood("food " + std::to_string(i), isLeaf ? "leafy vegetable" : "root",
                                          {{"WATER", 90}, {"CA", 100.0 + i}, {"ENERC", 40}}));
  }
  std::stop_source stop;
  SwapOptions options{.stop = stop.get_token()};
  std::size_t leaves = 0;
  options.soFar = [&](const SwapRanking& ranking) {
    EXPECT_FALSE(ranking.isComplete);
    leaves = static_cast<std::size_t>(std::ranges::count_if(
        ranking.singles, [](const Swap& swap) { return swap.parts[0].candidate >= 900; }));
    stop.request_stop();
  };
  const SwapRanking ranking = rankSwaps(request, options);
  EXPECT_EQ(leaves, 100U);
  EXPECT_FALSE(ranking.isComplete);
  EXPECT_LT(ranking.singles.size(), 1000U);
}

TEST(Swap, TwoFoodsDoWhereOneWillNot) {
  // Calcium 200 to 240 mg and energy 133 to 147 kcal a day, both met by the bowl. Chalk brings calcium alone,
  // fat brings energy alone: 200 mg are 5 g chalk, 40 kcal are 5 g fat.
  const DietFood chalk = makeFood("chalk", "supplement", {{"WATER", 0}, {"CA", 4000}, {"ENERC", 0}});
  const DietFood fat = makeFood("fat", "fat", {{"WATER", 0}, {"CA", 0}, {"ENERC", 800}});
  SwapRequest request = greensMissing({chalk, fat});
  request.problem.targets = {target("CA", {.min = 200, .max = 240}, Unit::Milligram, Basis::Day),
                             target("ENERC", {.min = 133, .max = 147}, Unit::Kilocalorie, Basis::Day)};
  const SwapRanking ranking = rankSwaps(request);
  EXPECT_FALSE(oneWillDo(ranking));
  ASSERT_EQ(ranking.pairs.size(), 1U);
  EXPECT_EQ(ranking.pairs[0].shortfall, 0.0);
  EXPECT_TRUE(ranking.pairs[0].isProven);
  for (const SwapPart& part : ranking.pairs[0].parts) EXPECT_EQ(part.grams, Grams(5));
  EXPECT_NEAR(ranking.pairs[0].difference, 0.0, 1e-12);
}

TEST(Swap, LooksForPairsOnlyWhereOneWillNotDoUnlessAsked) {
  SwapRequest request = greensMissing({richGreens(), greensAndInsects().foods[0]});
  EXPECT_THAT(rankSwaps(request).pairs, ::testing::IsEmpty());
  EXPECT_THAT(rankSwaps(request, {.pairs = SwapOptions::Pairs::Always}).pairs, ::testing::SizeIs(1));
}

TEST(Swap, APairKeepsAStructureRuleThatNeitherKeepsAlone) {
  SwapRequest request;
  request.problem.energyMethod = food::EnergyMethod::Given;
  const auto root = [](const char* id) { return makeFood(id, "root", {{"WATER", 90}, {"ENERC", 30}}); };
  request.problem.foods = {root("carrot"), root("beet")};
  request.problem.choices = {{.group = "root", .atLeast = 2, .atMost = 2, .minEach = Grams(5)}};
  request.approved = grams({10, 10});
  request.missing = {0, 1};
  request.candidates = {root("parsnip"), root("swede")};
  const SwapRanking ranking = rankSwaps(request);
  EXPECT_THAT(ranking.singles, ::testing::IsEmpty());
  ASSERT_EQ(ranking.pairs.size(), 1U);
  const auto& parts = ranking.pairs[0].parts;
  EXPECT_EQ(parts[0].grams + parts[1].grams, Grams(20));
  EXPECT_GE(std::min(parts[0].grams, parts[1].grams), Grams(5));
}

TEST(Swap, MovesOtherLinesByAtMostTheShareThatIsAllowed) {
  // Pale greens bring 100 mg calcium per 100 g, up to 100 g of them: 120 mg with the insects, of which there
  // may be 4 % more or less than 50 g.
  DietFood pale =
      makeFood("pale greens", "leafy vegetable", {{"WATER", 90}, {"CA", 100}, {"P", 50}, {"ENERC", 40}});
  pale.max = Grams(100);
  SwapRequest request = greensMissing({pale});
  const Swap held = rankSwaps(request, {.pairs = SwapOptions::Pairs::Never}).singles.at(0);
  EXPECT_NEAR(held.shortfall, 80.0 / 200.0, 1e-12);
  request.move = 0.04;
  const Swap moved = rankSwaps(request, {.pairs = SwapOptions::Pairs::Never}).singles.at(0);
  ASSERT_EQ(moved.moved.size(), 1U);
  EXPECT_EQ(moved.moved[0], (MovedLine{1, Grams(52)}));  // 2 g hold 0.8 mg calcium
  EXPECT_NEAR(moved.shortfall, 79.2 / 200.0, 1e-12);
  EXPECT_TRUE(moved.isProven);
}

TEST(Swap, LeavesALineThatMustNotMove) {
  DietFood pale = makeFood("pale greens", "leafy vegetable", {{"WATER", 90}, {"CA", 100}, {"ENERC", 40}});
  pale.max = Grams(100);
  SwapRequest request = greensMissing({pale});
  request.move = 0.1;
  request.problem.foods[1].min = Grams(50);
  request.problem.foods[1].max = Grams(50);
  EXPECT_THAT(rankSwaps(request).singles.at(0).moved, ::testing::IsEmpty());
}

}  // namespace
}  // namespace tarebowl::diet
