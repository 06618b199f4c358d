// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/judged.h"

#include "core/diet/objective.h"

#include <algorithm>

namespace tarebowl::diet {

DietSolution judged(const BalanceProblem& problem, const Diet& diet) {
  DietSolution judged;
  judged.grams = diet;
  judged.balance = balance(problem, diet);
  judged.shortfall = judged.balance.shortfall;
  judged.objective = objectiveOf(problem, referenceDiet(problem), diet);
  judged.multipliers.assign(judged.balance.targets.size(), 0.0);
  const bool holds = std::ranges::all_of(judged.balance.targets,
                                         [](const auto& line) { return line.shortfall <= kNoShortfall; });
  judged.status = holds ? DietStatus::Balanced : DietStatus::Compromise;
  return judged;
}

}  // namespace tarebowl::diet
