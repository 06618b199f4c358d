// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_locks.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using quantity::Grams;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

constexpr std::size_t kKale = 0;
constexpr std::size_t kCrickets = 1;

/// Kale 4 g and crickets 12 g a day, no crickets on the second of three.
class Locks : public ::testing::Test {
 protected:
  Locks() {
    for (const char* name : {"kale", "crickets"}) {
      DietFood food;
      food.id = name;
      problem.base.foods.push_back(food);
    }
    problem.rules.days = 3;
  }
  RotationProblem problem;
  std::vector<Diet> days{{Grams(4), Grams(12)}, {Grams(4), Grams(0)}, {Grams(4), Grams(12)}};
};

TEST_F(Locks, AFoodThatIsMovedIsLockedWhereItCameFromAndWhereItGoes) {
  EXPECT_THAT(locksWithFoodMoved(problem, days, kCrickets, 0, 1),
              ElementsAre(LockedCell{0, "crickets", Grams(0)}, LockedCell{1, "crickets", Grams(12)}));
  EXPECT_THAT(locksWithFoodMoved(problem, days, kCrickets, 1, 2), IsEmpty()) << "there is nothing to move";
  EXPECT_THAT(locksWithFoodMoved(problem, days, kKale, 1, 1), IsEmpty());
}

TEST_F(Locks, WhatIsOverIsNotMoved) {
  problem.rules.fed = {{.day = 0, .fed = days[0], .eaten = {}}};
  EXPECT_TRUE(isOver(problem.rules, 0));
  EXPECT_THAT(locksWithFoodMoved(problem, days, kCrickets, 0, 1), IsEmpty());
  EXPECT_THAT(locksWithFoodMoved(problem, days, kCrickets, 2, 0), IsEmpty());
  EXPECT_THAT(locksWithGrams(problem, kKale, 0, Grams(9)), IsEmpty());
  EXPECT_THAT(locksWithCellTurned(problem, days, kKale, 0), IsEmpty());
}

TEST_F(Locks, ACellIsLockedAsItIsAndSetFreeAgain) {
  problem.rules.locked = locksWithCellTurned(problem, days, kKale, 2);
  EXPECT_THAT(problem.rules.locked, ElementsAre(LockedCell{2, "kale", Grams(4)}));
  EXPECT_TRUE(isLocked(problem, 2, kKale));
  EXPECT_THAT(locksWithGrams(problem, kKale, 2, Grams(7)), ElementsAre(LockedCell{2, "kale", Grams(7)}));
  EXPECT_THAT(locksWithCellTurned(problem, days, kKale, 2), IsEmpty());
}

}  // namespace
}  // namespace tarebowl::diet
