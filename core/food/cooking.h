// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/composition.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace tarebowl::food {

/// The share of a nutrient in the raw food that is still in the cooked food, 0 … 2 (a little above 1 occurs
/// in published tables: cooking frees what the analysis of the raw food misses).
struct Retention {
  NutrientId nutrient{0};
  double factor = 1.0;
  bool operator==(const Retention&) const = default;
};

/// How a cooked food is worked out from the raw one where nobody analysed it.
struct Cooking {
  std::string rawCode{};                ///< Food::code of the raw food
  double massYield = 1.0;               ///< grams cooked per gram raw, above 0
  std::vector<Retention> retentions{};  ///< 1 for a nutrient that is not named
  std::string source{};                 ///< of yield and factors
  bool operator==(const Cooking&) const = default;
};

enum class CookingProblem {
  YieldNotAboveZero,
  FactorOutOfRange,
  MoreThanFood  ///< with this yield the dry matter would weigh more than the cooked food
};

[[nodiscard]] std::optional<CookingProblem> problemWith(const Cooking& cooking);

/// Per 100 g cooked: raw * retention / yield (the yield and retention factor method of recipe calculation;
/// publication from memory: Bergström 1994, Statens livsmedelsverk, rapport 32/94). Water is what is left of
/// 100 g beside the dry matter that was kept; it is unknown where the raw food's is. Energy that has no
/// factor of its own follows the protein, fat and carbohydrate kept (4, 9, 4 kcal per g). Only means and
/// traces are carried over; each value's source says that it was worked out.
[[nodiscard]] std::variant<Composition, CookingProblem> cook(const Composition& raw, const Cooking& cooking);

}  // namespace tarebowl::food
