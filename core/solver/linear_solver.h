// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/continuous_solver.h"
#include "core/solver/lexicographic_simplex.h"

#include <span>
#include <vector>

namespace tarebowl::solver {

/// What ContinuousSolver is for quadratic objectives, for linear ones: least cost, least or most of one
/// nutrient, again and again while bounds, prices, costs and columns change. centre and curvature of the
/// program are not looked at. Where many answers cost the same one of them is given; violation and objective
/// do not depend on which. Scales by itself; goes on from the last basis; every answer is verified as there
/// (relative error of the optimality conditions <= 1e-9) before status() says Optimal. Every number is in the
/// units of the program.
class LinearSolver : public StagedAnswer {
 public:
  using Column = ContinuousSolver::Column;

  LinearSolver() = default;
  explicit LinearSolver(const ContinuousProgram& program, std::span<const char> far = {}) {
    assign(program, far);
  }

  /// Copies the program; the next solve is cold. far, where given: for each column whether its upper bound
  /// only stands for none. Such a bound does not say how much is much, and an answer that presses against it
  /// is Unbounded.
  void assign(const ContinuousProgram& program, std::span<const char> far = {});

  void setRowBounds(Eigen::Index row, double lower, double upper);
  /// > 0; kInfinity: the row must hold.
  void setPrice(Eigen::Index row, double price);
  void setColumnBounds(Eigen::Index column, double lower, double upper);
  void setCost(Eigen::Index column, double cost);
  /// Cheapest where the column is not in use.
  void replaceColumn(Eigen::Index column, const Column& with);

  /// Both stages: least violation, then the best objective within the budget. Unbounded where the objective
  /// has no least value without limits that a program of this size has no use for.
  Status solve(Budget budget = Budget::Spent);
  /// Both stages, the second within a violation given from elsewhere; Infeasible where the least is beyond.
  Status solveWithin(double violation);
  /// One stage: the objective with elastic rows at lambda times their price; kInfinity: all rows must hold.
  Status solveAtPrice(double lambda);
  /// The next solve starts cold.
  void forget() { simplex_.forget(); }

  /// Steps of the last solve.
  [[nodiscard]] int iterations() const { return simplex_.iterations(); }

 private:
  friend class LinearPath;
  enum class Mode { Lexicographic, Priced };

  void scale();
  void placeRow(Eigen::Index row);
  void placeColumn(Eigen::Index column);
  [[nodiscard]] LexicographicSimplex::Band bandOf(Eigen::Index column) const;
  [[nodiscard]] Eigen::VectorXd scaledColumn(Eigen::Index column) const;
  void prepare(Mode mode, double lambda);
  Status retried(Budget budget, double within);
  Status attempt(Budget budget, double within);
  Status spend(double budget);
  Status end(Status status, std::string_view reason);
  [[nodiscard]] bool readAtLeastViolation();
  void take(double lambda);
  void measure();
  [[nodiscard]] bool isVerified(double priceFactor);
  [[nodiscard]] double highOf(Eigen::Index column) const;
  [[nodiscard]] bool pressesGenerousLimit() const;

  double unit_ = 1.0;         // x = unit z
  double generous_ = 1.0;     // the limit of a column without one
  std::vector<char> isFar_;   // columns whose limit only stands for none
  Eigen::VectorXd rowScale_;  // row = rowScale times the scaled row
  double costScale_ = 1.0;    // scaled cost = costScale times cost
  double priceScale_ = 1.0;   // the same of the prices

  LexicographicSimplex simplex_;
  LexicographicSimplex::Reading reading_;
  Mode mode_ = Mode::Lexicographic;
  double modeLambda_ = kInfinity;

  Eigen::VectorXd multiplierSize_;
};

}  // namespace tarebowl::solver
