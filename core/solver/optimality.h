// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

namespace tarebowl::solver {

/// A continuous program with priced rows, as far as its optimality conditions need it.
struct PricedRows {
  const RowMatrix& rows;
  const Eigen::VectorXd& rowLower;
  const Eigen::VectorXd& rowUpper;
  const Eigen::VectorXd& price;  ///< infinite where the row must hold
  const Eigen::VectorXd& lower;
  const Eigen::VectorXd& upper;
};

/// The Karush-Kuhn-Tucker conditions at z, each relative to the size of its terms: limits and hard rows hold;
/// every row's multiplier lies where the row's activity allows it (0 inside, up to the price at a bound, the
/// price beyond it); and the objective's gradient is balanced by the multipliers wherever a column is free to
/// move. The largest relative error is returned.
[[nodiscard]] double optimalityError(const PricedRows& program, const Eigen::VectorXd& objectiveGradient,
                                     const Eigen::VectorXd& z, const Eigen::VectorXd& multipliers);

}  // namespace tarebowl::solver
