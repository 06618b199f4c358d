// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/cone_newton.h"

namespace tarebowl::solver {

/// The two questions of a program with scatter over a box, no grid and no choices. The answers carry
/// z and multipliers of the scaled rows, and are judged by the optimality conditions of the cones.
class ConeStages {
 public:
  ConeStages(const ConeRows& rows, std::function<bool()> isOver);

  /// Both in turn: the best point that needs no violation at all where there is one, which spares the first
  /// question.
  [[nodiscard]] ContinuousAnswer both(const Box& box);
  /// The best objective with every row holding.
  [[nodiscard]] ContinuousAnswer allHold(const Box& box);
  [[nodiscard]] ContinuousAnswer leastViolation(const Box& box);
  [[nodiscard]] ContinuousAnswer leastObjective(const Box& box, double least);

  /// Of the last leastViolation: multipliers of the scaled rows; empty where it was not asked.
  [[nodiscard]] const Eigen::VectorXd& violationMultipliers() const { return violationMultipliers_; }
  /// Price of violation at the last answer of leastObjective; infinite where all rows had to hold.
  [[nodiscard]] double lambda() const { return lastLambda_; }

 private:
  struct Priced {
    ContinuousAnswer answer;
    double lambda = 0.0;
  };
  /// Two prices of violation: at one the answer is within the budget, at the other beyond it.
  struct Bracket {
    Priced within;
    Priced beyond;
    double least = 0.0;
    double budget = 0.0;

    [[nodiscard]] bool isFound() const;
    [[nodiscard]] bool isClosed() const;
  };

  [[nodiscard]] ContinuousAnswer solve(const Box& box, const SmoothObjective& objective,
                                       const Eigen::VectorXd& price);
  [[nodiscard]] ContinuousAnswer at(const Box& box, double lambda);
  [[nodiscard]] bool isImpossible(const Box& box);
  [[nodiscard]] double mostObjective(const Box& box) const;
  [[nodiscard]] ContinuousAnswer leastViolationByPrice(const Box& box);
  [[nodiscard]] ContinuousAnswer spend(const Box& box, const Bracket& bracket, double& lambda);
  [[nodiscard]] ContinuousAnswer withinBudget(const Box& box, double least);
  [[nodiscard]] double firstLambda() const;
  [[nodiscard]] static double beside(const Bracket& bracket, double lambda, int time);
  [[nodiscard]] double nextLambda(const Bracket& bracket, int round, double proposed) const;
  [[nodiscard]] ContinuousAnswer mixed(const Bracket& bracket) const;
  [[nodiscard]] ContinuousAnswer mixedAndJudged(const Bracket& bracket) const;
  [[nodiscard]] ContinuousAnswer measured(const ConePoint& point) const;

  const ConeRows& rows_;
  std::function<bool()> isOver_;
  SmoothObjective objective_;  ///< of the second stage
  bool isCurved_;
  ConePoint last_;           ///< where the next one starts
  double lastLambda_ = 0.0;  ///< price of violation there
  Eigen::VectorXd violationMultipliers_;
};

}  // namespace tarebowl::solver
