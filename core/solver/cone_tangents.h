// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/solve.h"

#include <vector>

namespace tarebowl::solver {

/// Tangents in the place of the cones of a program with scatter, and the program in which they stand. A cone
/// equals its tangent where they touch and lies beyond it elsewhere, so that program is a relaxation: its
/// value is a bound. The two bounds of an elastic row and all their tangents share one violation, the
/// largest, in a column of its own behind the others.
class ConeTangents {
 public:
  /// program must outlive it and have scatter.
  explicit ConeTangents(const Program& program);

  /// Curvature of the violation columns, about their last value: a proximal term, 0 for none.
  struct Proximal {
    double curvature = 0.0;
    Eigen::VectorXd centre;
  };
  [[nodiscard]] Program relaxation(const Proximal& proximal) const;
  [[nodiscard]] Program relaxation() const {
    return relaxation({0.0, Eigen::VectorXd::Zero(violationCount())});
  }

  /// The tangents of all cones at x.
  void touch(const Eigen::VectorXd& x);
  /// The tangents at x of those cones that lie beyond all of theirs by more than tolerance there. How many.
  Eigen::Index touchBeyond(const Eigen::VectorXd& x, double tolerance);
  /// The same of those that x, with the violations that follow it, passes by more than tolerance.
  Eigen::Index touchPassed(const Eigen::VectorXd& extended, double tolerance);
  /// Forgets tangents that lay further than slack from the answer for several rounds; called once a round.
  void dropIdle(const Eigen::VectorXd& extended, double slack);

  /// Multipliers of the source's rows out of those of the relaxation's.
  [[nodiscard]] Eigen::VectorXd sourceMultipliers(const Eigen::VectorXd& multipliers) const;
  [[nodiscard]] Eigen::Index violationCount() const { return Eigen::Index(violationRow_.size()); }
  [[nodiscard]] std::size_t size() const { return tangents_.size(); }

 private:
  /// One bound of a row with scatter: sign (rows_row x) + ||scatter_row x|| <= limit.
  struct Cone {
    Eigen::Index row;
    double sign;
    double limit;
    Eigen::Index column;  // of its violation; -1 where the row is hard
  };
  struct Tangent {
    std::size_t cone;
    Eigen::VectorXd coefficients;
    int idle = 0;  // rounds since it last held the answer back
  };

  void addTangent(std::size_t cone, const Eigen::VectorXd& x);
  [[nodiscard]] double activity(const Cone& cone, const Eigen::VectorXd& x) const;
  [[nodiscard]] double violationOf(const Cone& cone, const Eigen::VectorXd& extended) const;
  [[nodiscard]] Eigen::VectorXd extend(const Eigen::VectorXd& own, double value) const;

  const Program& program_;
  Eigen::Index n_;
  std::vector<Eigen::Index> plain_;
  std::vector<Eigen::Index> violationRow_;
  std::vector<double> violationUnit_;  // of a row per unit of its violation column, which is as large as x
  std::vector<Cone> cones_;
  std::vector<Tangent> tangents_;
};

}  // namespace tarebowl::solver
