// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::food {

/// A food of the collection: a thing in a form. What it is made of comes from samples (sample.h) or, for a
/// cooked food, from the raw one (cooking.h).
struct Food {
  std::string code{};   ///< names it in problem files; unique in a collection: "kale-raw"
  std::string name{};   ///< "Kale"
  std::string form{};   ///< "raw", "steamed", "live" …; commonForms() or a word of the house
  std::string group{};  ///< "leafy vegetable" … what shares, choices and checks speak of
  std::optional<quantity::Grams> unitMass{};  ///< one egg, one capsule; above 0
  quantity::Grams scaleStep{1};               ///< what the scale can show; above 0
  double edibleFraction = 1.0;                ///< of what is bought, 0 < f <= 1
  std::optional<double> pricePerKg{};         ///< as bought, not negative, in the house's currency
  bool inStock = true;
  std::vector<std::string> cautions{};  ///< codes of cautions, for now any text
  std::string note{};
  bool invented = false;  ///< a made-up product: every view says so
  bool operator==(const Food&) const = default;
};

/// The form words that are offered; others may be typed.
[[nodiscard]] std::span<const std::string_view> commonForms();

enum class FoodProblem {
  NoCode,
  NoName,
  UnitMassNotAboveZero,
  ScaleStepNotAboveZero,
  EdibleFractionOutOfRange,
  PriceNegative
};

/// The first thing that is wrong with it, if any.
[[nodiscard]] std::optional<FoodProblem> problemWith(const Food& food);

}  // namespace tarebowl::food
