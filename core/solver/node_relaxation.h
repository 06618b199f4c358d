// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/branch_and_bound.h"
#include "core/solver/piecewise_simplex.h"
#include "core/solver/scaled_program.h"

#include <optional>
#include <vector>

namespace tarebowl::solver {

/// How near a whole number counts as one.
inline constexpr double kWhole = 1e-7;

/// One place of a search, small enough to be kept by the hundred thousand.
struct Node {
  double bound = -kInfinity;
  double lambda = 1.0;
  Eigen::VectorXd lower;
  Eigen::VectorXd upper;
  PiecewiseSimplex::Basis basis;
  std::int64_t order = 0;
};

/// The relaxation of a stage at the limits of one node: solved, bounded safely, and narrowed.
class NodeRelaxation {
 public:
  NodeRelaxation(const ScaledProgram& program, const Stage& stage);

  [[nodiscard]] Node root();
  void restore(const Node& node);
  /// Present limits, price of violation and basis, with the given bound.
  [[nodiscard]] Node snapshot(double bound) const;

  void setLower(Eigen::Index column, double lower);
  void setUpper(Eigen::Index column, double upper);

  /// Solves at the present limits and narrows them by what would lift the bound over cutoff. The bound, or
  /// nothing where the node holds nothing below cutoff.
  std::optional<double> solve(double cutoff);

  [[nodiscard]] double lower(Eigen::Index column) const { return lower_[column]; }
  [[nodiscard]] double upper(Eigen::Index column) const { return upper_[column]; }
  [[nodiscard]] const PiecewiseSimplex& simplex() const { return simplex_; }
  /// The relaxation's point, rounded where it is meant to be whole, within the limits.
  [[nodiscard]] Eigen::VectorXd wholeValues() const;

 private:
  /// What the relaxation's point costs and violates: a line below the bound as a function of the price of
  /// violation.
  struct Support {
    double lambda;
    double violation;
    double bound;
  };

  void applyLimits(Eigen::Index column);
  void respectThreshold(Eigen::Index column);
  bool choicesAdmit();
  bool narrow(const Eigen::VectorXd& gradient, double slack);

  void setLambda(double lambda);
  void reprice(double lambda);
  [[nodiscard]] Support support(double bound) const;
  [[nodiscard]] std::optional<Support> supportAt(double lambda);
  [[nodiscard]] bool isBeyondBudget(const Support& at) const;
  [[nodiscard]] bool isOverpriced(const Support& at) const;
  double settleLambda(double bound, double cutoff);
  void refineLambda(Support& best, Support beyond, Support within);

  double safeBound(Eigen::VectorXd& gradient) const;
  [[nodiscard]] bool rayProves(double cutoff) const;
  [[nodiscard]] double mostPossible() const;

  const ScaledProgram& program_;
  Stage stage_;
  Eigen::Index columns_;
  std::vector<PiecewiseCost> base_;
  PiecewiseSimplex simplex_;
  Eigen::VectorXd lower_;
  Eigen::VectorXd upper_;
  std::vector<Eigen::Index> narrowed_;  ///< by the choices, while they are settled
  double lambda_;
};

}  // namespace tarebowl::solver
