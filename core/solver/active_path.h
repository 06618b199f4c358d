// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/dual_active_set.h"

namespace tarebowl::solver {

/// Follows the optimal answer of a DualActiveSet while limits and caps move in a straight line. Between two
/// events (a constraint comes into play, or leaves it) the answer moves in a straight line too; direct()
/// finds which, reach() how far, advance() goes there, pass() changes the working set. In terms of the normal
/// form.
class ActivePath {
 public:
  enum class Passed { On, Ended };  ///< Ended: beyond this point the limits contradict each other

  void reserve(const NormalForm& form);
  void clearRates();
  /// Rates in terms of z.
  void setRowRate(const NormalForm& form, Eigen::Index row, double lower, double upper);
  void setColumnRate(const NormalForm& form, Eigen::Index column, double lower, double upper);
  /// Of a cap's low part, in terms of the normal form.
  void setCapRate(Eigen::Index row, double rate) { capRate_[row] = rate; }

  void direct(const DualActiveSet& set);
  /// The length up to the next event, infinite where none comes.
  [[nodiscard]] double reach(const DualActiveSet& set);
  void advance(DualActiveSet& set, double length) const;
  [[nodiscard]] Passed pass(DualActiveSet& set);

  /// Rate at which constraint k gets further beyond its bound (on the side of its sign).
  [[nodiscard]] double beyondRate(const DualActiveSet& set, Eigen::Index k) const {
    return set.set_.sign[k] * atRate_[k] - limitRate(set, k);
  }
  /// How far it is beyond now.
  [[nodiscard]] static double beyond(const DualActiveSet& set, Eigen::Index k) {
    return set.set_.sign[k] * set.set_.at[k] - set.limit(k);
  }

  /// The least lambda down to which multipliers, {high, low} standing for high lambda + low, stay in range;
  /// and which active constraint it is that then leaves.
  struct Leaving {
    double lambda = 0.0;
    Eigen::Index position = -1;  ///< -1: they stay in range down to 0
    bool atCap = false;
  };
  [[nodiscard]] static Leaving leastLambda(const DualActiveSet& set);
  static void leave(DualActiveSet& set, const Leaving& leaving);
  /// Puts a number in for lambda.
  static void fixLambda(DualActiveSet& set, double lambda);
  /// Remembers the working set, and puts it back: limits that moved in between are the caller's to set again.
  void keep(const DualActiveSet& set);
  void restore(DualActiveSet& set) const;

 private:
  [[nodiscard]] double limitRate(const DualActiveSet& set, Eigen::Index k) const {
    return set.set_.sign[k] > 0 ? highRate_[k] : -lowRate_[k];
  }
  void solveRates(const DualActiveSet& set, double* y);
  void offer(double room, double rate, Eigen::Index k, Eigen::Index position, bool atCap, double sign);

  Eigen::VectorXd lowRate_;
  Eigen::VectorXd highRate_;
  Eigen::VectorXd capRate_;
  Eigen::VectorXd atRate_;
  double drive_ = 0.0;              // how fast the caps alone would move y
  Eigen::VectorXd multiplierRate_;  // of the active ones, in their order
  Eigen::VectorXd scratch_;
  DualActiveSet::WorkingSet kept_;
  double reach_ = kInfinity;
  struct Event {
    Eigen::Index constraint = -1;
    Eigen::Index position = -1;  // among the active ones, or -1: it becomes active
    bool atCap = false;
    double sign = 1.0;
    double rate = 0.0;
  } event_;
};

}  // namespace tarebowl::solver
