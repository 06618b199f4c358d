// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/composition.h"
#include "tests/reference/reference_data.h"

#include <initializer_list>
#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace tarebowl::reference {

/// A food of the USDA National Nutrient Database for Standard Reference, Release 28 (2015), per 100 g edible
/// portion.
struct Sr28Food {
  std::string description;
  std::optional<double> proteinFactor;  ///< kcal per g, food-specific Atwater
  std::optional<double> fatFactor;
  std::optional<double> carbohydrateFactor;
  std::map<int, double> amounts;  ///< by SR28 nutrient number; what has no record is missing, not zero

  [[nodiscard]] std::optional<double> amount(int nutrient) const;
  [[nodiscard]] bool hasAll(std::initializer_list<int> nutrients) const;
};

/// SR28 nutrient numbers that the tests use.
namespace sr28 {
inline constexpr int kProtein = 203;
inline constexpr int kFat = 204;
inline constexpr int kCarbohydrate = 205;
inline constexpr int kAsh = 207;
inline constexpr int kEnergyKcal = 208;
inline constexpr int kStarch = 209;
inline constexpr int kAlcohol = 221;
inline constexpr int kWater = 255;
inline constexpr int kEnergyKj = 268;
inline constexpr int kSugars = 269;
inline constexpr int kFibre = 291;
inline constexpr int kVitaminAUnits = 318;
inline constexpr int kRetinol = 319;
inline constexpr int kVitaminARae = 320;
inline constexpr int kBetaCarotene = 321;
inline constexpr int kAlphaCarotene = 322;
inline constexpr int kVitaminDUnits = 324;
inline constexpr int kVitaminD = 328;
inline constexpr int kBetaCryptoxanthin = 334;
}  // namespace sr28

inline constexpr std::string_view kSr28Amounts = "sr28/nut_data.csv.gz";

/// All foods by NDB number; nothing where the tables are not there.
[[nodiscard]] std::optional<std::map<int, Sr28Food>> loadSr28();

/// The same food as the core keeps it, from the columns that the core has a nutrient for under the same name
/// and unit.
[[nodiscard]] food::Composition compositionOf(const Sr28Food& item);

}  // namespace tarebowl::reference
