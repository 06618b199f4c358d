// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/counted_nutrients.h"

#include "core/food/proximates.h"

#include <set>

namespace tarebowl::diet {

std::vector<food::NutrientId> countedNutrients(const BalanceProblem& problem) {
  const std::vector<food::NutrientId> always = food::proximates();
  std::set<food::NutrientId> counted(always.begin(), always.end());
  for (const animal::Target& target : problem.targets) counted.insert(target.nutrient);
  for (const animal::RatioTarget& ratio : problem.ratios) counted.insert({ratio.of, ratio.to});
  if (problem.objective.nutrient) counted.insert(*problem.objective.nutrient);
  return {counted.begin(), counted.end()};
}

}  // namespace tarebowl::diet
