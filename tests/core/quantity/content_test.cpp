// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/content.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>
#include <stdexcept>

namespace tarebowl::quantity {
namespace {

// Label example pages: 26 % protein in a food of 8 % moisture is 26/0.92 = 28.260870 % of its dry matter.
TEST(Contents, TwentySixPercentProteinAtEightPercentMoistureIs28Point26OfDryMatter) {
  const auto dryMatter = DryMatterShare::fromWaterPer100g(8.0);
  EXPECT_NEAR(toDryMatter(AsFedContent(26.0), dryMatter).value(), 28.260870, 5e-7);
}

// The classic trap of comparing labels as fed: 5 % in a wet food (80 % moisture) is 25 % DM, 20 % in a dry
// one (10 %) is 22.2 %.
TEST(Contents, AWetFoodOfFivePercentIsRicherThanADryFoodOfTwenty) {
  const auto wet = toDryMatter(AsFedContent(5.0), DryMatterShare::fromWaterPer100g(80.0));
  const auto dry = toDryMatter(AsFedContent(20.0), DryMatterShare::fromWaterPer100g(10.0));
  EXPECT_DOUBLE_EQ(wet.value(), 25.0);
  EXPECT_NEAR(dry.value(), 22.2, 0.05);
  EXPECT_GT(wet, dry);
}

// 26 g per 100 g and 362 kcal per 100 g: 26/362*1000 = 71.8232 g per 1000 kcal.
TEST(Contents, TwentySixPercentProteinAt3620KcalPerKgIs71Point8232GramsPer1000Kcal) {
  EXPECT_NEAR(toPer1000Kcal(AsFedContent(26.0), Kilocalories(362.0)).value(), 71.8232, 5e-5);
}

TEST(Contents, NothingCanBePutOnDryMatterWithoutDryMatter) {
  constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
  for (const double share : {0.0, -0.1, 1.0000001, 12.0, kNan, std::numeric_limits<double>::infinity()})
    EXPECT_THROW(DryMatterShare{share}, std::domain_error) << share;
  EXPECT_THROW(static_cast<void>(DryMatterShare::fromWaterPer100g(100.0)), std::domain_error);
  EXPECT_THROW(static_cast<void>(DryMatterShare::fromWaterPer100g(-1.0)), std::domain_error);
  EXPECT_EQ(DryMatterShare::fromWaterPer100g(0.0).value(), 1.0);
}

TEST(Contents, NothingCanBePutOnEnergyWithoutEnergy) {
  constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
  for (const double kcal : {0.0, -3.0, kNan, std::numeric_limits<double>::infinity()}) {
    EXPECT_THROW(static_cast<void>(toPer1000Kcal(AsFedContent(1.0), Kilocalories(kcal))), std::domain_error)
        << kcal;
    EXPECT_THROW(static_cast<void>(toAsFed(EnergyContent(1.0), Kilocalories(kcal))), std::domain_error)
        << kcal;
  }
}

double fraction(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(1, 1'000'001) / 1e6;
}

RC_GTEST_PROP(Contents, DryMatterThereAndBackIsTheIdentity, ()) {
  const DryMatterShare dryMatter(fraction(0.0, 1.0));
  const AsFedContent content(fraction(0.0, 1e5));
  const auto back = toAsFed(toDryMatter(content, dryMatter), dryMatter);
  RC_ASSERT(std::abs(back.value() - content.value()) <= 1e-15 * 4 * content.value());
}

RC_GTEST_PROP(Contents, EnergyThereAndBackIsTheIdentity, ()) {
  const Kilocalories energy(fraction(0.0, 900.0));
  const AsFedContent content(fraction(0.0, 1e5));
  const auto back = toAsFed(toPer1000Kcal(content, energy), energy);
  RC_ASSERT(std::abs(back.value() - content.value()) <= 1e-15 * 4 * content.value());
}

RC_GTEST_PROP(Contents, DryMatterIsNeverPoorerThanTheFoodAsFed, ()) {
  const DryMatterShare dryMatter(fraction(0.0, 1.0));
  const AsFedContent content(fraction(0.0, 100.0));
  RC_ASSERT(toDryMatter(content, dryMatter).value() >= content.value());
}

}  // namespace
}  // namespace tarebowl::quantity
