// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"

#include <Eigen/Core>
#include <span>

namespace tarebowl::diet {

/// One flag per food.
using KnownMask = Eigen::Array<bool, Eigen::Dynamic, 1>;

/// The foods that something is added up over, and how their energy is estimated.
struct FoodList {
  std::span<const DietFood> foods;
  food::EnergyMethod energyMethod = food::EnergyMethod::ModifiedAtwater;
  FoodList(std::span<const DietFood> list, food::EnergyMethod method) : foods(list), energyMethod(method) {}
  FoodList(const BalanceProblem& problem) : FoodList(problem.foods, problem.energyMethod) {}
};

/// What one gram of each food, as offered, brings of one thing to the animal that eats its share of that
/// gram. One entry per food, in the list's order; an unknown value brings nothing and is marked as not
/// known.
struct Supply {
  Eigen::VectorXd perGram;  ///< eaten fraction times content of one gram as fed
  Eigen::VectorXd
      sdPerGram;  ///< its sample standard deviation; 0 where none is stated or the value is unknown
  KnownMask known;
};

/// Grams as fed.
[[nodiscard]] Supply massSupply(const FoodList& list);
/// Grams of dry matter, 100 - WATER of each 100 g.
[[nodiscard]] Supply dryMatterSupply(const FoodList& list);
/// In the nutrient's own unit. Energy (ENERC) is what the list's energy method makes of each food's
/// proximates, unknown where one of its terms is unknown; a scatter stated for ENERC is kept whatever the
/// method.
[[nodiscard]] Supply nutrientSupply(const FoodList& list, food::NutrientId nutrient);

/// The grams of a diet as a vector. Throws std::invalid_argument unless there is one entry per food.
[[nodiscard]] Eigen::VectorXd gramsOf(const BalanceProblem& problem, const Diet& diet);

}  // namespace tarebowl::diet
