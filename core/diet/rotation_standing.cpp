// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_standing.h"

#include <algorithm>

namespace tarebowl::diet {

namespace {

Diet counted(const RotationProblem& problem, const Diet& planned, int day) {
  const auto fed = std::ranges::find(problem.rules.fed, day, &FedDay::day);
  if (fed == problem.rules.fed.end() || !fed->eaten) return planned;
  Diet grams = planned;
  for (std::size_t food = 0; food < grams.size(); ++food) {
    const double fraction = problem.base.foods[food].eatenFraction;
    if (fraction > 0.0) grams[food] = std::max(quantity::Grams(0), (*fed->eaten)[food] / fraction);
  }
  return grams;
}

}  // namespace

RotationStanding standingOf(const RotationProblem& problem, std::span<const Diet> days) {
  RotationStanding standing;
  if (days.empty()) return standing;
  const BalanceProblem daily = zonedProblem(problem.base, problem.rules.daily);
  Diet mean(problem.base.foods.size());
  for (std::size_t day = 0; day < days.size(); ++day) {
    const Diet grams = counted(problem, days[day], static_cast<int>(day));
    standing.days.push_back(balance(daily, grams));
    for (std::size_t food = 0; food < mean.size(); ++food) mean[food] += grams[food];
  }
  for (quantity::Grams& grams : mean) grams = grams / static_cast<double>(days.size());
  standing.period = balance(zonedProblem(problem.base, problem.rules.period), mean);
  return standing;
}

}  // namespace tarebowl::diet
