// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/unit.h"

namespace tarebowl::ui {

/// In which unit a person reads energy. What is stored and worked out stays in kcal.
enum class EnergyUnit { Kilocalorie, Kilojoule };

[[nodiscard]] inline quantity::Unit unitOf(EnergyUnit energy) {
  return energy == EnergyUnit::Kilojoule ? quantity::Unit::Kilojoule : quantity::Unit::Kilocalorie;
}

/// What 1 kcal is in it.
[[nodiscard]] inline double perKilocalorie(EnergyUnit energy) {
  return quantity::conversionFactor(quantity::Unit::Kilocalorie, unitOf(energy)).value_or(1.0);
}

}  // namespace tarebowl::ui
