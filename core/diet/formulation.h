// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/measure.h"
#include "core/diet/problem.h"
#include "core/solver/program.h"

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

/// The smallest share of the reference bowl that a change of one food is measured against in the objective
/// "closest".
inline constexpr double kLeastDistanceShare = 0.05;
/// d_j of each food: its grams in the reference, or 5 % of the whole reference where that is more.
[[nodiscard]] Eigen::VectorXd distanceUnits(const Eigen::VectorXd& reference);

}  // namespace tarebowl::diet
