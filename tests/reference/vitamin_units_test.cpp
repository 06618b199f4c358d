// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The vitamin columns of USDA SR28 (2015), food by food, against the unit definitions.
#include "core/food/vitamin_units.h"

#include "tests/reference/sr28.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace tarebowl::reference {
namespace {

using namespace food;

VitaminASources vitaminAOf(const Sr28Food& item) {
  return {.retinol = item.amount(sr28::kRetinol).value(),
          .betaCarotene = item.amount(sr28::kBetaCarotene).value(),
          .otherProvitamins =
              item.amount(sr28::kAlphaCarotene).value() + item.amount(sr28::kBetaCryptoxanthin).value()};
}

bool hasVitaminASources(const Sr28Food& item) {
  return item.hasAll({sr28::kRetinol, sr28::kBetaCarotene, sr28::kAlphaCarotene, sr28::kBetaCryptoxanthin});
}

struct VitaminAFood {
  const char* name;
  VitaminASources sources;
  double rae;
  double printedRae;
  double units;
  double printedUnits;
};

// SR28: substances in ug per 100 g, and the RAE and IU columns as printed. rae and units are worked by hand
// from the definitions: sweet potato 8509/12 + 7/24 = 709.375 and 8509/0.6 + 7/1.2 = 14187.5.
constexpr std::array kVitaminAFoods{
    VitaminAFood{"sweet potato, raw", {0, 8509, 7}, 709.375, 709, 14187.5, 14187},
    VitaminAFood{"carrot, raw", {0, 8285, 3477}, 835.291667, 835, 16705.833333, 16706},
    VitaminAFood{"egg, whole, raw", {160, 0, 9}, 160.375, 160, 540.833333, 540},
    VitaminAFood{"papaya, raw", {0, 274, 2 + 589}, 47.458333, 47, 949.166667, 950},
};

TEST(VitaminUnits, FourFoodsOfSr28ByHand) {
  for (const auto& item : kVitaminAFoods) {
    EXPECT_NEAR(retinolActivityEquivalents(item.sources), item.rae, 1e-6) << item.name;
    EXPECT_NEAR(retinolActivityEquivalents(item.sources), item.printedRae, 1.0) << item.name;
    EXPECT_NEAR(historicVitaminAUnits(item.sources), item.units, 1e-6) << item.name;
    EXPECT_NEAR(historicVitaminAUnits(item.sources), item.printedUnits, 1.0) << item.name;
  }
}

TEST(VitaminUnits, RetinolActivityEquivalentsHoldFor5327Of5342FoodsOfSr28) {
  const auto foods = loadSr28();
  if (!foods) GTEST_SKIP() << missingNote(kSr28Amounts);
  int compared = 0;
  int agreeing = 0;
  for (const auto& [id, item] : *foods) {
    const auto printed = item.amount(sr28::kVitaminARae);
    if (!printed || !hasVitaminASources(item)) continue;
    ++compared;
    if (std::abs(retinolActivityEquivalents(vitaminAOf(item)) - *printed) <= 1.0) ++agreeing;
  }
  EXPECT_EQ(compared, 5342);
  EXPECT_EQ(agreeing, 5327);
}

TEST(VitaminUnits, HistoricInternationalUnitsHoldFor5272Of5344FoodsOfSr28) {
  const auto foods = loadSr28();
  if (!foods) GTEST_SKIP() << missingNote(kSr28Amounts);
  int compared = 0;
  int agreeing = 0;
  for (const auto& [id, item] : *foods) {
    const auto printed = item.amount(sr28::kVitaminAUnits);
    if (!printed || !hasVitaminASources(item)) continue;
    ++compared;
    // The substances are rounded to 1 ug, that is up to 5 IU in all; 1 % for recipes added up from rounded
    // parts.
    const double tolerance = std::max(5.0, 0.01 * *printed);
    if (std::abs(historicVitaminAUnits(vitaminAOf(item)) - *printed) <= tolerance) ++agreeing;
  }
  EXPECT_EQ(compared, 5344);
  EXPECT_EQ(agreeing, 5272);
}

TEST(VitaminUnits, BothVitaminDColumnsOfSr28AgreeForEveryFood) {
  const auto foods = loadSr28();
  if (!foods) GTEST_SKIP() << missingNote(kSr28Amounts);
  const double microgramsPerUnit =
      toOwnUnitFactor(findByTagname("VITD").value(), quantity::Unit::InternationalUnit).value();
  int compared = 0;
  for (const auto& [id, item] : *foods) {
    const auto units = item.amount(sr28::kVitaminDUnits);
    const auto micrograms = item.amount(sr28::kVitaminD);
    if (!units || !micrograms) continue;
    ++compared;
    // Printed to 0.1 ug and to 1 IU: half a digit of each.
    EXPECT_NEAR(*micrograms, *units * microgramsPerUnit, 0.05 + 0.5 * 0.025 + 1e-9) << item.description;
  }
  EXPECT_GT(compared, 5000);
}

TEST(VitaminUnits, KilocaloriesAndKilojoulesOfSr28StandAt4184Thousandths) {
  const auto foods = loadSr28();
  if (!foods) GTEST_SKIP() << missingNote(kSr28Amounts);
  const double kcalPerKj = toOwnUnitFactor(nutrients::energy(), quantity::Unit::Kilojoule).value();
  std::vector<double> ratios;
  for (const auto& [id, item] : *foods) {
    const double kcal = item.amount(sr28::kEnergyKcal).value_or(0.0);
    const auto kj = item.amount(sr28::kEnergyKj);
    if (kj && kcal > 200.0) ratios.push_back(*kj / kcal);
  }
  const auto middle = ratios.begin() + static_cast<std::ptrdiff_t>(ratios.size() / 2);
  std::nth_element(ratios.begin(), middle, ratios.end());
  EXPECT_NEAR(*middle, 1.0 / kcalPerKj, 0.0005);
}

}  // namespace
}  // namespace tarebowl::reference
