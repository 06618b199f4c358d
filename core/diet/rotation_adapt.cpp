// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_adapt.h"

#include "core/diet/rotation_pattern.h"
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

/// Grams as they were, as far as the cell lets them be.
double laidDown(const RotationCell& cell, double step, double grams) {
  if (cell.isFixed) return cell.least;
  if (cell.most <= 0.0) return 0.0;
  if (grams <= 0.0) return cell.must ? cell.least : 0.0;
  const double onScale = step > 0.0 ? std::round(grams / step) * step : grams;
  return std::clamp(onScale, cell.least, cell.most);
}

class Adapting {
 public:
  Adapting(const RotationModel& model, const solver::RowMatrix& before, const solver::Limits& limits)
      : model_(model), before_(before), limits_(limits), until_(Clock::now() + limits.deadline) {
    plan_ = before;
    for (Index d = 0; d < model.days; ++d)
      for (Index j = 0; j < model.foods; ++j)
        plan_(d, j) = laidDown(model.cell(d, j), model.step[j], before(d, j));
    standing_ = standingOf(plan_);
  }

  std::optional<solver::RowMatrix> adapted() {
    std::vector<Index> touched;
    for (Index d = 0; d < model_.days; ++d)
      if (isOpen(d) && (plan_.row(d) - before_.row(d)).cwiseAbs().maxCoeff() > kClosed) touched.push_back(d);
    for (const Index d : touched) rework(std::array{d});
    if (standing_.brokenRules > 0 && touched.size() == 2) rework(touched);
    while (!isOver() && isShort() && reworkBest()) {
    }
    if (isShort()) reworkPairs(touched);
    if (standing_.brokenRules > 0 || standing_.value.broken > kClosed) return std::nullopt;
    return plan_;
  }
  [[nodiscard]] std::int64_t nodes() const { return nodes_; }

 private:
  struct Standing {
    int brokenRules = 0;
    PlanValue value;
    /// Rules, then zones and wishes: what is near and what is cheap gives way to staying as it was.
    [[nodiscard]] bool isBetterThan(const Standing& other) const {
      if (brokenRules != other.brokenRules) return brokenRules < other.brokenRules;
      return value.isBetterThan(other.value);
    }
  };
  [[nodiscard]] Standing standingOf(const solver::RowMatrix& plan) const {
    Standing standing{brokenRules(model_, plan.array() > 0.0), valueOf(model_, plan)};
    standing.value.objective = 0.0;
    return standing;
  }
  [[nodiscard]] bool isOpen(Index day) const { return model_.isOpen[static_cast<std::size_t>(day)] != 0; }
  [[nodiscard]] bool isShort() const {
    const PlanValue& value = standing_.value;
    return standing_.brokenRules > 0 || value.broken + value.period + value.daily + value.wishes > kClosed;
  }
  [[nodiscard]] bool isOver() const {
    return Clock::now() >= until_ || limits_.stop.stop_requested() || nodes_ >= limits_.nodes;
  }

  struct Candidate {
    solver::RowMatrix plan;
    Standing standing;
  };
  /// These days planned anew, where that is better than what there is.
  [[nodiscard]] std::optional<Candidate> candidateOf(std::span<const Index> days) {
    if (isOver()) return std::nullopt;
    solver::Limits limits = limits_;
    limits.threads = 1;
    limits.nodes = std::min(kNodesOfDays, limits_.nodes - nodes_);
    auto plan = reworked(model_, plan_, days, limits, nodes_, &before_);
    if (!plan) return std::nullopt;
    Candidate candidate{std::move(*plan), {}};
    candidate.standing = standingOf(candidate.plan);
    if (!candidate.standing.isBetterThan(standing_)) return std::nullopt;
    return candidate;
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
  const solver::RowMatrix& before_;
  solver::Limits limits_;
  Clock::time_point until_;
  solver::RowMatrix plan_;
  Standing standing_;
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
