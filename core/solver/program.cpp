// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/program.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
double rowViolation(const Program& program, Eigen::Index row, const Eigen::VectorXd& x) {
  const double activity = program.rows.row(row).dot(x);
  const double spread = program.scatter ? program.scatter->row(row).transpose().cwiseProduct(x).norm() : 0.0;
  const double below = program.rowLower[row] - (activity - spread);
  const double above = activity + spread - program.rowUpper[row];
  return std::max({0.0, below, above});
}

double elasticViolation(const Program& program, const Eigen::VectorXd& x) {
  double sum = 0.0;
  for (Eigen::Index i = 0; i < program.rowCount(); ++i) {
    if (program.price[i] < kInfinity) sum += program.price[i] * rowViolation(program, i, x);
  }
  return sum;
}

double hardViolation(const Program& program, const Eigen::VectorXd& x) {
  double worst = 0.0;
  for (Eigen::Index i = 0; i < program.rowCount(); ++i) {
    if (!(program.price[i] < kInfinity)) worst = std::max(worst, rowViolation(program, i, x));
  }
  return worst;
}

double objectiveValue(const Program& program, const Eigen::VectorXd& x) {
  const Eigen::ArrayXd distance = (x - program.centre).array();
  return (program.curvature.array() * distance * distance).sum() + program.cost.dot(x);
}

}  // namespace tarebowl::solver
