// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Foods read by the thousand say the same as each read by itself.
#include "core/store/larder_reading.h"

#include "core/diet/counted_nutrients.h"
#include "core/diet/supply.h"
#include "core/food/sums.h"
#include "tests/core/store/larder.h"
#include "tests/core/transfer/brackenmere.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace tarebowl::transfer {
namespace {

using diet::DietFood;
using food::NutrientId;

std::vector<NutrientId> all() {
  std::vector<NutrientId> nutrients;
  for (std::size_t i = 0; i < food::allNutrients().size(); ++i) nutrients.emplace_back(i);
  return nutrients;
}

/// As each food is known by itself, no further than asked.
std::vector<DietFood> oneByOne(const store::Collection& collection, const std::vector<NutrientId>& asked) {
  std::vector<DietFood> foods;
  for (const food::FoodLine& line : store::listFoods(collection)) {
    DietFood& food =
        foods.emplace_back(store::asDietFood(store::knowFood(collection, store::FoodId{line.id}).value()));
    food::Composition known;
    for (const NutrientId nutrient : food.composition.knownNutrients()) {
      if (std::ranges::find(asked, nutrient) == asked.end()) continue;
      food::NutrientValue value = *food.composition.find(nutrient);
      value.source.clear();
      known.set(nutrient, std::move(value));
    }
    food.composition = std::move(known);
  }
  return foods;
}

TEST(Larder, SaysOfEveryNutrientWhatTheFoodByItselfSays) {
  const OwnSample sample;  // with cooked foods, values on dry matter and several samples of one food
  const auto foods = store::readLarder(sample.collection, {.nutrients = all()});
  EXPECT_EQ(foods.size(), store::countFoods(sample.collection));
  EXPECT_EQ(foods, oneByOne(sample.collection, all()));
}

TEST(Larder, SaysTheSameOfAFoodThatIsNamed) {
  const OwnSample sample;
  const std::vector<NutrientId> asked{food::nutrients::calcium(), food::nutrients::water()};
  store::NamedFoodReader reader(sample.collection, asked);
  for (const DietFood& food : oneByOne(sample.collection, asked))
    EXPECT_EQ(reader.find(food.id), food) << food.id;
  EXPECT_FALSE(reader.find("no-such-food"));
}

TEST(Larder, SaysWhereValuesComeFromWhereThatIsWanted) {
  const OwnSample sample;
  store::NamedFoodReader reader(sample.collection, all(), store::ValueSources::Kept);
  for (const food::FoodLine& line : store::listFoods(sample.collection))
    EXPECT_EQ(reader.find(line.code), store::dietFood(sample.collection, line.code)) << line.code;
}

TEST(Larder, KnowsOnlyWhatWasAskedAndThatAsWell) {
  const OwnSample sample;
  for (const food::NutrientSum& sum : food::nutrientSums()) {
    const std::vector<NutrientId> asked{food::nutrients::calcium(), sum.sum};
    EXPECT_EQ(store::readLarder(sample.collection, {.nutrients = asked}), oneByOne(sample.collection, asked))
        << food::describe(sum.sum).tagname;
  }
}

TEST(Larder, TakesSumsOnlyOfPartsThatItReadAllOf) {
  const store::OwnFolder folder;
  store::Collection collection = store::Collection::create(folder / "fish.tarebowl", store::kKeeper);
  const auto fish = store::addFood(collection, store::plain("fish"), store::kKeeper);
  food::Sample sample{.source = "invented"};
  for (const char* part : {"F18D2N6", "F20D4N6", "F18D3CN6"})
    sample.values.push_back({.nutrient = store::nutrient(part), .amount = quantity::AsFedContent(0.5)});
  store::addSample(collection, store::FoodId{fish.id}, sample, store::kKeeper);
  const NutrientId omega6 = store::nutrient("FAPUN6");
  const auto known = store::readLarder(collection, {.nutrients = {omega6}}).at(0);
  EXPECT_DOUBLE_EQ(known.composition.amountPer100g(omega6).value(), 1.5);  // 3 · 0.5, the minor acid too
  const auto parts =
      store::readLarder(collection, {.nutrients = {store::nutrient("F18D2N6"), store::nutrient("F20D4N6")}})
          .at(0);
  EXPECT_EQ(parts.composition.find(omega6), nullptr);
}

TEST(Larder, LeavesOutFoodsThatNobodyWants) {
  const OwnSample sample;
  const auto raw =
      store::readLarder(sample.collection, {.nutrients = {food::nutrients::calcium()},
                                            .wants = [](const auto& food) { return food.form == "raw"; }});
  ASSERT_FALSE(raw.empty());
  EXPECT_TRUE(std::ranges::all_of(raw, [](const DietFood& food) { return food.form == "raw"; }));
}

TEST(Larder, CarriesEnergyByEveryMethod) {
  const OwnSample sample;
  const auto lean = store::readLarder(sample.collection, {.nutrients = diet::countedNutrients({})});
  const auto whole = oneByOne(sample.collection, all());
  for (const auto method :
       {food::EnergyMethod::Given, food::EnergyMethod::Atwater, food::EnergyMethod::ModifiedAtwater,
        food::EnergyMethod::Dog2006, food::EnergyMethod::Cat2006, food::EnergyMethod::PoultryAmen}) {
    const auto energy = food::nutrients::energy();
    const diet::Supply ofLean = diet::nutrientSupply({lean, method}, energy);
    const diet::Supply ofWhole = diet::nutrientSupply({whole, method}, energy);
    EXPECT_EQ(ofLean.perGram, ofWhole.perGram) << food::symbolOf(method);
    EXPECT_TRUE((ofLean.known == ofWhole.known).all());
  }
}

}  // namespace
}  // namespace tarebowl::transfer
