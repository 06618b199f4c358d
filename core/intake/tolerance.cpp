// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/tolerance.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::intake {

using quantity::Grams;

namespace {

/// Grams that are sums of decimal steps differ from their decimals by far less than this.
constexpr Grams kRounding{1e-6};

}  // namespace

bool isSound(const ToleranceRule& rule) {
  const auto isShare = [](double number) { return std::isfinite(number) && number >= 0.0; };
  return isShare(rule.ofStep) && isShare(rule.leastSteps) && isShare(rule.ofBowl) && isShare(rule.ofBody);
}

Grams toleranceOf(const ToleranceRule& rule, const ToleranceFacts& facts) {
  Grams least = std::min(rule.leastSteps * facts.step, rule.ofBowl * facts.bowl);
  if (facts.bodyMass) least = std::min(least, rule.ofBody * quantity::toGrams(*facts.bodyMass));
  return std::max(rule.ofStep * facts.step, least);
}

WeightState stateOf(Grams planned, Grams actual, Grams tolerance) {
  if (actual - planned > tolerance + kRounding) return WeightState::Over;
  if (planned - actual > tolerance + kRounding) return WeightState::Under;
  return WeightState::In;
}

}  // namespace tarebowl::intake
