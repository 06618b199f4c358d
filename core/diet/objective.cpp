// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/objective.h"

#include "core/diet/supply.h"
#include "core/solver/fewest.h"

#include <algorithm>

namespace tarebowl::diet {
namespace {

double distance(const Diet& reference, const Diet& diet) {
  quantity::Grams all;
  for (const quantity::Grams& amount : reference) all += amount;
  double sum = 0.0;
  for (std::size_t j = 0; j < diet.size(); ++j) {
    const double relative = (diet[j] - reference[j]) / std::max(reference[j], 0.05 * all);
    sum += relative * relative;
  }
  return sum;
}

double cost(const BalanceProblem& problem, const Diet& diet) {
  double sum = 0.0;
  for (std::size_t j = 0; j < diet.size(); ++j) {
    sum += problem.foods[j].costPerKg.value_or(0.0) * quantity::toKilograms(diet[j]).value();
  }
  return sum;
}

}  // namespace

double objectiveOf(const BalanceProblem& problem, const Diet& reference, const Diet& diet) {
  switch (problem.objective.kind) {
    case Objective::Kind::Closest:
      return distance(reference, diet);
    case Objective::Kind::LowestCost:
      return cost(problem, diet);
    case Objective::Kind::FewestFoods:
      return solver::usedIn(gramsOf(problem, diet));
    case Objective::Kind::Lowest:
    case Objective::Kind::Highest:
      break;
  }
  if (!problem.objective.nutrient) return 0.0;
  return nutrientSupply(problem, *problem.objective.nutrient).perGram.dot(gramsOf(problem, diet));
}

}  // namespace tarebowl::diet
