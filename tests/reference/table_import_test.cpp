// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_plan.h"
#include "core/exchange/mapping_guess.h"
#include "tests/reference/ifct_table.h"
#include "tests/reference/imported_tables.h"
#include "tests/reference/reference_data.h"
#include "tests/reference/sr28.h"

#include <gtest/gtest.h>

namespace tarebowl::reference {
namespace {

using namespace tarebowl::exchange;

/// No remark of a kind that refuses the table; says which otherwise.
::testing::AssertionResult isAccepted(const ImportPlan& plan) {
  if (plan.mayBeWritten()) return ::testing::AssertionSuccess();
  try {
    throwFirstRefusal(plan, "table");
  } catch (const std::exception& error) {
    return ::testing::AssertionFailure() << error.what();
  }
}

// 679,045 values: ../shared/reference/sr28/README.txt. What the mapping leaves out says the same again
// (energy in kJ, vitamins A and D in IU, protein by another factor) or has no INFOODS tagname.
TEST(ImportOfSr28, TakesEveryOneOfIts679045Values) {
  const auto published = sr28Table();
  if (!published) GTEST_SKIP() << missingNote(kSr28Amounts);
  const auto& [table, mapping] = *published;
  MemorySink sink;
  const ImportPlan plan = importTable(table, mapping, sink);
  ASSERT_TRUE(isAccepted(plan));
  EXPECT_EQ(plan.records, 679'045U);
  EXPECT_EQ(plan.valuesNew + plan.of(ImportIssue::LeftOut).count, 679'045U);
  EXPECT_EQ(plan.foods[0], 8789U);
  sink.commit();
  EXPECT_EQ(sink.foods.at("1001").name, "Butter, salted");
  EXPECT_EQ(sink.foods.at("1001").group, "Dairy and Egg Products");
  // The table's first record: protein 0.85 g, 16 samples, standard error 0.074, so sd = 0.074 * sqrt(16).
  const auto& protein = sink.value("1001", "PROCNT");
  EXPECT_DOUBLE_EQ(protein.amount, 0.85);
  EXPECT_EQ(protein.sampleCount, 16);
  EXPECT_DOUBLE_EQ(protein.sd.value(), 0.296);
  EXPECT_EQ(protein.source, "SR28: analytical or derived from analytical");

  const ImportPlan again = importTable(table, mapping, sink);
  EXPECT_EQ(again.valuesNew + again.valuesChanged, 0U);
  EXPECT_EQ(again.foods[2], 8789U);
  RecordProperty("values", static_cast<int>(plan.valuesNew));
  RecordProperty("left_out", static_cast<int>(plan.of(ImportIssue::LeftOut).count));
}

TEST(ImportOfIfct, TakesEveryFoodWithItsScatter) {
  const auto published = ifctTableWithMapping();
  if (!published) GTEST_SKIP() << ifctMissingNote();
  const auto& [table, mapping] = *published;
  MemorySink sink;
  const ImportPlan plan = importTable(table, mapping, sink);
  ASSERT_TRUE(isAccepted(plan));
  // The book has 528 foods; the package has 542 records.
  EXPECT_EQ(plan.records, 542U);
  EXPECT_EQ(plan.foods[0], 542U);
  sink.commit();
  // Barley's record in the package: moisture 9.77 ± 0.38, calcium 0.02864 ± 0.00349 g, energy 1321 kJ.
  EXPECT_DOUBLE_EQ(sink.per100("A004", "WATER"), 9.77);
  EXPECT_DOUBLE_EQ(sink.value("A004", "WATER").sd.value(), 0.38);
  EXPECT_NEAR(sink.per100("A004", "CA"), 28.64, 1e-12);
  EXPECT_DOUBLE_EQ(sink.value("A004", "CA").sd.value(), 0.00349);
  EXPECT_NEAR(sink.per100("A004", "ENERC"), 1321.0 / 4.184, 1e-9);
  EXPECT_EQ(importTable(table, mapping, sink).foods[2], 542U);
}

TEST(ImportOfIfct, IsGuessedButForTheUnitsThatTheTableDoesNotSay) {
  const auto file = ifctFile();
  if (!file) GTEST_SKIP() << ifctMissingNote();
  const MappingGuess guess = guessMapping(tableFile(*file));
  EXPECT_FALSE(guess.mapping.isLong);
  EXPECT_EQ(guess.mapping.decimalMark, DecimalMark::Point);
  const auto use = [&](const std::string& title) {
    for (const ColumnUse& column : guess.mapping.columns)
      if (column.title == title) return column;
    return ColumnUse{};
  };
  EXPECT_EQ(use("Food Code; code").role, ColumnRole::Code);
  EXPECT_EQ(use("Food Name; name").role, ColumnRole::Food);
  EXPECT_EQ(use("Calcium (Ca); ca").nutrient, food::nutrients::calcium());
  EXPECT_EQ(use("Calcium (Ca); ca_e").role, ColumnRole::Sd);
  EXPECT_EQ(use("Calcium (Ca); ca_e").nutrient, food::nutrients::calcium());
}

}  // namespace
}  // namespace tarebowl::reference
