// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/scale_line.h"

#include <gtest/gtest.h>

#include <string>

namespace tarebowl::intake {
namespace {

ScaleLine lineOf(std::string_view text) {
  const auto read = readScaleLine(text);
  EXPECT_TRUE(std::holds_alternative<ScaleLine>(read)) << text;
  return std::holds_alternative<ScaleLine>(read) ? std::get<ScaleLine>(read) : ScaleLine{};
}

ScaleFault faultOf(std::string_view text) {
  const auto read = readScaleLine(text);
  EXPECT_TRUE(std::holds_alternative<ScaleFault>(read)) << text;
  return std::holds_alternative<ScaleFault>(read) ? std::get<ScaleFault>(read) : ScaleFault::Garbled;
}

TEST(LineOfAScale, IsANumberAndAUnitInWhateverDressItComes) {
  const ScaleLine plain{.number = 23.4, .decimals = 1, .unit = ScaleUnit::Gram, .steady = {}};
  EXPECT_EQ(lineOf("23.4 g"), plain);
  EXPECT_EQ(lineOf("   +  0023.4g  "), plain) << "sign apart, leading zeros, unit close by";
  EXPECT_EQ(lineOf("23,4 g"), plain) << "a decimal comma";
  EXPECT_EQ(lineOf("NET 23.4 g"), plain);
  EXPECT_EQ(lineOf("G\t23.4 g"), plain) << "gross stands before the number, gram behind it";
  EXPECT_EQ(lineOf("23.4 G"), plain);
  EXPECT_EQ(lineOf("1.250 kg").unit, ScaleUnit::Kilogram);
  EXPECT_EQ(lineOf("12").unit, std::nullopt);
  EXPECT_EQ(lineOf("12").decimals, 0);
}

TEST(LineOfAScale, SaysWhetherThePanIsAtRestWhereTheScaleSaysSo) {
  EXPECT_EQ(lineOf("S      23.4 g").steady, true);
  EXPECT_EQ(lineOf("S S    23.4 g").steady, true);
  EXPECT_EQ(lineOf("S D    23.4 g").steady, false) << "moves";
  EXPECT_EQ(lineOf("ST,GS,+0023.4 g").steady, true);
  EXPECT_EQ(lineOf("US,NT,+0023.4 g").steady, false);
  EXPECT_EQ(lineOf("23.4 g ?").steady, false);
  EXPECT_EQ(lineOf("23.4 g").steady, std::nullopt);
}

TEST(LineOfAScale, MayBeNegativeAfterATareThatWasHeavier) {
  EXPECT_EQ(lineOf("-  12.0 g").number, -12.0);
  EXPECT_EQ(lineOf("ST,NT,-0012.0 g").number, -12.0);
}

TEST(LineOfAScale, InOuncesIsConvertedAndNotTakenForGrams) {
  EXPECT_DOUBLE_EQ(toGrams(1.0, ScaleUnit::Ounce).value(), 28.349523125);  // 453.59237 / 16
  EXPECT_DOUBLE_EQ(toGrams(2.0, ScaleUnit::Pound).value(), 907.18474);
  EXPECT_EQ(lineOf("0.705 oz").unit, ScaleUnit::Ounce);
  EXPECT_EQ(lineOf("1.5 lb").unit, ScaleUnit::Pound);
}

TEST(LineOfAScale, ThatIsNoWeightIsToldAndNotGuessed) {
  EXPECT_EQ(faultOf("READY"), ScaleFault::NoNumber);
  EXPECT_EQ(faultOf(""), ScaleFault::NoNumber);
  EXPECT_EQ(faultOf("ST,GS,    OL  g"), ScaleFault::OutOfRange);
  EXPECT_EQ(faultOf("12.0 g 13.0 g"), ScaleFault::SeveralNumbers);
  EXPECT_EQ(faultOf("12.3.4 g"), ScaleFault::SeveralNumbers);
  EXPECT_EQ(faultOf("12.0 pcs"), ScaleFault::UnknownUnit) << "pieces are counted, not weighed";
  EXPECT_EQ(faultOf("12.0 ct"), ScaleFault::UnknownUnit);
  EXPECT_EQ(faultOf("\xff\xfe 12.0 g"), ScaleFault::Garbled);
}

}  // namespace
}  // namespace tarebowl::intake
