// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_program.h"
#include "core/solver/solve.h"

#include <cstdint>
#include <limits>
#include <memory>

namespace tarebowl::diet {

class PricedDays;

/// What no plan betters in its objective, closer than days taken together say: every day must be one that can
/// be fed by itself, in whole steps, its own zones kept. The days together are paid for each gram and each
/// day of a food what the days apart are asked for it; whatever the prices, what both come to is a bound
/// (weak duality). They move toward those that are best for the days known so far (rotation_day_mix.h).
class DayByDayBound {
 public:
  /// Within these budgets. Only where nothing may be missed on the days: else there is no such bound.
  DayByDayBound(const RotationModel& model, const RotationBudgets& budgets);
  ~DayByDayBound();
  DayByDayBound(const DayByDayBound&) = delete;
  DayByDayBound& operator=(const DayByDayBound&) = delete;

  [[nodiscard]] bool isWithin(const RotationBudgets& budgets) const { return budgets_ == budgets; }

  /// What ends a raise, besides its limits.
  struct Goal {
    double known =
        -solver::kInfinity;  ///< a bound from elsewhere: prices that say no more are not looked for
    double enough = solver::kInfinity;
    int moves = std::numeric_limits<int>::max();  ///< of prices
  };
  /// Goes on from where it was, the days of the plan known, until the bound reaches what is enough, no prices
  /// are better, or the moves or the limits run out. -infinity where there is no bound.
  double raise(const solver::RowMatrix& plan, const Goal& goal, const solver::Limits& limits,
               std::int64_t& nodes);
  /// No prices say more, or none that are worth their time.
  [[nodiscard]] bool isAtEnd() const;

 private:
  RotationBudgets budgets_;
  std::unique_ptr<PricedDays> days_;
};

}  // namespace tarebowl::diet
