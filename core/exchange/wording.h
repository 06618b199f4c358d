// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "core/diet/from_profile.h"
#include "core/diet/measure.h"
#include "core/diet/problem.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

/// How numbers, states and bases read in a table for people.
namespace tarebowl::exchange {

/// What everything that people read ends with.
inline constexpr std::string_view kCaution =
    "Tarebowl supports, and does not replace, a qualified nutritionist and a licensed vet; local rules on "
    "feeding,\n"
    "hygiene, live prey and medicines come first. Published requirements of a model species are a starting "
    "point.\n";

/// Four significant digits, never in powers of ten: "0.01234", "22.1", "1234567".
[[nodiscard]] std::string shortNumber(double number);
/// "?" where nothing is known.
[[nodiscard]] std::string shortNumber(std::optional<double> number);
/// With the digits that the scale shows, where the grams lie on its steps.
[[nodiscard]] std::string gramsText(quantity::Grams grams, quantity::Grams scaleStep);
/// A bound to four figures, rounded to the side on which it has given way enough.
[[nodiscard]] double givenWay(double bound, diet::BoundSide side);
/// "5 … 12", "≥ 5", "≤ 12".
[[nodiscard]] std::string zoneText(std::optional<double> min, std::optional<double> max);
/// "75 %"; "100 %" and "0 %" only where that is exact.
[[nodiscard]] std::string percentText(double share);
/// "1 food", "12 foods".
[[nodiscard]] std::string counted(std::size_t count, std::string_view one, std::string_view many);
/// Shape and word, so that it reads without colour: "● met", "◐ at limit", "▼ short", "▲ over", "? unknown".
[[nodiscard]] std::string_view stateText(diet::TargetState state);
/// Why a rule of the targets is not judged: "of no food is it known".
[[nodiscard]] std::string_view reasonText(diet::NotCounted why);
/// "per kg DM", "per animal and day".
[[nodiscard]] std::string_view basisText(quantity::Basis basis);

}  // namespace tarebowl::exchange
