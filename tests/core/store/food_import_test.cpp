// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/food_import.h"

#include "core/store/change_log.h"
#include "core/store/food_reading.h"
#include "core/store/verbs.h"
#include "tests/core/store/larder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>
#include <map>

namespace tarebowl::store {
namespace {

using Outcome = FoodImport::Outcome;

/// Calcium by food: a table of an invented source.
using Table = std::map<std::string, double>;
const Table kTable{{"kale", 254}, {"endive", 52}, {"dandelion", 187}};

class Import : public testing::Test {
 protected:
  OwnFolder folder;
  Collection collection = Collection::create(folder.collection("a"), kKeeper);

  static void fill(FoodImport& import, const Table& table) {
    const ComponentId calcium = import.component(nutrient("CA"));
    for (const auto& [code, amount] : table) {
      ImportedFood food{.food = plain(code).food};
      food.sample.sourceCode = code;
      import.add(import.sample(food), {.component = calcium, .amount = quantity::AsFedContent(amount)});
    }
  }
  ImportCounts imported(const Table& table) {
    FoodImport import(collection, {.name = "table", .fileName = "t.csv", .fileHash = "abc"}, kKeeper);
    fill(import, table);
    return import.commit();
  }
  [[nodiscard]] std::optional<double> calciumOf(const std::string& code) const {
    return dietFood(collection, code).value().composition.amountPer100g(nutrient("CA"));
  }
};

TEST_F(Import, ATableBecomesFoodsWithASampleEachAndOneEntryInTheLog) {
  const ImportCounts counts = imported(kTable);
  EXPECT_EQ(counts, (ImportCounts{.foodsAdded = 3, .samplesAdded = 3, .valuesAdded = 3}));
  EXPECT_EQ(calciumOf("endive"), 52.0);
  EXPECT_EQ(samplesOf(collection, findFood(collection, "endive")->id).at(0).sample.origin,
            food::SampleOrigin::Publication);
  const auto changes = newestChanges(collection, 10);
  ASSERT_EQ(changes.size(), 2U);
  EXPECT_EQ(changes[0].verb, "import table");
  EXPECT_THAT(changes[0].after.value(), testing::HasSubstr("\"hash\":\"abc\""));
}

TEST_F(Import, TheSameTableAgainChangesNothing) {
  imported(kTable);
  const std::size_t changes = newestChanges(collection, 10).size();
  EXPECT_EQ(imported(kTable), (ImportCounts{.samplesUnchanged = 3, .valuesUnchanged = 3}));
  EXPECT_EQ(newestChanges(collection, 10).size(), changes);
  EXPECT_EQ(countFoods(collection), 3U);
}

TEST_F(Import, ACorrectedTableChangesWhatItCorrectsAndKeepsWhatItWas) {
  imported(kTable);
  Table corrected = kTable;
  corrected["kale"] = 150;
  corrected["carrot"] = 33;
  const ImportCounts counts = imported(corrected);
  EXPECT_EQ(counts.samplesChanged, 1U);
  EXPECT_EQ(counts.samplesUnchanged, 2U);
  EXPECT_EQ(counts.samplesAdded, 1U);
  EXPECT_EQ(counts.valuesChanged, 1U);
  EXPECT_EQ(calciumOf("kale"), 150.0);
  const auto changes = newestChanges(collection, 2);
  EXPECT_EQ(changes.at(1).verb, "edit sample by import");
  undo(collection, changes.at(1).number, kKeeper);
  EXPECT_EQ(calciumOf("kale"), 254.0);
}

TEST_F(Import, WhatIsNotCommittedWasNeverThere) {
  {
    FoodImport import(collection, {.name = "table"}, kKeeper);
    fill(import, kTable);
    EXPECT_EQ(import.counts().valuesAdded, 3U);
  }
  EXPECT_EQ(countFoods(collection), 0U);
  EXPECT_EQ(newestChanges(collection, 10).size(), 1U);
  EXPECT_EQ(imported(kTable).valuesAdded, 3U);  // and the collection goes on as if nothing had been
}

TEST_F(Import, AValueStatedTwiceIsTakenOnce) {
  FoodImport import(collection, {.name = "table"}, kKeeper);
  const ComponentId calcium = import.component(nutrient("CA"));
  ImportedFood food{.food = plain("kale").food};
  food.sample.sourceCode = "1";
  const SampleId sample = import.sample(food);
  EXPECT_EQ(import.add(sample, {.component = calcium, .amount = quantity::AsFedContent(1)}), Outcome::Added);
  EXPECT_EQ(import.add(sample, {.component = calcium, .amount = quantity::AsFedContent(2)}), Outcome::Twice);
  import.commit();
  EXPECT_EQ(calciumOf("kale"), 1.0);
}

TEST_F(Import, AFoodThatIsThereGetsASampleMore) {
  const FoodId kale{addFood(collection, pellet(), kKeeper).id};
  FoodImport import(collection, {.name = "table"}, kKeeper);
  ImportedFood food{.food = plain("pellet-a").food};
  food.sample.sourceCode = "1";
  (void)import.sample(food);
  EXPECT_EQ(import.commit().foodsAdded, 0U);
  EXPECT_EQ(findFood(collection, kale)->record, pellet());
  EXPECT_EQ(samplesOf(collection, kale).size(), 1U);
}

TEST_F(Import, AnImportIsTakenBackAsAWhole) {
  addFood(collection, plain("own"), kKeeper);
  imported(kTable);
  undo(collection, newestChanges(collection, 1).at(0).number, kKeeper);
  EXPECT_EQ(countFoods(collection), 1U);
  EXPECT_EQ(imported(kTable).valuesAdded, 3U);
}

TEST_F(Import, NumbersOfAnImportThatWasTakenBackAreNotGivenAgain) {
  imported(kTable);
  const StoredFood kale = findFood(collection, "kale").value();
  const auto sample = samplesOf(collection, kale.id).at(0).id;
  undo(collection, newestChanges(collection, 1).at(0).number, kKeeper);
  EXPECT_GT(addFood(collection, plain("own"), kKeeper).id, static_cast<std::int64_t>(kale.id))
      << "the history of a food is of that food alone";
  imported(kTable);
  const StoredFood again = findFood(collection, "kale").value();
  EXPECT_GT(again.id, kale.id);
  EXPECT_GT(samplesOf(collection, again.id).at(0).id, sample);
}

TEST_F(Import, AnImportThatWasBuiltUponIsNotTakenBack) {
  imported(kTable);
  const auto number = newestChanges(collection, 1).at(0).number;
  addSample(collection, findFood(collection, "kale")->id, analysis("report", "2026-01-01", 254), kKeeper);
  EXPECT_EQ(codeOf([&] { undo(collection, number, kKeeper); }), StoreErrorCode::Conflict);
  EXPECT_EQ(countFoods(collection), 3U);
}

TEST_F(Import, TakingACorrectionBackRestoresWhatItCorrectedToo) {
  imported(kTable);
  Table corrected = kTable;
  corrected["kale"] = 150;
  corrected["dandelion"] = 1870;
  corrected["carrot"] = 33;
  imported(corrected);
  undo(collection, newestChanges(collection, 1).at(0).number, kKeeper);
  EXPECT_EQ(calciumOf("kale"), 254.0);
  EXPECT_EQ(calciumOf("dandelion"), 187.0);
  EXPECT_FALSE(findFood(collection, "carrot").has_value());
  EXPECT_EQ(imported(kTable).samplesUnchanged, 3U) << "all of it is as the first import left it";
}

TEST_F(Import, AnEditThatWasTakenBackDoesNotStandInTheWay) {
  imported(kTable);
  const auto number = newestChanges(collection, 1).at(0).number;
  const StoredFood kale = findFood(collection, "kale").value();
  FoodRecord renamed = kale.record;
  renamed.food.name = "Curly kale";
  const Written edit = editFood(collection, kale.id, kale.revision, renamed, kKeeper);
  EXPECT_EQ(codeOf([&] { undo(collection, number, kKeeper); }), StoreErrorCode::Conflict);
  undo(collection, edit.change, kKeeper);
  undo(collection, number, kKeeper);
  EXPECT_EQ(countFoods(collection), 0U);
}

TEST_F(Import, NamesTheEntryByWhichItIsTakenBack) {
  FoodImport import(collection, {.name = "table"}, kKeeper);
  fill(import, kTable);
  EXPECT_EQ(import.change(), std::nullopt);
  import.commit();
  ASSERT_TRUE(import.change().has_value());
  undo(collection, *import.change(), kKeeper);
  EXPECT_EQ(countFoods(collection), 0U);
}

TEST_F(Import, RowsInAnyOrderAreAsGood) {
  imported(kTable);
  FoodImport import(collection, {.name = "table"}, kKeeper);
  const ComponentId phosphorus = import.component(nutrient("P"));
  const ComponentId calcium = import.component(nutrient("CA"));
  for (const ComponentId component : {phosphorus, calcium}) {
    for (const auto& [code, amount] : kTable) {
      ImportedFood food{.food = plain(code).food};
      food.sample.sourceCode = code;
      import.add(import.sample(food), {.component = component, .amount = quantity::AsFedContent(amount)});
    }
  }
  const ImportCounts counts = import.commit();
  EXPECT_EQ(counts.valuesAdded, 3U);
  EXPECT_EQ(counts.valuesUnchanged, 3U);
  EXPECT_EQ(counts.samplesChanged, 3U);
}

TEST_F(Import, WhatIsNoNumberIsRefused) {
  FoodImport import(collection, {.name = "table"}, kKeeper);
  const ComponentId calcium = import.component(nutrient("CA"));
  ImportedFood food{.food = plain("kale").food};
  EXPECT_EQ(codeOf([&] { (void)import.sample(food); }), StoreErrorCode::Refused);
  food.sample.sourceCode = "1";
  const SampleId sample = import.sample(food);
  for (const double amount :
       {-1.0, std::numeric_limits<double>::infinity(), std::numeric_limits<double>::quiet_NaN()})
    EXPECT_EQ(
        codeOf([&] { import.add(sample, {.component = calcium, .amount = quantity::AsFedContent(amount)}); }),
        StoreErrorCode::Refused);
}

}  // namespace
}  // namespace tarebowl::store
