// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/choice_rules.h"

#include <algorithm>

namespace tarebowl::solver {
namespace {

/// The limits while they are narrowed, and whether anything was.
struct Limited {
  Eigen::VectorXd& lower;
  Eigen::VectorXd& upper;
  std::vector<Eigen::Index>& narrowed;

  [[nodiscard]] bool isUsed(Eigen::Index j) const { return lower[j] > 0; }
  [[nodiscard]] bool isPossible(Eigen::Index j) const { return upper[j] > 0; }
  void use(Eigen::Index j, double threshold) {
    if (lower[j] >= threshold) return;
    lower[j] = threshold;
    narrowed.push_back(j);
  }
  void leaveOut(Eigen::Index j) {
    if (upper[j] <= 0) return;
    upper[j] = 0.0;
    narrowed.push_back(j);
  }
};

bool settleOne(const Choice& choice, const Eigen::VectorXd& threshold, Limited& limits) {
  int used = 0;
  int possible = 0;
  for (const Eigen::Index j : choice.members) {
    if (limits.upper[j] < threshold[j]) limits.leaveOut(j);
    if (limits.isUsed(j)) limits.use(j, threshold[j]);
    if (limits.lower[j] > limits.upper[j]) return false;
    used += limits.isUsed(j) ? 1 : 0;
    possible += limits.isPossible(j) ? 1 : 0;
  }
  if (used > choice.atMost || possible < choice.atLeast) return false;
  if (used == possible || (used < choice.atMost && possible > choice.atLeast)) return true;
  for (const Eigen::Index j : choice.members) {
    if (limits.isUsed(j) || !limits.isPossible(j)) continue;
    if (used >= choice.atMost)
      limits.leaveOut(j);
    else
      limits.use(j, threshold[j]);
  }
  return true;
}

}  // namespace

bool settleChoices(const ScaledProgram& program, Eigen::VectorXd& lower, Eigen::VectorXd& upper,
                   std::vector<Eigen::Index>& narrowed) {
  Limited limits{lower, upper, narrowed};
  for (std::size_t before = narrowed.size() + 1; before != narrowed.size();) {
    before = narrowed.size();  // a column may be in two choices: what one decides the other has to see
    for (const Choice& choice : program.source->choices) {
      if (!settleOne(choice, program.threshold, limits)) return false;
    }
  }
  return true;
}

bool choicesHold(const ScaledProgram& program, const Eigen::VectorXd& z) {
  return std::ranges::all_of(program.source->choices, [&](const Choice& choice) {
    int used = 0;
    for (const Eigen::Index j : choice.members) {
      if (z[j] > 0.0 && z[j] < program.threshold[j] * (1 - 1e-9)) return false;
      used += z[j] > 0.0 ? 1 : 0;
    }
    return used >= choice.atLeast && used <= choice.atMost;
  });
}

}  // namespace tarebowl::solver
