// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/lagrangian_bound.h"

namespace tarebowl::solver {

double lagrangianBound(const RowMatrix& rows, const std::vector<PiecewiseCost>& costs,
                       Eigen::VectorXd& slopes, Eigen::VectorXd& gradient) {
  const Eigen::Index columns = rows.cols();
  double bound = 0.0;
  gradient.setZero(columns);
  for (Eigen::Index i = 0; i < rows.rows(); ++i) {
    double& slope = slopes[i];
    if (slope == 0.0) continue;
    const PiecewiseCost& cost = costs[std::size_t(columns + i)];
    if (slope > 0) {
      slope = std::min(slope, cost.highest() < kInfinity ? cost.slopeAbove(cost.last()) : 0.0);
      if (slope > 0) bound -= slope * cost.highest();
    } else {
      slope = std::max(slope, cost.lowest() > -kInfinity ? cost.slopeBelow(cost.first()) : 0.0);
      if (slope < 0) bound -= slope * cost.lowest();
    }
    if (slope != 0.0) gradient.noalias() += slope * rows.row(i).transpose();
  }
  for (Eigen::Index j = 0; j < columns; ++j) bound += costs[std::size_t(j)].leastWith(gradient[j]);
  return bound;
}

}  // namespace tarebowl::solver
