// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/composition.h"
#include "core/food/cooking.h"
#include "core/quantity/quantity.h"

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

namespace tarebowl::food {

/// So many grams of a food, as weighed in.
struct RecipePart {
  std::string code{};      ///< Food::code
  quantity::Grams mass{};  ///< above 0
  bool operator==(const RecipePart&) const = default;
};

/// A house mix, a pellet, a gel: a food made from foods.
struct Recipe {
  std::vector<RecipePart> parts{};
  double massYield = 1.0;               ///< grams of the mix per gram weighed in, above 0
  std::vector<Retention> retentions{};  ///< of the whole mix; 1 for a nutrient that is not named
  std::string source{};
  bool operator==(const Recipe&) const = default;
};

enum class RecipeProblem { NoParts, MassNotAboveZero, YieldNotAboveZero, FactorOutOfRange, MoreThanFood };

[[nodiscard]] std::optional<RecipeProblem> problemWith(const Recipe& recipe);

/// What the mix is made of, per 100 g: the parts weighed by their mass, then yield and retention as in
/// cooking.h. compositions: beside recipe.parts. A nutrient that some part does not state, or states only as
/// a bound, is "at least" what the other parts bring; one that no part states stays unknown. The scatter is
/// that of the parts that state one, taken as independent.
[[nodiscard]] std::variant<Composition, RecipeProblem> mix(const Recipe& recipe,
                                                           std::span<const Composition> compositions);

/// A chain from a food back to itself through what it is made from: "a", "b", "a". Nothing where none is.
[[nodiscard]] std::optional<std::vector<std::string>> madeFromCycle(
    const std::string& code, const std::function<std::vector<std::string>(const std::string&)>& partsOf);

}  // namespace tarebowl::food
