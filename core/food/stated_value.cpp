// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/stated_value.h"

#include "core/food/vitamin_units.h"

#include <cmath>

namespace tarebowl::food {

namespace {

using quantity::AsFedContent;
using quantity::Basis;

bool isAmount(double value) {
  return std::isfinite(value) && value >= 0.0;
}

bool isUsable(const std::optional<quantity::Kilocalories>& energy) {
  return energy && energy->value() > 0.0 && std::isfinite(energy->value());
}

std::optional<StatementError> problemWith(const StatedValue& stated, const BasisFacts& facts) {
  const bool amounts = isAmount(stated.amount) && isAmount(stated.sd.value_or(0.0));
  if (!amounts || !std::isfinite(stated.per) || stated.per <= 0.0) return StatementError::NotAnAmount;
  switch (stated.basis) {
    case Basis::AsFed:
      return std::nullopt;
    case Basis::DryMatter:
      return facts.dryMatter ? std::nullopt : std::optional(StatementError::DryMatterUnknown);
    case Basis::Energy:
      return isUsable(facts.energyPer100g) ? std::nullopt : std::optional(StatementError::EnergyUnknown);
    case Basis::Day:
    case Basis::BodyMass:
    case Basis::MetabolicMass:
      break;
  }
  return StatementError::WrongBasis;
}

/// amount: in the nutrient's own unit, per unit of the basis (1 g or 1 kcal).
AsFedContent asFed(double amount, Basis basis, const BasisFacts& facts) {
  if (basis == Basis::DryMatter)
    return quantity::toAsFed(quantity::DryMatterContent(amount * 100.0), *facts.dryMatter);
  if (basis == Basis::Energy)
    return quantity::toAsFed(quantity::EnergyContent(amount * 1000.0), *facts.energyPer100g);
  return AsFedContent(amount * 100.0);
}

}  // namespace

std::variant<NutrientValue, StatementError> toAsFed(NutrientId nutrient, const StatedValue& stated,
                                                    const BasisFacts& facts) {
  if (const auto problem = problemWith(stated, facts)) return *problem;
  const auto factor = toOwnUnitFactor(nutrient, stated.unit);
  if (!factor) return StatementError::WrongUnit;
  const auto read = [&](double amount) { return asFed(amount * *factor / stated.per, stated.basis, facts); };
  NutrientValue value;
  value.amount = read(stated.amount);
  if (stated.sd) value.sd = read(*stated.sd);
  value.sampleCount = stated.sampleCount;
  value.qualifier = stated.qualifier;
  value.source = stated.source;
  return value;
}

std::optional<double> amountOn(Basis basis, AsFedContent content, const BasisFacts& facts) {
  if (basis == Basis::AsFed) return content.value();
  if (basis == Basis::DryMatter && facts.dryMatter)
    return quantity::toDryMatter(content, *facts.dryMatter).value();
  if (basis == Basis::Energy && isUsable(facts.energyPer100g))
    return quantity::toPer1000Kcal(content, *facts.energyPer100g).value();
  return std::nullopt;
}

}  // namespace tarebowl::food
