// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/target_conversion.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

namespace tarebowl::animal {
namespace {

using quantity::Basis;
using quantity::Kilocalories;
using quantity::Kilograms;
using quantity::Unit;

constexpr std::array kBases{Basis::AsFed, Basis::DryMatter, Basis::Energy,
                            Basis::Day,   Basis::BodyMass,  Basis::MetabolicMass};

TargetScale everythingKnown() {
  TargetScale scale;
  scale.kcalPerKgDryMatter = 4000.0;
  scale.dryMatterFraction = 0.25;
  scale.energyPerDay = Kilocalories(500.0);
  scale.bodyMass = Kilograms(16.0);
  return scale;
}

/// A scale that lacks one thing.
TargetScale without(void (*take)(TargetScale&)) {
  TargetScale scale = everythingKnown();
  take(scale);
  return scale;
}

TEST(BasisFactor, OfDryMatterAndEnergyIsThePublishedOne) {
  // AAFCO Dog Food Nutrient Profiles, 2014: 18 % of DM at 4.0 kcal/g is 45 g per 1000 kcal
  EXPECT_DOUBLE_EQ(basisFactor(Basis::DryMatter, Basis::Energy, everythingKnown()).value() * 180.0, 45.0);
  EXPECT_DOUBLE_EQ(basisFactor(Basis::Energy, Basis::DryMatter, everythingKnown()).value() * 45.0, 180.0);
}

TEST(BasisFactor, OfAWaterRichFoodIsItsDryMatter) {
  // 5 % protein as fed at 25 % dry matter is 20 % of DM
  EXPECT_DOUBLE_EQ(basisFactor(Basis::AsFed, Basis::DryMatter, everythingKnown()).value() * 50.0, 200.0);
}

TEST(BasisFactor, LeadsFromTheFoodToTheDayAndTheAnimal) {
  const TargetScale scale = everythingKnown();
  // 500 kcal of 4000 kcal/kg DM are 0.125 kg DM a day, 0.5 kg as fed; 16 kg^0.75 = 8
  EXPECT_DOUBLE_EQ(basisFactor(Basis::DryMatter, Basis::Day, scale).value(), 0.125);
  EXPECT_DOUBLE_EQ(basisFactor(Basis::AsFed, Basis::Day, scale).value(), 0.5);
  EXPECT_DOUBLE_EQ(basisFactor(Basis::Day, Basis::BodyMass, scale).value(), 1.0 / 16.0);
  EXPECT_DOUBLE_EQ(basisFactor(Basis::Day, Basis::MetabolicMass, scale).value(), 1.0 / 8.0);
  EXPECT_DOUBLE_EQ(basisFactor(Basis::BodyMass, Basis::MetabolicMass, scale).value(), 2.0);
}

TEST(BasisFactor, AsksOnlyForWhatItTakes) {
  TargetScale scale;
  scale.bodyMass = Kilograms(16.0);
  EXPECT_TRUE(basisFactor(Basis::BodyMass, Basis::MetabolicMass, scale));
  EXPECT_TRUE(basisFactor(Basis::Day, Basis::BodyMass, scale));
  EXPECT_FALSE(basisFactor(Basis::Energy, Basis::BodyMass, scale));
  EXPECT_EQ(basisFactor(Basis::Energy, Basis::Energy, {}), 1.0);
}

TEST(BasisFactor, IsUnknownWhereAFactIsMissingOrNone) {
  const std::array scales{
      without([](TargetScale& s) { s.dryMatterFraction.reset(); }),
      without([](TargetScale& s) { s.dryMatterFraction = 0.0; }),
      without([](TargetScale& s) { s.dryMatterFraction = 1.01; }),
      without([](TargetScale& s) { s.kcalPerKgDryMatter.reset(); }),
      without([](TargetScale& s) { s.kcalPerKgDryMatter = -1.0; }),
      without([](TargetScale& s) { s.energyPerDay.reset(); }),
      without([](TargetScale& s) { s.bodyMass = Kilograms(0.0); }),
      without([](TargetScale& s) { s.bodyMass = Kilograms(std::numeric_limits<double>::infinity()); }),
  };
  for (const TargetScale& scale : scales) {
    EXPECT_FALSE(basisFactor(Basis::AsFed, Basis::BodyMass, scale));
    EXPECT_FALSE(basisFactor(Basis::BodyMass, Basis::AsFed, scale));
  }
  EXPECT_TRUE(basisFactor(Basis::AsFed, Basis::BodyMass, everythingKnown()));
}

Target protein() {
  return {.id = "protein",
          .nutrient = food::nutrients::protein(),
          .min = 180.0,
          .max = {},
          .unit = Unit::Gram,
          .basis = Basis::DryMatter,
          .hard = true,
          .weight = 2.0,
          .origin = {"a source", Provenance::Seen, "dog"}};
}

TEST(TargetConversion, ChangesTheBoundsAndTheBasisAlone) {
  Target expected = protein();
  expected.min = 45.0;
  expected.basis = Basis::Energy;
  EXPECT_EQ(onBasis(protein(), Basis::Energy, everythingKnown()), expected);
}

TEST(TargetConversion, IsNotGuessedWithoutItsScale) {
  EXPECT_EQ(onBasis(protein(), Basis::Energy, {}), std::nullopt);
  EXPECT_EQ(onBasis(protein(), Basis::DryMatter, {}), protein());
}

double drawn(int least, int most, double divisor) {
  return *rc::gen::inRange(least, most + 1) / divisor;
}

TargetScale drawnScale() {
  TargetScale scale;
  scale.kcalPerKgDryMatter = drawn(500, 9000, 1.0);
  scale.dryMatterFraction = drawn(1, 1000, 1000.0);
  scale.energyPerDay = Kilocalories(drawn(1, 100'000, 7.0));
  scale.bodyMass = Kilograms(drawn(1, 1'000'000, 300.0));
  return scale;
}

RC_GTEST_PROP(TargetConversion, ThereAndBackIsTheSameTarget, ()) {
  const TargetScale scale = drawnScale();
  Target target = protein();
  target.basis = *rc::gen::elementOf(kBases);
  target.max = *target.min + drawn(0, 1000, 3.0);
  const auto there = onBasis(target, *rc::gen::elementOf(kBases), scale);
  RC_ASSERT(there.has_value());
  const auto back = onBasis(*there, target.basis, scale);
  RC_ASSERT(back.has_value());
  RC_ASSERT(std::abs(*back->min / *target.min - 1.0) < 1e-14);
  RC_ASSERT(std::abs(*back->max / *target.max - 1.0) < 1e-14);
}

RC_GTEST_PROP(BasisFactor, DoesNotDependOnTheWayTaken, ()) {
  const TargetScale scale = drawnScale();
  const Basis from = *rc::gen::elementOf(kBases);
  const Basis by = *rc::gen::elementOf(kBases);
  const Basis to = *rc::gen::elementOf(kBases);
  const double direct = basisFactor(from, to, scale).value();
  const double around = basisFactor(from, by, scale).value() * basisFactor(by, to, scale).value();
  RC_ASSERT(std::abs(around / direct - 1.0) < 1e-14);
}

}  // namespace
}  // namespace tarebowl::animal
