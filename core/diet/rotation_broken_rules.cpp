// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_broken_rules.h"

#include <algorithm>

namespace tarebowl::diet {
namespace {

using Eigen::Index;

std::size_t at(Index i) {
  return static_cast<std::size_t>(i);
}

int brokenBy(const DayCount& count, const FedPattern& pattern, Index day) {
  const int used = countOn(count, pattern, day);
  return std::max({0, count.atLeast - used, used - count.atMost});
}

/// Runs, and on how many days the food is fed.
int brokenBy(const RotationModel& model, const FedPattern& pattern, Index food) {
  const int days = daysFed(pattern, food);
  int broken = std::max(0, model.leastDays[at(food)] - days);
  int open = 0;
  for (Index d = 0; d < model.days; ++d) {
    if (!pattern(d, food) || model.isOver[at(d)]) continue;
    ++open;
    broken += runThrough(pattern, d, food) > model.longestRun[at(food)] ? 1 : 0;
  }
  if (open > 0) broken += std::max(0, days - model.mostDays[at(food)]);
  return broken;
}

}  // namespace

BrokenRules brokenRules(const RotationModel& model, const FedPattern& pattern) {
  BrokenRules broken{0, std::vector<char>(at(model.foods), 0)};
  for (Index d = 0; d < model.days; ++d) {
    for (const DayCount& count : model.dayCounts[at(d)]) {
      const int by = brokenBy(count, pattern, d);
      broken.by += by;
      if (by > 0)
        for (const Index j : count.members) broken.foods[at(j)] = 1;
    }
  }
  for (Index j = 0; j < model.foods; ++j) {
    const int by = brokenBy(model, pattern, j);
    broken.by += by;
    if (by > 0) broken.foods[at(j)] = 1;
  }
  return broken;
}

bool keepsRules(const RotationModel& model, const FedPattern& pattern) {
  return brokenRules(model, pattern).by == 0;
}

}  // namespace tarebowl::diet
