// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/piecewise_cost.h"
#include "core/solver/program.h"

#include <vector>

namespace tarebowl::solver {

/// A lower bound of  sum_j cost_j(z_j) + sum_i cost_{n+i}(rows_i z)  over the breakpoints of the column
/// costs, worked out from the rows themselves: valid for any slopes, whatever rounding happened on the way to
/// them (weak duality). Slopes outside those of a row's cost are cut to them; gradient receives rows' slopes,
/// by which columns can be narrowed.
[[nodiscard]] double lagrangianBound(const RowMatrix& rows, const std::vector<PiecewiseCost>& costs,
                                     Eigen::VectorXd& slopes, Eigen::VectorXd& gradient);

}  // namespace tarebowl::solver
