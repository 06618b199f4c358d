// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target.h"
#include "core/quantity/quantity.h"
#include "core/quantity/unit.h"

#include <optional>
#include <span>
#include <string_view>

namespace tarebowl::animal {

/// What a daily energy figure stands for: an animal at rest (basal or resting rate), one kept at steady mass
/// in human care (ME for maintenance), one living free (field metabolic rate).
enum class EnergyLevel { Resting, Maintenance, FreeLiving };

/// How the energy use of a group of animals grows with body mass: E per day = coefficient * mass^exponent.
/// A published choice, not a law: coefficients for one group differ between sources, and any of them may be
/// replaced.
struct Allometry {
  std::string_view group;
  EnergyLevel level;
  double coefficient;  ///< energyUnit per day at a body mass of one massUnit
  double exponent;
  std::string_view source;
  Provenance provenance;
  std::string_view validity = {};  ///< for whom and when, in words; empty where the source sets no limit
  quantity::Unit energyUnit = quantity::Unit::Kilocalorie;
  quantity::Kilograms massUnit{1.0};
};

[[nodiscard]] std::span<const Allometry> publishedAllometries();

/// Throws std::domain_error when the mass is not above 0 and finite.
[[nodiscard]] quantity::Kilocalories dailyEnergy(const Allometry& allometry, quantity::Kilograms bodyMass);

/// Resting energy of placental mammals by 30 * mass + 70 kcal, meant for 2 to 45 kg only (Small Animal
/// Clinical Nutrition, 5th ed., p. 61); nothing outside.
[[nodiscard]] std::optional<quantity::Kilocalories> linearRestingEnergy(quantity::Kilograms bodyMass);

/// By how much a condition multiplies the energy of a level: a range where the source gives one (low == high
/// otherwise).
struct EnergyMultiplier {
  std::string_view group;
  std::string_view condition;
  EnergyLevel of;
  double low;
  double high;
  std::string_view source;
  Provenance provenance;
};

[[nodiscard]] std::span<const EnergyMultiplier> publishedMultipliers();

}  // namespace tarebowl::animal
