// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/vitamin_units.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>

namespace tarebowl::food {
namespace {

using quantity::Unit;

std::optional<double> factor(const char* tagname, Unit unit) {
  return toOwnUnitFactor(findByTagname(tagname).value(), unit);
}

TEST(VitaminUnits, InternationalUnitsOfAAndDAndEBecomeTheNutrientsOwnUnit) {
  EXPECT_DOUBLE_EQ(factor("VITA_RAE", Unit::InternationalUnit).value(), 0.3);
  EXPECT_DOUBLE_EQ(factor("RETOL", Unit::InternationalUnit).value(), 0.3);
  EXPECT_DOUBLE_EQ(factor("VITD", Unit::InternationalUnit).value(), 0.025);
  EXPECT_DOUBLE_EQ(factor("CHOCAL", Unit::InternationalUnit).value(), 0.025);
  EXPECT_DOUBLE_EQ(factor("ERGCAL", Unit::InternationalUnit).value(), 0.025);
  EXPECT_DOUBLE_EQ(factor("VITE", Unit::InternationalUnit).value(), 1.0 / 1.49);
}

// 40 IU vitamin D per ug: 2500 IU are 62.5 ug.
TEST(VitaminUnits, TwentyFiveHundredUnitsOfVitaminDAre62Point5Micrograms) {
  EXPECT_DOUBLE_EQ(2500.0 * factor("VITD", Unit::InternationalUnit).value(), 62.5);
}

TEST(VitaminUnits, OneHundredMilligramsOfEachFormOfVitaminEByTheFeedFactors) {
  EXPECT_NEAR(internationalUnitsOf(VitaminForm::DAlphaTocopherol, 100.0), 149.0, 1e-9);
  EXPECT_NEAR(internationalUnitsOf(VitaminForm::DAlphaTocopherylAcetate, 100.0), 136.0, 1e-9);
  EXPECT_NEAR(internationalUnitsOf(VitaminForm::DlAlphaTocopherol, 100.0), 110.0, 1e-9);
  EXPECT_NEAR(internationalUnitsOf(VitaminForm::DlAlphaTocopherylAcetate, 100.0), 100.0, 1e-9);
}

// Molar masses: retinol 286.46, acetate 328.5, palmitate 524.9 g/mol; one IU is 0.3 ug retinol.
TEST(VitaminUnits, EstersOfRetinolWeighAsTheirMolarMassesSay) {
  EXPECT_NEAR(activityFactor(VitaminForm::RetinylAcetate).massPerIu, 0.3 * 328.5 / 286.46, 5e-4);
  EXPECT_NEAR(activityFactor(VitaminForm::RetinylPalmitate).massPerIu, 0.3 * 524.9 / 286.46, 5e-4);
}

TEST(VitaminUnits, EveryFormHasItsPlaceItsSourceAndAPositiveMass) {
  for (std::size_t i = 0; i < activityFactors().size(); ++i) {
    const auto& entry = activityFactors()[i];
    EXPECT_EQ(static_cast<std::size_t>(entry.form), i);
    EXPECT_FALSE(entry.source.empty());
    EXPECT_GT(entry.massPerIu, 0.0);
    EXPECT_EQ(quantity::dimensionOf(entry.massUnit), quantity::Dimension::Mass);
  }
}

TEST(VitaminUnits, MassAndEnergyConvertForEveryNutrientOfTheirKind) {
  EXPECT_DOUBLE_EQ(factor("CA", Unit::Gram).value(), 1000.0);
  EXPECT_DOUBLE_EQ(factor("SE", Unit::Milligram).value(), 1000.0);
  EXPECT_DOUBLE_EQ(factor("PROCNT", Unit::Gram).value(), 1.0);
  EXPECT_DOUBLE_EQ(factor("ENERC", Unit::Kilojoule).value(), 1.0 / 4.184);
  EXPECT_DOUBLE_EQ(factor("VITD", Unit::Microgram).value(), 1.0);
}

TEST(VitaminUnits, WhatHasNoFactorHasNone) {
  EXPECT_FALSE(factor("CA", Unit::InternationalUnit));
  EXPECT_FALSE(factor("CARTB", Unit::InternationalUnit));  // depends on the animal
  EXPECT_FALSE(factor("VITC", Unit::InternationalUnit));
  EXPECT_FALSE(factor("ENERC", Unit::Gram));
  EXPECT_FALSE(factor("FAT", Unit::Kilocalorie));
}

// European pet food industry's nutritional guidelines: felids need preformed vitamin A.
TEST(VitaminUnits, CaroteneIsWorthWhatTheSpeciesMakesOfIt) {
  const VitaminASources carrot{.retinol = 10.0, .betaCarotene = 8285.0, .otherProvitamins = 3477.0};
  // 10 + 8285/12 + 3477/24 = 845.2917; 10 + 8285/6 + 3477/12 = 1680.5833
  EXPECT_NEAR(retinolActivityEquivalents(carrot), 845.291667, 1e-6);
  EXPECT_NEAR(retinolActivityEquivalents(carrot, kHistoricRetinolEquivalent), 1680.583333, 1e-6);
  EXPECT_DOUBLE_EQ(retinolActivityEquivalents(carrot, kFelidCarotene), 10.0);
}

RC_GTEST_PROP(VitaminUnits, UnitsOfAFormWeighWhatTheyWeighed, ()) {
  const auto index = *rc::gen::inRange<std::size_t>(0, activityFactors().size());
  const auto& entry = activityFactors()[index];
  const double amount = *rc::gen::inRange(0, 1'000'001) / 1000.0;
  RC_ASSERT(std::abs(internationalUnitsOf(entry.form, amount) * entry.massPerIu - amount) <=
            1e-15 * 4 * amount);
}

}  // namespace
}  // namespace tarebowl::food
