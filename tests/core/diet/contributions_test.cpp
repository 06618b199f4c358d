// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/balance.h"
#include "tests/core/diet/bowls.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using namespace testing;
using ::testing::DoubleNear;
using ::testing::Optional;

constexpr double kTiny = 1e-12;

TEST(Contributions, ComeLargestFirstWithTheirSourceAndUnknownOnesLast) {
  BalanceProblem problem = greensAndInsects();
  problem.foods.push_back(makeFood("not in the bowl", "x", {{"CA", 1000}}));
  problem.foods.insert(problem.foods.begin(), makeFood("never measured", "x", {{"WATER", 80}}));
  const auto list = contributions(problem, grams({30, 100, 50, 0}), nutrient("CA"));
  ASSERT_EQ(list.size(), 3U);
  EXPECT_EQ(list[0].food, 1U);
  EXPECT_THAT(list[0].amount, Optional(DoubleNear(200, kTiny)));
  EXPECT_NEAR(list[0].share, 200 / 220.0, kTiny);
  EXPECT_EQ(list[0].source, "greens sample");
  EXPECT_EQ(list[1].food, 2U);
  EXPECT_EQ(list[2].food, 0U);
  EXPECT_EQ(list[2].amount, std::nullopt);
  EXPECT_EQ(list[2].source, "");
}

TEST(Contributions, CountWhatIsEaten) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].eatenFraction = 0.05;
  const auto list = contributions(problem, usualBowl(), nutrient("CA"));
  ASSERT_EQ(list.size(), 2U);
  EXPECT_EQ(list[0].food, 1U);  // 20 mg from insects, 10 mg left from greens
  EXPECT_NEAR(list[1].share, 1 / 3.0, kTiny);
}

TEST(Contributions, OfEstimatedEnergyNameTheMethodAsTheirSource) {
  BalanceProblem problem = greensAndInsects();
  problem.energyMethod = food::EnergyMethod::Atwater;
  problem.foods = {makeFood("pellet", "pellet", {{"PROCNT", 20}, {"FAT", 10}, {"CHOCDF", 50}})};
  EXPECT_EQ(contributions(problem, grams({10}), nutrient("ENERC")).at(0).source, "atwater");
}

}  // namespace
}  // namespace tarebowl::diet
