// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/plan_lines.h"

#include "core/exchange/mapping_guess.h"
#include "core/exchange/table_examples.h"
#include "tests/core/exchange/memory_sink.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// The tables are invented.
namespace tarebowl::exchange {
namespace {

using ::testing::ElementsAre;
using ::testing::Pair;

/// What importing the text would do, line by line.
PlanLines linesOf(const std::string& text, const ImportOptions& base = {}) {
  const TableInput table = tableText(text, "t.csv");
  PlanLines lines;
  ImportOptions options = base;
  options.onFood = [&](const PlannedFood& food) { lines.add(food); };
  options.onRemark = [&](ImportIssue issue, const Remark& remark) { lines.add(issue, remark); };
  MemorySink sink;
  (void)importTable(table, guessMapping(table).mapping, sink, options);
  lines.finish();
  return lines;
}

TEST(PlanLines, StandInTheOrderOfTheTableEachWithItsKind) {
  const PlanLines lines = linesOf("Food,CA (mg),P (mg)\nKale,254,55\nChard,x,46\nLeaves\n");
  ASSERT_EQ(lines.size(), 4U);
  const auto kale = std::get<PlannedFood>(lines.at(0));
  EXPECT_EQ(kale.name, "Kale");
  EXPECT_EQ(kale.line, 2U);
  EXPECT_EQ(kale.outcome.valuesNew, 2U);
  EXPECT_EQ(std::get<PlannedFood>(lines.at(1)).name, "Chard");
  const auto bad = std::get<PlannedRemark>(lines.at(2));
  EXPECT_EQ(bad.issue, ImportIssue::BadNumber);
  EXPECT_EQ(bad.remark.line, 3U);
  EXPECT_EQ(bad.remark.column, 2U);
  EXPECT_EQ(bad.remark.found, "x");
  EXPECT_EQ(lines.kindOf(3), PlanLineKind::LeftOut);
  EXPECT_THAT(lines.of(PlanLineKind::Problem), ElementsAre(2U));
}

TEST(PlanLines, HoldEveryRemarkThoughThePlanKeepsAFew) {
  std::string text = "Food,CA (mg)\n";
  for (int i = 0; i < 100; ++i) text += "Leaf " + std::to_string(i) + ",x\n";
  EXPECT_EQ(linesOf(text, {.firstOfEachKind = 3}).of(PlanLineKind::Problem).size(), 100U);
}

TEST(PlanLines, CountTheNamesThatAreNotKnown) {
  const PlanLines lines =
      linesOf("food,nutrient,value,unit\nA,Lime,1,mg\nA,Calcium,2,mg\nB,Lime,3,mg\nB,Chalk,3,mg\n");
  EXPECT_THAT(lines.foundIn(ImportIssue::KeptByName), ElementsAre(Pair("Chalk", 1U), Pair("Lime", 2U)));
}

TEST(PlanLines, TellWhatIsKeptUnderItsOwnNameFromWhatIsLeftOut) {
  const PlanLines lines =
      linesOf("food,nutrient,value,unit\nA,Calcium,2,mg\nA,Lime,1,mg\nA,Moon pH,6.5,pH\nA,Chalk,n.d.,mg\n");
  EXPECT_THAT(lines.of(PlanLineKind::Noted), ElementsAre(1U));
  EXPECT_EQ(std::get<PlannedRemark>(lines.at(1)).remark.found, "Lime");
  EXPECT_THAT(lines.of(PlanLineKind::LeftOut), ElementsAre(2U)) << "chalk states nothing: nothing is kept";
  EXPECT_EQ(std::get<PlannedRemark>(lines.at(2)).remark.found, "Moon pH");
}

TEST(ImportStop, IsHeededWhereNoFoodComesThrough) {
  std::string text = "Food,CA (mg)\nKale,254\n";
  for (int i = 0; i < 1000; ++i) text += "Leaf " + std::to_string(i) + ",x\n";
  const TableInput table = tableText(text, "t.csv");
  std::stop_source stop;
  ImportOptions options{.stop = stop.get_token()};
  options.onRemark = [&](ImportIssue, const Remark&) { stop.request_stop(); };
  MemorySink sink;
  const ImportPlan plan = importTable(table, guessMapping(table).mapping, sink, options);
  EXPECT_TRUE(plan.stopped);
  EXPECT_EQ(plan.of(ImportIssue::BadNumber).count, 1U);
}

TEST(ColumnExamples, AreTheFirstDifferentCellsUnderEachTitle) {
  const TableInput table = tableText("Food,CA\n,mg\nKale,254\nChard,\nKale,254\nEndive,52\n", "t.csv");
  TableMapping mapping = guessMapping(table).mapping;
  ASSERT_TRUE(mapping.unitsLine);
  EXPECT_THAT(columnExamples(table, mapping),
              ElementsAre(ColumnExamples{"Food", "", {"Kale", "Chard", "Endive"}},
                          ColumnExamples{"CA", "mg", {"254", "52"}}));
}

TEST(GuessWithWhatIsKnown, TakesTheHeaderWhereAPersonSaysItIs) {
  const TableInput table =
      tableText("Greens,of,spring\nmade,by,nobody\nFood,CA (mg),P (mg)\nKale,254,55\n", "t.csv");
  EXPECT_EQ(guessMapping(table).mapping.headerLine, 1U);
  const TableMapping mapping = guessMapping(table, {.headerLine = 3}).mapping;
  EXPECT_EQ(mapping.headerLine, 3U);
  EXPECT_EQ(mapping.columns.at(1).role, ColumnRole::Value);
}

}  // namespace
}  // namespace tarebowl::exchange
