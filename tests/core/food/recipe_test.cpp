// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/recipe.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <map>

namespace tarebowl::food {
namespace {

using quantity::AsFedContent;
using quantity::Grams;
using testing::ElementsAre;

NutrientId id(const char* tagname) {
  return findByTagname(tagname).value();
}

Composition of(std::initializer_list<std::pair<const char*, double>> values) {
  Composition composition;
  for (const auto& [tagname, amount] : values)
    composition.set(id(tagname), {.amount = AsFedContent(amount), .source = "an invented table"});
  return composition;
}

Composition mixed(const Recipe& recipe, const std::vector<Composition>& parts) {
  return std::get<Composition>(mix(recipe, parts));
}

const Recipe kThreeToOne{.parts = {{"pellet", Grams(300)}, {"egg", Grams(100)}}};

// Three parts of 10 g water and one of 70 g: (3 * 10 + 70) / 4 = 25 g; calcium (3 * 900 + 50) / 4 = 687.5 mg.
TEST(Recipe, AMixHoldsWhatItsPartsHold) {
  const Composition gel =
      mixed(kThreeToOne, {of({{"WATER", 10}, {"CA", 900}}), of({{"WATER", 70}, {"CA", 50}})});
  EXPECT_DOUBLE_EQ(gel.amountPer100g(id("WATER")).value(), 25.0);
  EXPECT_DOUBLE_EQ(gel.amountPer100g(id("CA")).value(), 687.5);
}

// 75 g dry matter of 100 g weighed in, in 80 g that come out of the oven: 93.75 g in 100 g, so 6.25 g water.
TEST(Recipe, WhatDriesInTheOvenLosesWaterAlone) {
  Recipe biscuit = kThreeToOne;
  biscuit.massYield = 0.8;
  const Composition baked =
      mixed(biscuit, {of({{"WATER", 10}, {"CA", 900}}), of({{"WATER", 70}, {"CA", 50}})});
  EXPECT_NEAR(baked.amountPer100g(id("WATER")).value(), 6.25, 1e-12);
  EXPECT_NEAR(baked.amountPer100g(id("CA")).value(), 687.5 / 0.8, 1e-9);
}

TEST(Recipe, WhatOnePartDoesNotStateIsAtLeastWhatTheOtherBrings) {
  const Composition gel = mixed(kThreeToOne, {of({{"VITE", 40}}), of({})});
  const NutrientValue* vitaminE = gel.find(id("VITE"));
  ASSERT_NE(vitaminE, nullptr);
  EXPECT_DOUBLE_EQ(vitaminE->amount.value(), 30.0);
  EXPECT_EQ(vitaminE->qualifier, Qualifier::AtLeast);
}

TEST(Recipe, AGuaranteedMaximumOfAPartBringsNothingForSure) {
  Composition pellet;
  pellet.set(id("FIBC"), {.amount = AsFedContent(12), .qualifier = Qualifier::AtMost});
  const Composition gel = mixed(kThreeToOne, {pellet, of({{"FIBC", 4}})});
  EXPECT_DOUBLE_EQ(gel.amountPer100g(id("FIBC")).value(), 1.0);
  EXPECT_EQ(gel.find(id("FIBC"))->qualifier, Qualifier::AtLeast);
}

TEST(Recipe, WithTheWaterOfOnePartUnknownTheDryMatterIsUnknown) {
  const Composition gel = mixed(kThreeToOne, {of({{"WATER", 10}}), of({{"CA", 50}})});
  EXPECT_FALSE(gel.dryMatter().has_value());
}

// Scatter 8 of three quarters and 6 of one quarter: sqrt(6^2 + 1.5^2) = 6.1847.
TEST(Recipe, ScatterOfThePartsAddsAsOfIndependentSamples) {
  std::vector<Composition> parts(2);
  parts[0].set(id("CA"), {.amount = AsFedContent(900), .sd = AsFedContent(8)});
  parts[1].set(id("CA"), {.amount = AsFedContent(50), .sd = AsFedContent(6)});
  EXPECT_NEAR(mixed(kThreeToOne, parts).sdPer100g(id("CA")).value(), 6.1847, 1e-4);
}

TEST(Recipe, WhatCannotBeMixedIsNamed) {
  EXPECT_EQ(problemWith(Recipe{}), RecipeProblem::NoParts);
  EXPECT_EQ(problemWith(Recipe{.parts = {{"egg", Grams(0)}}}), RecipeProblem::MassNotAboveZero);
  EXPECT_EQ(problemWith(Recipe{.parts = {{"egg", Grams(1)}}, .massYield = 0}),
            RecipeProblem::YieldNotAboveZero);
  const auto dried = mix({.parts = {{"egg", Grams(1)}}, .massYield = 0.2}, std::vector{of({{"WATER", 50}})});
  EXPECT_EQ(std::get<RecipeProblem>(dried), RecipeProblem::MoreThanFood) << "50 g dry matter in 20 g";
}

TEST(Recipe, AMixThatIsMadeFromItselfIsNamedWithItsChain) {
  const std::map<std::string, std::vector<std::string>> parts{
      {"mash", {"corn", "gel"}}, {"gel", {"egg", "mash"}}, {"corn", {}}};
  const auto partsOf = [&](const std::string& code) {
    const auto found = parts.find(code);
    return found == parts.end() ? std::vector<std::string>{} : found->second;
  };
  EXPECT_THAT(madeFromCycle("mash", partsOf).value(), ElementsAre("mash", "gel", "mash"));
  EXPECT_FALSE(madeFromCycle("egg", partsOf).has_value());
}

TEST(Recipe, APartThatTwoMixesShareIsNoCycle) {
  const std::map<std::string, std::vector<std::string>> parts{
      {"bowl", {"gel", "mash"}}, {"gel", {"egg"}}, {"mash", {"egg"}}, {"egg", {}}};
  EXPECT_FALSE(madeFromCycle("bowl", [&](const std::string& code) { return parts.at(code); }).has_value());
}

RC_GTEST_PROP(Recipe, AFoodMixedWithItselfIsTheFood, ()) {
  const double calcium = *rc::gen::inRange(0, 5000);
  const Grams one(*rc::gen::inRange(1, 1000));
  const Grams other(*rc::gen::inRange(1, 1000));
  const Composition food = of({{"CA", calcium}, {"WATER", 60}});
  const Composition both = mixed({.parts = {{"a", one}, {"a", other}}}, {food, food});
  RC_ASSERT(std::abs(both.amountPer100g(id("CA")).value() - calcium) < 1e-9);
}

}  // namespace
}  // namespace tarebowl::food
