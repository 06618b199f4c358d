// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_day_bound.h"
#include "core/diet/rotation_effort.h"
#include "core/diet/rotation_exact.h"
#include "core/diet/rotation_search.h"

#include <array>

namespace tarebowl::diet {

/// A plan that keeps every hard rule, and what it comes to.
struct ValuedPlan {
  solver::RowMatrix grams;
  PlanValue value;
};

/// What bounds rest on; each of them says more than the one before, and takes longer.
enum class BoundBy {
  DaysTogether,  ///< in any amounts
  WholeSteps,    ///< days together, in whole steps and whole days
  DaysApart      ///< and each day one that can be fed by itself
};

/// The best plan that a search has found, and what is proved that no plan betters.
class BestPlan {
 public:
  BestPlan(const RotationModel& model, double enoughGap);

  [[nodiscard]] bool isThere() const { return found_.grams.has_value(); }
  [[nodiscard]] const SearchedPlan& found() const { return found_; }
  [[nodiscard]] SearchedPlan taken(const RotationEffort& effort) &&;

  /// Whether it is better than what there was.
  bool keep(const ValuedPlan& plan, const RotationEffort& effort);
  void setImpossible() { found_.isImpossible = true; }
  /// Every question was answered by branch and bound, or nothing was to be decided.
  void prove(const std::array<double, 4>& bound);

  void raiseBounds(RotationEffort& effort, BoundBy by);
  /// On how many days each food is fed where the sums of all days are best in whole steps; nothing as long as
  /// those are not known.
  [[nodiscard]] const std::optional<Eigen::VectorXd>& daysInWholeSteps() const { return wholeDays_; }

  /// A bound by days apart that was worked out while the best plan may have changed.
  struct DayBound {
    RotationBudgets within{};  ///< it holds for plans that miss no more than this
    double value = -solver::kInfinity;
    std::int64_t nodes = 0;
  };
  /// Whether days apart may still say more of plans that miss nothing on the days.
  [[nodiscard]] bool mayRaiseDayByDay() const;
  /// Goes on with it by so many moves, as if nothing were missed on the days. What else reads the best plan
  /// may do so meanwhile.
  [[nodiscard]] DayBound dayBound(const RotationEffort& effort, int moves);
  void take(const DayBound& bound, RotationEffort& effort);

  /// Whether the questions before the objective reach what is proved that no plan can better.
  [[nodiscard]] bool nothingIsShort() const { return isShortless(3); }
  /// The same without the wishes.
  [[nodiscard]] bool zonesAreMet() const { return isShortless(2); }
  [[nodiscard]] bool missesNothingOnDays() const;
  /// Within the gap that is enough.
  [[nodiscard]] bool isEnough() const;

 private:
  [[nodiscard]] bool isShortless(std::size_t questions) const;
  [[nodiscard]] double floorOf(std::size_t question) const;
  void forgetBounds();
  void raiseByWholeSteps(RotationStage stage, const RotationBudgets& budgets, RotationEffort& effort,
                         double& bound);
  [[nodiscard]] RotationBudgets reachedBudgets() const;
  [[nodiscard]] double enoughOfObjective() const;

  const RotationModel& model_;
  double enoughGap_;
  bool isProven_ = false;
  std::array<RotationBudgets, 4> wholeWasAsked_{};  ///< within which budgets each question was, last
  std::optional<Eigen::VectorXd> wholeDays_;
  std::optional<DayByDayBound> dayByDay_;
  RotationBudgets boundsAreWithin_{0.0, 0.0, 0.0};
  SearchedPlan found_;
};

}  // namespace tarebowl::diet
