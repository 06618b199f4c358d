// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/optimality.h"
#include "core/solver/program.h"
#include "core/solver/solve.h"

#include <string_view>

namespace tarebowl::solver {

/// What the warm solvers of both kinds of objective keep: the continuous part of a program, and its last
/// answer. Every number is in the units of the program.
class StagedAnswer {
 public:
  enum class Budget {
    Spent,  ///< the second stage may use V* (1 + 1e-6) + 1e-9, as a Program says
    Exact   ///< the best objective at V* itself
  };

  [[nodiscard]] Status status() const { return status_; }
  [[nodiscard]] std::string_view reason() const { return reason_; }
  [[nodiscard]] const Eigen::VectorXd& x() const { return x_; }
  [[nodiscard]] double violation() const { return violation_; }
  /// V* of the last solve(): violation() less what was spent of the budget.
  [[nodiscard]] double leastViolation() const { return least_; }
  [[nodiscard]] double objective() const { return objective_; }
  /// The price of violation in terms of the objective at which the answer is the best.
  [[nodiscard]] double lambda() const { return lambda_; }
  /// > 0 where the upper bound pushes: what the objective would gain per unit by which that bound rises.
  [[nodiscard]] const Eigen::VectorXd& rowMultipliers() const { return rowMultipliers_; }
  /// Multipliers of the first stage: what V* would gain.
  [[nodiscard]] const Eigen::VectorXd& violationMultipliers() const { return violationMultipliers_; }
  /// Largest relative error of the optimality conditions of the last answer.
  [[nodiscard]] double error() const { return error_; }

  [[nodiscard]] Eigen::Index rowCount() const { return rows_.rows(); }
  [[nodiscard]] Eigen::Index columnCount() const { return rows_.cols(); }

 protected:
  StagedAnswer() = default;

  /// A bound below its own other bound: no x can be between.
  [[nodiscard]] bool boundsCross() const {
    return (lower_.array() > upper_.array()).any() || (rowLower_.array() > rowUpper_.array()).any();
  }

  static constexpr double kVerified = 1e-9;       // largest relative error of an answer that is returned
  static constexpr double kNoViolation = 1e-11;   // stage 1 values below this are rounding
  static constexpr double kNoMultiplier = 1e-12;  // beside the largest one
  static constexpr double kSpare = 1e-5;          // of the budget, kept back for rounding

  void reserveAnswer(Eigen::Index rows, Eigen::Index columns);
  /// What x_ violates, and the activities that are judged after it.
  void measureViolation();
  /// Whether no answer violates less, going by the multipliers of the first stage.
  [[nodiscard]] bool isLeastViolation();
  /// Whether the objective's gradient is balanced, a unit of violation costing so many times its price.
  [[nodiscard]] bool isBalanced(const Eigen::VectorXd& gradient, double priceFactor);

  RowMatrix rows_;
  Eigen::VectorXd rowLower_;
  Eigen::VectorXd rowUpper_;
  Eigen::VectorXd price_;
  Eigen::VectorXd lower_;
  Eigen::VectorXd upper_;
  Eigen::VectorXd cost_;

  Status status_ = Status::Failed;
  std::string_view reason_;
  Eigen::VectorXd x_;
  Eigen::VectorXd rowMultipliers_;
  Eigen::VectorXd violationMultipliers_;
  double violation_ = 0.0;
  double least_ = 0.0;
  double objective_ = 0.0;
  double lambda_ = 0.0;
  double error_ = 0.0;

  Eigen::VectorXd amount_;        // what counts as much of a column
  Eigen::VectorXd gradientSize_;  // of the terms that make up the objective's gradient

 private:
  [[nodiscard]] PricedRows pricedRows(double priceFactor) const {
    return {rows_, rowLower_, rowUpper_, price_, lower_, upper_, priceFactor, &amount_};
  }

  OptimalityCheck check_;
  Eigen::VectorXd none_;
};

}  // namespace tarebowl::solver
