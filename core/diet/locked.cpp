// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/locked.h"

#include "core/diet/scale_step.h"

namespace tarebowl::diet {

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
