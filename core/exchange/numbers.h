// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"

#include <nlohmann/json_fwd.hpp>

#include <optional>
#include <string>

namespace tarebowl::exchange {

/// Digits after the point that a scale with this step shows: 0 for 1 g, 1 for 0.1 g or for an egg of 17.3 g.
/// Nothing where six digits are not enough.
[[nodiscard]] std::optional<int> digitsOf(quantity::Grams scaleStep);

/// The grams without the dust of binary arithmetic: 0.3 rather than 3 * 0.1, where they lie on the scale's
/// steps; unchanged where they do not.
[[nodiscard]] quantity::Grams onScale(quantity::Grams grams, quantity::Grams scaleStep);

/// A number that reads back as the same double: whole numbers without a point, null where it is not finite.
[[nodiscard]] nlohmann::ordered_json toJson(double number);
[[nodiscard]] nlohmann::ordered_json toJson(std::optional<double> number);

/// The document as text with a line break at its end; text that is not UTF-8 is mended rather than refused.
[[nodiscard]] std::string toText(const nlohmann::ordered_json& document);

}  // namespace tarebowl::exchange
