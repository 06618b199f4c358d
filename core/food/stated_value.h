// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/composition.h"
#include "core/quantity/basis.h"
#include "core/quantity/content.h"
#include "core/quantity/unit.h"

#include <optional>
#include <string>
#include <variant>

namespace tarebowl::food {

/// A value as a laboratory, a table or a label states it: so much (in unit) per so much of a basis. "26 %" as
/// fed is 26 g per 100 (g as fed); "5 g/kg DM" is 5 g per 1000 (g dry matter); "9 g per 1000 kcal" is 9 g per
/// 1000 (kcal ME).
struct StatedValue {
  double amount = 0.0;
  std::optional<double> sd{};  ///< sample standard deviation, stated like the amount
  quantity::Unit unit = quantity::Unit::Gram;
  double per = 100.0;  ///< grams of food or of dry matter, or kilocalories; above 0
  quantity::Basis basis = quantity::Basis::AsFed;  ///< AsFed, DryMatter or Energy
  std::optional<int> sampleCount{};
  Qualifier qualifier = Qualifier::Equal;
  std::string source{};
};

/// What must be known of the food before a value on another basis can be read.
struct BasisFacts {
  std::optional<quantity::DryMatterShare> dryMatter;
  std::optional<quantity::Kilocalories> energyPer100g;
};

/// Why a statement cannot be read: amount or sd negative or not finite, per not above 0; a unit that the
/// nutrient does not have; a basis that is no property of a food; dry matter or (positive) energy unknown.
enum class StatementError { NotAnAmount, WrongUnit, WrongBasis, DryMatterUnknown, EnergyUnknown };

/// The value per 100 g as fed in the nutrient's own unit, as a Composition keeps it.
[[nodiscard]] std::variant<NutrientValue, StatementError> toAsFed(NutrientId nutrient,
                                                                  const StatedValue& stated,
                                                                  const BasisFacts& facts);

/// Amount in the nutrient's own unit per 100 g as fed, per 100 g DM or per 1000 kcal; nothing where the fact
/// for it is missing or the basis is no property of a food.
[[nodiscard]] std::optional<double> amountOn(quantity::Basis basis, quantity::AsFedContent content,
                                             const BasisFacts& facts);

}  // namespace tarebowl::food
