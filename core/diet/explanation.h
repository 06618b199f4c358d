// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/least_change.h"
#include "core/diet/measure.h"
#include "core/diet/solve.h"

#include <chrono>
#include <optional>
#include <stop_token>
#include <vector>

namespace tarebowl::diet {

/// An interval over which the same bounds push; nothing where no end was met within four times the number.
struct Range {
  std::optional<double> low;
  std::optional<double> high;
};

/// How many grams more or less of a food go with one unit more of a bound.
struct Move {
  std::size_t food = 0;
  double gramsPerUnit = 0.0;
};

/// A bound of a target, ratio or share that pushes, and its price.
struct BindingBound {
  std::size_t line = 0;  ///< position in Balance::targets
  BoundSide side = BoundSide::Min;
  double bound = 0.0;  ///< in the target's own unit per basis; of a share 0 … 1
  /// What one unit more of the bound adds to what is sought (cost per animal and day, a nutrient's amount,
  /// the squared relative distance), or to the sum of weighted shortfalls where Explanation::ofShortfall.
  double perUnit = 0.0;
  std::vector<Move> moves;     ///< the largest first; of the objective only
  std::optional<Range> range;  ///< of the bound; nothing where it was not asked for or time ran out
};

/// A food at a limit of its own that pushes: perGram is what one gram more of the limit adds to the same.
struct BindingFood {
  std::size_t food = 0;
  BoundSide side = BoundSide::Min;
  quantity::Grams limit;
  double perGram = 0.0;
};

/// Over what costs per kg of a food the same bounds push, where the cheapest bowl is sought.
struct CostRange {
  std::size_t food = 0;
  double costPerKg = 0.0;
  Range range;
};

/// The facts behind a diet. Prices and ranges are those of any amounts: on a scale's grid there is no margin,
/// and the same bowl without the grid, its foods of each choice kept, speaks for it. The reference bowl stays
/// as it is while a bound moves.
struct Explanation {
  bool ofShortfall = false;   ///< prices are those of the least shortfall: not all targets can hold
  bool ofAnyAmounts = false;  ///< the problem has a grid or choices, the prices have not
  std::vector<BindingBound> bounds;
  std::vector<BindingFood> foods;
  std::vector<CostRange> costs;
  std::vector<LeastChange> leastChanges;
};

struct ExplainOptions {
  bool ranges = true;
  std::chrono::milliseconds deadline{5'000};
  std::stop_token stop;
};

/// Works out why the answer of solve() is as it is. Empty for an answer that is none (unbounded, stopped,
/// failed).
[[nodiscard]] Explanation explain(const BalanceProblem& problem, const DietSolution& solution,
                                  const ExplainOptions& options = {});

}  // namespace tarebowl::diet
