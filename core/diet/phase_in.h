// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"

#include <functional>
#include <span>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// So much of a food, per animal and day.
struct FoodGrams {
  std::string food{};
  quantity::Grams amount{};
  bool operator==(const FoodGrams&) const = default;
};

/// A new diet is phased in over days (common practice, no source). Day d of n holds d/n of the new diet and
/// the rest of the old one, each food to the nearest step of the scale, so that no food turns back on its
/// way; the last day is the new diet itself. Foods of the old diet come first, in its order, then the new
/// ones; a food that is at 0 stays in the list. stepOf: above 0. Throws std::invalid_argument for less than
/// one day.
[[nodiscard]] std::vector<std::vector<FoodGrams>> phaseIn(
    std::span<const FoodGrams> from, std::span<const FoodGrams> to, int days,
    const std::function<quantity::Grams(const std::string& food)>& stepOf);

}  // namespace tarebowl::diet
