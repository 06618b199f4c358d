// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/cooking.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::food {
namespace {

using testing::HasSubstr;

NutrientId id(const char* tagname) {
  return findByTagname(tagname).value();
}

/// 88 g water, 12 g dry matter.
Composition root() {
  Composition raw;
  const auto set = [&](const char* tagname, double amount) {
    raw.set(id(tagname), {.amount = quantity::AsFedContent(amount), .source = "an invented table"});
  };
  set("WATER", 88.0);
  set("PROCNT", 1.0);
  set("FAT", 0.0);
  set("CHOCDF", 10.0);
  set("ASH", 1.0);
  set("ENERC", 44.0);
  set("VITC", 20.0);
  return raw;
}

Composition cooked(const Composition& raw, const Cooking& cooking) {
  return std::get<Composition>(cook(raw, cooking));
}

// 100 g raw become 90 g: 12 g dry matter in 90 g are 13.333 g in 100 g, so 86.667 g water.
// Vitamin C 20 mg, 70 % kept: 14 mg in 90 g are 15.556 mg in 100 g.
TEST(Cooking, SteamedRootHoldsWhatTheRawOneHeldInLessWater) {
  const Composition steamed = cooked(root(), {"root-raw", 0.9, {{id("VITC"), 0.7}}, "invented factors"});
  EXPECT_NEAR(steamed.amountPer100g(id("WATER")).value(), 86.6667, 1e-4);
  EXPECT_NEAR(steamed.amountPer100g(id("VITC")).value(), 15.5556, 1e-4);
  EXPECT_NEAR(steamed.amountPer100g(id("PROCNT")).value(), 1.1111, 1e-4);
  EXPECT_NEAR(steamed.amountPer100g(id("ENERC")).value(), 48.8889, 1e-4);
}

// Half of the carbohydrate leaches out: 7 g dry matter in 90 g are 7.778 g in 100 g.
// Energy 4 + 40 = 44 kcal becomes 4 + 20 = 24 kcal, in 90 g: 26.667 kcal in 100 g.
TEST(Cooking, WhatLeachesOutLeavesWaterAndTakesEnergy) {
  const Composition boiled = cooked(root(), {"root-raw", 0.9, {{id("CHOCDF"), 0.5}}, ""});
  EXPECT_NEAR(boiled.amountPer100g(id("WATER")).value(), 92.2222, 1e-4);
  EXPECT_NEAR(boiled.amountPer100g(id("ENERC")).value(), 26.6667, 1e-4);
}

TEST(Cooking, EachValueSaysThatItWasWorkedOut) {
  const Composition steamed = cooked(root(), {"root-raw", 0.9, {}, ""});
  EXPECT_EQ(steamed.find(id("PROCNT"))->source,
            "worked out from root-raw by yield and retention of an invented table");
}

TEST(Cooking, WaterThatIsUnknownRawIsUnknownCooked) {
  Composition raw = root();
  raw.erase(id("WATER"));
  EXPECT_EQ(cooked(raw, {"root-raw", 0.9, {}, ""}).find(id("WATER")), nullptr);
}

TEST(Cooking, AYieldBelowTheDryMatterIsRefused) {
  EXPECT_EQ(std::get<CookingProblem>(cook(root(), {"root-raw", 0.11, {}, ""})), CookingProblem::MoreThanFood);
  EXPECT_EQ(std::get<CookingProblem>(cook(root(), {"root-raw", 0.0, {}, ""})),
            CookingProblem::YieldNotAboveZero);
  EXPECT_EQ(std::get<CookingProblem>(cook(root(), {"root-raw", 0.9, {{id("CA"), -0.1}}, ""})),
            CookingProblem::FactorOutOfRange);
}

}  // namespace
}  // namespace tarebowl::food
