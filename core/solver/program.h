// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <limits>
#include <optional>
#include <vector>

namespace tarebowl::solver {

inline constexpr double kInfinity = std::numeric_limits<double>::infinity();

using RowMatrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

/// "Of these variables between atLeast and atMost are used; a used one is at least threshold, the others are
/// 0."
struct Choice {
  std::vector<Eigen::Index> members;
  int atLeast = 0;
  int atMost = std::numeric_limits<int>::max();
  double threshold = 0.0;
};

/// A program over n variables x and m two-sided rows, solved lexicographically:
///   1. V* = least   sum_i price_i * violation_i(x)
///   2. among the x with that sum <= V* (1 + 1e-6) + 1e-9: least  sum_j curvature_j (x_j - centre_j)^2 +
///   cost_j x_j
///      (where V* is 0 a program without steps and choices takes nothing of the 1e-9: rows that can hold do)
/// subject to  rowLower_i <= rows_i x <= rowUpper_i  where price_i is infinite (violation must be 0),
///             lower_j <= x_j <= upper_j,  x_j in {0, step_j, 2 step_j, ...} where step_j > 0,  and the
///             choices.
/// violation_i(x) = max(0, rowLower_i - rows_i x, rows_i x - rowUpper_i).
/// scatter_i, where given, replaces rows_i x by  rows_i x -/+ || scatter_i (entrywise) x ||  against rowLower
/// / rowUpper: a bound that holds with a chance. It knows no food; all numbers are dimensionless here.
struct Program {
  RowMatrix rows;             ///< m x n
  Eigen::VectorXd rowLower;   ///< m, may be -infinity
  Eigen::VectorXd rowUpper;   ///< m, may be +infinity
  Eigen::VectorXd price;      ///< m, > 0, +infinity for a hard row
  Eigen::VectorXd lower;      ///< n, >= 0
  Eigen::VectorXd upper;      ///< n, may be +infinity
  Eigen::VectorXd step;       ///< n, 0 where continuous
  Eigen::VectorXd centre;     ///< n
  Eigen::VectorXd curvature;  ///< n, all > 0, or all 0 for a linear objective
  Eigen::VectorXd cost;       ///< n
  std::vector<Choice> choices;
  std::optional<RowMatrix> scatter;  ///< m x n, >= 0

  [[nodiscard]] Eigen::Index variableCount() const { return rows.cols(); }
  [[nodiscard]] Eigen::Index rowCount() const { return rows.rows(); }
};

/// By how much x misses the bounds of one row.
[[nodiscard]] double rowViolation(const Program& program, Eigen::Index row, const Eigen::VectorXd& x);
/// Stage 1 value of x: sum of price times violation over the elastic rows.
[[nodiscard]] double elasticViolation(const Program& program, const Eigen::VectorXd& x);
/// The largest violation of a hard row at x.
[[nodiscard]] double hardViolation(const Program& program, const Eigen::VectorXd& x);
/// Stage 2 value of x.
[[nodiscard]] double objectiveValue(const Program& program, const Eigen::VectorXd& x);

}  // namespace tarebowl::solver
