// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// USDA SR28 (2015) states energy by factors of each food's own (kcal per g protein, fat, carbohydrate)
// and 6.93 for alcohol.
#include "core/food/energy.h"
#include "tests/core/food/food_builder.h"
#include "tests/reference/sr28.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tarebowl::reference {
namespace {

using namespace food;

constexpr double kAlcoholFactor = 6.93;

// NDB 11507: 1.57*2.78 + 0.05*8.37 + 20.12*4.03 = 85.87, printed 86.
TEST(UsdaAtwater, SweetPotatoByItsOwnFactorsHas85Point87Kcal) {
  const auto potato = foodOf({{"PROCNT", 1.57}, {"FAT", 0.05}, {"CHOCDF", 20.12}});
  const auto energy = atwaterEnergy(potato, {.protein = 2.78, .fat = 8.37, .carbohydrate = 4.03});
  EXPECT_NEAR(energy.value().value(), 85.87, 0.005);
}

TEST(UsdaAtwater, FactorsReproduce4470Of4565EnergiesOfSr28) {
  const auto foods = loadSr28();
  if (!foods) GTEST_SKIP() << missingNote(kSr28Amounts);
  int compared = 0;
  int agreeing = 0;
  for (const auto& [id, item] : *foods) {
    const auto printed = item.amount(sr28::kEnergyKcal);
    if (!printed || !item.proteinFactor || !item.fatFactor || !item.carbohydrateFactor) continue;
    const AtwaterFactors factors{*item.proteinFactor, *item.fatFactor, *item.carbohydrateFactor,
                                 kAlcoholFactor};
    const auto energy = atwaterEnergy(compositionOf(item), factors);
    if (!energy) continue;
    ++compared;
    if (std::abs(energy->value() - *printed) <= 1.5) ++agreeing;  // printed to 1 kcal
  }
  EXPECT_EQ(compared, 4565);
  EXPECT_EQ(agreeing, 4470);  // 97.9 %
}

}  // namespace
}  // namespace tarebowl::reference
