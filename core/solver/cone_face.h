// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/cone_rows.h"
#include "core/solver/continuous.h"

#include <string>

namespace tarebowl::solver {

/// 1/2 sum_j hessian_j (z_j - centre_j)^2 + slope_j z_j, in scaled terms.
struct SmoothObjective {
  Eigen::VectorXd hessian;
  Eigen::VectorXd centre;
  Eigen::VectorXd slope;

  [[nodiscard]] double value(const Eigen::VectorXd& z) const;
  [[nodiscard]] Eigen::VectorXd gradient(const Eigen::VectorXd& z) const;
};

struct ConePoint {
  Status status = Status::Failed;
  std::string reason;
  Eigen::VectorXd z;
  Eigen::VectorXd multipliers;  ///< of the rows; > 0 where the upper bound pushes
  double error = kInfinity;     ///< of the optimality conditions of the cones, relative
};

/// A price of violation that is itself sought, so that the violation is just what is allowed.
struct Allowance {
  double violation;
  double tolerance;
  double lambda;  ///< of the prices; where it starts, and what it came to
};

/// Newton's method on the optimality conditions of a program with cones, once it is known which columns are
/// free to move, which rows are held at a bound and which miss it: those that are so at the point it starts
/// from.
class ConeFace {
 public:
  ConeFace(const ConeRows& rows, const Box& box, const SmoothObjective& objective);

  /// The largest relative error of the optimality conditions at a point.
  [[nodiscard]] double judge(const Eigen::VectorXd& price, const ConePoint& point);
  /// Tangents at the point that was judged last, and all other rows.
  [[nodiscard]] const RowMatrix& tangents() const { return tangents_; }

  /// From the point as long as it comes nearer; point.error must be as judged.
  void polish(const Eigen::VectorXd& price, ConePoint& point);
  /// The same with prices lambda times price, lambda being sought with the point. False: this face has no
  /// such point.
  [[nodiscard]] bool spend(const Eigen::VectorXd& price, Allowance& allowance, ConePoint& point);

 private:
  struct Members;
  [[nodiscard]] Members membersOf(const Eigen::VectorXd& price, const ConePoint& point) const;
  [[nodiscard]] bool step(const Eigen::VectorXd& price, ConePoint& point, Allowance* allowance);
  void fillSystem(const Members& members, const ConePoint& point);
  void addAllowance(const Eigen::VectorXd& price, const Members& members, const Allowance& allowance,
                    const ConePoint& point);
  [[nodiscard]] double violation(const Eigen::VectorXd& price, const Eigen::VectorXd& z) const;

  const ConeRows& rows_;
  const Box& box_;
  const SmoothObjective& objective_;
  RowMatrix tangents_;
  Eigen::MatrixXd system_;
  Eigen::VectorXd right_;
};

}  // namespace tarebowl::solver
