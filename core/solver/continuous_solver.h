// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/active_path.h"
#include "core/solver/dual_active_set.h"
#include "core/solver/staged_answer.h"

#include <span>

namespace tarebowl::solver {

/// The continuous part of a Program (no steps, no choices, no scatter), in its own units.
struct ContinuousProgram {
  const RowMatrix& rows;
  const Eigen::VectorXd& rowLower;
  const Eigen::VectorXd& rowUpper;
  const Eigen::VectorXd& price;
  const Eigen::VectorXd& lower;
  const Eigen::VectorXd& upper;
  const Eigen::VectorXd& centre;
  const Eigen::VectorXd& curvature;  ///< all > 0
  const Eigen::VectorXd& cost;

  [[nodiscard]] static ContinuousProgram of(const Program& program) {
    return {program.rows,  program.rowLower, program.rowUpper,  program.price, program.lower,
            program.upper, program.centre,   program.curvature, program.cost};
  }
};

/// Solves a continuous program with a quadratic objective again and again, while bounds, prices, the centre
/// and columns change. Scales by itself: units do not matter. Owns all its memory: after assign() nothing is
/// allocated, and assign() itself allocates only when the dimensions grow. Each solve goes on from the last
/// active set and is verified (limits, rows, multipliers, balance; relative error <= 1e-9) before status()
/// says Optimal. Every number is in the units of the program.
class ContinuousSolver : public StagedAnswer {
 public:
  ContinuousSolver() = default;
  explicit ContinuousSolver(const ContinuousProgram& program) { assign(program); }

  /// Copies the program; the next solve is cold.
  void assign(const ContinuousProgram& program);

  void setRowBounds(Eigen::Index row, double lower, double upper);
  /// > 0; kInfinity: the row must hold.
  void setPrice(Eigen::Index row, double price);
  void setColumnBounds(Eigen::Index column, double lower, double upper);
  void setCentre(Eigen::Index column, double centre);
  void setCost(Eigen::Index column, double cost);
  /// Another food in the place of a column: its coefficients, limits and term of the objective.
  struct Column {
    std::span<const double> coefficients;  ///< one for each row
    double lower = 0.0;
    double upper = kInfinity;
    double centre = 0.0;
    double curvature = 1.0;  ///< > 0
    double cost = 0.0;
  };
  void replaceColumn(Eigen::Index column, const Column& with);

  /// Both stages: least violation, then the nearest within the budget.
  Status solve(Budget budget = Budget::Spent);
  /// Both stages, the second within a violation given from elsewhere; Infeasible where the least is beyond
  /// it.
  Status solveWithin(double violation);
  /// One stage: the objective with elastic rows at lambda times their price; kInfinity: all rows must hold.
  Status solveAtPrice(double lambda);
  /// The next solve starts cold.
  void forget() { set_.forget(); }

  [[nodiscard]] const Eigen::VectorXd& columnMultipliers() const { return columnMultipliers_; }
  /// Infeasible: hard rows that, with the limits, cannot hold together.
  [[nodiscard]] const std::vector<Eigen::Index>& blockingRows() const { return blockingRows_; }
  /// Steps of the last solve.
  [[nodiscard]] int iterations() const { return iterations_; }

 private:
  friend class PathFollower;
  enum class Mode { None, Lexicographic, Priced };

  void reserve(Eigen::Index rows, Eigen::Index columns);
  [[nodiscard]] double objectiveScale() const;
  void placeAll();
  void placeColumn(Eigen::Index column);
  void placeCap(Eigen::Index row);
  void prepare(Mode mode, double lambda);
  [[nodiscard]] bool isElastic() const;
  Status retried(Budget budget, double within);
  Status attempt(Budget budget, double within);
  Status attemptAtPrice();
  Status runOn();
  Status end(Status status, std::string_view reason);
  void measure();
  void take(double lambda);
  Status spend(double budget);
  [[nodiscard]] double lowerLambda(double lambda, double budget);
  [[nodiscard]] double tryLambdas(double within, double budget);
  [[nodiscard]] bool readAtLeastViolation();
  [[nodiscard]] bool isVerified(double priceFactor);

  Eigen::VectorXd centre_;
  Eigen::VectorXd curvature_;
  Eigen::VectorXd hessian_;  // scaled
  double scale_ = 1.0;       // of the objective

  DualActiveSet set_;
  ActivePath path_;
  Mode mode_ = Mode::None;
  double modeLambda_ = 0.0;
  bool columnsAreOld_ = false;

  Eigen::VectorXd columnMultipliers_;
  Eigen::VectorXd gradient_;
  std::vector<Eigen::Index> blockingRows_;
  int iterations_ = 0;
};

/// Most violation that a stage 2 answer may have.
[[nodiscard]] double violationBudget(double leastViolation);

}  // namespace tarebowl::solver
