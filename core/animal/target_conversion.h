// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target.h"
#include "core/quantity/quantity.h"

#include <optional>

namespace tarebowl::animal {

/// What it takes to state a target on another basis. Each is missing where it is not known.
struct TargetScale {
  std::optional<double> kcalPerKgDryMatter{};            ///< ME density of the diet
  std::optional<double> dryMatterFraction{};             ///< of the diet as fed, 0 < f <= 1
  std::optional<quantity::Kilocalories> energyPerDay{};  ///< eaten per animal and day
  std::optional<quantity::Kilograms> bodyMass{};
};

/// The same target on another basis, in the same unit; nothing where the scale lacks what it takes. As
/// published pairs: 18 % of DM at 4.0 kcal/g is 45 g per 1000 kcal (AAFCO Dog Food Nutrient Profiles, 2014).
[[nodiscard]] std::optional<Target> onBasis(const Target& target, quantity::Basis basis,
                                            const TargetScale& scale);

/// The factor with amount_on_to = f * amount_on_from.
[[nodiscard]] std::optional<double> basisFactor(quantity::Basis from, quantity::Basis to,
                                                const TargetScale& scale);

}  // namespace tarebowl::animal
