// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"

#include <numbers>

namespace tarebowl::intake {

/// What a scale showed, and the step it shows in (0: not known, taken for exact).
struct ScaleReading {
  quantity::Grams grams{};
  quantity::Grams step{};
  bool operator==(const ScaleReading&) const = default;
};

/// A scale that shows whole steps is off by at most half a step either way, each error as likely as another:
/// its standard deviation is step / sqrt(12) (rectangular distribution; JCGM 100:2008, 4.3.7, from memory).
[[nodiscard]] inline double readingSd(const ScaleReading& reading) {
  constexpr double kPerSqrt12 = std::numbers::inv_sqrt3 / 2.0;
  return reading.step.value() * kPerSqrt12;
}

}  // namespace tarebowl::intake
