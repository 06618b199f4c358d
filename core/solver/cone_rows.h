// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/scaled_program.h"

#include <vector>

namespace tarebowl::solver {

/// The rows of a scaled program some of which have scatter: rows_i z + ||scatter_i z|| <= rowUpper_i, or
/// rows_i z - ||scatter_i z|| >= rowLower_i. Such a cone equals its tangent at the point of contact and never
/// exceeds it elsewhere, so tangents in the place of cones are an outer approximation.
class ConeRows {
 public:
  /// The source of program must have scatter, and one bound on each row that has any (OneSided).
  explicit ConeRows(const ScaledProgram& program);

  [[nodiscard]] const ScaledProgram& program() const { return program_; }
  /// Rows that have scatter.
  [[nodiscard]] const std::vector<Eigen::Index>& cones() const { return cones_; }
  [[nodiscard]] double spread(Eigen::Index row, const Eigen::VectorXd& z) const;
  /// What is held against the row's bounds: rows_i z with the spread on the unkind side.
  [[nodiscard]] double activity(Eigen::Index row, const Eigen::VectorXd& z) const;
  [[nodiscard]] double violation(Eigen::Index row, const Eigen::VectorXd& z) const;

  /// Writes the cones' tangents at z into rows, which holds the other rows already. At the tip of a cone,
  /// where there is no gradient but a ball of them, that one is taken which pushes most against gradient: of
  /// everything else, by the columns that may only rise.
  void writeTangents(const Eigen::VectorXd& z, const Eigen::VectorXd& gradient,
                     const Eigen::VectorXd& multipliers, RowMatrix& rows) const;
  /// Adds to a Hessian of the given columns what the cones' curvature at z weighs by their multipliers.
  void addCurvature(const Eigen::VectorXd& z, const Eigen::VectorXd& multipliers,
                    const std::vector<Eigen::Index>& columns, Eigen::Ref<Eigen::MatrixXd> hessian) const;
  /// The same without the negative part of it (which is of rank one): a diagonal that is never less.
  void addDiagonalCurvature(const Eigen::VectorXd& z, const Eigen::VectorXd& multipliers,
                            Eigen::VectorXd& hessian) const;

 private:
  [[nodiscard]] bool isTip(double spread) const { return spread <= kTip; }
  static constexpr double kTip = 1e-14;

  const ScaledProgram& program_;
  RowMatrix scatter_;
  Eigen::VectorXd
      side_;  ///< +1 where the upper bound is held against, -1 where the lower one is, 0 no scatter
  std::vector<Eigen::Index> cones_;
};

}  // namespace tarebowl::solver
