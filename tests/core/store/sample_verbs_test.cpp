// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/change_log.h"
#include "core/store/food_import.h"
#include "core/store/food_reading.h"
#include "core/store/opening.h"
#include "core/store/verbs.h"
#include "tests/core/store/larder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using testing::HasSubstr;

class SampleVerbs : public testing::Test {
 protected:
  OwnFolder folder;
  Collection collection = Collection::create(folder.collection("a"), kKeeper);
  FoodId kale{addFood(collection, plain("kale"), kKeeper).id};

  [[nodiscard]] std::vector<StoredSample> samples() const { return samplesOf(collection, kale); }
};

TEST_F(SampleVerbs, ASampleIsReadAsItWasWritten) {
  addSample(collection, kale, analysis("report 1", "2026-01-01", 254), kKeeper);
  ASSERT_EQ(samples().size(), 1U);
  EXPECT_EQ(samples()[0].sample, analysis("report 1", "2026-01-01", 254));
}

TEST_F(SampleVerbs, AnExcludedSampleKeepsItsReasonAndComesBack) {
  const Written added = addSample(collection, kale, analysis("report 1", "2026-01-01", 254), kKeeper);
  const Written out = excludeSample(collection, SampleId{added.id}, 1, "mixed up", kKeeper);
  EXPECT_EQ(samples()[0].sample.excluded, "mixed up");
  EXPECT_EQ(knowFood(collection, kale)->composition.find(nutrient("CA")), nullptr);
  EXPECT_EQ(findChange(collection, out.change)->verb, "exclude sample");
  includeSample(collection, SampleId{added.id}, 2, kKeeper);
  EXPECT_EQ(samples()[0].sample, analysis("report 1", "2026-01-01", 254));
  EXPECT_EQ(codeOf([&] { excludeSample(collection, SampleId{added.id}, 3, "", kKeeper); }),
            StoreErrorCode::Refused);
}

TEST_F(SampleVerbs, AnEditOfAnOldVersionIsRefused) {
  const Written added = addSample(collection, kale, analysis("report 1", "2026-01-01", 254), kKeeper);
  editSample(collection, SampleId{added.id}, 1, analysis("report 1", "2026-01-01", 245), kKeeper);
  EXPECT_EQ(codeOf([&] { removeSample(collection, SampleId{added.id}, 1, kKeeper); }),
            StoreErrorCode::Conflict);
  EXPECT_EQ(food::amountOf(samples().at(0).sample.values.at(0).amount), 245.0);
}

TEST_F(SampleVerbs, ARemovedSampleComesBackWhateverWasAddedMeanwhile) {
  const Written first = addSample(collection, kale, analysis("report 1", "2026-01-01", 254), kKeeper);
  const Written removed = removeSample(collection, SampleId{first.id}, 1, kKeeper);
  const Written second = addSample(collection, kale, analysis("report 2", "2026-02-02", 99), kKeeper);
  EXPECT_NE(second.id, first.id) << "a number is given once";
  undo(collection, removed.change, kKeeper);
  ASSERT_EQ(samples().size(), 2U);
  EXPECT_EQ(samples()[0].sample, analysis("report 1", "2026-01-01", 254));
  EXPECT_EQ(samples()[1].sample, analysis("report 2", "2026-02-02", 99));
}

TEST_F(SampleVerbs, SamplesUndo) {
  const Written added = addSample(collection, kale, analysis("report 1", "2026-01-01", 254), kKeeper);
  const Written edited =
      editSample(collection, SampleId{added.id}, 1, analysis("report 2", "2026-02-02", 99), kKeeper);
  undo(collection, edited.change, kKeeper);
  EXPECT_EQ(samples().at(0).sample, analysis("report 1", "2026-01-01", 254));
  const Written removed = removeSample(collection, SampleId{added.id}, 3, kKeeper);
  EXPECT_TRUE(samples().empty());
  undo(collection, removed.change, kKeeper);
  EXPECT_EQ(samples().at(0).sample, analysis("report 1", "2026-01-01", 254));
}

TEST_F(SampleVerbs, WhatIsNoSampleIsRefused) {
  auto twice = analysis("report 1", "2026-01-01", 254);
  twice.values.push_back(twice.values[0]);
  EXPECT_EQ(codeOf([&] { addSample(collection, kale, twice, kKeeper); }), StoreErrorCode::Refused);
  EXPECT_EQ(codeOf([&] { addSample(collection, kale, analysis("", "2026-01-01", 1), kKeeper); }),
            StoreErrorCode::Refused);
  EXPECT_EQ(codeOf([&] { addSample(collection, kale, analysis("r", "2026-01-01", -1), kKeeper); }),
            StoreErrorCode::Refused);
  EXPECT_EQ(codeOf([&] { addSample(collection, FoodId{99}, analysis("r", "2026-01-01", 1), kKeeper); }),
            StoreErrorCode::Refused);
  EXPECT_TRUE(samples().empty());
}

TEST_F(SampleVerbs, ValuesThisProgramDoesNotKnowSurviveAnEditAndItsUndo) {
  {
    FoodImport import(collection, {.name = "invented table"}, kKeeper);
    ImportedFood food{.food = plain("kale").food};
    food.sample.sourceCode = "17";
    const SampleId sample = import.sample(food);
    import.add(sample,
               {.component = import.component("FIZZINESS", "fz"), .amount = quantity::AsFedContent(3)});
    import.add(sample,
               {.component = import.component(nutrient("CA")), .amount = quantity::AsFedContent(254)});
    import.commit();
  }
  const StoredSample stored = samples().at(0);
  ASSERT_EQ(stored.sample.values.size(), 1U);
  food::Sample changed = stored.sample;
  changed.values.clear();
  const Written edited = editSample(collection, stored.id, stored.revision, changed, kKeeper);
  const auto fizziness = [&] {
    double amount = 0.0;
    collection.inner().sql()
        << "SELECT amount FROM sample_value JOIN component ON component.id = component_id "
           "WHERE tagname = 'FIZZINESS'",
        soci::into(amount);
    return amount;
  };
  EXPECT_EQ(fizziness(), 3.0);
  undo(collection, edited.change, kKeeper);
  EXPECT_EQ(fizziness(), 3.0);
  EXPECT_EQ(samples().at(0).sample.values.size(), 1U);
}

// 0.9 of 100 g; 80 g water: 20 g dry matter in 90 g are 22.222 g, so 77.778 g water; calcium 254 / 0.9 =
// 282.222.
TEST_F(SampleVerbs, ACookedFoodIsWorkedOutWhereNobodyAnalysedIt) {
  auto raw = analysis("report 1", "2026-01-01", 254);
  food::SampleValue water{.nutrient = nutrient("WATER")};
  water.amount = quantity::AsFedContent(80);
  raw.values.push_back(water);
  addSample(collection, kale, raw, kKeeper);
  FoodRecord steamed = plain("kale-steamed");
  steamed.cooking = food::Cooking{"kale", 0.9, {}, "invented"};
  const FoodId cooked{addFood(collection, steamed, kKeeper).id};
  auto own = analysis("report 2", "2026-03-01", 300);
  own.values.resize(1);
  const KnownFood before = knowFood(collection, cooked).value();
  EXPECT_NEAR(before.composition.amountPer100g(nutrient("CA")).value(), 282.222, 1e-3);
  EXPECT_EQ(before.derivation.find(nutrient("CA"))->by, food::DerivedBy::Cooking);
  addSample(collection, cooked, own, kKeeper);
  const KnownFood after = knowFood(collection, cooked).value();
  EXPECT_EQ(after.composition.amountPer100g(nutrient("CA")), 300.0);
  EXPECT_NEAR(after.composition.amountPer100g(nutrient("WATER")).value(), 77.778, 1e-3);
}

// 1 g of 254 mg and 3 g of 54 mg in 100 g: (254 + 3 × 54) / 4 = 104 mg in 100 g of the mix. Of iron the egg
// says nothing: the mix has at least 2 / 4 = 0.5 mg, and nothing to count with.
TEST_F(SampleVerbs, AMixIsWorkedOutFromItsParts) {
  auto ofKale = analysis("report 1", "2026-01-01", 254);
  food::SampleValue iron{.nutrient = nutrient("FE")};
  iron.amount = quantity::AsFedContent(2);
  ofKale.values.push_back(iron);
  addSample(collection, kale, ofKale, kKeeper);
  const FoodId egg{addFood(collection, plain("egg"), kKeeper).id};
  auto ofEgg = analysis("report 2", "2026-01-01", 54);
  ofEgg.values.resize(1);
  addSample(collection, egg, ofEgg, kKeeper);
  FoodRecord record = plain("mix");
  record.recipe = food::Recipe{.parts = {{"kale", quantity::Grams(1)}, {"egg", quantity::Grams(3)}}};
  const FoodId mix{addFood(collection, record, kKeeper).id};
  const KnownFood known = knowFood(collection, mix).value();
  EXPECT_DOUBLE_EQ(known.composition.amountPer100g(nutrient("CA")).value(), 104.0);
  EXPECT_EQ(known.derivation.find(nutrient("CA"))->by, food::DerivedBy::Recipe);
  EXPECT_EQ(known.composition.amountPer100g(nutrient("FE")), std::nullopt);
  const food::NutrientValue ironOfMix = known.derivation.find(nutrient("FE"))->value;
  EXPECT_EQ(ironOfMix.qualifier, food::Qualifier::AtLeast);
  EXPECT_DOUBLE_EQ(ironOfMix.amount.value(), 0.5);
  EXPECT_DOUBLE_EQ(dietFood(collection, "mix")->composition.amountPer100g(nutrient("CA")).value(), 104.0);
}

// Raw: 0.5 + 0.1 g. Cooked, 1 g per g raw, nine tenths of the methionine kept: 0.45 + 0.1 g.
TEST_F(SampleVerbs, ADietCountsWithSumsOfWhatTheFoodStates) {
  const auto sums = nutrient("AAS");
  auto raw = analysis("report 1", "2026-01-01", 254);
  raw.values.push_back({.nutrient = nutrient("MET"), .amount = quantity::AsFedContent(0.5)});
  raw.values.push_back({.nutrient = nutrient("CYS"), .amount = quantity::AsFedContent(0.1)});
  addSample(collection, kale, raw, kKeeper);
  FoodRecord steamed = plain("kale-steamed");
  steamed.cooking = food::Cooking{"kale", 1.0, {{nutrient("MET"), 0.9}}, "invented"};
  addFood(collection, steamed, kKeeper);
  EXPECT_NEAR(dietFood(collection, "kale")->composition.amountPer100g(sums).value(), 0.6, 1e-12);
  EXPECT_NEAR(dietFood(collection, "kale-steamed")->composition.amountPer100g(sums).value(), 0.55, 1e-12);
  const KnownFood known = knowFood(collection, kale).value();
  EXPECT_EQ(known.derivation.find(sums)->by, food::DerivedBy::SumOfParts);
  EXPECT_EQ(known.derivation.stated().find(sums), nullptr) << "exports and checks go by what was stated";
}

TEST_F(SampleVerbs, ADietTakesTheFoodWithItsPieceAsScaleStep) {
  FoodRecord egg = plain("egg");
  egg.food.unitMass = quantity::Grams(50);
  egg.food.pricePerKg = 3.5;
  const FoodId id{addFood(collection, egg, kKeeper).id};
  addSample(collection, id, analysis("report 1", "2026-01-01", 56), kKeeper);
  const diet::DietFood food = dietFood(collection, "egg").value();
  EXPECT_EQ(food.id, "egg");
  EXPECT_EQ(food.scaleStep, quantity::Grams(50));
  EXPECT_EQ(food.costPerKg, 3.5);
  EXPECT_EQ(food.composition.amountPer100g(nutrient("CA")), 56.0);
  EXPECT_FALSE(dietFood(collection, "dodo-egg"));
}

}  // namespace
}  // namespace tarebowl::store
