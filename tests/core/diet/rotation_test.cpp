// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation.h"

#include "core/diet/rotation_check.h"
#include "core/diet/rotation_purchase.h"
#include "tests/core/diet/bowls.h"
#include "tests/core/diet/small_weeks.h"

#include <gtest/gtest.h>

#include <random>

namespace tarebowl::diet {
namespace {

using quantity::Basis;
using quantity::Grams;
using quantity::Unit;
using testing::threeLeaves;

constexpr double kSame = 1e-9;

RotationPlan planOf(const RotationProblem& problem) {
  RotationOptions options;
  options.deadline = std::chrono::hours(1);
  return rotate(problem, options);
}

double sumOf(const RotationPlan& plan, std::size_t food) {
  double sum = 0.0;
  for (const Diet& day : plan.days) sum += day[food].value();
  return sum;
}
int daysWith(const RotationPlan& plan, std::size_t food) {
  int days = 0;
  for (const Diet& day : plan.days) days += day[food].value() > 0.0 ? 1 : 0;
  return days;
}

void expectAsGoodAs(const RotationPlan& plan, const testing::LiteralWeek& best) {
  EXPECT_NEAR(plan.period.value, best.period, kSame);
  EXPECT_NEAR(plan.daily.value, best.daily, kSame);
  EXPECT_NEAR(plan.wishes.value, best.wishes, kSame);
  EXPECT_NEAR(plan.objective.value, best.objective, kSame);
}

TEST(Rotation, TheCheapestLeafIsFedEveryDayWhereNothingElseIsAsked) {
  const RotationPlan plan = planOf(threeLeaves(3));
  EXPECT_EQ(plan.status, RotationStatus::Balanced);
  for (const Diet& day : plan.days) EXPECT_EQ(day, testing::grams({10, 0, 0, 0}));
  EXPECT_NEAR(plan.objective.value, 0.010 * 1.0, kSame);  // 10 g a day at 1 per kg
  EXPECT_EQ(plan.objective.gap(), 0.0);
}

TEST(Rotation, WhatADayLacksThePeriodMakesUp) {
  // 30 mg Ca on the mean day: 3 days of 10 g of a hold 30 mg in all; 60 mg more are one step of powder
  // (100 mg, 0.01) or leaves: 20 g of c every other day … The daily zone is so wide that any day will do.
  RotationProblem problem = threeLeaves(3);
  problem.base.targets = {testing::target("CA", {.min = 30.0}, Unit::Milligram, Basis::Day)};
  problem.rules.daily.widen = 1.0;
  const RotationPlan plan = planOf(problem);
  EXPECT_EQ(plan.status, RotationStatus::Balanced);
  // One gram of powder: 30 + 100 = 130 mg >= 90 mg, for 3 x 0.01 + 0.01 = 0.04 in three days.
  EXPECT_NEAR(plan.objective.value, 0.04 / 3, kSame);
  EXPECT_EQ(daysWith(plan, 3), 1);
}

TEST(Rotation, NoFoodIsFedMoreDaysRunningThanMay) {
  RotationProblem problem = threeLeaves(5);
  problem.rules.frequency.push_back(
      {.of = {.group = "leaf"}, .longestRun = 2, .leastDays = {}, .mostDays = {}});
  const RotationPlan plan = planOf(problem);
  // Of five days running at most four are a's: a a b a a. 4 x 0.01 + 0.02.
  EXPECT_NEAR(plan.objective.value, 0.06 / 5, kSame);
  EXPECT_EQ(daysWith(plan, 0), 4);
  EXPECT_EQ(plan.days[2][0].value(), 0.0);
}

TEST(Rotation, EachFoodComesAsOftenAsItMust) {
  RotationProblem problem = threeLeaves(4);
  problem.rules.frequency.push_back(
      {.of = {.foods = {"c"}}, .longestRun = {}, .leastDays = 2, .mostDays = {}});
  problem.rules.frequency.push_back(
      {.of = {.foods = {"a"}}, .longestRun = {}, .leastDays = {}, .mostDays = 1});
  const RotationPlan plan = planOf(problem);
  EXPECT_EQ(daysWith(plan, 0), 1);
  EXPECT_EQ(daysWith(plan, 1), 1);
  EXPECT_EQ(daysWith(plan, 2), 2);
}

TEST(Rotation, VarietyGoesBeforeCost) {
  RotationProblem problem = threeLeaves(4);
  problem.rules.variety.push_back({.of = {.group = "leaf"}, .wanted = 3});
  const RotationPlan plan = planOf(problem);
  EXPECT_EQ(plan.wishes.value, 0.0);
  EXPECT_NEAR(plan.objective.value, (0.01 + 0.01 + 0.02 + 0.04) / 4, kSame);
}

TEST(Rotation, VarietyThatCannotBeHadIsCountedAndProven) {
  RotationProblem problem = threeLeaves(2);
  problem.rules.variety.push_back({.of = {.group = "leaf"}, .wanted = 3});
  const RotationPlan plan = planOf(problem);  // two days, one leaf a day
  EXPECT_NEAR(plan.wishes.value, 1.0, kSame);
  EXPECT_NEAR(plan.wishes.bound, 1.0, 1e-6);
}

TEST(Rotation, ShortfallGoesBeforeVariety) {
  RotationProblem problem = threeLeaves(2);
  problem.base.foods.pop_back();
  // 60 mg Ca on the mean day is 20 g of c on both days: any other leaf falls short.
  problem.base.targets = {testing::target("CA", {.min = 60.0}, Unit::Milligram, Basis::Day)};
  problem.rules.daily.widen = 1.0;
  problem.rules.variety.push_back({.of = {.group = "leaf"}, .wanted = 2});
  const RotationPlan plan = planOf(problem);
  EXPECT_EQ(plan.period.value, 0.0);
  EXPECT_EQ(sumOf(plan, 2), 40.0);
  EXPECT_NEAR(plan.wishes.value, 1.0, kSame);
}

TEST(Rotation, AFastingDayIsMadeUpForByTheOthers) {
  RotationProblem problem = threeLeaves(4);
  problem.base.targets = {testing::target("CA", {.min = 30.0}, Unit::Milligram, Basis::Day)};
  problem.rules.daily.widen = 1.0;
  problem.rules.off.push_back({.of = {}, .days = {1}});
  const RotationPlan plan = planOf(problem);
  EXPECT_EQ(plan.status, RotationStatus::Balanced);
  EXPECT_EQ(plan.days[1], testing::grams({0, 0, 0, 0}));
  EXPECT_GE(plan.periodBalance.targets[0].value.value(), 30.0 - kSame);
}

TEST(Rotation, ALockedCellStaysAndTheRestGivesWay) {
  RotationProblem problem = threeLeaves(3);
  problem.rules.locked.push_back({.day = 1, .food = "c", .grams = Grams(15)});  // as it was weighed
  const RotationPlan plan = planOf(problem);
  EXPECT_EQ(plan.days[1], testing::grams({0, 0, 15, 0}));
  EXPECT_EQ(plan.days[0], testing::grams({10, 0, 0, 0}));
}

TEST(Rotation, StockIsUsedUpFirst) {
  RotationProblem problem = threeLeaves(4);
  problem.rules.stock.push_back({.food = "c", .most = {}, .useUp = Grams(40), .by = 1});
  const RotationPlan plan = planOf(problem);
  EXPECT_EQ(plan.wishes.value, 0.0);
  EXPECT_EQ(plan.days[0][2].value() + plan.days[1][2].value(), 40.0);
  EXPECT_EQ(plan.days[2][2].value(), 0.0);
}

TEST(Rotation, NoMoreIsFedThanThereIs) {
  RotationProblem problem = threeLeaves(4);
  problem.rules.stock.push_back({.food = "a", .most = Grams(20), .useUp = {}, .by = 0});
  const RotationPlan plan = planOf(problem);
  EXPECT_EQ(sumOf(plan, 0), 20.0);
  EXPECT_EQ(sumOf(plan, 1), 20.0);
}

TEST(Rotation, TheKitchenHandlesFewFoodsADay) {
  RotationProblem problem = threeLeaves(2);
  problem.base.targets = {testing::target("CA", {.min = 100.0}, Unit::Milligram, Basis::Day)};
  problem.rules.daily.widen = 1.0;
  problem.rules.kitchen.mostFoods = 1;  // a leaf and the powder are two
  const RotationPlan narrow = planOf(problem);
  EXPECT_EQ(narrow.status, RotationStatus::Compromise);
  EXPECT_EQ(sumOf(narrow, 3), 0.0);
  problem.rules.kitchen.atHand = {{0, {"powder"}}, {1, {"powder"}}};  // others eat of it on both days
  EXPECT_EQ(planOf(problem).status, RotationStatus::Balanced);
}

TEST(Rotation, WhatWasFedStaysAndTheRestRebalances) {
  RotationProblem problem = threeLeaves(3);
  problem.base.targets = {testing::target("CA", {.min = 30.0}, Unit::Milligram, Basis::Day)};
  problem.rules.daily.widen = 1.0;
  // 70 mg on the first day, 90 asked of three: 20 mg are left for two days, as two times 10 g of a hold.
  problem.rules.fed.push_back({.day = 0, .fed = testing::grams({0, 20, 10, 0}), .eaten = {}});
  const RotationPlan plan = planOf(problem);
  EXPECT_EQ(plan.days[0], testing::grams({0, 20, 10, 0}));
  EXPECT_EQ(plan.days[1], testing::grams({10, 0, 0, 0}));
  EXPECT_EQ(plan.days[2], testing::grams({10, 0, 0, 0}));
  // Had only 10 g of b been eaten: 20 mg, and 70 are left: the powder must make it up.
  problem.rules.fed.front().eaten = testing::grams({0, 10, 0, 0});
  const RotationPlan eaten = planOf(problem);
  EXPECT_EQ(eaten.days[0], testing::grams({0, 20, 10, 0}));
  EXPECT_EQ(sumOf(eaten, 3), 1.0);
  EXPECT_EQ(eaten.period.value, 0.0);
}

TEST(Rotation, AStructureThatADayCannotKeepIsNamed) {
  RotationProblem problem = threeLeaves(3);
  problem.rules.off.push_back({.of = {.group = "leaf"}, .days = {2}});
  const RotationPlan plan = planOf(problem);
  EXPECT_EQ(plan.status, RotationStatus::Impossible);
  EXPECT_EQ(plan.reason, "structure: leaf day 3: 0 of 1");
}

TEST(Rotation, HardRulesThatNoPlanKeepsAreImpossible) {
  RotationProblem problem = threeLeaves(3);
  problem.base.targets = {testing::target("CA", {.min = 500.0}, Unit::Milligram, Basis::Day)};
  problem.base.targets[0].hard = true;  // 20 g of c and 1 g of powder hold 160 mg
  EXPECT_EQ(planOf(problem).status, RotationStatus::Impossible);
}

TEST(Rotation, FoodsThatMayNotBeGivenAreNotFed) {
  RotationProblem problem = threeLeaves(3);
  problem.base.exclusions.push_back({.id = "no-a", .food = "a", .reason = "a house rule"});
  EXPECT_EQ(sumOf(planOf(problem), 0), 0.0);
}

TEST(Rotation, ALockDoesNotBringInWhatMayNotBeGiven) {
  RotationProblem problem = threeLeaves(3);
  problem.base.exclusions.push_back({.id = "no-a", .food = "a", .reason = "a house rule"});
  problem.rules.locked.push_back({.day = 1, .food = "a", .grams = Grams(10)});
  const RotationPlan plan = planOf(problem);
  EXPECT_EQ(plan.status, RotationStatus::Impossible);
  EXPECT_EQ(plan.reason, "locked: a day 2: may not be given");
}

/// Locks may not break what holds from day to day, even where the plan is otherwise free.
TEST(Rotation, LocksThatBreakARuleByThemselvesAreNamed) {
  const auto reasonOf = [](RotationProblem problem) {
    const RotationPlan plan = rotate(problem, {});
    EXPECT_EQ(plan.status, RotationStatus::Impossible);
    return plan.reason;
  };
  RotationProblem problem = threeLeaves(4);
  for (const int day : {1, 2}) problem.rules.locked.push_back({.day = day, .food = "a", .grams = Grams(10)});

  RotationProblem stocked = problem;
  stocked.rules.stock.push_back({.food = "a", .most = Grams(15), .useUp = Grams(15), .by = 1});
  EXPECT_EQ(reasonOf(stocked), "stock: a: 20 g locked");

  FoodFrequency ofA;
  ofA.of.foods = {"a"};
  RotationProblem rare = problem;
  rare.rules.frequency = {ofA};
  rare.rules.frequency.front().mostDays = 1;
  EXPECT_EQ(reasonOf(rare), "often: a: 2 days locked");
  RotationProblem varied = problem;
  varied.rules.frequency = {ofA};
  varied.rules.frequency.front().longestRun = 1;
  EXPECT_EQ(reasonOf(varied), "run: a day 3: locked");

  RotationProblem both = problem;  // one leaf a day
  both.rules.locked.push_back({.day = 2, .food = "b", .grams = Grams(10)});
  EXPECT_EQ(reasonOf(both), "structure: leaf day 3: 2 locked, at most 1");
}

TEST(Rotation, AFoodThatCannotComeAsOftenAsItMustIsNamed) {
  RotationProblem problem = threeLeaves(3);
  problem.rules.frequency.push_back(
      {.of = {.foods = {"b"}}, .longestRun = {}, .leastDays = 1, .mostDays = {}});
  problem.rules.off.push_back({.of = {}, .days = {0, 1, 2}});
  problem.rules.locked.push_back({.day = 2, .food = "a", .grams = Grams(10)});  // all that is decided
  const RotationPlan plan = planOf(problem);
  EXPECT_EQ(plan.status, RotationStatus::Impossible);
  EXPECT_EQ(plan.reason, "often: b: 0 days at most, at least 1");
}

TEST(Rotation, WhatLacksIsNotMadeUpForByMoreThanThereIs) {
  RotationProblem problem = threeLeaves(14);
  problem.base.targets = {testing::target("CA", {.min = 150.0}, Unit::Milligram, Basis::Day)};
  problem.rules.daily.widen = 0.2;
  problem.rules.stock.push_back({.food = "powder", .most = Grams(2), .useUp = {}, .by = 0});
  // 20 g of c bring 60 mg a day: every day falls short of 120 mg, and two grams of powder make up for 200 mg.
  const RotationPlan plan = planOf(problem);
  EXPECT_EQ(plan.status, RotationStatus::Compromise) << plan.reason;
  EXPECT_EQ(sumOf(plan, 3), 2.0);
}

TEST(Rotation, FourWeeksOfDaysThatAllDifferAreBoundedAllTheSame) {
  RotationProblem problem = threeLeaves(28);
  problem.base.targets = {testing::target("CA", {.min = 30.0}, Unit::Milligram, Basis::Day)};
  problem.rules.daily.widen = 1.0;
  for (int day = 0; day < 28; ++day)  // every day another weight of b is there already
    if (day % 2 == 0) problem.rules.locked.push_back({.day = day, .food = "b", .grams = Grams(10.0 + day)});
  const RotationPlan plan = planOf(problem);
  EXPECT_EQ(plan.status, RotationStatus::Balanced);
  for (int day = 0; day < 28; day += 2) EXPECT_EQ(plan.days[std::size_t(day)][1].value(), 10.0 + day);
  EXPECT_LE(plan.objective.bound, plan.objective.value);
  EXPECT_GT(plan.objective.bound, 0.0);
}

TEST(Rotation, ASearchThatIsStoppedAtOnceSaysSo) {
  std::stop_source source;
  source.request_stop();
  RotationOptions options;
  options.stop = source.get_token();
  const RotationPlan plan = rotate(threeLeaves(7), options);
  EXPECT_EQ(plan.status, RotationStatus::Stopped);
}

TEST(Rotation, SmallOnesAreAsGoodAsTheBestOfAllPlans) {
  std::mt19937_64 random(20260101);
  int impossible = 0;
  int compromises = 0;
  for (int draw = 0; draw < 60; ++draw) {
    SCOPED_TRACE(draw);
    const RotationProblem problem = testing::drawnWeek(random);
    const testing::BestWeek best = testing::bestOfAll(problem);
    const RotationPlan plan = planOf(problem);
    if (!best.exists) {
      ++impossible;
      EXPECT_EQ(plan.status, RotationStatus::Impossible) << plan.reason;
      continue;
    }
    ASSERT_FALSE(plan.days.empty()) << symbolOf(plan.status) << ' ' << plan.reason;
    expectAsGoodAs(plan, best.value);
    const testing::LiteralWeek literal = testing::readLiterally(problem, plan.days);
    expectAsGoodAs(plan, literal);
    for (const Reached& reached : {plan.period, plan.daily, plan.wishes, plan.objective})
      EXPECT_LE(reached.bound, reached.value + 1e-7);
    compromises += plan.status == RotationStatus::Compromise ? 1 : 0;
  }
  EXPECT_GT(compromises, 5);
  EXPECT_LT(impossible, 30);
}

/// Too many cells to be decided by branch and bound alone: two threads try beside each other.
TEST(Rotation, TheSameSeedGivesTheSamePlanWhicheverThreadIsFaster) {
  RotationProblem problem = threeLeaves(14);
  problem.base.targets = {testing::target("CA", {.min = 55.0, .max = 60.0}, Unit::Milligram, Basis::Day)};
  problem.rules.frequency.push_back(
      {.of = {.group = "leaf"}, .longestRun = 2, .leastDays = {}, .mostDays = {}});
  const RotationPlan first = planOf(problem);
  const RotationPlan second = planOf(problem);
  ASSERT_FALSE(first.days.empty());
  EXPECT_EQ(first.days, second.days);
  EXPECT_EQ(first.objective.bound, second.objective.bound);
  EXPECT_EQ(first.nodes, second.nodes);
}

TEST(RotationPurchase, AWeekNeedsWhatIsOfferedAndWhatIsLost) {
  RotationProblem problem = threeLeaves(8);
  problem.base.eater.count = 5;
  problem.rules.purchase.push_back({.of = {.foods = {"a"}}, .edible = 0.8, .waste = 0.5});
  const std::vector<Diet> days(8, testing::grams({10, 0, 0, 1}));
  const std::vector<PurchaseLine> lines = purchaseList(problem, days);
  ASSERT_EQ(lines.size(), 4U);  // two foods, two weeks
  EXPECT_EQ(lines[0].food, 0U);
  EXPECT_NEAR(lines[0].offered.value(), 7 * 5 * 0.010, 1e-12);
  EXPECT_NEAR(lines[0].bought.value(), 7 * 5 * 0.010 / (0.8 * 0.5), 1e-12);
  EXPECT_FALSE(lines[1].lossIsKnown);
  EXPECT_EQ(lines[2].week, 1);
  EXPECT_NEAR(lines[2].offered.value(), 5 * 0.010, 1e-12);
}

}  // namespace
}  // namespace tarebowl::diet
