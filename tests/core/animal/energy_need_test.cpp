// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/energy_need.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>
#include <set>
#include <stdexcept>
#include <string>
#include <tuple>

namespace tarebowl::animal {
namespace {

using quantity::Kilocalories;
using quantity::Kilograms;
using quantity::Unit;

constexpr Allometry kInvented{"invented group", EnergyLevel::Resting, 10.0, 0.5,
                              "invented",       Provenance::Invented};

TEST(EnergyNeed, IsTheCoefficientTimesTheMassToItsExponent) {
  EXPECT_DOUBLE_EQ(dailyEnergy(kInvented, Kilograms(4.0)).value(), 20.0);  // 10 * sqrt(4)
  EXPECT_DOUBLE_EQ(dailyEnergy(kInvented, Kilograms(1.0)).value(), 10.0);
}

TEST(EnergyNeed, AFormulaInKilojoulesAndGramsIsReadInItsOwnUnits) {
  Allometry perGram = kInvented;
  perGram.energyUnit = Unit::Kilojoule;
  perGram.massUnit = Kilograms(0.001);
  // 10 * sqrt(4000 g) = 632.4555 kJ = 151.1605 kcal
  EXPECT_NEAR(dailyEnergy(perGram, Kilograms(4.0)).value(), 632.455532 / 4.184, 1e-6);
}

TEST(EnergyNeed, AMassThatIsNoneIsRefused) {
  for (const double mass :
       {0.0, -1.0, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()})
    EXPECT_THROW(static_cast<void>(dailyEnergy(kInvented, Kilograms(mass))), std::domain_error) << mass;
}

TEST(EnergyNeed, AFormulaThatIsNotInEnergyIsRefused) {
  Allometry wrong = kInvented;
  wrong.energyUnit = Unit::Gram;
  EXPECT_THROW(static_cast<void>(dailyEnergy(wrong, Kilograms(1.0))), std::domain_error);
}

// Small Animal Clinical Nutrition, 5th ed., p. 61: 30 * 4 + 70 = 190 kcal, for 2 to 45 kg only.
TEST(EnergyNeed, TheLinearShortcutHoldsBetween2And45KgOnly) {
  EXPECT_EQ(linearRestingEnergy(Kilograms(4.0)), Kilocalories(190.0));
  EXPECT_EQ(linearRestingEnergy(Kilograms(2.0)), Kilocalories(130.0));
  EXPECT_EQ(linearRestingEnergy(Kilograms(45.0)), Kilocalories(1420.0));
  EXPECT_FALSE(linearRestingEnergy(Kilograms(1.999)));
  EXPECT_FALSE(linearRestingEnergy(Kilograms(45.001)));
  EXPECT_FALSE(linearRestingEnergy(Kilograms(std::numeric_limits<double>::quiet_NaN())));
}

TEST(EnergyNeed, EveryPublishedFormulaNamesItsSourceAndWhetherItWasRead) {
  for (const auto& allometry : publishedAllometries()) {
    EXPECT_FALSE(allometry.group.empty());
    EXPECT_FALSE(allometry.source.empty()) << allometry.group;
    EXPECT_TRUE(allometry.provenance == Provenance::Seen || allometry.provenance == Provenance::FromMemory);
    EXPECT_EQ(quantity::dimensionOf(allometry.energyUnit), quantity::Dimension::Energy) << allometry.group;
    EXPECT_GT(allometry.coefficient, 0.0) << allometry.group;
  }
}

TEST(EnergyNeed, EveryMultiplierIsARangeOfOneConditionWithItsSource) {
  std::set<std::tuple<std::string_view, std::string_view>> conditions;
  for (const auto& multiplier : publishedMultipliers()) {
    EXPECT_TRUE(conditions.emplace(multiplier.group, multiplier.condition).second) << multiplier.condition;
    EXPECT_GT(multiplier.low, 0.0) << multiplier.condition;
    EXPECT_LE(multiplier.low, multiplier.high) << multiplier.condition;
    EXPECT_FALSE(multiplier.source.empty()) << multiplier.condition;
  }
}

RC_GTEST_PROP(EnergyNeed, AHeavierAnimalNeedsMoreInAllAndLessPerKilogram, ()) {
  const auto index = *rc::gen::inRange<std::size_t>(0, publishedAllometries().size());
  const auto& allometry = publishedAllometries()[index];
  const Kilograms light(*rc::gen::inRange(1, 100'000) / 1000.0);
  const Kilograms heavy = light * 1.1;
  const auto less = dailyEnergy(allometry, light);
  const auto more = dailyEnergy(allometry, heavy);
  RC_ASSERT(more > less);
  RC_ASSERT(more.value() / heavy.value() < less.value() / light.value());
}

}  // namespace
}  // namespace tarebowl::animal
