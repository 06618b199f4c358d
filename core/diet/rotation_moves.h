// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_pattern.h"

#include <array>
#include <span>
#include <stop_token>
#include <vector>

namespace tarebowl::diet {

/// A plan that is changed step by step while that makes it better. Every move keeps structure, runs, limits
/// and the scale; what it does to the zones is worked out from the changed cells alone.
class PlanMoves {
 public:
  PlanMoves(const RotationModel& model, solver::RowMatrix grams);

  [[nodiscard]] const solver::RowMatrix& grams() const { return grams_; }
  [[nodiscard]] const PlanValue& value() const { return value_; }

  /// Grams of one food from one day to another, and two foods in each other's days, while the days fall
  /// short: the sums of the period stay what they are.
  void shiftBetweenDays();
  /// That, grams of one food, of two foods on a day, and one food in another's place, until nothing helps.
  void improve(const std::stop_token& stop);

 private:
  struct Change {
    Eigen::Index day;
    Eigen::Index food;
    double grams;  ///< what is added
  };
  [[nodiscard]] bool fits(const Change& change) const;
  [[nodiscard]] bool hasStock(std::span<const Change> changes) const;
  [[nodiscard]] PlanValue valueAfter(std::span<const Change> changes);
  bool takeIfBetter(std::span<const Change> changes);
  void apply(std::span<const Change> changes);
  void measure();
  bool shiftOnce();
  bool changeOnce();
  bool pairOnce();
  struct Place {
    Eigen::Index day;
    Eigen::Index food;
  };
  [[nodiscard]] bool mayTrade(const Place& one, const Place& other);
  bool tradeWith(const Place& one);
  bool tradeOnce();
  bool replaceOnce();
  [[nodiscard]] double stepOf(Eigen::Index food) const;
  [[nodiscard]] bool isFree(Eigen::Index day, Eigen::Index food) const;
  [[nodiscard]] bool isMovable(Eigen::Index day, Eigen::Index food) const;
  [[nodiscard]] bool mayReplace(Eigen::Index day, Eigen::Index food, Eigen::Index by);

  const RotationModel& model_;
  solver::RowMatrix grams_;
  FedPattern pattern_;
  std::vector<char> isAnyDay_;            ///< of each food: only how much of it matters
  Eigen::VectorXd period_;                ///< activity of the period's rows
  std::vector<Eigen::VectorXd> daily_;    ///< of each day's rows
  std::vector<ZoneRows::Missed> missed_;  ///< of each day
  Eigen::MatrixXd periodColumns_;         ///< rows by food, contiguous by food
  Eigen::MatrixXd dailyColumns_;
  PlanValue value_;
  Eigen::VectorXd scratch_;
};

}  // namespace tarebowl::diet
