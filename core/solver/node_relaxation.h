// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/branch_and_bound.h"
#include "core/solver/piecewise_simplex.h"
#include "core/solver/scaled_program.h"

#include <memory>
#include <optional>
#include <vector>

namespace tarebowl::solver {

/// How near a whole number counts as one.
inline constexpr double kWhole = 1e-7;

/// Two children of a node: the column at most down, or at least up.
struct Branch {
  Eigen::Index column = -1;
  double down = 0.0;
  double up = 0.0;
  bool upFirst = false;
  PiecewiseSimplex::FirstStep other{};  ///< towards the child that is not first, where known
};

/// One place of a search.
struct Node {
  double bound = -kInfinity;
  double lambda = 1.0;
  Eigen::VectorXd lower;
  Eigen::VectorXd upper;
  /// Which side of a branch this node is, not yet in lower and upper.
  Branch branch;
  bool isUpSide = false;
  std::unique_ptr<PiecewiseSimplex::State> state;  ///< of the parent; absent where memory is short
  PiecewiseSimplex::Basis basis;                   ///< of the parent where state is absent
  std::int64_t order = 0;
};

/// The relaxation of a stage at the limits of one node: solved, bounded safely, and narrowed.
class NodeRelaxation {
 public:
  NodeRelaxation(const ScaledProgram& program, const Stage& stage);

  /// Starts from the rows as basis, at the given limits.
  void start(const Box& limits);
  /// Takes up a node kept by keep().
  void restore(const Node& node);
  /// Writes the present limits, price of violation and basis into a node, with the side of a branch that it
  /// is to be.
  void keep(Node& node, const Branch& branch, bool upSide, bool withState) const;
  /// A bound of the second child after its first step alone, without going there.
  [[nodiscard]] double boundOfSecond(const Branch& branch);
  void follow(const Branch& branch, bool upSide);

  void setLower(Eigen::Index column, double lower);
  void setUpper(Eigen::Index column, double upper);

  /// Solves at the present limits and narrows them by what would lift the bound over keepBelow. The bound, or
  /// nothing where it is at least cutoff (at most keepBelow). known: a bound of the parent.
  std::optional<double> solve(double known, double cutoff, double keepBelow);
  /// After solve() returned nothing: the highest bound that was proven, infinite where nothing is here.
  [[nodiscard]] double provenBound() const { return proven_; }

  [[nodiscard]] double lower(Eigen::Index column) const { return lower_[column]; }
  [[nodiscard]] double upper(Eigen::Index column) const { return upper_[column]; }
  [[nodiscard]] Box limits() const { return {lower_, upper_}; }
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
  bool narrow(double slack);

  void setPrices(double lambda);
  void reprice(double lambda);
  [[nodiscard]] Support support(double bound) const;
  [[nodiscard]] std::optional<Support> supportAt(double lambda);
  [[nodiscard]] bool isBeyondBudget(const Support& at) const;
  [[nodiscard]] bool isOverpriced(const Support& at) const;
  double settleLambda(double bound, double cutoff);
  void refineLambda(Support& best, Support beyond, Support within);

  double safeBound();
  [[nodiscard]] bool rayProves(double cutoff);
  [[nodiscard]] double mostPossible() const;

  const ScaledProgram& program_;
  Stage stage_;
  Eigen::Index columns_;
  PiecewiseSimplex simplex_;
  Eigen::VectorXd lower_;
  Eigen::VectorXd upper_;
  double lambda_;
  double proven_ = -kInfinity;
  std::vector<char> isElastic_;
  std::vector<Eigen::Index> narrowed_;  ///< by the choices, while they are settled
  Eigen::VectorXd slopes_;              ///< scratch of safeBound()
  Eigen::VectorXd gradient_;            ///< of the last safe bound
};

}  // namespace tarebowl::solver
