// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/chance.h"

#include "core/solver/cone_stages.h"
#include "core/solver/one_sided.h"
#include "core/solver/tangent_rounds.h"

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;

bool hasGrid(const Program& program) {
  return (program.step.array() > 0).any();
}

Solution toSource(const Program& program, const OneSided& split, const ScaledProgram& scaled,
                  const ContinuousAnswer& answer) {
  Solution solution;
  solution.status = answer.status;
  solution.reason = answer.reason;
  if (answer.status != Status::Optimal) return solution;
  if (answer.pressesGenerousLimit && !(program.curvature.array() > 0).all()) {
    solution.status = Status::Unbounded;
    solution.reason = "no limit";
    return solution;
  }
  solution.x = scaled.toSource(answer.z).head(program.variableCount());
  solution.violation = elasticViolation(program, solution.x);
  solution.objective = objectiveValue(program, solution.x);
  solution.multipliers = split.sourceMultipliers(answer.rowMultipliers.cwiseQuotient(scaled.rowScale));
  return solution;
}

/// Rows whose two bounds were counted as two where they are one.
std::vector<Eigen::Index> overcharged(const OneSided& split, const ScaledProgram& scaled,
                                      const ConeStages& stages, const ContinuousAnswer& answer) {
  if (answer.status != Status::Optimal) return {};
  std::vector<Eigen::Index> rows;
  if (stages.lambda() < kInfinity)
    rows = split.overcharged(answer.rowMultipliers.cwiseQuotient(scaled.rowScale), stages.lambda());
  if (stages.violationMultipliers().size() == 0) return rows;
  for (const Eigen::Index i :
       split.overcharged(stages.violationMultipliers().cwiseQuotient(scaled.rowScale), 1.0))
    rows.push_back(i);
  return rows;
}

/// The answer without grid and choices, to the last digits.
Solution solveSmoothly(const Program& program, const Limits& limits, Clock::time_point deadline) {
  std::vector<Eigen::Index> shared;
  for (;;) {
    OneSided split(program, shared);
    split.program.step.setZero();
    split.program.choices.clear();
    const ScaledProgram scaled(split.program);
    const ConeRows rows(scaled);
    ConeStages stages(rows, [&] { return limits.stop.stop_requested() || Clock::now() >= deadline; });
    const ContinuousAnswer answer = stages.both({scaled.lower, scaled.upper});
    const std::vector<Eigen::Index> more = overcharged(split, scaled, stages, answer);
    if (more.empty()) return toSource(program, split, scaled, answer);
    shared.insert(shared.end(), more.begin(), more.end());
  }
}

}  // namespace

bool hasScatter(const Program& program) {
  return program.scatter && program.scatter->size() > 0 && program.scatter->maxCoeff() > 0;
}

Solution solveWithChance(const Program& program, const Limits& limits) {
  const auto deadline = Clock::now() + limits.deadline;
  Solution smooth = solveSmoothly(program, limits, deadline);
  const bool isAnswered = smooth.status != Status::Failed;
  if (isAnswered && program.choices.empty() && !hasGrid(program)) return smooth;
  if (smooth.status == Status::Infeasible || smooth.status == Status::Stopped) return smooth;
  std::vector<Eigen::VectorXd> touching;
  if (smooth.status == Status::Optimal) touching.push_back(smooth.x);
  Limits left = limits;
  left.deadline = std::chrono::duration_cast<std::chrono::milliseconds>(deadline - Clock::now());
  return solveByTangents(program, touching, left);
}

}  // namespace tarebowl::solver
