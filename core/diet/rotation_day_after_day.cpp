// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_day_after_day.h"

#include "core/diet/rotation_pattern.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <vector>

namespace tarebowl::diet {
namespace {

using Clock = std::chrono::steady_clock;
using Eigen::Index;

/// A day that is decided before others, without these foods.
struct Ahead {
  Index day = 0;
  std::vector<Index> without;
};

constexpr Index kMostReach = 3;  // days that stand alone on either side: each makes the programs larger

enum class MayMiss { No, Yes };

class DaysInOrder {
 public:
  DaysInOrder(const RotationModel& model, const RotationBudgets& budgets, const solver::Limits& limits,
              Clock::time_point until, MayMiss mayMiss)
      : left_(model),
        budgets_(budgets),
        limits_(limits),
        until_(until),
        mayMiss_(mayMiss),
        pattern_(givenPattern(model)) {}

  /// The day that found no answer, with the foods that runs forbade it.
  std::optional<Ahead> decide(std::span<const Ahead> ahead, std::span<const Index> order) {
    std::vector<Ahead> days(ahead.begin(), ahead.end());
    for (const Index d : order)
      if (std::ranges::find(ahead, d, &Ahead::day) == ahead.end()) days.push_back({d, {}});
    for (const Ahead& each : days) toCome_.push_back(each.day);
    for (Ahead& each : days) {
      toCome_.erase(toCome_.begin());
      leaveOut(each);
      if (!decide(each.day)) return std::move(each);
    }
    return std::nullopt;
  }

  [[nodiscard]] solver::RowMatrix plan() const {
    solver::RowMatrix grams(left_.days, left_.foods);
    for (Index d = 0; d < left_.days; ++d) {
      for (Index j = 0; j < left_.foods; ++j) {
        const RotationCell& cell = left_.cell(d, j);
        grams(d, j) = cell.isFixed ? cell.least : 0.0;
      }
    }
    return grams;
  }
  [[nodiscard]] std::int64_t nodes() const { return nodes_; }

 private:
  bool decide(Index day) {
    auto grams = answered(day, RotationStage::Objective);
    if (!grams && mayMiss_ == MayMiss::Yes && !limits_.stop.stop_requested())
      grams = answered(day, RotationStage::Daily);
    if (!grams) return false;
    settle(day, *grams);
    return true;
  }

  /// What runs with the days that are decided forbid: where this day is decided first, it does without it,
  /// too.
  void leaveOut(Ahead& ahead) {
    for (Index j = 0; j < left_.foods; ++j) {
      const RotationCell& cell = left_.cell(ahead.day, j);
      if (cell.isFixed || cell.must || cell.most <= 0.0) continue;
      if (runThrough(pattern_, ahead.day, j) > left_.longestRun[static_cast<std::size_t>(j)])
        ahead.without.push_back(j);
    }
    for (const Index j : ahead.without) left_.cell(ahead.day, j).most = 0.0;
  }

  std::optional<Eigen::VectorXd> answered(Index day, RotationStage stage) {
    RotationProgram asked = rotationProgram(left_, beside(day), stage, budgets_, WithDailyZones::Yes);
    if (asked.program.variableCount() == 0) return std::nullopt;
    takeAnyAmountsLater(asked);
    const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(until_ - Clock::now());
    if (left.count() <= 0) return std::nullopt;
    solver::Limits limits = limits_;
    limits.deadline = left;
    const solver::Solution solution = solver::solve(asked.program, limits);
    nodes_ += std::max<std::int64_t>(1, solution.nodes);
    if (solution.status != solver::Status::Optimal) return std::nullopt;
    if (stage == RotationStage::Daily)
      budgets_[1] = std::max(budgets_[1], solution.violation * (1.0 + kBudgetRounding));
    Eigen::VectorXd grams = Eigen::VectorXd::Zero(left_.foods);
    for (Index j = 0; j < left_.foods; ++j)
      if (asked.gramsColumn(0, j) >= 0.0) grams[j] = solution.x[static_cast<Index>(asked.gramsColumn(0, j))];
    return grams;
  }

  /// The day, those to come whose foods it may forbid by runs, and all others together.
  [[nodiscard]] DayBlocks beside(Index day) const {
    Index reach = 0;
    for (const int run : left_.longestRun)
      if (run < left_.days) reach = std::max<Index>(reach, run);
    reach = std::min(reach, kMostReach);
    DayBlocks blocks{{day}};
    std::vector<Index> others;
    for (const Index d : toCome_) {
      if (std::abs(d - day) <= reach)
        blocks.push_back({d});
      else
        others.push_back(d);
    }
    if (!others.empty()) blocks.push_back(std::move(others));
    return blocks;
  }

  static void takeAnyAmountsLater(RotationProgram& asked) {
    for (Index t = 1; t < asked.gramsColumn.rows(); ++t)
      for (Index j = 0; j < asked.gramsColumn.cols(); ++j)
        for (const double column : {asked.gramsColumn(t, j), asked.daysColumn(t, j)})
          if (column >= 0.0) asked.program.step[static_cast<Index>(column)] = 0.0;
  }

  void settle(Index day, const Eigen::VectorXd& grams) {
    for (Index j = 0; j < left_.foods; ++j) {
      RotationCell& cell = left_.cell(day, j);
      if (cell.isFixed) continue;
      const double amount = onScale(grams[j], left_.step[j]);
      cell = {.least = amount, .most = amount, .must = amount > 0.0, .isFixed = true};
      pattern_(day, j) = amount > 0.0;
    }
  }

  static double onScale(double grams, double step) {
    constexpr double kTrace = 1e-9;
    if (step > 0.0) return std::round(grams / step) * step;
    return grams < kTrace ? 0.0 : grams;
  }

  RotationModel left_;         ///< days that were decided are fixed
  std::vector<Index> toCome_;  ///< after the day that is being decided
  RotationBudgets budgets_;
  const solver::Limits& limits_;
  Clock::time_point until_;
  MayMiss mayMiss_;
  FedPattern pattern_;
  std::int64_t nodes_ = 0;
};

}  // namespace

std::optional<solver::RowMatrix> dayAfterDay(const RotationModel& model, std::span<const Index> order,
                                             const RotationBudgets& budgets, const solver::Limits& limits,
                                             std::int64_t& nodes) {
  std::vector<Ahead> ahead;
  MayMiss mayMiss = MayMiss::No;
  const Clock::time_point until = Clock::now() + limits.deadline;
  while (!limits.stop.stop_requested() && Clock::now() < until) {
    DaysInOrder days(model, budgets, limits, until, mayMiss);
    auto failed = days.decide(ahead, order);
    nodes += days.nodes();
    if (!failed) return days.plan();
    if (mayMiss == MayMiss::Yes) return std::nullopt;
    const bool wasAhead = std::ranges::find(ahead, failed->day, &Ahead::day) != ahead.end();
    if (wasAhead)
      mayMiss = MayMiss::Yes;
    else
      ahead.insert(ahead.begin(), std::move(*failed));
  }
  return std::nullopt;
}

}  // namespace tarebowl::diet
