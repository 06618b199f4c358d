// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diet_facts.h"

namespace tarebowl::ui {

std::vector<std::optional<double>> dryMatterShares(const diet::BalanceProblem& problem,
                                                   const diet::Diet& diet) {
  std::vector<std::optional<double>> shares(problem.foods.size());
  double total = 0.0;
  for (std::size_t j = 0; j < problem.foods.size(); ++j) {
    const diet::DietFood& food = problem.foods[j];
    const double eaten = food.eatenFraction * diet.at(j).value();
    const auto dryMatter = food.composition.dryMatter();
    if (dryMatter)
      shares[j] = eaten * dryMatter->value();
    else if (eaten <= 0.0)
      shares[j] = 0.0;
    total += shares[j].value_or(0.0);
  }
  if (total > 0.0)
    for (auto& share : shares)
      if (share) *share /= total;
  return shares;
}

std::optional<KnownSum> totalOf(const diet::BalanceProblem& problem, const diet::Diet& diet,
                                food::NutrientId nutrient) {
  KnownSum sum;
  bool any = false;
  for (const diet::Contribution& part : diet::contributions(problem, diet, nutrient)) {
    if (part.amount) {
      sum.amount += *part.amount;
      any = true;
    } else {
      sum.atLeast = true;
    }
  }
  return any ? std::optional(sum) : std::nullopt;
}

std::optional<KnownSum> costPerDay(const diet::BalanceProblem& problem, const diet::Diet& diet) {
  KnownSum sum;
  bool any = false;
  for (std::size_t j = 0; j < problem.foods.size(); ++j) {
    const auto& price = problem.foods[j].costPerKg;
    if (price) {
      sum.amount += *price * quantity::toKilograms(diet.at(j)).value();
      any = true;
    } else if (diet.at(j).value() > 0.0) {
      sum.atLeast = true;
    }
  }
  return any ? std::optional(sum) : std::nullopt;
}

Unmeasured unmeasured(const diet::BalanceProblem& problem, const diet::Diet& diet,
                      food::NutrientId nutrient) {
  Unmeasured result;
  const auto shares = dryMatterShares(problem, diet);
  for (const diet::Contribution& part : diet::contributions(problem, diet, nutrient)) {
    if (part.amount) continue;
    result.foods.push_back(part.food);
    result.shareOfDryMatter += shares.at(part.food).value_or(0.0);
  }
  return result;
}

}  // namespace tarebowl::ui
