// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/number_text.h"

#include <gtest/gtest.h>

#include <array>

namespace tarebowl::exchange {
namespace {

using food::Qualifier;

struct Case {
  const char* text;
  DecimalMark mark;
  NumberReading meaning;
};

constexpr auto kPoint = DecimalMark::Point;
constexpr auto kComma = DecimalMark::Comma;

TEST(NumberText, ReadsWhatLaboratoriesWrite) {
  const Case cases[] = {
      {"0", kPoint, NumberText{0.0}},
      {"12.5", kPoint, NumberText{12.5}},
      {" 12.5 ", kPoint, NumberText{12.5}},
      {".5", kPoint, NumberText{0.5}},
      {"5.", kPoint, NumberText{5.0}},
      {"+3", kPoint, NumberText{3.0}},
      {"5e-7", kPoint, NumberText{5e-7}},
      {"1.5E3", kPoint, NumberText{1500.0}},
      {"12,5", kComma, NumberText{12.5}},
      {"0,05", kComma, NumberText{0.05}},
      {"1,234.5", kPoint, NumberText{1234.5}},
      {"1.234,5", kComma, NumberText{1234.5}},
      {"1 234 567", kPoint, NumberText{1234567.0}},
      {"1\u202f234,5", kComma, NumberText{1234.5}},
      {"1\u00a0234.5", kPoint, NumberText{1234.5}},
      {"1'234.5", kPoint, NumberText{1234.5}},
      {"1\u2019234.5", kPoint, NumberText{1234.5}},
      {"1e\u22125", kPoint, NumberText{1e-5}},
      {"<0.05", kPoint, NumberText{0.05, {}, Qualifier::Below}},
      {"< 0,05", kComma, NumberText{0.05, {}, Qualifier::Below}},
      {"min. 26", kPoint, NumberText{26.0, {}, Qualifier::AtLeast}},
      {"max 3", kPoint, NumberText{3.0, {}, Qualifier::AtMost}},
      {"≥ 26", kPoint, NumberText{26.0, {}, Qualifier::AtLeast}},
      {"≤3", kPoint, NumberText{3.0, {}, Qualifier::AtMost}},
      {"tr", kPoint, NumberText{0.0, {}, Qualifier::Trace}},
      {"Trace", kPoint, NumberText{0.0, {}, Qualifier::Trace}},
      {"0.0±0.1", kPoint, NumberText{0.0, 0.1}},
      {"12.3 +/- 0.4", kPoint, NumberText{12.3, 0.4}},
      {"12.3 (0.4)", kPoint, NumberText{12.3, 0.4}},
      {"12,3 (0,4)", kComma, NumberText{12.3, 0.4}},
  };
  for (const Case& it : cases) EXPECT_EQ(readNumber(it.text, it.mark), it.meaning) << it.text;
}

TEST(NumberText, DoesNotTakeUnknownForZero) {
  for (const char* text : {"", " ", "-", "–", "—", "−", "--", "n.d.", "N.D.", "nd", "NA", "n/a", "?"})
    EXPECT_EQ(readNumber(text, kPoint), NumberReading(NothingKnown{})) << text;
}

TEST(NumberText, RefusesWhatASpreadsheetMadeOfANumber) {
  for (const char* text :
       {"12-Mar", "Mar-12", "12.Mar", "2021-03-12", "12/03/2021", "3/4", "1.3.2021", "12 Mar 2021"})
    EXPECT_EQ(readNumber(text, kPoint), NumberReading(NumberFault::Date)) << text;
  for (const char* text : {"=A1*2", "=SUM(B2:B9)", "+A1", "@SUM(1)"})
    EXPECT_EQ(readNumber(text, kPoint), NumberReading(NumberFault::Formula)) << text;
  for (const char* text : {"#REF!", "#DIV/0!", "#N/A", "#NAME?"})
    EXPECT_EQ(readNumber(text, kPoint), NumberReading(NumberFault::SpreadsheetError)) << text;
}

TEST(NumberText, RefusesWhatIsNoAmount) {
  for (const char* text : {"NaN", "inf", "-inf", "Infinity", "1e999", "∞"})
    EXPECT_EQ(readNumber(text, kPoint), NumberReading(NumberFault::NotFinite)) << text;
  for (const char* text : {"-3", "\u22123.5", "-0.1"})
    EXPECT_EQ(readNumber(text, kPoint), NumberReading(NumberFault::Negative)) << text;
  for (const char* text : {"1,23,4", "12,34", "1.2.3.4", "1 23", ",123", "1,,234"})
    EXPECT_EQ(readNumber(text, kPoint), NumberReading(NumberFault::MisplacedGrouping)) << text;
  for (const char* text : {"twelve", "12 mg", "0x1F", "1e", "e5", "12.3 (n=4)", "1_000", "<", "<tr"})
    EXPECT_EQ(readNumber(text, kPoint), NumberReading(NumberFault::NotANumber)) << text;
}

std::optional<DecimalMark> markOf(std::initializer_list<const char*> cells) {
  DecimalMarkEvidence evidence;
  std::size_t line = 1;
  for (const char* cell : cells) evidence.look(cell, line++);
  return evidence.mark();
}

TEST(DecimalMark, IsToldByTheTablesOwnNumbers) {
  EXPECT_EQ(markOf({"1.5", "22.75"}), DecimalMark::Point);
  EXPECT_EQ(markOf({"1,5", "22,75"}), DecimalMark::Comma);
  EXPECT_EQ(markOf({"1,234", "0,5"}), DecimalMark::Comma);
  EXPECT_EQ(markOf({"1,234", "0.5"}), DecimalMark::Point);
  EXPECT_EQ(markOf({"1.234,5"}), DecimalMark::Comma);
  EXPECT_EQ(markOf({"1,234,567"}), DecimalMark::Point);
  EXPECT_EQ(markOf({"0,123"}), DecimalMark::Comma);  // thousands do not begin with 0
  EXPECT_EQ(markOf({"1.234"}), DecimalMark::Point);  // three printed digits
  EXPECT_EQ(markOf({"12", "n.d.", "-"}), DecimalMark::Point);
}

TEST(DecimalMark, IsLeftOpenWhereNothingTells) {
  EXPECT_EQ(markOf({"1,234", "22,750"}), std::nullopt);  // 1.234 or 1234?
  EXPECT_EQ(markOf({"1.5", "2,5"}), std::nullopt);       // both
}

}  // namespace
}  // namespace tarebowl::exchange
