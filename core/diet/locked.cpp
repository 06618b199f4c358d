// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/locked.h"

#include "core/diet/scale_step.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::diet {

namespace {

/// Up to what rounding makes of a decimal number.
bool isOnScale(quantity::Grams mass, quantity::Grams step) {
  const double away = std::abs((nearestOnScale(mass, step) - mass).value());
  return away <= 1e-9 * std::max(1.0, mass.value());
}

}  // namespace

BalanceProblem withLocked(BalanceProblem problem, const Diet& grams, const std::vector<bool>& locked) {
  for (std::size_t i = 0; i < problem.foods.size(); ++i) {
    if (!locked.at(i)) continue;
    DietFood& food = problem.foods[i];
    const quantity::Grams held = grams.at(i);
    food.min = held;
    food.max = held;
    // Grams that lie off the scale's steps are held as one step of their own mass.
    if (problem.wholeSteps && held > quantity::Grams(0) && !isOnScale(held, food.scaleStep))
      food.scaleStep = held;
  }
  return problem;
}

}  // namespace tarebowl::diet
