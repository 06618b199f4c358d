// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/checks.h"
#include "core/quantity/date.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace tarebowl::food {

/// A food as the checks see it.
struct CheckedFood {
  std::string name{};
  std::string form{};
  std::string group{};  ///< a food without a group is compared with none
  Composition composition{};
  std::optional<quantity::Date> newestSample{};  ///< nothing: no dated sample
};

/// When a comparison of foods raises a doubt. House practice without a source but for the limit of the robust
/// z score (robust.h); the factors are set by what they find in the Indian table of 2017 and in SR28.
struct CollectionCheckLimits {
  CheckLimits within{};            ///< each food by itself
  std::size_t smallestGroup = 10;  ///< foods of a group with the value; fewer say nothing
  double robustZ = 3.5;            ///< of the logarithm, per dry matter
  double farFactor = 50.0;         ///< and at least so many times the group's median
  double ratioFactor = 10.0;       ///< the same for Ca:P
  double slipZ = 1.5;           ///< a slip of a unit: 1000 times brings the value back within so many spreads
  double slipWidth = 3.0;       ///< a slip of a unit is 1000 times, give or take this factor
  std::size_t leastAlike = 8;   ///< nutrients that two foods share before equality says anything
  int staleYears = 5;           ///< age of the newest sample
  double mineralsShare = 0.10;  ///< minerals over ash, of the ash
  double mineralsAmount = 0.1;  ///< g per 100 g, on top
};

/// A doubt about one of the foods. What found and against mean:
///  UnitSlip, FarFromGroup     the value and the group's median, in the nutrient's unit per 100 g DM, fatty
///                             acids per 100 g fat, amino acids per 100 g protein
///  RatioFarFromGroup          Ca:P and the group's median
///  MineralsOverAsh            their sum and the ash, g per 100 g as fed
///  GuaranteeAsMean            the value, per 100 g as fed
///  SameName, SameComposition  see other
///  Stale                      years since the newest sample, and the limit
struct FoodFinding {
  std::size_t food = 0;
  Finding finding{};
  std::optional<std::size_t> other{};  ///< the earlier food that it equals
  std::size_t groupSize = 0;           ///< foods compared
  double robustZ = 0.0;
};

/// Everything that is doubtful, by food. today: for Stale.
[[nodiscard]] std::vector<FoodFinding> checkFoods(std::span<const CheckedFood> foods, quantity::Date today,
                                                  const CollectionCheckLimits& limits = {});

}  // namespace tarebowl::food
