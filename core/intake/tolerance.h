// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"

#include <optional>

namespace tarebowl::intake {

/// How far a weight may lie from the plan, a house rule that can be edited: `ofStep` of a scale step, or
/// where larger the least of `leastSteps` scale steps, a share of the bowl and a share of body mass (common
/// practice, no source: half a step; two steps, 2 % and 0.3 %).
struct ToleranceRule {
  double ofStep = 0.5;      ///< scale steps that are always allowed, 0 or more
  double leastSteps = 2.0;  ///< the three of which the least counts: scale steps, …
  double ofBowl = 0.02;     ///< … share of all that is planned for the bowl, …
  double ofBody = 0.003;    ///< … share of the body mass of those who share it
  bool operator==(const ToleranceRule&) const = default;
};

/// Every number is finite and not negative.
[[nodiscard]] bool isSound(const ToleranceRule& rule);

/// What the tolerance of one food in one bowl depends on.
struct ToleranceFacts {
  quantity::Grams step{1};                        ///< of the scale, for this food
  quantity::Grams bowl{};                         ///< all that is planned for the bowl
  std::optional<quantity::Kilograms> bodyMass{};  ///< of all who share it; unknown: it does not narrow it
};
[[nodiscard]] quantity::Grams toleranceOf(const ToleranceRule& rule, const ToleranceFacts& facts);

enum class WeightState { In, Under, Over };
/// A weight at the edge is in.
[[nodiscard]] WeightState stateOf(quantity::Grams planned, quantity::Grams actual, quantity::Grams tolerance);

}  // namespace tarebowl::intake
