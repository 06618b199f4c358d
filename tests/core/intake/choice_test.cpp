// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/choice.h"

#include "tests/core/intake/feeding.h"
#include "tests/core/intake/simulated_feeding.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace tarebowl::intake {
namespace {

using namespace testing;

const FoodChoice& of(const Choice& choice, const std::string& food) {
  return *std::ranges::find(choice.foods, food, &FoodChoice::food);
}

/// Offered 50, 30, 20 g; eaten 15, 15, 10 g.
FedBowl workedBowl(quantity::Date on = day("2026-09-01")) {
  return bowlOf({fed("a", 50, weighed(35)), fed("b", 30, weighed(15)), fed("c", 20, weighed(10))}, on);
}

TEST(Choice, ManlysAlphaWithDepletionIsThatOfTheWorkedExample) {
  const Choice choice = choiceIn(std::vector{eatenAsSeen(workedBowl())});
  EXPECT_NEAR(of(choice, "a").alpha.value(), 0.204636, 5e-7);
  EXPECT_NEAR(of(choice, "b").alpha.value(), 0.397682, 5e-7);
  EXPECT_NEAR(of(choice, "c").alpha.value(), 0.397682, 5e-7);
  EXPECT_NEAR(choice.neutral, 1.0 / 3.0, 1e-15);
  EXPECT_EQ(choice.bowls, 1U);
  EXPECT_FALSE(of(choice, "a").interval);  // one bowl says nothing of how bowls scatter
  // E: a is 0.5 of what is offered and 15 / 40 of what was eaten, (0.375 - 0.5) / 0.875.
  EXPECT_NEAR(of(choice, "a").ivlev.value(), -0.142857, 5e-7);
}

TEST(Choice, AFoodThatIsEatenUpHasNoAlphaAndIsToldSo) {
  const FedBowl bowl =
      bowlOf({fed("a", 50, AllEaten{}), fed("b", 30, weighed(15)), fed("c", 20, weighed(10))});
  const Choice choice = choiceIn(std::vector{eatenAsSeen(bowl)});
  EXPECT_EQ(of(choice, "a").state, ChoiceState::AllEaten);
  EXPECT_FALSE(of(choice, "a").alpha);
  EXPECT_EQ(of(choice, "a").bowlsAllEaten, 1U);
  EXPECT_NEAR(of(choice, "b").alpha.value(), 0.5, 1e-12);  // the others are compared among themselves
  EXPECT_NEAR(choice.neutral, 0.5, 1e-15);
}

TEST(Choice, NothingEatenLeavesAllUndefined) {
  const FedBowl bowl = bowlOf({fed("a", 50, weighed(50)), fed("b", 30, weighed(30))});
  const Choice choice = choiceIn(std::vector{eatenAsSeen(bowl)});
  for (const FoodChoice& food : choice.foods) {
    EXPECT_EQ(food.state, ChoiceState::NothingEaten);
    EXPECT_FALSE(food.alpha);
    EXPECT_FALSE(food.ivlev);
  }
}

TEST(Choice, BowlsThatSayNothingAreCountedAndLeftOut) {
  const std::vector<EatenBowl> bowls = {
      eatenAsSeen(workedBowl(day("2026-09-01"))), eatenAsSeen(workedBowl(day("2026-09-02"))),
      eatenAsSeen(bowlOf({fed("a", 50, AllEaten{}), fed("b", 30, weighed(15)), fed("c", 20, weighed(10))})),
      eatenAsSeen(
          bowlOf({fed("a", 50, NotWeighed{}), fed("b", 30, weighed(15)), fed("c", 20, weighed(10))}))};
  const Choice choice = choiceIn(bowls);
  EXPECT_EQ(choice.bowls, 2U);
  EXPECT_EQ(choice.bowlsEmptied, 1U);
  EXPECT_EQ(choice.bowlsNotKnown, 1U);
  EXPECT_NEAR(of(choice, "a").alpha.value(), 0.204636, 5e-7);
}

TEST(Choice, ARareFoodAndOneLeftOutByHandAreNotCompared) {
  FedBowl withTreat = workedBowl();
  withTreat.items.push_back(fed("treat", 5, weighed(1)));
  const std::vector<EatenBowl> bowls = {eatenAsSeen(withTreat), eatenAsSeen(workedBowl()),
                                        eatenAsSeen(workedBowl())};
  const Choice choice = choiceIn(bowls, {.leaveOut = {"c"}});
  EXPECT_EQ(of(choice, "treat").state, ChoiceState::RarelyOffered);
  EXPECT_EQ(choice.foods.size(), 3U);  // a, b, treat
  EXPECT_NEAR(of(choice, "a").alpha.value() + of(choice, "b").alpha.value(), 1.0, 1e-12);
}

TEST(Choice, FoodsOfOneBowlDoNotVieWithThoseOfAnother) {
  std::vector<EatenBowl> bowls;
  for (int i = 0; i < 4; ++i) {
    FedBowl morning = workedBowl(dayAfter("2026-09-01", i));
    morning.label = "morning";
    FedBowl evening = bowlOf({fed("d", 50, weighed(20)), fed("e", 50, weighed(10))}, morning.day);
    evening.label = "evening";
    bowls.push_back(eatenAsSeen(morning));
    bowls.push_back(eatenAsSeen(evening));
  }
  const auto choices = choiceByLabel(bowls);
  ASSERT_EQ(choices.size(), 2U);
  EXPECT_EQ(choices[0].label, "morning");
  EXPECT_EQ(choices[0].choice.bowls, 4U);
  EXPECT_NEAR(of(choices[0].choice, "a").alpha.value(), 0.204636, 5e-7);
  EXPECT_NEAR(choices[1].choice.neutral, 0.5, 1e-15);
}

TEST(Choice, WhatIsDustedOnIsNotCompared) {
  FedBowl dusted = workedBowl();
  dusted.items.push_back(fed("limestone", 1, AllEaten{}, "supplement"));
  const Choice choice = choiceIn(std::vector{eatenAsSeen(dusted)}, {.leaveOutClasses = {"supplement"}});
  EXPECT_EQ(choice.foods.size(), 3U);
}

TEST(Choice, OverTimeEachStretchStandsOnItsOwnBowls) {
  std::vector<EatenBowl> bowls;
  for (int i = 0; i < 45; ++i)
    if (i < 28 || i >= 42) bowls.push_back(eatenAsSeen(workedBowl(dayAfter("2026-09-01", i))));
  const auto periods = choiceOverTime(bowls, 14);
  ASSERT_EQ(periods.size(), 3U);  // the third fortnight has no bowl
  EXPECT_EQ(periods[0].until, day("2026-09-14"));
  EXPECT_EQ(periods[2].from, day("2026-10-13"));
  EXPECT_EQ(periods[2].choice.bowls, 3U);
}

RC_GTEST_PROP(ChoiceProperty, AlphasSumToOneAndNeitherOrderNorSizeOfBowlMatters, ()) {
  const int foods = *rc::gen::inRange(2, 6);
  std::vector<FedItem> items;
  for (int i = 0; i < foods; ++i) {
    const double offered = *rc::gen::inRange(20, 200);
    const double left = *rc::gen::inRange(10, 99) / 100.0 * offered;
    items.push_back(fed("food " + std::to_string(i), offered, weighed(left)));
  }
  const Choice choice = choiceIn(std::vector{eatenAsSeen(bowlOf(items))});
  double sum = 0.0;
  for (const FoodChoice& food : choice.foods) sum += food.alpha.value();
  RC_ASSERT(std::abs(sum - 1.0) < 1e-9);

  std::ranges::reverse(items);
  for (FedItem& item : items) {
    item.offered.grams = item.offered.grams * 3.0;
    std::get<ScaleReading>(item.remains).grams = std::get<ScaleReading>(item.remains).grams * 3.0;
  }
  const Choice threefold = choiceIn(std::vector{eatenAsSeen(bowlOf(items))});
  for (const FoodChoice& food : choice.foods)
    RC_ASSERT(std::abs(of(threefold, food.food).alpha.value() - *food.alpha) < 1e-9);
}

/// Share of 95 % intervals that hold the true alpha of each food.
double coverage(int bowls, std::uint32_t seed) {
  std::mt19937 random(seed);
  const World world{
      .foods = {{"a", "greens", 100, 0.2}, {"b", "greens", 100, 0.5}, {"c", "greens", 100, 1.0}},
      .intensity = 0.9,
      .step = 0.1};
  int inside = 0;
  int all = 0;
  for (int trial = 0; trial < 600; ++trial) {
    const auto days = feed(world, bowls, random);
    const PanBook pans(pansOf(days));
    std::vector<EatenBowl> eaten;
    for (const SimulatedDay& one : days)
      eaten.push_back(eatenFrom(one.bowl, pans, static_cast<std::uint32_t>(eaten.size())));
    const Choice choice = choiceIn(eaten);
    for (const TrueFood& food : world.foods) {
      const Interval interval = of(choice, food.name).interval.value();
      const double truth = food.appetite / 1.7;
      inside += interval.low <= truth && truth <= interval.high ? 1 : 0;
      ++all;
    }
  }
  return static_cast<double>(inside) / all;
}

// 1800 intervals each, correlated in threes: their share scatters by about 0.008.
TEST(Choice, IntervalsHoldTheTruthAboutAsOftenAsTheyClaim) {
  EXPECT_NEAR(coverage(30, 1), 0.95, 0.025);
  EXPECT_NEAR(coverage(10, 2), 0.95, 0.035);
}

}  // namespace
}  // namespace tarebowl::intake
