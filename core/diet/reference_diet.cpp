// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/solve.h"
#include "core/diet/supply.h"
#include "core/food/vitamin_units.h"

#include <algorithm>

namespace tarebowl::diet {
namespace {

constexpr double kTotalWithoutEnergyTarget = 100.0;  // g

/// Energy that the first target of energy per day asks for, kcal: the middle of its zone, or its only bound.
std::optional<double> dailyEnergy(const BalanceProblem& problem) {
  const auto target = std::ranges::find_if(problem.targets, [](const animal::Target& t) {
    return t.basis == quantity::Basis::Day && t.nutrient == food::nutrients::energy();
  });
  if (target == problem.targets.end() || (!target->min && !target->max)) return std::nullopt;
  const std::optional<double> factor = food::toOwnUnitFactor(target->nutrient, target->unit);
  if (!factor) return std::nullopt;
  const double low = target->min ? *target->min : *target->max;
  const double high = target->max ? *target->max : *target->min;
  return *factor * (low + high) / 2.0;
}

}  // namespace

Diet referenceDiet(const BalanceProblem& problem) {
  if (problem.reference && gramsOf(problem, *problem.reference).sum() > 0.0) return *problem.reference;
  if (problem.foods.empty()) return {};
  double total = kTotalWithoutEnergyTarget;
  if (const std::optional<double> need = dailyEnergy(problem)) {
    const double kcalPerGram = nutrientSupply(problem, food::nutrients::energy()).perGram.mean();
    if (kcalPerGram > 0.0 && *need > 0.0) total = *need / kcalPerGram;
  }
  return Diet(problem.foods.size(), quantity::Grams(total / static_cast<double>(problem.foods.size())));
}

}  // namespace tarebowl::diet
