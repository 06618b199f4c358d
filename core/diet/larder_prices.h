// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/formulation.h"
#include "core/diet/measure.h"

#include <span>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// What the rows of a problem would pay for a little of something, where not all can hold.
struct RowPrices {
  /// One per row: how fast the least shortfall grows with the row's activity. 0 where nothing pushes.
  Eigen::VectorXd perRow;
  double shortfall = 0.0;  ///< the least one, of any amounts
};

/// The multipliers of the least shortfall of a program of any amounts (any_amounts.h), scatter left out.
[[nodiscard]] RowPrices rowPrices(const solver::Program& anyAmounts);

/// A food outside the problem, and what is known of its worth.
struct PricedFood {
  std::size_t food = 0;  ///< position in the larder
  double known = 0.0;    ///< share of the rules whose values are known of it, 0 … 1
};

/// A larder beside a problem: each food as the column that it would be.
class LarderColumns {
 public:
  LarderColumns(const BalanceProblem& problem, const Formulation& formulation,
                std::span<const Measure> measures, std::span<const DietFood> larder);

  /// The most promising foods: those that gain most per gram as fed and those that gain most per gram of dry
  /// matter, each by a first price that counts only for the share of rules that is known of the food.
  [[nodiscard]] std::vector<PricedFood> promising(const RowPrices& prices, std::size_t most) const;

  /// Foods of these groups, the best known first: where not a nutrient is wanted but a choice.
  [[nodiscard]] std::vector<PricedFood> ofGroups(const std::vector<std::string>& groups,
                                                 std::size_t most) const;

  /// The program with one more column at its end.
  [[nodiscard]] solver::Program with(const solver::Program& program, std::size_t food) const;

 private:
  std::span<const DietFood> larder_;
  Columns columns_;
  Eigen::VectorXd known_;
  Eigen::VectorXd dryMatter_;  ///< of one gram
};

}  // namespace tarebowl::diet
