// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/cone_face.h"
#include "core/solver/dual_active_set.h"

#include <functional>

namespace tarebowl::solver {

/// Least objective plus price times violation over a box, the rows being cones; an infinite price makes a row
/// hard. Each round solves the quadratic program in which tangents stand for the cones and a diagonal for
/// their curvature (which it never exceeds): it says which rows and limits take part. On those, Newton's
/// method on the optimality conditions gives the point, to the last digits. What is returned as Optimal has
/// been judged by the conditions of the cones themselves. Infeasible: tangents contradict each other, hence
/// the cones do. (Byrd, Gould, Nocedal and Waltz 2004, "An algorithm for nonlinear optimization using linear
/// programming and equality constrained subproblems", Math. Programming 100, with a quadratic program in the
/// first place.)
class ConeNewton {
 public:
  ConeNewton(const ConeRows& rows, const Box& box, const SmoothObjective& objective,
             std::function<bool()> isOver);

  /// From the start's z and multipliers (either may be empty).
  [[nodiscard]] ConePoint minimise(const Eigen::VectorXd& price, const ConePoint& start);

 private:
  /// A round's model, about point: what it comes to, and its multipliers to point. False: infeasible.
  [[nodiscard]] bool model(const Eigen::VectorXd& price, ConePoint& point, Eigen::VectorXd& to);
  [[nodiscard]] ConePoint along(const Eigen::VectorXd& price, const ConePoint& point,
                                const Eigen::VectorXd& to);
  [[nodiscard]] double merit(const Eigen::VectorXd& price, const Eigen::VectorXd& z) const;
  void goDown();
  void remember(double merit);

  const ConeRows& rows_;
  const Box& box_;
  const SmoothObjective& objective_;
  std::function<bool()> isOver_;
  ConeFace face_;
  DualActiveSet set_;
  bool isCurved_;
  double damping_ = 0.0;
  double hardPrice_ = 1.0;      ///< of the merit, above every hard row's multiplier
  std::vector<double> recent_;  ///< merits: a step may be worse than the last, not than all of these
};

}  // namespace tarebowl::solver
