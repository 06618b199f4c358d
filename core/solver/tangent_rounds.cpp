// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/tangent_rounds.h"

#include "core/solver/cone_tangents.h"

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;

constexpr int kMostRounds = 120;
constexpr double kClosed = 5e-10;
constexpr double kIdleSlack = 1e-6;
constexpr double kSettled = 1e-7;
constexpr double kProximal =
    1e-4;  // curvature of the violation columns, about their last value: vanishes in the limit

Solution asCandidate(const Program& program, const ConeTangents& tangents, const Solution& relaxed) {
  Solution candidate = relaxed;
  candidate.x = relaxed.x.head(program.variableCount());
  candidate.violation = elasticViolation(program, candidate.x);
  candidate.objective = objectiveValue(program, candidate.x);
  candidate.multipliers = tangents.sourceMultipliers(relaxed.multipliers);
  return candidate;
}

}  // namespace

Solution solveByTangents(const Program& program, const std::vector<Eigen::VectorXd>& touching,
                         const Limits& limits) {
  const auto deadline = Clock::now() + limits.deadline;
  ConeTangents tangents(program);
  for (const Eigen::VectorXd& x : touching) tangents.touch(x);
  if (touching.empty()) tangents.touch(program.centre);
  const bool isQuadratic = (program.curvature.array() > 0).any();
  const Eigen::Index count = tangents.violationCount();
  Eigen::VectorXd last = Eigen::VectorXd::Zero(count);
  Solution best;
  best.reason = "chance rows: tangents did not close";
  for (int round = 0; round < kMostRounds; ++round) {
    Limits left = limits;
    left.deadline = std::chrono::duration_cast<std::chrono::milliseconds>(deadline - Clock::now());
    if (left.deadline.count() <= 0 || limits.stop.stop_requested()) return best;
    Solution relaxed = solve(tangents.relaxation({isQuadratic ? kProximal : 0.0, last}), left);
    if (relaxed.status != Status::Optimal) return relaxed;
    Solution candidate = asCandidate(program, tangents, relaxed);
    tangents.dropIdle(relaxed.x, kIdleSlack);
    const bool isClosed = tangents.touchPassed(relaxed.x, kClosed) == 0;
    // The violation columns have stopped moving, so that their proximal term weighs nothing.
    if (isClosed && (count == 0 || (relaxed.x.tail(count) - last).cwiseAbs().maxCoeff() <= kSettled))
      return candidate;
    last = relaxed.x.tail(count);
  }
  return best;
}

}  // namespace tarebowl::solver
