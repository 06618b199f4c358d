// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A hand has put one food elsewhere: the plan that was there adapts, instead of another one taking its place.
#include "core/diet/rotation.h"
#include "tests/core/diet/bowls.h"
#include "tests/core/diet/small_weeks.h"

#include <gtest/gtest.h>

#include <random>
#include <stdexcept>

namespace tarebowl::diet {
namespace {

using quantity::Basis;
using quantity::Grams;
using quantity::Unit;
using testing::grams;
using testing::threeLeaves;

constexpr double kSame = 1e-9;

RotationPlan planFrom(const RotationProblem& problem, const std::vector<Diet>& before) {
  RotationOptions options;
  options.deadline = std::chrono::hours(1);
  options.start = before;
  return rotate(problem, options);
}
RotationPlan planOf(const RotationProblem& problem) {
  return planFrom(problem, {});
}

std::vector<int> daysThatDiffer(const std::vector<Diet>& one, const std::vector<Diet>& other) {
  std::vector<int> days;
  for (std::size_t d = 0; d < one.size(); ++d)
    if (one[d] != other[d]) days.push_back(static_cast<int>(d));
  return days;
}

TEST(AdaptedRotation, NothingChangesWhereNothingWasAsked) {
  RotationProblem problem = threeLeaves(7);
  problem.base.targets = {testing::target("CA", {.min = 30.0}, Unit::Milligram, Basis::Day)};
  problem.rules.daily.widen = 1.0;
  // 10 g of c bring 30 mg on each day: every zone holds, though a and powder would be cheaper.
  const std::vector<Diet> before(7, grams({0, 0, 10, 0}));
  const RotationPlan plan = planFrom(problem, before);
  EXPECT_EQ(plan.days, before);
  EXPECT_EQ(plan.status, RotationStatus::Balanced);
}

TEST(AdaptedRotation, AFoodThatIsLockedOnOneDayLeavesTheOthersAsTheyWere) {
  RotationProblem problem = threeLeaves(7);
  problem.base.targets = {testing::target("CA", {.min = 30.0}, Unit::Milligram, Basis::Day)};
  problem.rules.daily.widen = 1.0;
  const RotationPlan before = planOf(problem);
  problem.rules.locked.push_back({.day = 3, .food = "c", .grams = Grams(20)});  // more calcium: nothing lacks
  const RotationPlan plan = planFrom(problem, before.days);
  EXPECT_EQ(plan.days[3][2], Grams(20));
  EXPECT_EQ(daysThatDiffer(plan.days, before.days), std::vector<int>{3});
}

TEST(AdaptedRotation, WhatAMovedFoodLeavesShortIsMadeUpByAsFewDaysAsItTakes) {
  RotationProblem problem = threeLeaves(4);
  problem.base.targets = {testing::target("CA", {.min = 45.0}, Unit::Milligram, Basis::Day)};
  problem.rules.daily.widen = 1.0;
  // 4 x 45 = 180 mg: 60 + 60 + 60 + 10 = 190 hold.
  const std::vector<Diet> before{grams({0, 0, 20, 0}), grams({0, 0, 20, 0}), grams({0, 0, 20, 0}),
                                 grams({10, 0, 0, 0})};
  problem.rules.locked.push_back({.day = 0, .food = "c", .grams = Grams(0)});
  // Without c day 0 brings at most 20 g of b, 40 mg, or a gram of powder, 100 mg: it makes up for itself.
  const RotationPlan plan = planFrom(problem, before);
  EXPECT_EQ(plan.period.value, 0.0);
  EXPECT_EQ(daysThatDiffer(plan.days, before), std::vector<int>{0});
}

TEST(AdaptedRotation, ARunThatALockMakesTooLongIsBrokenOnAsFewDaysAsItTakes) {
  RotationProblem problem = threeLeaves(5);
  problem.rules.frequency.push_back(
      {.of = {.group = "leaf"}, .longestRun = 2, .leastDays = {}, .mostDays = {}});
  const std::vector<Diet> before{grams({10, 0, 0, 0}), grams({10, 0, 0, 0}), grams({0, 10, 0, 0}),
                                 grams({10, 0, 0, 0}), grams({10, 0, 0, 0})};
  problem.rules.locked.push_back({.day = 2, .food = "a", .grams = Grams(10)});
  const RotationPlan plan = planFrom(problem, before);
  // Five days running: two of the others must give way beside the day of the lock, a b a b a or the like.
  EXPECT_EQ(plan.status, RotationStatus::Balanced);
  EXPECT_EQ(daysThatDiffer(plan.days, before).size(), 3U);
}

std::vector<Grams> gramsByDay(const std::vector<Diet>& days, std::size_t food) {
  std::vector<Grams> grams;
  for (const Diet& day : days) grams.push_back(day[food]);
  return grams;
}

TEST(AdaptedRotation, LeavesThatTakeTurnsTurnRoundTogetherAndNothingElseChanges) {
  RotationProblem problem = threeLeaves(6);
  problem.rules.structure[0].atLeast = 2;
  problem.rules.structure[0].atMost = 2;
  problem.rules.frequency.push_back(
      {.of = {.group = "leaf"}, .longestRun = 2, .leastDays = {}, .mostDays = {}});
  // Two of three a day, none on three days running: each is left out on every third day, b on 0, a on 1, c
  // on 2.
  const std::vector<Diet> before{grams({10, 0, 10, 0}), grams({0, 10, 10, 1}), grams({10, 10, 0, 0}),
                                 grams({10, 0, 10, 0}), grams({0, 10, 10, 1}), grams({10, 10, 0, 0})};
  // A hand brings a from day 2 to day 1: a is left out on 2 and 5 then, b or c on 0 and 3.
  problem.rules.locked.push_back({.day = 2, .food = "a", .grams = Grams(0)});
  problem.rules.locked.push_back({.day = 1, .food = "a", .grams = Grams(10)});
  const RotationPlan plan = planFrom(problem, before);
  EXPECT_EQ(plan.status, RotationStatus::Balanced);
  EXPECT_EQ(gramsByDay(plan.days, 0),
            (std::vector<Grams>{Grams(10), Grams(10), Grams(0), Grams(10), Grams(10), Grams(0)}));
  // b stays where it is left out, c takes the days of a: no third leaf turns.
  EXPECT_EQ(gramsByDay(plan.days, 1), gramsByDay(before, 1));
  EXPECT_EQ(gramsByDay(plan.days, 3), gramsByDay(before, 3));
}

TEST(AdaptedRotation, AHandThatTakesMoreThanThereIsLeavesLessForTheOtherDays) {
  RotationProblem problem = threeLeaves(3);
  problem.rules.stock.push_back({.food = "a", .most = Grams(30), .useUp = {}, .by = 0});
  const std::vector<Diet> before(3, grams({10, 0, 0, 0}));
  problem.rules.locked.push_back({.day = 0, .food = "a", .grams = Grams(20)});
  const RotationPlan plan = planFrom(problem, before);
  EXPECT_EQ(plan.status, RotationStatus::Balanced) << plan.reason;
  // 20 g + 10 g are all there is: on one of the other days another leaf comes.
  EXPECT_EQ(daysThatDiffer(plan.days, before).size(), 2U);
}

TEST(AdaptedRotation, WhatIsShortIsNeverMoreThanWhereAllDaysArePlannedAnew) {
  std::mt19937_64 random(20261126);
  int adapted = 0;
  for (int draw = 0; draw < 24; ++draw) {
    SCOPED_TRACE(draw);
    RotationProblem problem = testing::drawnWeek(random);
    const RotationPlan before = planOf(problem);
    if (before.days.empty()) continue;
    const int day = static_cast<int>(random() % 2);
    if (!problem.rules.fed.empty() && day == 0) continue;
    const bool isOut = random() % 2 == 0;
    problem.rules.locked.push_back({.day = day, .food = "c", .grams = Grams(isOut ? 0 : 20)});
    const RotationPlan plan = planFrom(problem, before.days);
    const RotationPlan anew = planOf(problem);
    EXPECT_EQ(plan.days.empty(), anew.days.empty());
    if (plan.days.empty()) continue;
    ++adapted;
    EXPECT_LE(plan.period.value, anew.period.value + kSame);
    if (plan.period.value > anew.period.value - kSame) {
      EXPECT_LE(plan.daily.value, anew.daily.value + kSame);
    }
    for (const Reached& reached : {plan.period, plan.daily, plan.wishes, plan.objective})
      EXPECT_LE(reached.bound, reached.value + 1e-7);
  }
  EXPECT_GT(adapted, 8);
}

TEST(AdaptedRotation, APlanOfOtherDaysIsNoPlanToBeginFrom) {
  EXPECT_THROW(static_cast<void>(planFrom(threeLeaves(3), std::vector<Diet>(2, grams({10, 0, 0, 0})))),
               std::invalid_argument);
}

}  // namespace
}  // namespace tarebowl::diet
