// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/composition.h"
#include "ui/foods/larder.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::ui {

/// What became of one sample's statement of a nutrient.
enum class Standing {
  Counted,
  SetAside,    ///< excluded by a person, with a reason
  PassedOver,  ///< a better origin or a newer publication goes first
  Unreadable   ///< on a basis that this food cannot be put on: its water or energy is unknown
};

struct Statement {
  SampleKey sample{};
  Standing standing = Standing::Counted;
  food::NutrientValue value{};  ///< per 100 g as fed; where unreadable, as it was stated
};

/// One nutrient of a food, with everything that speaks of it.
struct DerivedValue {
  food::NutrientId nutrient{0};
  std::optional<food::NutrientValue> value{};  ///< missing where nothing counts
  std::optional<std::string> setByHand{};      ///< the reason, where a person set it
  std::optional<food::SampleOrigin> origin{};  ///< of what counts
  std::vector<Statement> statements{};
};

/// The values of a food's samples by a visible rule: a value set by hand first; else the own laboratory's
/// samples together (mean weighted by the number of determinations, pooled scatter); else the newest
/// publication; else the newest label; else the newest estimate. In the order of the nutrients.
[[nodiscard]] std::vector<DerivedValue> derivedValues(const FoodPage& page);

/// The same as a composition.
[[nodiscard]] food::Composition compositionOf(const FoodPage& page);
[[nodiscard]] food::Composition compositionOf(const std::vector<DerivedValue>& values);

}  // namespace tarebowl::ui
