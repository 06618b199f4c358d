// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/table_import.h"

#include "core/exchange/mapping_guess.h"
#include "core/store/food_reading.h"
#include "core/store/verbs.h"
#include "tests/core/store/larder.h"

#include <gtest/gtest.h>

#include <string>

// The table is invented.
namespace tarebowl::transfer {
namespace {

using exchange::FoodChange;

constexpr const char* kTable = "Food,Water (g),CA (mg)\nKale,89.6,254\nEndive,93.8,52\n";

class TableImport : public testing::Test {
 protected:
  store::OwnFolder folder;
  store::Collection collection = store::Collection::create(folder / "a.tarebowl", store::kKeeper);

  Imported import(const std::string& text, Keep keep, const exchange::ImportOptions& options = {}) {
    FoodTable table{.input = exchange::tableText(text, "greens.csv"), .mapping = {}, .file = "greens.csv"};
    table.mapping = exchange::guessMapping(table.input).mapping;
    return importTable(collection, table, store::kKeeper, keep, options);
  }
  static std::size_t foods(const Imported& imported, FoodChange change) {
    return imported.plan.foods.at(static_cast<std::size_t>(change));
  }
};

TEST_F(TableImport, APlanSaysWhatAnImportWillDoAndWritesNothing) {
  const Imported planned = import(kTable, Keep::Nothing);
  EXPECT_EQ(foods(planned, FoodChange::New), 2U);
  EXPECT_EQ(planned.change, std::nullopt);
  EXPECT_EQ(store::countFoods(collection), 0U);
}

TEST_F(TableImport, IsTakenBackByTheEntryItNames) {
  const Imported imported = import(kTable, Keep::WhereItMay);
  ASSERT_TRUE(imported.change.has_value());
  EXPECT_EQ(store::countFoods(collection), 2U);
  store::undo(collection, *imported.change, store::kKeeper);
  EXPECT_EQ(store::countFoods(collection), 0U);
}

TEST_F(TableImport, ASecondTimeChangesNothingAndLeavesNoEntry) {
  (void)import(kTable, Keep::WhereItMay);
  const Imported again = import(kTable, Keep::WhereItMay);
  EXPECT_EQ(foods(again, FoodChange::Unchanged), 2U);
  EXPECT_EQ(again.change, std::nullopt);
}

TEST_F(TableImport, NothingIsKeptOfATableWithALineThatIsRefused) {
  std::string table = kTable;
  table += "Chard,92.7,=D3\n";
  const Imported imported = import(table, Keep::WhereItMay);
  EXPECT_TRUE(imported.plan.isRefused());
  EXPECT_EQ(imported.change, std::nullopt);
  EXPECT_EQ(store::countFoods(collection), 0U);
}

TEST_F(TableImport, OneThatIsStoppedKeepsNothing) {
  std::stop_source stop;
  stop.request_stop();
  const Imported imported = import(kTable, Keep::WhereItMay, {.stop = stop.get_token()});
  EXPECT_TRUE(imported.plan.stopped);
  EXPECT_EQ(store::countFoods(collection), 0U);
}

}  // namespace
}  // namespace tarebowl::transfer
