// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"

#include <optional>
#include <vector>

/// Small sums over a diet that the desk shows beside the balance.
namespace tarebowl::ui {

/// Share of each food in the eaten dry matter, 0 … 1; nothing for a food in the bowl whose water is unknown.
/// Such a food is left out of the whole.
[[nodiscard]] std::vector<std::optional<double>> dryMatterShares(const diet::BalanceProblem& problem,
                                                                 const diet::Diet& diet);

/// A sum to which foods without a value could only add.
struct KnownSum {
  double amount = 0.0;
  bool atLeast = false;
};

/// Of a nutrient, as eaten per animal and day, in the nutrient's own unit; nothing where no food has a value.
[[nodiscard]] std::optional<KnownSum> totalOf(const diet::BalanceProblem& problem, const diet::Diet& diet,
                                              food::NutrientId nutrient);

/// Per animal and day; nothing where no food has a price.
[[nodiscard]] std::optional<KnownSum> costPerDay(const diet::BalanceProblem& problem, const diet::Diet& diet);

/// Foods in the bowl that have no value for the nutrient, and how much of the eaten dry matter they are.
struct Unmeasured {
  std::vector<std::size_t> foods;
  double shareOfDryMatter = 0.0;
};
[[nodiscard]] Unmeasured unmeasured(const diet::BalanceProblem& problem, const diet::Diet& diet,
                                    food::NutrientId nutrient);

}  // namespace tarebowl::ui
