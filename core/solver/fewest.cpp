// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/fewest.h"

#include "core/solver/continuous_solver.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;

/// "At most so many of all columns": a used one has at least the finest step.
Choice amongAll(const Program& program) {
  Choice all;
  all.members.resize(static_cast<std::size_t>(program.variableCount()));
  std::iota(all.members.begin(), all.members.end(), Eigen::Index{0});
  double finest = kInfinity;
  for (const double step : program.step) finest = std::min(finest, step);
  all.threshold = finest > 0.0 && finest < kInfinity ? finest : 10.0 * kNone;
  return all;
}

/// Where nothing need be violated nothing may be: a smaller question than how little.
Program withLeastViolation(Program program, double least) {
  if (least <= violationBudget(0.0)) program.price.setConstant(kInfinity);
  return program;
}

int neededAnyway(const Program& program) {
  return static_cast<int>((program.lower.array() > kNone).count());
}

}  // namespace

int usedIn(const Eigen::VectorXd& x) {
  return static_cast<int>((x.array() > kNone).count());
}

Solution solveFewest(const Program& program, const Limits& limits) {
  const Clock::time_point end = Clock::now() + limits.deadline;
  Solution best = solve(program, limits);
  if (best.status != Status::Optimal || best.gap > 0.0) return best;
  const double budget = violationBudget(best.violation);
  Program asked = withLeastViolation(program, best.violation);
  asked.choices.push_back(amongAll(program));
  int used = usedIn(best.x);
  while (used > neededAnyway(program)) {
    asked.choices.back().atMost = used - 1;
    Limits left = limits;
    left.deadline = std::max(std::chrono::milliseconds(1),
                             std::chrono::duration_cast<std::chrono::milliseconds>(end - Clock::now()));
    Solution fewer = solve(asked, left);
    const bool isAnswer = fewer.status == Status::Optimal && fewer.violation <= budget;
    if (isAnswer) {
      fewer.nodes += best.nodes;
      best = std::move(fewer);
      used = usedIn(best.x);
      continue;
    }
    const bool isProof =
        fewer.status == Status::Infeasible || (fewer.status == Status::Optimal && fewer.gap <= 0.0);
    const double open = static_cast<double>(used - neededAnyway(program)) / used;
    if (!isProof) best.gap = std::max(best.gap, open);
    break;
  }
  return best;
}

}  // namespace tarebowl::solver
