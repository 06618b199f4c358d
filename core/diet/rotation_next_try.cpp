// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_next_try.h"

#include "core/diet/rotation_broken_rules.h"

#include <algorithm>
#include <iterator>
#include <utility>
#include <vector>

namespace tarebowl::diet {
namespace {

using Eigen::Index;

std::vector<Index> shortDays(const RotationModel& model, const solver::RowMatrix& plan) {
  constexpr double kClosed = 1e-9;
  std::vector<Index> days;
  for (Index d = 0; d < model.days; ++d) {
    if (!model.isOpen[static_cast<std::size_t>(d)]) continue;
    if (model.daily.missed(model.daily.rows * plan.row(d).transpose()).soft > kClosed) days.push_back(d);
  }
  return days;
}

}  // namespace

std::optional<FedPattern> NextTry::spread(double disorder) {
  return spreadOverDays(model_, wanted_, disorder, random_);
}

std::optional<RotationTry> NextTry::after(const SearchedPlan& best, bool wantsDays) {
  constexpr int kIdlePatterns = 8;
  const int turn = turn_++;
  const bool isForDays = turn % 4 == 2 || (idlePatterns_ >= kIdlePatterns && turn % 8 != 0);
  if (best.grams && wantsDays && isForDays)
    if (const auto days = someDays(turn)) return days;
  if (!best.grams || turn % 4 == 3) return spread(0.2 + 0.1 * (turn % 10));
  return changed(*best.grams, 1 + turn % 3);
}

void NextTry::learn(const RotationTry& what, const Tried& tried, bool isBetter) {
  if (isBetter) {
    asked_.clear();
    times_ = 1;
  }
  if (!std::holds_alternative<FedPattern>(what)) return;
  if (isBetter)
    idlePatterns_ = 0;
  else if (tried.hasPromised)
    ++idlePatterns_;
}

/// Some foods in other foods' places; where days fall short, on those.
FedPattern NextTry::changed(const solver::RowMatrix& plan, int changes) {
  FedPattern pattern = plan.array() > 0.0;
  const std::vector<Index> falling = shortDays(model_, plan);
  for (int tries = 0; changes > 0 && tries < 400; ++tries) {
    const bool onShortDay = !falling.empty() && changes % 2 == 1;
    const Index day =
        onShortDay ? falling[static_cast<std::size_t>(drawn(std::ssize(falling)))] : drawn(model_.days);
    const Index out = drawn(model_.foods);
    const Index in = drawn(model_.foods);
    if (!model_.isOpen[static_cast<std::size_t>(day)] || !pattern(day, out) || pattern(day, in)) continue;
    if (model_.cell(day, out).must) continue;
    FedPattern other = pattern;
    other(day, out) = false;
    if (!canAdd(model_, other, day, in)) continue;
    other(day, in) = true;
    if (!keepsRules(model_, other)) continue;
    pattern = other;
    --changes;
  }
  return pattern;
}

/// Now a day, now two.
std::optional<DaysAnew> NextTry::someDays(int turn) {
  constexpr int kDraws = 40;
  constexpr int kLonger = 4;
  constexpr int kLongest = 64;
  for (int draw = 0; draw < kDraws; ++draw) {
    const Index one = drawn(model_.days);
    const Index other = (turn / 4 + draw) % 2 == 0 ? one : drawn(model_.days);
    if (!asked_.emplace(std::min(one, other), std::max(one, other)).second) continue;
    if (one == other) return DaysAnew{{one}, times_};
    return DaysAnew{{one, other}, times_};
  }
  times_ = std::min(times_ * kLonger, kLongest);
  asked_.clear();
  return std::nullopt;
}

Index NextTry::drawn(Index count) {
  return static_cast<Index>(random_() % static_cast<std::uint64_t>(count));
}

}  // namespace tarebowl::diet
