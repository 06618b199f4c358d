// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

namespace tarebowl::quantity {

/// What an amount is counted against: per kg as fed, per kg dry matter (DM), per 1000 kcal metabolizable
/// energy (ME), per animal and day, per kg body mass, per kg^0.75 body mass (both per day).
enum class Basis { AsFed, DryMatter, Energy, Day, BodyMass, MetabolicMass };

/// Reads "as-fed", "dry-matter", "energy", "day", "body-mass", "metabolic-mass". Nothing for any other text.
[[nodiscard]] std::optional<Basis> parseBasis(std::string_view text);
[[nodiscard]] std::string_view symbolOf(Basis basis);

}  // namespace tarebowl::quantity
