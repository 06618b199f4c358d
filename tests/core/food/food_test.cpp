// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/food.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tarebowl::food {
namespace {

Food egg() {
  Food food{.code = "egg-boiled", .name = "Egg", .form = "boiled", .group = "egg"};
  food.unitMass = quantity::Grams(50);
  return food;
}

TEST(Food, AnEggWithItsUnitMassIsSound) {
  EXPECT_EQ(problemWith(egg()), std::nullopt);
}

TEST(Food, WhatIsWrongIsNamed) {
  const auto with = [](auto change) {
    Food food = egg();
    change(food);
    return problemWith(food);
  };
  EXPECT_EQ(with([](Food& f) { f.code.clear(); }), FoodProblem::NoCode);
  EXPECT_EQ(with([](Food& f) { f.name.clear(); }), FoodProblem::NoName);
  EXPECT_EQ(with([](Food& f) { f.unitMass = quantity::Grams(0); }), FoodProblem::UnitMassNotAboveZero);
  EXPECT_EQ(with([](Food& f) { f.scaleStep = quantity::Grams(std::nan("")); }),
            FoodProblem::ScaleStepNotAboveZero);
  EXPECT_EQ(with([](Food& f) { f.edibleFraction = 1.1; }), FoodProblem::EdibleFractionOutOfRange);
  EXPECT_EQ(with([](Food& f) { f.pricePerKg = -2.0; }), FoodProblem::PriceNegative);
}

}  // namespace
}  // namespace tarebowl::food
