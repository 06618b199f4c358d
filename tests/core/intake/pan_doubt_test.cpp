// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/pan_doubt.h"

#include <gtest/gtest.h>

namespace tarebowl::intake {
namespace {

using quantity::Grams;

ControlPan kale(double start, double end) {
  return {.place = "Small Mammals", .food = "kale", .start = Grams(start), .end = Grams(end)};
}

TEST(PanDoubt, APanThatDriedOvernightIsKeptWithoutAQuestion) {
  EXPECT_EQ(doubtAbout(kale(100, 88), {}), std::nullopt);   // 12 % lost
  EXPECT_EQ(doubtAbout(kale(100, 104), {}), std::nullopt);  // a misty night
}

TEST(PanDoubt, WhatNoNightDoesIsAskedAbout) {
  EXPECT_EQ(doubtAbout(kale(88, 100), {}), PanDoubt::GainedMuch);  // 13.6 % more: the wrong way round?
  EXPECT_EQ(doubtAbout(kale(100, 49), {}), PanDoubt::LostMuch);
  EXPECT_EQ(doubtAbout(kale(100, 0), {}), PanDoubt::NothingLeft);
  EXPECT_EQ(doubtAbout(kale(0, 10), {}), PanDoubt::NothingAtStart);
}

TEST(PanDoubt, APanThatStillStandsIsAskedAboutOnlyForWhatItBeganWith) {
  ControlPan standing = kale(100, 0);
  standing.end.reset();
  EXPECT_FALSE(doubtAbout(standing, {}));
  const std::vector<ControlPan> others{standing};
  EXPECT_EQ(doubtAbout(standing, others), PanDoubt::TwicePut);
  standing.start = quantity::Grams(0);
  EXPECT_EQ(doubtAbout(standing, {}), PanDoubt::NothingAtStart);
}

TEST(PanDoubt, ASecondPanOfTheSameFoodIsAskedAboutAndAnotherFoodIsNot) {
  const std::vector others{kale(50, 44)};
  EXPECT_EQ(doubtAbout(kale(100, 88), others), PanDoubt::TwicePut);
  ControlPan leaves = kale(100, 88);
  leaves.food.clear();
  leaves.foodClass = "leafy vegetable";
  EXPECT_EQ(doubtAbout(leaves, others), std::nullopt);
}

}  // namespace
}  // namespace tarebowl::intake
