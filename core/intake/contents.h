// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/supply.h"
#include "core/food/nutrient.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace tarebowl::intake {

/// What one gram as fed of a food brings of one thing.
struct Content {
  std::optional<double> perGram{};  ///< nothing: not known
  double sdPerGram = 0.0;
  double weightPerGram = 0.0;  ///< dry matter, grams; what a coverage is a share of. Mass where it is unknown
  std::uint32_t source = 0;    ///< of the scatter: this food's value of this thing, in whatever bowl
};

/// The same for all foods of a period: grams, dry matter, or a nutrient in its own unit, counted as the
/// balance of a diet counts it (diet/supply.h); whatever fraction the foods say is eaten is left aside.
class Contents {
 public:
  [[nodiscard]] static Contents ofMass(std::span<const diet::DietFood> foods);
  [[nodiscard]] static Contents ofDryMatter(std::span<const diet::DietFood> foods);
  [[nodiscard]] static Contents ofNutrient(std::span<const diet::DietFood> foods,
                                           food::EnergyMethod energyMethod, food::NutrientId nutrient);

  /// By the food's id; nothing for a food that is not in the list.
  [[nodiscard]] const Content* find(const std::string& food) const;

 private:
  Contents(std::span<const diet::DietFood> foods, const diet::Supply& supply, const diet::Supply& dryMatter,
           std::uint32_t thing);
  std::unordered_map<std::string, Content> byFood_;
};

}  // namespace tarebowl::intake
