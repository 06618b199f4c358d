// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"

#include <optional>
#include <span>
#include <string>

/// What oxalate and phytate may keep from being absorbed: an estimate by molar arithmetic, no measurement.
namespace tarebowl::health {

/// Grams of a food as eaten.
struct FoodGrams {
  std::string food{};  ///< diet::DietFood::id
  double grams = 0.0;
};

/// Oxalate binds calcium one to one: of a food's calcium no more than min(1, mol oxalic acid / mol Ca) can be
/// bound within that food (90.034 and 40.078 g/mol, IUPAC). Published oxalate values of one food differ
/// tenfold between tables, so the share is "could be", and only over foods whose oxalate is known.
struct OxalateShare {
  std::optional<double> couldBind{};  ///< share of the calcium eaten, of foods whose oxalate is known
  double known = 0.0;                 ///< share of the calcium eaten that comes from such foods
};
[[nodiscard]] OxalateShare oxalateShare(std::span<const diet::DietFood> foods,
                                        std::span<const FoodGrams> eaten);

/// mol oxalic acid per mol calcium; above 1 oxalate could bind all of it. mg of each; calcium above 0.
[[nodiscard]] double oxalateRatio(double oxalicAcid, double calcium);

/// Phosphorus in phytate, C6H18O24P6 of 660.029 g/mol: 6 · 30.973762 / 660.029 of its mass. Animals without
/// much phytase of their own use little of it.
struct PhytateShare {
  std::optional<double> ofPhosphorus{};  ///< of foods whose phytate is known
  double known = 0.0;                    ///< share of the phosphorus eaten that comes from such foods
};
[[nodiscard]] PhytateShare phytateShare(std::span<const diet::DietFood> foods,
                                        std::span<const FoodGrams> eaten);

}  // namespace tarebowl::health
