// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"

#include <optional>
#include <string_view>
#include <variant>

namespace tarebowl::intake {

/// In which unit a scale states a weight.
enum class ScaleUnit { Gram, Kilogram, Ounce, Pound };

/// Ounce and pound are those of the international yard and pound agreement of 1959: a pound is 0.45359237 kg
/// exactly, an ounce a sixteenth of it.
[[nodiscard]] quantity::Grams toGrams(double number, ScaleUnit unit);

/// One line that a scale sent. Scales send a number and most of them a unit; some say whether the pan is at
/// rest.
struct ScaleLine {
  double number = 0.0;  ///< may be negative: what stands on the pan is lighter than what was tared
  int decimals = 0;     ///< digits behind the decimal mark
  std::optional<ScaleUnit> unit{};
  std::optional<bool> steady{};  ///< nothing where the line does not say
  bool operator==(const ScaleLine&) const = default;
};

enum class ScaleFault {
  NoNumber,        ///< words only
  SeveralNumbers,  ///< which of them is the weight cannot be told
  UnknownUnit,     ///< a weight in something that is not g, kg, oz or lb
  OutOfRange,      ///< the scale says that its pan is overloaded or lifted
  Garbled,  ///< bytes that are no text, or a line that is not shaped as the others: bytes were lost, or
            ///< the speed of the port is wrong
  NoUnit    ///< the scale never says a unit, and nobody has said which it is
};

/// Reads a line without its end. The number may have its sign apart, leading zeros, a decimal point or comma;
/// the unit follows it. Words before it may say that the pan is at rest (S, ST) or moves (D, US, SD, ?), and
/// what is weighed (G, GS, N, NT, net, gross), which changes nothing. Common practice of serial scales, no
/// source.
[[nodiscard]] std::variant<ScaleLine, ScaleFault> readScaleLine(std::string_view line);

}  // namespace tarebowl::intake
