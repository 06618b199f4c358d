// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

namespace tarebowl::quantity {

/// The units in which labs and targets state an amount of a nutrient.
enum class Unit { Gram, Milligram, Microgram, Kilocalorie, Kilojoule, InternationalUnit };

/// Units convert into each other within a dimension. Activity (IU) needs the nutrient: see
/// food/vitamin_units.h.
enum class Dimension { Mass, Energy, Activity };

[[nodiscard]] Dimension dimensionOf(Unit unit);

/// Reads "g", "mg", "ug" or "µg", "kcal", "kJ", "IU". Nothing for any other text.
[[nodiscard]] std::optional<Unit> parseUnit(std::string_view text);

/// The symbol used in files ("ug") — plain ASCII.
[[nodiscard]] std::string_view symbolOf(Unit unit);

/// Factor f with amount_in_to = f * amount_in_from; nothing where the dimensions differ or are Activity and
/// unequal.
[[nodiscard]] std::optional<double> conversionFactor(Unit from, Unit to);

}  // namespace tarebowl::quantity
