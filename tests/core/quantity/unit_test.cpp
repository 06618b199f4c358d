// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/unit.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>

namespace tarebowl::quantity {
namespace {

constexpr std::array kAllUnits{Unit::Gram,        Unit::Milligram, Unit::Microgram,
                               Unit::Kilocalorie, Unit::Kilojoule, Unit::InternationalUnit};

TEST(Units, AreReadByTheSymbolsOfTheProblemFormatAndWrittenInAscii) {
  for (const auto* symbol : {"g", "mg", "ug", "kcal", "kJ", "IU"}) {
    const auto unit = parseUnit(symbol);
    ASSERT_TRUE(unit) << symbol;
    EXPECT_EQ(symbolOf(*unit), symbol);
  }
}

TEST(Units, MicrogramIsReadWithEitherMicroSign) {
  EXPECT_EQ(parseUnit("\u00b5g"), Unit::Microgram);  // micro sign
  EXPECT_EQ(parseUnit("\u03bcg"), Unit::Microgram);  // Greek mu
}

TEST(Units, NothingElseIsAUnit) {
  for (const auto* text : {"", "G", "Kcal", "kj", "cal", " g", "g ", "%", "kg", "mcg", "\xb5g", "\xb5"})
    EXPECT_FALSE(parseUnit(text)) << text;
}

TEST(Units, MassAndEnergyConvertWithinTheirKind) {
  EXPECT_DOUBLE_EQ(conversionFactor(Unit::Gram, Unit::Milligram).value(), 1000.0);
  EXPECT_DOUBLE_EQ(conversionFactor(Unit::Gram, Unit::Microgram).value(), 1e6);
  EXPECT_DOUBLE_EQ(conversionFactor(Unit::Microgram, Unit::Milligram).value(), 0.001);
  EXPECT_DOUBLE_EQ(conversionFactor(Unit::Kilocalorie, Unit::Kilojoule).value(),
                   4.184);  // thermochemical, ISO 31-4
}

TEST(Units, NothingConvertsBetweenKinds) {
  EXPECT_FALSE(conversionFactor(Unit::Gram, Unit::Kilocalorie));
  EXPECT_FALSE(conversionFactor(Unit::Kilojoule, Unit::Microgram));
  EXPECT_FALSE(conversionFactor(Unit::InternationalUnit, Unit::Microgram));
  EXPECT_FALSE(conversionFactor(Unit::Milligram, Unit::InternationalUnit));
}

TEST(Units, ConvertExactlyWhereTheDimensionIsOneAndTheSame) {
  for (const Unit from : kAllUnits)
    for (const Unit to : kAllUnits)
      EXPECT_EQ(conversionFactor(from, to).has_value(), dimensionOf(from) == dimensionOf(to))
          << symbolOf(from) << " to " << symbolOf(to);
}

RC_GTEST_PROP(Units, ThereAndBackIsTheIdentity, ()) {
  const auto from = *rc::gen::elementOf(kAllUnits);
  const auto to = *rc::gen::elementOf(kAllUnits);
  const auto there = conversionFactor(from, to);
  const auto back = conversionFactor(to, from);
  RC_ASSERT(there.has_value() == back.has_value());
  if (there) RC_ASSERT(std::abs(*there * *back - 1.0) < 1e-15 * 4);
}

}  // namespace
}  // namespace tarebowl::quantity
