// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_plan.h"
#include "core/exchange/mapping_guess.h"
#include "core/exchange/problem_json.h"
#include "tests/core/exchange/memory_sink.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

// Tables as they should not be. Each is refused as a whole, with the line and column of the first thing that
// is wrong and with what was expected there. (Tables that are no text at all: text_table_test.cpp.)
namespace tarebowl::exchange {
namespace {

using ::testing::HasSubstr;

struct Hostile {
  const char* name;
  std::string table;
  std::string place;     ///< begins so
  std::string expected;  ///< holds this
};

void PrintTo(const Hostile& hostile, std::ostream* out) {
  *out << hostile.name;
}

/// A sound table with one cell put in for the calcium of the second food.
std::string withCalcium(const std::string& cell) {
  return "Food,Water (g),Calcium (mg)\nKale,89.6,254\nEndive,93.8," + cell + "\nChard,92.7,51\n";
}
std::string longWith(const std::string& record) {
  return "Food,Nutrient,Value,Unit,n,Qualifier,Basis\nKale,CA,254.5,mg,3,,\n" + record +
         "\nChard,CA,51,mg,2,,\n";
}

const std::string kCell = "line 3, column 3 (Calcium (mg))";
const std::string kNul(1, '\0');

std::vector<Hostile> badCells() {
  return {
      {"Letters", withCalcium("much"), kCell, "a number, found \"much\""},
      {"NumberWithUnit", withCalcium("52 mg"), kCell, "a number"},
      {"TwoNumbers", withCalcium("52/53"), kCell, "a number"},
      {"Range", withCalcium("52-55"), kCell, "a number"},
      {"Formula", withCalcium("=B2*2"), kCell, "no formula"},
      {"FormulaInQuotes", withCalcium("\"=SUM(B2,B3)\""), kCell, "no formula"},
      {"PlusFormula", withCalcium("+B2"), kCell, "no formula"},
      {"AtFormula", withCalcium("@B2"), kCell, "no formula"},
      {"BrokenReference", withCalcium("#REF!"), kCell, "no error of a spreadsheet"},
      {"DividedByZero", withCalcium("#DIV/0!"), kCell, "no error of a spreadsheet"},
      {"DayAndMonth", withCalcium("5-Feb"), kCell, "no date"},
      {"MonthAndYear", withCalcium("Feb-52"), kCell, "no date"},
      {"IsoDate", withCalcium("2026-02-05"), kCell, "no date"},
      {"SlashedDate", withCalcium("05/02/2026"), kCell, "no date"},
      {"DottedDate", withCalcium("5.2.2026"), kCell, "no date"},
      {"Time", withCalcium("12:30"), kCell, "a number"},
      {"NotANumberInText", withCalcium("NaN"), kCell, "a finite number"},
      {"Infinity", withCalcium("inf"), kCell, "a finite number"},
      {"MinusInfinity", withCalcium("-Infinity"), kCell, "a finite number"},
      {"InfinitySign", withCalcium("\u221e"), kCell, "a finite number"},
      {"NumberBeyondAllDoubles", withCalcium("1e400"), kCell, "a finite number"},
      {"HugeNumber", withCalcium("1e300"), kCell, "at most 105 g in 100 g"},
      {"HugeDigits", withCalcium(std::string(400, '9')), kCell, "a finite number"},
      {"MoreThanTheFood", withCalcium("254000"), kCell, "is the unit right?"},
      {"Negative", withCalcium("-52"), kCell, "0 or more"},
      {"UnicodeMinus", withCalcium("\u221252"), kCell, "0 or more"},
      {"NegativeScatter", withCalcium("52 \u00b1 -3"), kCell, "0 or more"},
      {"ScatterOfLetters", withCalcium("52 (n=4)"), kCell, "a number"},
      {"OpenBracket", withCalcium("52 (4"), kCell, "a number"},
      {"CommaInAPointTable", withCalcium("\"5,2\""), kCell, "grouped by three"},
      {"ThousandsAmiss", withCalcium("\"1,23,4\""), kCell, "grouped by three"},
      {"TwoPoints", withCalcium("5.2.1"), kCell, "grouped by three"},
      {"Hexadecimal", withCalcium("0x34"), kCell, "a number"},
      {"ArabicDigits", withCalcium("\u0665\u0662"), kCell, "a number"},
      {"FullWidthDigits", withCalcium("\uff15\uff12"), kCell, "a number"},
      {"RightToLeftMark", withCalcium("\u200f52"), kCell, "a number"},
      {"LoneLessThan", withCalcium("<"), kCell, "a number"},
      {"VeryLongText", withCalcium(std::string(100'000, 'x')), kCell, "a number, found \"xxxx"},
  };
}

std::vector<Hostile> badRows() {
  return {
      {"ShortRow", "Food,Water (g),Calcium (mg)\nKale,89.6,254\nEndive,93.8\n", "line 3, column 3",
       "3 cells as in the header, found 2"},
      {"LongRow", withCalcium("52,7"), "line 3, column 4", "3 cells as in the header, found 4"},
      {"UnquotedComma", "Food,Water (g),Calcium (mg)\nKale, curly,89.6,254\n", "line 2, column 4", "3 cells"},
      {"NoName", withCalcium("52").replace(withCalcium("52").find("Endive"), 6, ""), "line 3, column 1",
       "the name or code of a food"},
      {"NameIsAFormula", "Food,CA (mg),P (mg)\n\"=HYPERLINK(\"\"x\"\")\",1,2\n", "line 2, column 1",
       "no formula"},
      {"NameBeyondAllMeasure", "Food,CA (mg),P (mg)\n" + std::string(2000, 'x') + ",1,2\n",
       "line 2, column 1", "at most 500 characters"},
      {"SameFoodTwice", withCalcium("52") + "Kale,80,200\n", "line 5, column 1",
       "one record of \"Kale\", found another on line 2"},
      {"SameCodeTwice", "Code,Food,CA (mg)\n7,Kale,1\n7,Chard,2\n", "line 3, column 2",
       "found another on line 2"},
      {"SecondValue", longWith("Kale,CA,260,mg,1,,"), "line 3, column 3 (CA)", "found another on line 2"},
      {"SecondValueLater", longWith("Endive,CA,52,mg,1,,") + "Kale,CA,9,mg,1,,\n", "line 5, column 3 (CA)",
       "found a second"},
      {"UnknownUnit", longWith("Endive,CA,52,ell,1,,"), "line 3, column 4", "a unit such as"},
      {"UnitOfNitrogen", longWith("Endive,LYS,5.2,g/16 g N,1,,"), "line 3, column 4", "a unit such as"},
      {"GramsOfEnergy", longWith("Endive,ENERC,71,mg,1,,"), "line 3, column 3",
       "a unit that this nutrient has"},
      {"UnitsOfCalcium", longWith("Endive,CA,71,IU,1,,"), "line 3, column 3",
       "a unit that this nutrient has"},
      {"HalfASample", longWith("Endive,CA,52,mg,1.5,,"), "line 3, column 5", "a whole number of samples"},
      {"SamplesInLetters", longWith("Endive,CA,52,mg,many,,"), "line 3, column 5", "a number"},
      {"NegativeSamples", longWith("Endive,CA,52,mg,-3,,"), "line 3, column 5", "0 or more"},
      {"UnknownQualifier", longWith("Endive,CA,52,mg,1,about,"), "line 3, column 6", "a qualifier"},
      {"UnknownBasis", longWith("Endive,CA,52,mg,1,,moonlight"), "line 3, column 7", "a basis"},
      {"NoNutrient", longWith("Endive,,52,mg,1,,"), "line 3, column 2", "a nutrient"},
      {"NoFoodInALongTable", longWith(",CA,52,mg,1,,"), "line 3, column 1", "the name or code of a food"},
  };
}

std::vector<Hostile> badTables() {
  return {
      {"Empty", "", "", "found nothing in it"},
      {"OnlyLineEnds", "\n\r\n\r", "", "found nothing in it"},
      {"OnlyAMark", "\xEF\xBB\xBF", "", "found nothing in it"},
      {"OnlySpaces", "   \n  ", "", "found nothing in it"},
      {"HeaderAlone", "Food,CA (mg)\n", "", "values of foods, found none"},
      {"HeaderAndBlankRows", "Food,CA (mg)\n,\n,\n", "", "values of foods, found none"},
      {"AllUnknown", "Food,CA (mg)\nKale,n.d.\nChard,-\n", "", "values of foods, found none"},
      {"ProseWithoutAnyTable", "Dear colleague\nthe samples are late.\nYours\n", "line 1", "names or codes"},
      {"NoFoodColumn", "Lid,CA (mg)\nblue,254\n", "line 1", "names or codes"},
      {"NoNutrientColumn", "Food,Lid\nKale,blue\n", "line 1", "values of a nutrient"},
      {"NoHeader", "Kale,254,12\nChard,51,13\n", "line 1", "names or codes"},
      {"SameTitleTwice", "Food,Food,CA (mg)\nKale,Chard,254\n=A1,Chard,254\n", "line 3, column 1",
       "no formula"},
      {"BothDecimalMarks", "Food;CA (mg);P (mg)\nKale;254,5;3.5\n", "",
       "whether the decimal mark is a point or a comma"},
      {"OpenDecimalMark", "Food;CA (mg);P (mg)\nKale;1,254;3\n", "",
       "whether the decimal mark is a point or a comma"},
      {"ZeroByteInACell", withCalcium("5" + kNul + "2"), "line 3, column 3", "zero byte"},
      {"Executable",
       "\x7f"
       "ELF\x02\x01\x01" +
           std::string(9, '\0') + "\x03",
       "line 1, column 1", "zero byte"},
      {"Picture", "\x89PNG\r\n\x1a\n" + std::string(3, '\0') + "\rIHDR", "line 3, column 1", "zero byte"},
      {"QuoteWithoutEnd", "Food,CA (mg)\n\"Kale,254\nChard,51\n", "line 2, column 1", "a closing \""},
      {"MixedEncodings",
       "Food,CA (mg)\nM\u00f6hre,33\nR\xFC"
       "be,20\n",
       "line 3, column 1", "one encoding"},
  };
}

class HostileTable : public ::testing::TestWithParam<Hostile> {};

TEST_P(HostileTable, IsRefusedWithLineColumnAndWhatWasExpected) {
  MemorySink sink;
  try {
    const TableInput table = tableText(GetParam().table, "t.csv");
    const ImportPlan plan = importTable(table, guessMapping(table).mapping, sink);
    ASSERT_FALSE(plan.mayBeWritten());
    throwFirstRefusal(plan, "t.csv");
  } catch (const FormatError& error) {
    EXPECT_THAT(error.keyPath(), ::testing::StartsWith(GetParam().place));
    EXPECT_EQ(error.keyPath().empty(), GetParam().place.empty());
    EXPECT_THAT(error.expected(), HasSubstr(GetParam().expected));
    const std::string message = error.what();
    EXPECT_THAT(message, ::testing::StartsWith("t.csv: "));
    EXPECT_EQ(message.find('\n'), std::string::npos);
    EXPECT_LT(message.size(), 300U);
  }
}

const auto kName = [](const auto& it) { return std::string(it.param.name); };
INSTANTIATE_TEST_SUITE_P(Cells, HostileTable, ::testing::ValuesIn(badCells()), kName);
INSTANTIATE_TEST_SUITE_P(Rows, HostileTable, ::testing::ValuesIn(badRows()), kName);
INSTANTIATE_TEST_SUITE_P(Tables, HostileTable, ::testing::ValuesIn(badTables()), kName);

TEST(HostileTables, AreManyAndTheSoundOneBesideThemIsRead) {
  EXPECT_GE(badCells().size() + badRows().size() + badTables().size(), 60U);
  for (const std::string& sound : {withCalcium("52"), longWith("Endive,CA,52,mg,1,,")}) {
    MemorySink sink;
    const TableInput table = tableText(sound, "t.csv");
    EXPECT_TRUE(importTable(table, guessMapping(table).mapping, sink).mayBeWritten());
    EXPECT_EQ(sink.foods.size(), 3U);
  }
}

TEST(HostileTables, AreNamedTogetherAndCounted) {
  MemorySink sink;
  std::string text = "Food,CA (mg)\n";
  for (int i = 0; i < 100; ++i) text += "Food " + std::to_string(i) + ",=A1\n";
  const TableInput table = tableText(text, "t.csv");
  const ImportPlan plan = importTable(table, guessMapping(table).mapping, sink, {.firstOfEachKind = 5});
  EXPECT_EQ(plan.of(ImportIssue::BadNumber).count, 100U);
  EXPECT_EQ(plan.of(ImportIssue::BadNumber).first.size(), 5U);
  EXPECT_EQ(plan.of(ImportIssue::BadNumber).first.back().line, 6U);
}

}  // namespace
}  // namespace tarebowl::exchange
