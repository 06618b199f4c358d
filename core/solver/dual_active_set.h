// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

#include <Eigen/Core>
#include <vector>

namespace tarebowl::solver {

/// least  1/2 sum_j hessian_j (z_j - centre_j)^2 + sum_i price_i violation_i(z)   subject to limits of z.
/// price may be infinite (the row must hold). hessian > 0.
struct QuadraticProgram {
  RowMatrix rows;
  Eigen::VectorXd rowLower;
  Eigen::VectorXd rowUpper;
  Eigen::VectorXd price;
  Eigen::VectorXd lower;
  Eigen::VectorXd upper;
  Eigen::VectorXd hessian;
  Eigen::VectorXd centre;
};

struct QuadraticSolution {
  enum class Status { Optimal, Infeasible, IterationLimit };
  Status status = Status::IterationLimit;
  Eigen::VectorXd z;
  Eigen::VectorXd rowMultipliers;          ///< > 0 where the upper bound pushes, < 0 where the lower one does
  Eigen::VectorXd columnMultipliers;       ///< the same for the limits of z
  std::vector<Eigen::Index> blockingRows;  ///< Infeasible: rows that, with the limits, cannot hold together
  int iterations = 0;
};

/// Dual active set method of Goldfarb and Idnani (1983), "A numerically stable dual method for solving
/// strictly convex quadratic programs", Math. Programming 27, for a diagonal Hessian. An elastic row is a row
/// whose multiplier is capped at its price: at the cap it leaves the active set and keeps pushing with its
/// price. Finite; every step raises the dual value.
[[nodiscard]] QuadraticSolution solveQuadratic(const QuadraticProgram& program);

}  // namespace tarebowl::solver
