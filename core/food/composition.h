// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/nutrient.h"
#include "core/quantity/content.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::food {

/// How a value was reported. AtLeast and AtMost are a label's guarantees (bounds, not means), Below and Above
/// a reading outside the range of the method, BelowQuantification one below the stated limit of
/// quantification.
enum class Qualifier { Equal, AtLeast, AtMost, BelowQuantification, Trace, Below, Above, NotDetected };

/// One nutrient of one food: mean, scatter, how many samples, how it was reported and where it comes from.
/// amount is per 100 g as fed in the nutrient's own unit, finite and not negative; sd (sample standard
/// deviation, same unit) is missing where nobody measured it, which is not the same as 0.
struct NutrientValue {
  quantity::AsFedContent amount{};
  std::optional<quantity::AsFedContent> sd{};
  std::optional<int> sampleCount{};
  Qualifier qualifier = Qualifier::Equal;
  std::string source{};
  bool operator==(const NutrientValue&) const = default;
};

/// What is known of a food's make-up, per 100 g as fed. A nutrient that is not in it is unknown, never zero.
class Composition {
 public:
  /// Throws std::domain_error when the amount or sd is negative or not finite.
  void set(NutrientId nutrient, NutrientValue value);
  /// The same for a value stated on dry matter.
  void set(NutrientId nutrient, quantity::DryMatterContent amount, quantity::DryMatterShare dryMatter,
           std::string source);
  /// The same for a value stated per 1000 kcal ME. energyPer100g: ME of 100 g as fed, above 0
  /// (std::domain_error).
  void set(NutrientId nutrient, quantity::EnergyContent amount, quantity::Kilocalories energyPer100g,
           std::string source);
  void erase(NutrientId nutrient);

  [[nodiscard]] const NutrientValue* find(NutrientId nutrient) const;
  [[nodiscard]] std::optional<double> amountPer100g(NutrientId nutrient) const;
  [[nodiscard]] std::optional<double> sdPer100g(NutrientId nutrient) const;

  /// 1 - WATER/100; nothing where water is unknown or leaves no dry matter.
  [[nodiscard]] std::optional<quantity::DryMatterShare> dryMatter() const;
  [[nodiscard]] std::vector<NutrientId> knownNutrients() const;
  bool operator==(const Composition&) const = default;

 private:
  struct Entry {
    NutrientId nutrient{0};
    NutrientValue value;
    bool operator==(const Entry&) const = default;
  };
  std::vector<Entry> entries_;  // ordered by nutrient
};

}  // namespace tarebowl::food
