// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/solver/random_program.h"

namespace tarebowl::solver {

Program randomProgram(std::mt19937& random, const RandomShape& shape) {
  std::uniform_real_distribution<double> unit(0.0, 1.0);
  const auto between = [&](double low, double high) { return low + (high - low) * unit(random); };
  const Eigen::Index n = shape.columns;
  const Eigen::Index m = shape.rows;
  Program program;
  program.rows.resize(m, n);
  program.rowLower.setConstant(m, -kInfinity);
  program.rowUpper.setConstant(m, kInfinity);
  program.price.resize(m);
  program.lower.setZero(n);
  program.upper.setConstant(n, shape.upper);
  program.step.setConstant(n, shape.step);
  program.centre.resize(n);
  program.curvature.setZero(n);
  program.cost.setZero(n);
  for (Eigen::Index j = 0; j < n; ++j) {
    program.centre[j] = between(0.0, 0.8 * shape.upper);
    if (shape.linear)
      program.cost[j] = between(-0.2, 1.0);
    else
      program.curvature[j] = between(0.05, 2.0);
    if (unit(random) < 0.1) program.lower[j] = 1.0;
  }
  for (Eigen::Index i = 0; i < m; ++i) {
    for (Eigen::Index j = 0; j < n; ++j) program.rows(i, j) = unit(random) < 0.2 ? 0.0 : between(-0.6, 1.0);
    const double near = program.rows.row(i).dot(program.centre) + between(-0.5, 0.5);
    if (unit(random) < 0.5)
      program.rowLower[i] = near;
    else
      program.rowUpper[i] = near;
    if (unit(random) < 0.2) {
      program.rowLower[i] = near - between(0.0, 0.4);
      program.rowUpper[i] = near + between(0.0, 0.4);
    }
    program.price[i] = unit(random) < shape.hardShare ? kInfinity : between(0.2, 3.0);
  }
  if (shape.withChoices) program.choices.push_back({{0, 1, 2}, 1, 2, 2.0});
  if (shape.withScatter) {
    program.scatter = RowMatrix::Zero(m, n);
    for (Eigen::Index i = 0; i < m; i += 2) {
      for (Eigen::Index j = 0; j < n; ++j)
        (*program.scatter)(i, j) = unit(random) < 0.4 ? 0.0 : between(0.0, 0.3);
    }
  }
  return program;
}

}  // namespace tarebowl::solver
