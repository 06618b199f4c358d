// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_plan.h"
#include "core/exchange/mapping_guess.h"
#include "core/exchange/problem_json.h"
#include "tests/core/exchange/memory_sink.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

namespace tarebowl::exchange {
namespace {

using ::testing::HasSubstr;

// Values are invented unless said otherwise.
constexpr const char* kWide =
    "Food,Group,Moisture (g),Calcium (mg),Calcium SD,Phosphorus (mg/kg DM)\n"
    "Kale,leaf,89.6,254,31,5300\n"
    "Endive,leaf,93.8,52,-,\n";

void importInto(MemorySink& sink, const std::string& text, ImportPlan* kept = nullptr) {
  const TableInput table = tableText(text, "t.csv");
  const ImportPlan plan = importTable(table, guessMapping(table).mapping, sink);
  sink.commit();
  if (kept != nullptr) *kept = plan;
  if (!plan.mayBeWritten()) throwFirstRefusal(plan, "t.csv");
}

TEST(Import, ReadsAWideTableByItsTitlesAlone) {
  MemorySink sink;
  ImportPlan plan;
  importInto(sink, kWide, &plan);
  EXPECT_EQ(plan.records, 2U);
  EXPECT_EQ(plan.foods[0], 2U);
  EXPECT_EQ(plan.valuesNew, 5U);
  EXPECT_EQ(plan.nothingKnown, 1U);  // endive's phosphorus; its sd is no value
  EXPECT_EQ(sink.foods.at("Kale").group, "leaf");
  EXPECT_DOUBLE_EQ(sink.per100("Kale", "CA"), 254.0);
  EXPECT_DOUBLE_EQ(sink.value("Kale", "CA").sd.value(), 31.0);
  EXPECT_FALSE(sink.value("Endive", "CA").sd);
  EXPECT_EQ(sink.value("Kale", "P").basis, quantity::Basis::DryMatter);
  EXPECT_DOUBLE_EQ(sink.per100("Kale", "P"), 530.0);  // 5300 mg in 1000 g DM
}

TEST(Import, ReadsALongTableWithUnitsInAColumn) {
  MemorySink sink;
  importInto(sink,
             "Food;Nutrient;Value;Unit;SD;n;Qualifier;Source\n"
             "Kale;Calcium;2,54;g/kg;0,31;4;;lab 7\n"
             "Kale;Protein;min. 2,9;%;;;;label\n"
             "Kale;Selenium;0,9;\u00b5g;;;<;lab 7\n"
             "Endive;Energy;71;kJ;;;;\n");
  EXPECT_DOUBLE_EQ(sink.per100("Kale", "CA"), 254.0);
  EXPECT_EQ(sink.value("Kale", "CA").sampleCount, 4);
  EXPECT_EQ(sink.value("Kale", "CA").source, "lab 7");
  EXPECT_EQ(sink.value("Kale", "PROCNT").qualifier, food::Qualifier::AtLeast);
  EXPECT_EQ(sink.value("Kale", "SE").qualifier, food::Qualifier::Below);
  EXPECT_NEAR(sink.per100("Endive", "ENERC"), 71.0 / 4.184, 1e-12);
}

TEST(Import, FindsTheHeaderBelowATitleAndTheUnitsBelowTheHeader) {
  MemorySink sink;
  ImportPlan plan;
  importInto(sink,
             "Table 3. Composition of leaves,,\n\n"
             "Food,Water,Ca\n"
             ",g/100 g,g/kg\n"
             "Leaves,,\n"
             "Kale,89.6,2.54\n"
             "Source: invented,,\n",
             &plan);
  EXPECT_DOUBLE_EQ(sink.per100("Kale", "CA"), 254.0);
  EXPECT_EQ(sink.foods.size(), 1U);
  EXPECT_EQ(plan.of(ImportIssue::NoValues).count, 2U);  // a heading and a footnote are no foods
  EXPECT_EQ(plan.of(ImportIssue::NoValues).first.front().line, 5U);
}

TEST(Import, OfTheSameTableAgainChangesNothing) {
  MemorySink sink;
  importInto(sink, kWide);
  ImportPlan again;
  importInto(sink, kWide, &again);
  EXPECT_EQ(again.foods[2], 2U);
  EXPECT_EQ(again.valuesNew + again.valuesChanged, 0U);
}

TEST(Import, SaysWhichFoodsChange) {
  MemorySink sink;
  importInto(sink, kWide);
  ImportPlan plan;
  importInto(sink, "Food,Calcium (mg)\nKale,250\nEndive,52\nChard,51\n", &plan);
  EXPECT_EQ(plan.foods[0], 1U);
  EXPECT_EQ(plan.foods[1], 1U);
  EXPECT_EQ(plan.foods[2], 1U);  // endive has 52 mg again
  ASSERT_EQ(plan.firstFoods.size(), 3U);
  EXPECT_EQ(plan.firstFoods[0].name, "Kale");
  EXPECT_EQ(plan.firstFoods[0].line, 2U);
  EXPECT_EQ(plan.firstFoods[0].outcome.change, FoodChange::Changed);
  EXPECT_EQ(plan.firstFoods[2].outcome.change, FoodChange::New);
}

TEST(Import, CanBeStopped) {
  MemorySink sink;
  const TableInput table = tableText(kWide, "t.csv");
  std::stop_source stop;
  stop.request_stop();
  const ImportPlan plan = importTable(table, guessMapping(table).mapping, sink, {.stop = stop.get_token()});
  EXPECT_TRUE(plan.stopped);
  EXPECT_FALSE(plan.mayBeWritten());
}

TEST(Import, ReportsHowFarItIs) {
  MemorySink sink;
  double last = -1.0;
  const TableInput table = tableText(kWide, "t.csv");
  (void)importTable(table, guessMapping(table).mapping, sink, {.progress = [&](double share) {
                      EXPECT_GE(share, last);
                      last = share;
                    }});
  EXPECT_EQ(last, 1.0);
}

TEST(Import, TakesALongTableThatComesBackToItsFoods) {
  MemorySink sink;
  ImportPlan plan;
  importInto(sink,
             "Food,Nutrient,Value,Unit\nKale,CA,254,mg\nEndive,CA,52,mg\nKale,P,55,mg\nEndive,P,28,mg\n",
             &plan);
  EXPECT_DOUBLE_EQ(sink.per100("Kale", "P"), 55.0);
}

TEST(Import, NamesNutrientsThatNobodyKnowsAndTakesTheRest) {
  MemorySink sink;
  ImportPlan plan;
  importInto(sink, "Food,Nutrient,Value,Unit\nKale,CA,254,mg\nKale,Moon dust,3,mg\nEndive,Moon dust,3,mg\n",
             &plan);
  EXPECT_EQ(plan.of(ImportIssue::KeptByName).count, 2U);
  ASSERT_EQ(plan.of(ImportIssue::KeptByName).first.size(), 1U);
  EXPECT_EQ(plan.of(ImportIssue::KeptByName).first[0].found, "Moon dust");
  EXPECT_EQ(plan.valuesOther, 2U);
  EXPECT_EQ(plan.valuesLeftOut(), 0U) << "what is kept is not left out";
  EXPECT_EQ(sink.others.at("Kale").at("Moon dust").amount, 3.0);
}

TEST(Import, KeepsWhatHasNoNameHereWhereItsUnitIsUnderstood) {
  MemorySink sink;
  ImportPlan plan;
  importInto(sink,
             "Food,Nutrient,Value,Unit,Source\n"
             "Kale,Moon dust (g/kg DM),1.5,,Invented 1\n"
             "Kale,Moon pH,6.5,pH,Invented 1\n"
             "Kale,Moon,6.5,,Invented 1\n"
             "Kale,=Moon,6.5,mg,Invented 1\n"
             "Kale,Moonlight,<2,kJ,Invented 2\n",
             &plan);
  EXPECT_EQ(plan.of(ImportIssue::KeptByName).count, 2U) << "Moon dust and Moonlight";
  EXPECT_EQ(plan.of(ImportIssue::UnknownNutrient).count, 3U) << "no unit of ours, none at all, a formula";
  EXPECT_EQ(plan.valuesOther, 2U);
  EXPECT_EQ(plan.valuesLeftOut(), 3U);
  EXPECT_EQ(plan.foods[0], 1U);
  const auto& kept = sink.others.at("Kale");
  ASSERT_EQ(kept.size(), 2U);
  EXPECT_EQ(kept.at("Moon dust").basis, quantity::Basis::DryMatter);
  EXPECT_EQ(kept.at("Moon dust").per, 1000.0);
  EXPECT_EQ(kept.at("Moonlight").unit, quantity::Unit::Kilojoule);
  EXPECT_EQ(kept.at("Moonlight").qualifier, food::Qualifier::Below);
  EXPECT_EQ(kept.at("Moonlight").source, "Invented 2");
}

/// Keeps what it is given.
class ListSink : public ImportSink {
 public:
  FoodOutcome put(const ImportedFood& food) override {
    foods.push_back(food);
    return {.valuesNew = food.values.size() + food.others.size()};
  }
  std::vector<ImportedFood> foods;
};

TEST(Import, TakesANutrientOfAFoodFromEachOfItsSources) {
  const TableInput table = tableText(
      "Food,Nutrient,Value,Unit,Source\nKale,CA,254,mg,Invented 1\nKale,CA,250,mg,Invented 2\n"
      "Kale,CA,254,mg,Invented 1\n",
      "t.csv");
  ListSink sink;
  const ImportPlan plan = importTable(table, guessMapping(table).mapping, sink);
  EXPECT_EQ(plan.of(ImportIssue::SaidTwice).count, 1U);
  ASSERT_EQ(sink.foods.size(), 1U);
  ASSERT_EQ(sink.foods[0].values.size(), 2U);
  EXPECT_EQ(sink.foods[0].values[0].stated.source, "Invented 1");
  EXPECT_EQ(sink.foods[0].values[1].stated.source, "Invented 2");
  const TableInput clash =
      tableText("Food,Nutrient,Value,Unit,Source\nKale,CA,254,mg,A\nKale,CA,250,mg,A\n", "t.csv");
  EXPECT_EQ(importTable(clash, guessMapping(clash).mapping, sink).of(ImportIssue::RepeatedValue).count, 1U);
}

TEST(Import, SaysWhatTheTablesCodesOfSourcesMean) {
  const TableInput table = tableText("Food,Nutrient,Value,Source\nKale,CA,254,1\nKale,P,55,2\n", "t.csv");
  TableMapping mapping = guessMapping(table).mapping;
  mapping.sources = {{"1", "analytical"}};
  ListSink sink;
  (void)importTable(table, mapping, sink);
  ASSERT_EQ(sink.foods.size(), 1U);
  EXPECT_EQ(sink.foods[0].values[0].stated.source, "analytical");
  EXPECT_EQ(sink.foods[0].values[1].stated.source, "2");
}

TEST(Import, HandsOnAFoodWithoutEndInPieces) {
  std::string text = "Food,Nutrient,Value,Unit,Source\n";
  constexpr std::size_t kSources = 10'000;
  for (std::size_t i = 0; i < kSources; ++i) text += "Kale,CA,254,mg,Invented " + std::to_string(i) + "\n";
  const TableInput table = tableText(text, "t.csv");
  ListSink sink;
  EXPECT_EQ(importTable(table, guessMapping(table).mapping, sink).valuesNew, kSources);
  EXPECT_EQ(sink.foods.size(), 3U);
  for (const ImportedFood& food : sink.foods) EXPECT_EQ(food.name, "Kale");
}

TEST(Import, LeavesZeroUnknownWhereTheMappingSaysSo) {
  MemorySink sink;
  const TableInput table = tableText("Food,CA (mg),P (mg)\nKale,254,0\n", "t.csv");
  TableMapping mapping = guessMapping(table).mapping;
  mapping.zeroIsUnknown = true;
  const ImportPlan plan = importTable(table, mapping, sink);
  EXPECT_EQ(plan.zerosUnknown, 1U);
  EXPECT_EQ(plan.valuesNew, 1U);
}

TEST(Guess, SaysWhatIsToBeLookedAt) {
  const MappingGuess guess =
      guessMapping(tableText("Food,CA,Calcium (mg),Lid,Weight P\nKale,\"1,234\",5,blue,3\n", "t.csv"));
  const auto has = [&](GuessDoubt doubt, const std::string& title) {
    for (const GuessNote& note : guess.notes)
      if (note.doubt == doubt && note.title == title) return true;
    return false;
  };
  EXPECT_TRUE(has(GuessDoubt::SecondOfNutrient, "Calcium (mg)"));
  EXPECT_TRUE(has(GuessDoubt::UnitAssumed, "CA"));
  EXPECT_TRUE(has(GuessDoubt::NotUnderstood, "Lid"));
  EXPECT_TRUE(has(GuessDoubt::DecimalMarkOpen, ""));
  EXPECT_FALSE(guess.mapping.decimalMark);
}

TEST(Mapping, IsReadAsItWasWritten) {
  const TableInput table = tableText(kWide, "t.csv");
  TableMapping mapping = guessMapping(table).mapping;
  mapping.zeroIsUnknown = true;
  mapping.unitsLine = true;
  mapping.source = "Invented 2026";
  mapping.form = {Encoding::Latin1, '\t', '\0'};
  mapping.nutrients["203"] = {food::nutrients::protein(), UnitText{quantity::Unit::Gram, 1.0, 100.0}, ""};
  mapping.nutrients["9"] = {std::nullopt, std::nullopt, "again"};
  mapping.groups["7"] = "leaf";
  mapping.sources["1"] = "analytical";
  mapping.foods = FoodList{"foods.csv", {}, 2, {{.title = "id", .role = ColumnRole::Code}}};
  EXPECT_EQ(parseMapping(writeMapping(mapping), "m"), mapping);
}

struct BadMapping {
  const char* name;
  const char* json;
  const char* path;
  const char* expected;
};

class MappingSlips : public ::testing::TestWithParam<BadMapping> {};

TEST_P(MappingSlips, AreRefusedWithTheirKey) {
  try {
    (void)parseMapping(GetParam().json, "m.json");
    FAIL() << "was read";
  } catch (const FormatError& error) {
    EXPECT_EQ(error.keyPath(), GetParam().path);
    EXPECT_THAT(error.expected(), HasSubstr(GetParam().expected));
  }
}

#define MAPPING(more) "{\"format\":\"tarebowl-mapping/1\",\"layout\":\"wide\",\"columns\":[]" more "}"
INSTANTIATE_TEST_SUITE_P(
    All, MappingSlips,
    ::testing::Values(
        BadMapping{"Empty", "", "", "found an empty file"},
        BadMapping{"OtherFormat", R"({"format":"x"})", "format", "tarebowl-mapping/1"},
        BadMapping{"NoLayout", R"({"format":"tarebowl-mapping/1","columns":[]})", "layout", "this key"},
        BadMapping{"Decimal", MAPPING(",\"decimal\":\";\""), "decimal", ". or ,"},
        BadMapping{"Delimiter", MAPPING(",\"delimiter\":\"ab\""), "delimiter", "one mark"},
        BadMapping{"DelimiterIsQuote", MAPPING(",\"delimiter\":\"'\",\"quote\":\"'\""), "quote",
                   "another mark"},
        BadMapping{"Encoding", MAPPING(",\"encoding\":\"ebcdic\""), "encoding", "utf-8"},
        BadMapping{"Slip", MAPPING(",\"decimel\":\".\""), "decimel", "decimal"},
        BadMapping{"Per", MAPPING(",\"per\":0"), "per", "above 0"},
        BadMapping{"Basis", MAPPING(",\"basis\":\"day\""), "basis", "as-fed"},
        BadMapping{"Nutrient", MAPPING(",\"nutrients\":{\"1\":{\"nutrient\":\"XX\"}}"),
                   "nutrients.1.nutrient", "tagname"},
        BadMapping{"Unit", MAPPING(",\"nutrients\":{\"1\":{\"nutrient\":\"CA\",\"unit\":\"ell\"}}"),
                   "nutrients.1.unit", "a unit"},
        BadMapping{"HeaderLine", MAPPING(",\"header_line\":-1"), "header_line", "whole number"}),
    [](const auto& it) { return it.param.name; });

}  // namespace
}  // namespace tarebowl::exchange
