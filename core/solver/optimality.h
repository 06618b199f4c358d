// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

namespace tarebowl::solver {

/// A continuous program with priced rows, as far as its optimality conditions need it.
struct PricedRows {
  const RowMatrix& rows;
  const Eigen::VectorXd& rowLower;
  const Eigen::VectorXd& rowUpper;
  const Eigen::VectorXd& price;  ///< infinite where the row must hold
  const Eigen::VectorXd& lower;
  const Eigen::VectorXd& upper;
  double priceFactor = 1.0;  ///< of the finite prices; infinite: every row must hold
  /// What counts as much of a column: smaller sizes are judged as this one; none: 1.
  const Eigen::VectorXd* amount = nullptr;
};

/// The Karush-Kuhn-Tucker conditions at z, each relative to the size of its own terms, so that units do not
/// matter: limits and hard rows hold; every row's multiplier lies where the row's activity allows it (0
/// inside, up to the price at a bound, the price beyond it); and the objective's gradient is balanced by the
/// multipliers wherever a column is free to move. Nothing is allocated after reserve().
class OptimalityCheck {
 public:
  void reserve(Eigen::Index rows, Eigen::Index columns);
  /// Activities of the rows at z; error() takes them from here.
  void measure(const RowMatrix& rows, const Eigen::VectorXd& z) { activity_.noalias() = rows * z; }
  [[nodiscard]] const Eigen::VectorXd& activity() const { return activity_; }
  /// The largest relative error at the z that was measured. gradientSize: the size of the terms that make up
  /// each entry of the gradient. Multipliers up to small times the largest one count as 0.
  [[nodiscard]] double error(const PricedRows& program, const Eigen::VectorXd& gradient,
                             const Eigen::VectorXd& gradientSize, const Eigen::VectorXd& z,
                             const Eigen::VectorXd& multipliers, double small = 0.0);

 private:
  [[nodiscard]] double rowError(const PricedRows& program, Eigen::Index i, const Eigen::VectorXd& z,
                                double multiplier, double small) const;
  [[nodiscard]] double columnError(const PricedRows& program, Eigen::Index j, double gradient, double size,
                                   double z, const Eigen::VectorXd& multipliers) const;

  Eigen::VectorXd activity_;
  Eigen::VectorXd pushed_;
};

/// The same with scratch of its own, for programs scaled to numbers near 1.
[[nodiscard]] double optimalityError(const PricedRows& program, const Eigen::VectorXd& objectiveGradient,
                                     const Eigen::VectorXd& z, const Eigen::VectorXd& multipliers);

}  // namespace tarebowl::solver
