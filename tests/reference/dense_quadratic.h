// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/solve.h"

/// Quadratic programs of the literature brought to the solver's form, which has no mixed terms and no
/// negative variables.
namespace tarebowl::reference {

/// least 1/2 x' hessian x + gradient x + constant, rowLower <= rows x <= rowUpper, lower <= x <= upper.
struct DenseQuadratic {
  DenseQuadratic(Eigen::Index variables, Eigen::Index rowCount);

  Eigen::MatrixXd hessian;  ///< positive semidefinite
  Eigen::VectorXd gradient;
  double constant = 0.0;
  solver::RowMatrix rows;
  Eigen::VectorXd rowLower;  ///< -infinity unless set, as rowUpper is infinity
  Eigen::VectorXd rowUpper;
  Eigen::VectorXd lower;  ///< 0 unless set
  Eigen::VectorXd upper;  ///< infinity unless set

  /// Adds (form x - target)^2 to the objective.
  void addSquare(const Eigen::VectorXd& form, double target);
  /// rows(i) x = value
  void setEqual(Eigen::Index row, const Eigen::VectorXd& form, double value);
  [[nodiscard]] double value(const Eigen::VectorXd& x) const;
};

struct DenseAnswer {
  solver::Status status = solver::Status::Failed;
  std::string reason;
  Eigen::VectorXd x;
  double value = 0.0;
};

/// The squares of the equations, which are 0 wherever they hold, are added to the objective; with H = L L'
/// then the variables are v = L' x + shift, and limits of x become rows. Throws std::invalid_argument where
/// the objective is still flat in some direction, or where the shift has not made v positive.
[[nodiscard]] DenseAnswer solveBySubstitution(const DenseQuadratic& program, double shift);

/// For an objective that is flat in some direction: the proximal point iteration (Rockafellar 1976, "Monotone
/// operators and the proximal point algorithm"), each step by substitution, until the point stands still.
[[nodiscard]] DenseAnswer solveByProximalPoints(const DenseQuadratic& program, double shift);

}  // namespace tarebowl::reference
