// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/energy_derivation.h"

#include <QString>

/// How the energy derivation reads.
namespace tarebowl::ui {

[[nodiscard]] QString wordFor(animal::EnergyLevel level);
/// "× energy at rest at 1 kg": the line of the derivation.
[[nodiscard]] QString levelText(animal::EnergyLevel level);
[[nodiscard]] QString wordFor(animal::EnergyFactor::Kind kind);
/// What a person must know before the number is used: "This is no feeding rate …".
[[nodiscard]] QString cautionText(animal::EnergyCaution caution, const animal::EnergyPlan& plan);
/// "placental mammals, at rest: 70 × kg^0.75".
[[nodiscard]] QString choiceText(const animal::Allometry& allometry);
/// "lactation, cats: × 2 to 6".
[[nodiscard]] QString choiceText(const animal::EnergyMultiplier& multiplier);
/// The kind of factor that a published multiplier is, by its words.
[[nodiscard]] animal::EnergyFactor::Kind kindOf(const animal::EnergyMultiplier& multiplier);
/// "41.3" or "41.3 to 55.1".
[[nodiscard]] QString rangeText(double low, double high);

}  // namespace tarebowl::ui
