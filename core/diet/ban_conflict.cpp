// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/ban_conflict.h"

#include "core/animal/target_profile.h"
#include "core/diet/food_safety.h"

#include <algorithm>
#include <set>

namespace tarebowl::diet {

namespace {

using Clock = std::chrono::steady_clock;

/// The problem with these rules alone, all of them hard.
BalanceProblem onlyWith(const BalanceProblem& problem, const std::vector<std::string>& rules) {
  const auto isIn = [&](const std::string& id) { return std::ranges::find(rules, id) != rules.end(); };
  BalanceProblem only = problem;
  const auto keep = [&](auto& list) {
    std::erase_if(list, [&](const auto& rule) { return !isIn(rule.id); });
    for (auto& rule : list) rule.hard = true;
  };
  keep(only.targets);
  keep(only.ratios);
  keep(only.shares);
  std::erase_if(only.choices, [&](const ChoiceRule& choice) { return !isIn(animal::idOf(choice)); });
  return only;
}

/// True only where it is shown that they do.
bool holdTogether(const BalanceProblem& problem, std::chrono::milliseconds deadline) {
  SolveOptions options;
  options.deadline = deadline;
  options.findConflict = false;
  return !solve(problem, options).grams.empty();
}

}  // namespace

void addBans(DietSolution& answer, const BalanceProblem& problem, std::chrono::milliseconds deadline) {
  const auto end = Clock::now() + deadline;
  BalanceProblem fighting = onlyWith(problem, answer.conflict);
  fighting.reference = referenceDiet(problem);
  std::vector<std::string> bans;
  for (const FoodFinding& finding : findingsOn(problem))
    if (finding.forbids() && std::ranges::find(bans, finding.ban) == bans.end()) bans.push_back(finding.ban);
  std::set<std::string> released;
  for (const std::string& ban : bans) {
    const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(end - Clock::now());
    if (left.count() <= 0) {
      answer.conflictIsSmallest = false;
      return;
    }
    released.insert(ban);
    BalanceProblem trial = withoutBanned(fighting, released);
    trial.eater.taxa.clear();  // its limits say already what may be given
    trial.exclusions.clear();
    if (!holdTogether(trial, left)) continue;
    released.erase(ban);
    answer.conflict.push_back(ban);
  }
}

}  // namespace tarebowl::diet
