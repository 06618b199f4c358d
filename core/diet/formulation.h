// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/measure.h"
#include "core/diet/problem.h"
#include "core/solver/program.h"

#include <optional>
#include <span>
#include <vector>

namespace tarebowl::diet {

/// Which bound of which measure a row of the program stands for.
struct RowOrigin {
  std::size_t measure = 0;  ///< position in measuresOf(problem), which is the position in Balance::targets
  BoundSide side = BoundSide::Min;
  bool operator==(const RowOrigin&) const = default;
};

/// A balance problem in the solver's words. Variables are grams offered, one per food in the problem's order.
struct Formulation {
  solver::Program program;
  std::vector<RowOrigin> rows;       ///< one per row of the program
  std::vector<std::string> choices;  ///< the group of each choice of the program
};

/// Each bound becomes one row whose violation is the relative shortfall of that bound, at the price of its
/// weight; a hard bound has an infinite price, a soft one of weight 0 has no row, and neither has a measure
/// that cannot be counted. reference is x°, as referenceDiet() gives it.
[[nodiscard]] Formulation formulate(const BalanceProblem& problem, std::span<const Measure> measures,
                                    const Diet& reference);

/// Writes the row of one bound of a measure anew, where the bound has another value than it was formulated
/// with.
void writeRow(solver::Program& program, Eigen::Index row, const Measure& measure, BoundSide side);

/// What one gram of other foods would add to each row: the columns that they would be. over are the problem's
/// measures over those foods, as measuresOver() gives them.
struct Columns {
  solver::RowMatrix rows;                    ///< rows of the formulation x foods
  std::optional<solver::RowMatrix> scatter;  ///< where the formulation has it
};
[[nodiscard]] Columns columnsOf(const Formulation& formulation, std::span<const Measure> over,
                                std::size_t foods);

/// The smallest share of the reference bowl that a change of one food is measured against in the objective
/// "closest".
inline constexpr double kLeastDistanceShare = 0.05;
/// d_j of each food: its grams in the reference, or 5 % of the whole reference where that is more.
[[nodiscard]] Eigen::VectorXd distanceUnits(const Eigen::VectorXd& reference);

}  // namespace tarebowl::diet
