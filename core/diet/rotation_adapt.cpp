// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_adapt.h"

#include "core/diet/rotation_broken_rules.h"
#include "core/diet/rotation_rework.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <utility>
#include <vector>

namespace tarebowl::diet {
namespace {

using Clock = std::chrono::steady_clock;
using Eigen::Index;

constexpr double kClosed = 1e-9;
constexpr std::int64_t kNodesOfDays = 1000;
constexpr std::int64_t kNodesOfFoods = 1500;

/// Grams as they were, as far as the cell lets them be.
double laidDown(const RotationCell& cell, double step, double grams) {
  if (cell.isFixed) return cell.least;
  if (cell.most <= 0.0) return 0.0;
  if (grams <= 0.0) return cell.must ? cell.least : 0.0;
  const double onScale = step > 0.0 ? std::round(grams / step) * step : grams;
  return std::clamp(onScale, cell.least, cell.most);
}

enum class Heeding { Rules, Everything };

ZoneRows noZones(Index foods) {
  return {solver::RowMatrix::Zero(0, foods), {}, {}, {}};
}

/// Without zones and wishes: which food comes when, and how near to what it was.
RotationModel withRulesAlone(RotationModel model) {
  model.period = model.daily = noZones(model.foods);
  model.variety.clear();
  model.varietyMembers.clear();
  model.useUp.clear();
  return model;
}

class Adapting {
 public:
  Adapting(const RotationModel& model, const solver::RowMatrix& before, const solver::Limits& limits)
      : model_(model),
        rulesAlone_(withRulesAlone(model)),
        before_(before),
        limits_(limits),
        until_(Clock::now() + limits.deadline) {
    plan_ = before;
    for (Index d = 0; d < model.days; ++d)
      for (Index j = 0; j < model.foods; ++j)
        plan_(d, j) = laidDown(model.cell(d, j), model.step[j], before(d, j));
    standing_ = standingOf(plan_);
    was_ = standingOf(before).value;
  }

  std::optional<solver::RowMatrix> adapted() {
    const std::vector<Index> touched = touchedDays();
    if (breaksRules()) keepRules(touched);
    for (Index d = 0; d < model_.days; ++d)
      if (isOpen(d) && fallsShort(d)) rework(std::array{d});
    while (!isOver() && isShort() && reworkBest()) {
    }
    if (isShort()) reworkPairs(touched);
    if (breaksRules() || standing_.value.broken > kClosed) return std::nullopt;
    return plan_;
  }
  [[nodiscard]] std::int64_t nodes() const { return nodes_; }

 private:
  struct Standing {
    BrokenRules rules;
    PlanValue value;
    /// Rules, then zones and wishes: what is near and what is cheap gives way to staying as it was.
    [[nodiscard]] bool isBetterThan(const Standing& other) const {
      if (rules.by != other.rules.by) return rules.by < other.rules.by;
      return value.isBetterThan(other.value);
    }
  };
  [[nodiscard]] Standing standingOf(const solver::RowMatrix& plan) const {
    Standing standing{brokenRules(model_, plan.array() > 0.0), valueOf(model_, plan)};
    for (Index j = 0; j < model_.foods; ++j) {
      if (plan.col(j).sum() <= model_.mostGrams[j] + kGramsRounding) continue;
      ++standing.rules.by;
      standing.rules.foods[static_cast<std::size_t>(j)] = 1;
    }
    standing.value.objective = 0.0;
    return standing;
  }
  [[nodiscard]] bool breaksRules() const { return standing_.rules.by > 0; }
  [[nodiscard]] bool isOpen(Index day) const { return model_.isOpen[static_cast<std::size_t>(day)] != 0; }
  [[nodiscard]] bool isShort() const {
    const PlanValue& value = standing_.value;
    return breaksRules() || value.broken + value.period + value.daily + value.wishes > kClosed;
  }
  [[nodiscard]] bool fallsShort(Index day) const {
    const ZoneRows::Missed missed = model_.daily.missed(model_.daily.rows * plan_.row(day).transpose());
    return missed.hard + missed.soft > kClosed;
  }
  [[nodiscard]] bool isOver() const {
    return Clock::now() >= until_ || limits_.stop.stop_requested() || nodes_ >= limits_.nodes;
  }

  /// Days on which something else is laid down than there was.
  [[nodiscard]] std::vector<Index> touchedDays() const {
    std::vector<Index> touched;
    for (Index d = 0; d < model_.days; ++d)
      if (isOpen(d) && (plan_.row(d) - before_.row(d)).cwiseAbs().maxCoeff() > kClosed) touched.push_back(d);
    return touched;
  }

  /// The foods of the rules that are broken give way: on the days that were touched, with all of these days,
  /// on every day; first with the least change that keeps the rules, then with an eye on the zones. The first
  /// that leaves no more short than there was is taken; else the best of them, and other foods are to follow.
  void keepRules(const std::vector<Index>& touched) {
    const CellChoice days = wholeDays(model_, touched);
    const CellChoice foods = cellsOfBrokenRules();
    std::optional<Candidate> best;
    for (const CellChoice& cells : {CellChoice(days && foods), days, foods}) {
      for (const Heeding heeding : {Heeding::Rules, Heeding::Everything}) {
        auto candidate = candidateOf(cells, heeding, kNodesOfFoods);
        if (!candidate || candidate->standing.rules.by > 0) break;
        if (!best || candidate->standing.isBetterThan(best->standing)) best = std::move(candidate);
        if (leavesNoMoreShort(best->standing)) return static_cast<void>(take(std::move(best)));
      }
    }
    take(std::move(best));
  }
  [[nodiscard]] bool leavesNoMoreShort(const Standing& standing) const {
    return !was_.isBetterThan(standing.value);
  }
  [[nodiscard]] CellChoice cellsOfBrokenRules() const {
    CellChoice cells = CellChoice::Constant(model_.days, model_.foods, false);
    for (Index j = 0; j < model_.foods; ++j)
      if (standing_.rules.foods[static_cast<std::size_t>(j)])
        for (Index d = 0; d < model_.days; ++d) cells(d, j) = isOpen(d);
    return cells;
  }

  struct Candidate {
    solver::RowMatrix plan;
    Standing standing;
  };
  /// These cells planned anew, where that is better than what there is.
  [[nodiscard]] std::optional<Candidate> candidateOf(const CellChoice& cells, Heeding heeding,
                                                     std::int64_t nodes) {
    if (isOver()) return std::nullopt;
    solver::Limits limits = limits_;
    limits.threads = 1;
    limits.nodes = std::min(nodes, limits_.nodes - nodes_);
    auto plan =
        reworked(heeding == Heeding::Rules ? rulesAlone_ : model_, plan_, cells, limits, nodes_, &before_);
    if (!plan) return std::nullopt;
    Candidate candidate{std::move(*plan), {}};
    candidate.standing = standingOf(candidate.plan);
    if (!candidate.standing.isBetterThan(standing_)) return std::nullopt;
    return candidate;
  }
  [[nodiscard]] std::optional<Candidate> candidateOf(std::span<const Index> days) {
    return candidateOf(wholeDays(model_, days), Heeding::Everything, kNodesOfDays);
  }
  bool take(std::optional<Candidate> candidate) {
    if (!candidate) return false;
    plan_ = std::move(candidate->plan);
    standing_ = candidate->standing;
    return true;
  }
  bool rework(std::span<const Index> days) { return take(candidateOf(days)); }
  /// The one day that helps most: fewer days change so.
  bool reworkBest() {
    std::optional<Candidate> best;
    for (Index d = 0; d < model_.days; ++d) {
      if (!isOpen(d)) continue;
      auto candidate = candidateOf(std::array{d});
      if (candidate && (!best || candidate->standing.isBetterThan(best->standing)))
        best = std::move(candidate);
    }
    return take(std::move(best));
  }
  /// A day that a hand touched and another one that makes up for it.
  void reworkPairs(const std::vector<Index>& touched) {
    for (const Index one : touched)
      for (Index other = 0; other < model_.days && isShort(); ++other)
        if (other != one && isOpen(other)) rework(std::array{one, other});
  }

  const RotationModel& model_;
  RotationModel rulesAlone_;
  const solver::RowMatrix& before_;
  solver::Limits limits_;
  Clock::time_point until_;
  solver::RowMatrix plan_;
  Standing standing_;
  PlanValue was_;  ///< what the plan from before comes to
  std::int64_t nodes_ = 0;
};

}  // namespace

std::optional<solver::RowMatrix> adaptedPlan(const RotationModel& model, const solver::RowMatrix& before,
                                             const solver::Limits& limits, std::int64_t& nodes) {
  Adapting adapting(model, before, limits);
  auto plan = adapting.adapted();
  nodes += adapting.nodes();
  return plan;
}

}  // namespace tarebowl::diet
