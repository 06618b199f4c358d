// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The sample's fortnight asks for two of three cooked vegetables a day, none of them on three days running:
// where one is brought to another day, they turn round on all days, and what else stands in the fortnight
// stays.
#include "core/diet/rotation.h"
#include "core/transfer/rotation_desk.h"
#include "tests/core/transfer/brackenmere.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>

namespace tarebowl::transfer {
namespace {

using quantity::Grams;

class MovedFood : public testing::Test {
 protected:
  OwnSample sample;
  RotationOnDesk rotation =
      readRotation(sample.collection, store::rotationsOfDiet(sample.collection, "monkey-daily").front().id,
                   quantity::parseDate("2026-11-29").value())
          .value();
  const std::vector<diet::DietFood>& foods() const { return rotation.desk.problem.base.foods; }

  /// The days count from 0.
  diet::RotationPlan afterMoving(const std::string& code, int from, int to) const {
    diet::RotationProblem problem = rotation.desk.problem;
    const auto food = std::ranges::find(foods(), code, &diet::DietFood::id) - foods().begin();
    const Grams grams = rotation.days.at(std::size_t(from)).at(std::size_t(food));
    EXPECT_GT(grams, Grams(0));
    EXPECT_EQ(rotation.days.at(std::size_t(to)).at(std::size_t(food)), Grams(0));
    problem.rules.locked.push_back({.day = from, .food = code, .grams = Grams(0)});
    problem.rules.locked.push_back({.day = to, .food = code, .grams = grams});
    return diet::rotate(problem, {.deadline = std::chrono::hours(1), .rounds = 6, .start = rotation.days});
  }
  std::set<std::string> foodsThatDiffer(const diet::RotationPlan& plan) const {
    std::set<std::string> differ;
    for (std::size_t day = 0; day < plan.days.size(); ++day)
      for (std::size_t food = 0; food < foods().size(); ++food)
        if (plan.days[day][food] != rotation.days[day][food]) differ.insert(foods()[food].id);
    return differ;
  }
  std::size_t cellsThatDiffer(const diet::RotationPlan& plan) const {
    std::size_t differ = 0;
    for (std::size_t day = 0; day < plan.days.size(); ++day)
      for (std::size_t food = 0; food < foods().size(); ++food)
        differ += plan.days[day][food] != rotation.days[day][food] ? 1 : 0;
    return differ;
  }
};

TEST_F(MovedFood, TurnsTheOtherCookedVegetablesRoundAndLeavesAllElse) {
  // Carrot and beans take each other's turns; sweet potato is left out on the days on which it was.
  const diet::RotationPlan plan = afterMoving("carrot-boiled", 2, 3);
  EXPECT_EQ(plan.status, diet::RotationStatus::Balanced);
  EXPECT_THAT(foodsThatDiffer(plan), testing::ElementsAre("carrot-boiled", "green-beans-boiled"));
}

TEST_F(MovedFood, ChangesOtherFoodsOnlyAsFarAsTheZonesOfTheDaysAsk) {
  // On day 1 sweet potato was left out, 30 g of it elsewhere: it takes the carrot's turns, and what is given
  // beside it follows.
  const diet::RotationPlan plan = afterMoving("carrot-boiled", 1, 12);
  EXPECT_EQ(plan.status, diet::RotationStatus::Balanced);
  EXPECT_LT(cellsThatDiffer(plan), rotation.days.size() * foods().size() / 3);
}

}  // namespace
}  // namespace tarebowl::transfer
