// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/tolerance.h"

#include <gtest/gtest.h>

#include <limits>

namespace tarebowl::intake {
namespace {

using quantity::Grams;
using quantity::Kilograms;

double tolerance(double step, double bowl, std::optional<double> bodyKg) {
  ToleranceFacts facts{.step = Grams(step), .bowl = Grams(bowl)};
  if (bodyKg) facts.bodyMass = Kilograms(*bodyKg);
  return toleranceOf({}, facts).value();
}

TEST(Tolerance, IsTheLeastOfTwoStepsTwoPercentOfTheBowlAndThreeThousandthsOfTheBody) {
  EXPECT_DOUBLE_EQ(tolerance(1, 500, 10), 2);        // 2 steps = 2 g; 2 % = 10 g; 0.3 % = 30 g
  EXPECT_DOUBLE_EQ(tolerance(1, 60, 10), 1.2);       // 2 % of 60 g = 1.2 g
  EXPECT_DOUBLE_EQ(tolerance(0.1, 20, 0.05), 0.15);  // 0.3 % of 50 g = 0.15 g; 2 steps = 0.2 g; 2 % = 0.4 g
}

TEST(Tolerance, IsNeverLessThanHalfAScaleStep) {
  EXPECT_DOUBLE_EQ(tolerance(1, 10, 0.14), 0.5);  // 2 % of 10 g = 0.2 g, which no scale of 1 g shows
}

TEST(Tolerance, OfAnimalsNobodyWeighedFollowsTheBowlAlone) {
  EXPECT_DOUBLE_EQ(tolerance(0.1, 8, std::nullopt), 0.16);  // 2 % of 8 g
}

TEST(Tolerance, FollowsTheRuleOfTheHouse) {
  const ToleranceRule strict{.ofStep = 1, .leastSteps = 1, .ofBowl = 0.01, .ofBody = 0};
  EXPECT_EQ(toleranceOf(strict, {.step = Grams(1), .bowl = Grams(900)}), Grams(1));
  EXPECT_TRUE(isSound(strict));
  EXPECT_FALSE(isSound({.ofBowl = -0.01}));
  EXPECT_FALSE(isSound({.ofStep = std::numeric_limits<double>::quiet_NaN()}));
}

TEST(Tolerance, AWeightAtTheEdgeIsIn) {
  EXPECT_EQ(stateOf(Grams(20), Grams(20.2), Grams(0.2)), WeightState::In);
  EXPECT_EQ(stateOf(Grams(20), Grams(19.8), Grams(0.2)), WeightState::In);
  EXPECT_EQ(stateOf(Grams(20), Grams(20.3), Grams(0.2)), WeightState::Over);
  EXPECT_EQ(stateOf(Grams(20), Grams(19.7), Grams(0.2)), WeightState::Under);
}

}  // namespace
}  // namespace tarebowl::intake
