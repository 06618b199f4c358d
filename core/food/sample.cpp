// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/sample.h"

#include "core/food/vitamin_units.h"

#include <array>
#include <cmath>

namespace tarebowl::food {

namespace {

using quantity::Basis;

// In the order of the enumerators.
constexpr std::array<std::string_view, 4> kOrigins{"own-lab", "publication", "label", "estimate"};

bool isAmount(double value) {
  return std::isfinite(value) && value >= 0.0;
}

bool isPropertyOfFood(Basis basis) {
  return basis == Basis::AsFed || basis == Basis::DryMatter || basis == Basis::Energy;
}

/// What amounts on a basis are stored against: 100 g, or 1000 kcal.
double storedPer(Basis basis) {
  return basis == Basis::Energy ? 1000.0 : 100.0;
}

bool isStoredAsReported(NutrientId nutrient, const StatedValue& stated) {
  return stated.unit == describe(nutrient).unit && stated.per == storedPer(stated.basis);
}

}  // namespace

std::string_view symbolOf(SampleOrigin origin) {
  return kOrigins.at(static_cast<std::size_t>(origin));
}

std::optional<SampleOrigin> parseSampleOrigin(std::string_view text) {
  for (std::size_t i = 0; i < kOrigins.size(); ++i)
    if (kOrigins[i] == text) return static_cast<SampleOrigin>(i);
  return std::nullopt;
}

Basis basisOf(const SampleContent& content) {
  if (std::holds_alternative<quantity::DryMatterContent>(content)) return Basis::DryMatter;
  if (std::holds_alternative<quantity::EnergyContent>(content)) return Basis::Energy;
  return Basis::AsFed;
}

double amountOf(const SampleContent& content) {
  return std::visit([](const auto& amount) { return amount.value(); }, content);
}

std::optional<SampleContent> contentOn(Basis basis, double amount) {
  switch (basis) {
    case Basis::AsFed:
      return quantity::AsFedContent(amount);
    case Basis::DryMatter:
      return quantity::DryMatterContent(amount);
    case Basis::Energy:
      return quantity::EnergyContent(amount);
    case Basis::Day:
    case Basis::BodyMass:
    case Basis::MetabolicMass:
      break;
  }
  return std::nullopt;
}

std::variant<SampleValue, StatementError> toSampleValue(NutrientId nutrient, const StatedValue& stated) {
  const bool amounts = isAmount(stated.amount) && isAmount(stated.sd.value_or(0.0));
  if (!amounts || !std::isfinite(stated.per) || stated.per <= 0.0) return StatementError::NotAnAmount;
  if (!isPropertyOfFood(stated.basis)) return StatementError::WrongBasis;
  const auto factor = toOwnUnitFactor(nutrient, stated.unit);
  if (!factor) return StatementError::WrongUnit;
  const bool asReported = isStoredAsReported(nutrient, stated);
  // A value that is stored as reported keeps its digits.
  const double scale = asReported ? 1.0 : *factor / stated.per * storedPer(stated.basis);
  SampleValue value;
  value.nutrient = nutrient;
  value.amount = contentOn(stated.basis, stated.amount * scale).value();
  if (stated.sd) value.sd = *stated.sd * scale;
  value.count = stated.sampleCount;
  value.qualifier = stated.qualifier;
  if (!asReported) value.reported = Reported{stated.amount, stated.unit, stated.per};
  return value;
}

}  // namespace tarebowl::food
