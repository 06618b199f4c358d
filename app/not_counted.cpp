// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/not_counted.h"

#include "core/diet/food_safety.h"
#include "core/exchange/wording.h"

#include <fmt/format.h>

#include <ostream>

namespace tarebowl::app {

void tellNotCounted(const std::vector<diet::RuleNotCounted>& rules, std::ostream& out) {
  for (const diet::RuleNotCounted& rule : rules)
    out << fmt::format("not counted: {} ({})\n", rule.id, exchange::reasonText(rule.why));
}

void tellNotGiven(const diet::BalanceProblem& problem, std::ostream& out) {
  for (const diet::FoodFinding& finding : diet::findingsOn(problem))
    if (finding.forbids())
      out << fmt::format("not given: {} ({}: {})\n", problem.foods[finding.food].id, finding.ban,
                         finding.reason);
}

}  // namespace tarebowl::app
