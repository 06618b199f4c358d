// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/solve.h"

#include <chrono>
#include <optional>
#include <span>
#include <stop_token>
#include <vector>

namespace tarebowl::diet {

/// One change that closes the gap of a diet or narrows it, tried for real: the problem with the change was
/// solved, whole steps and choices included, and these are the grams of that answer.
struct Remedy {
  enum class Kind {
    Add,      ///< a food of the larder beside the problem's foods
    Replace,  ///< a food of the larder, and inPlaceOf no more
    Raise     ///< more of a food of the problem than its maximum allows
  };
  Kind kind = Kind::Add;
  std::size_t food = 0;       ///< position in the larder; of a Raise, in the problem's foods
  std::size_t inPlaceOf = 0;  ///< Replace: position in the problem's foods
  quantity::Grams grams;      ///< of the food, per animal and day; of a Raise the maximum it would need
  /// Sum of weight times shortfall that remains. Where the rules still contradict each other: the least sum
  /// by which the hard ones are missed by any amounts.
  double shortfall = 0.0;
  bool possible = true;    ///< the hard rules hold with it
  double provenGap = 0.0;  ///< of the solve
  double objective = 0.0;
  double known = 1.0;  ///< share of the rules whose values are known of the food, 0 … 1
  [[nodiscard]] bool closes() const;
};

struct RemedyOptions {
  std::size_t count = 5;
  std::size_t candidates = 32;  ///< foods of the larder that are tried with any amounts
  std::chrono::milliseconds deadline{2'000};
  std::stop_token stop;
};

/// Foods on hand that would close the gap of a compromise or of an impossible problem, or come nearest: the
/// whole larder priced by the multipliers of the least shortfall, the best few tried with any amounts, the
/// best of those solved for real. Those that close the gap come first; a gain counts only for the share of
/// rules that is known of the food, since what is unknown counts as 0 and so keeps every maximum. Larder
/// foods that the problem has already (same id) are left out: for those at their maximum a Raise is tried.
/// What the animal may not have (food_safety.h) is never offered.
/// Group names, limits and scale steps of larder foods count. Empty where nothing is missed or nothing helps.
[[nodiscard]] std::vector<Remedy> findRemedies(const BalanceProblem& problem, const DietSolution& solution,
                                               std::span<const DietFood> larder,
                                               const RemedyOptions& options = {});

}  // namespace tarebowl::diet
