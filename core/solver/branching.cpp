// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/branching.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
namespace {

/// Values of the grid next to value: below and above; equal when it is on the grid.
bool neighbours(const ScaledProgram& program, const NodeRelaxation& node, Eigen::Index j, double value,
                double& below, double& above) {
  const double threshold = program.threshold[j];
  if (threshold > 0 && node.lower(j) <= 0 && value > kWhole && value < threshold - kWhole) {
    below = 0.0;
    above = threshold;
    return true;
  }
  if (program.onGrid[std::size_t(j)] == 0 || std::abs(value - std::round(value)) <= kWhole) return false;
  below = std::floor(value);
  above = below + 1;
  return true;
}

}  // namespace

std::optional<Branch> fractionalBranch(const ScaledProgram& program, const NodeRelaxation& node,
                                       double slack) {
  Branch best;
  double bestScore = -1.0;
  for (Eigen::Index j = 0; j < program.rows.cols(); ++j) {
    double below = 0.0;
    double above = 0.0;
    const double value = node.simplex().value(j);
    if (!node.simplex().isBasic(j) || !neighbours(program, node, j, value, below, above)) continue;
    const PiecewiseSimplex::FirstStep downStep = node.simplex().firstStep(j, below, slack);
    const PiecewiseSimplex::FirstStep upStep = node.simplex().firstStep(j, above, slack);
    const double most = std::min(slack, 1e12);
    const double downGain = std::min(downStep.gain, most);
    const double upGain = std::min(upStep.gain, most);
    const double part = std::min(value - below, above - value) / (above - below);
    const double score = (downGain + 1e-9 * part) * (upGain + 1e-9 * part);
    if (score > bestScore) {
      bestScore = score;
      const bool upFirst = upGain < downGain || (upGain == downGain && above - value < value - below);
      best = {j, below, above, upFirst, upFirst ? downStep : upStep};
    }
  }
  if (best.column < 0) return std::nullopt;
  return best;
}

std::optional<Branch> choiceBranch(const ScaledProgram& program, const NodeRelaxation& node) {
  for (const Choice& choice : program.source->choices) {
    int used = 0;
    Eigen::Index undecided = -1;
    for (const Eigen::Index j : choice.members) {
      used += node.simplex().value(j) > kWhole ? 1 : 0;
      if (node.lower(j) <= 0 && node.upper(j) > 0 && undecided < 0) undecided = j;
    }
    if (used >= choice.atLeast && used <= choice.atMost) continue;
    if (undecided >= 0)
      return Branch{undecided, 0.0, std::max(program.threshold[undecided], 1e-12), used < choice.atLeast};
  }
  return std::nullopt;
}

std::optional<Branch> widestBranch(const ScaledProgram& program, const NodeRelaxation& node) {
  Branch branch;
  double widest = 0.0;
  for (Eigen::Index j = 0; j < program.rows.cols(); ++j) {
    if (program.onGrid[std::size_t(j)] == 0 || node.upper(j) - node.lower(j) <= widest) continue;
    widest = node.upper(j) - node.lower(j);
    const double value = std::clamp(std::round(node.simplex().value(j)), node.lower(j), node.upper(j));
    const double down = value < node.upper(j) ? value : value - 1;
    branch = {j, down, std::max(down + 1, down == 0 ? program.threshold[j] : 0.0), false};
  }
  if (branch.column < 0) return std::nullopt;
  return branch;
}

}  // namespace tarebowl::solver
