// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/unit.h"

#include "core/quantity/quantity.h"

#include <array>

namespace tarebowl::quantity {

namespace {

struct UnitFacts {
  Unit unit;
  Dimension dimension;
  double inBase;  // gram, kilocalorie or IU
  std::string_view symbol;
};

constexpr std::array<UnitFacts, 6> kUnits{{
    {Unit::Gram, Dimension::Mass, 1.0, "g"},
    {Unit::Milligram, Dimension::Mass, 1e-3, "mg"},
    {Unit::Microgram, Dimension::Mass, 1e-6, "ug"},
    {Unit::Kilocalorie, Dimension::Energy, 1.0, "kcal"},
    {Unit::Kilojoule, Dimension::Energy, 1.0 / kKilojoulesPerKilocalorie, "kJ"},
    {Unit::InternationalUnit, Dimension::Activity, 1.0, "IU"},
}};

constexpr const UnitFacts& factsOf(Unit unit) {
  return kUnits[static_cast<std::size_t>(unit)];
}

// Lab reports type the micro sign in two code points that look alike.
constexpr std::string_view kMicroSignGram = "\u00b5g";
constexpr std::string_view kGreekMuGram = "\u03bcg";

}  // namespace

Dimension dimensionOf(Unit unit) {
  return factsOf(unit).dimension;
}

std::optional<Unit> parseUnit(std::string_view text) {
  for (const auto& facts : kUnits)
    if (facts.symbol == text) return facts.unit;
  if (text == kMicroSignGram || text == kGreekMuGram) return Unit::Microgram;
  return std::nullopt;
}

std::string_view symbolOf(Unit unit) {
  return factsOf(unit).symbol;
}

std::optional<double> conversionFactor(Unit from, Unit to) {
  if (from == to) return 1.0;
  if (dimensionOf(from) != dimensionOf(to)) return std::nullopt;
  return factsOf(from).inBase / factsOf(to).inBase;
}

}  // namespace tarebowl::quantity
