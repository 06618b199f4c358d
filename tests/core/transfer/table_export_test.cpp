// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/table_export.h"

#include "core/exchange/mapping_guess.h"
#include "core/store/food_reading.h"
#include "core/transfer/table_import.h"
#include "tests/core/store/larder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

// The table is invented.
namespace tarebowl::transfer {
namespace {

using ::testing::ElementsAre;

constexpr const char* kCompilation =
    "Code,Food,Nutrient,Value,Unit,SD,n,Qualifier,Source\n"
    "crk,Cricket,CA,40,mg,6,3,,Invented 2002\n"
    "crk,Cricket,PROCNT,20,g,,,,Invented 2010\n"
    "crk,Cricket,Moon dust,1.5,g/kg DM,,2,,Invented 2010\n"
    "crk,Cricket,Moonlight,71,kJ,,,<,Invented 2002\n"
    "crk,Cricket,Moon dust,30,IU,,,,Invented 2002\n"
    "kale,Kale,CA,254,mg,,,,\n";

class TableExport : public testing::Test {
 protected:
  store::OwnFolder folder;

  static Imported import(store::Collection& collection, const std::string& text) {
    FoodTable table{.input = exchange::tableText(text, "greens.csv"), .mapping = {}, .file = "greens.csv"};
    table.mapping = exchange::guessMapping(table.input).mapping;
    return importTable(collection, table, store::kKeeper, Keep::WhereItMay);
  }
  static std::string exported(const store::Collection& collection) {
    std::ostringstream out;
    exchange::writeCsv(foodsOf(collection), exchange::TableLayout::Long, out);
    return out.str();
  }
};

TEST_F(TableExport, AndBackIntoAnotherCollectionLosesNothing) {
  store::Collection first = store::Collection::create(folder / "a.tarebowl", store::kKeeper);
  ASSERT_TRUE(import(first, kCompilation).change);
  const std::string text = exported(first);
  store::Collection second = store::Collection::create(folder / "b.tarebowl", store::kKeeper);
  ASSERT_TRUE(import(second, text).change);
  EXPECT_EQ(exported(second), text);
}

TEST_F(TableExport, AndBackIntoTheSameCollectionChangesNothing) {
  store::Collection collection = store::Collection::create(folder / "a.tarebowl", store::kKeeper);
  ASSERT_TRUE(import(collection, kCompilation).change);
  const Imported again = import(collection, exported(collection));
  EXPECT_EQ(again.plan.foods[static_cast<std::size_t>(exchange::FoodChange::Unchanged)], 2U);
  EXPECT_EQ(again.change, std::nullopt);
}

TEST_F(TableExport, GivesEachSourceOfAFoodASampleOfItsOwn) {
  store::Collection collection = store::Collection::create(folder / "a.tarebowl", store::kKeeper);
  ASSERT_TRUE(import(collection, kCompilation).change);
  const auto cricket = store::findFood(collection, "crk");
  ASSERT_TRUE(cricket);
  std::vector<std::string> sources;
  for (const auto& sample : store::samplesOf(collection, cricket->id))
    sources.push_back(sample.sample.source);
  EXPECT_THAT(sources, ElementsAre("Invented 2002", "Invented 2010"));
  const auto known = store::knowFood(collection, cricket->id);
  EXPECT_EQ(known->composition.find(food::nutrients::calcium())->source, "Invented 2002");
  EXPECT_EQ(known->composition.find(food::nutrients::protein())->source, "Invented 2010");
  const auto kale = store::knowFood(collection, store::findFood(collection, "kale")->id);
  EXPECT_EQ(kale->composition.find(food::nutrients::calcium())->source, "greens");  // the table's name
}

TEST_F(TableExport, KeepsApartWhatIsAMassAndWhatIsAnActivity) {
  store::Collection collection = store::Collection::create(folder / "a.tarebowl", store::kKeeper);
  ASSERT_TRUE(import(collection, kCompilation).change);
  std::vector<std::string> kept;
  for (const auto& value : store::otherValuesOf(collection, store::findFood(collection, "crk")->id))
    kept.push_back(value.name + ": " + std::to_string(food::amountOf(value.amount)) + " " + value.unit);
  // 1.5 g in 1000 g DM are 150 mg in 100 g DM; 71 kJ are 71 / 4.184 = 16.969407 kcal.
  EXPECT_THAT(kept, ElementsAre("Moon dust: 150.000000 mg", "Moon dust (IU): 30.000000 IU",
                                "Moonlight (kcal): 16.969407 kcal"));
}

}  // namespace
}  // namespace tarebowl::transfer
