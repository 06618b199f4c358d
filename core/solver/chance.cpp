// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/chance.h"

#include "core/solver/choice_search.h"
#include "core/solver/cone_search.h"
#include "core/solver/cone_stages.h"
#include "core/solver/one_sided.h"
#include "core/solver/tangent_rounds.h"

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;

Solution ended(Status status) {
  Solution solution;
  solution.status = status;
  return solution;
}

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

std::vector<Eigen::Index> elasticRowsOfTwoBounds(const Program& program) {
  std::vector<Eigen::Index> rows;
  for (Eigen::Index i = 0; i < program.rowCount(); ++i) {
    if (program.price[i] < kInfinity && program.rowLower[i] > -kInfinity && program.rowUpper[i] < kInfinity)
      rows.push_back(i);
  }
  return rows;
}

/// Continuous amounts with choices. A search compares many answers, so every violation of two bounds gets its
/// column at once.
Solution solveChoices(const Program& program, const Limits& limits, Clock::time_point deadline) {
  const OneSided split(program, elasticRowsOfTwoBounds(program));
  const ScaledProgram scaled(split.program);
  if (scaled.isEmptyBox()) return ended(Status::Infeasible);
  const ConeRows rows(scaled);
  ConeStages stages(rows, [&] { return limits.stop.stop_requested() || Clock::now() >= deadline; });
  const Asker ask = [&](Question question, const Box& box, double least) {
    if (question == Question::AllHold) return stages.allHold(box);
    if (question == Question::LeastViolation) return stages.leastViolation(box);
    ContinuousAnswer here = stages.leastViolation(box);
    if (here.status == Status::Optimal && here.violation > violationBudget(least))
      here.status = Status::Infeasible;
    return here.status == Status::Optimal ? stages.leastObjective(box, least) : here;
  };
  const ChoiceAnswer answer = searchChoices(scaled, ask, limits, deadline);
  Solution solution = toSource(program, split, scaled, answer.best);
  solution.gap = answer.gap;
  solution.nodes = answer.nodes;
  return solution;
}

}  // namespace

bool hasScatter(const Program& program) {
  return program.scatter && program.scatter->size() > 0 && program.scatter->maxCoeff() > 0;
}

Solution solveWithChance(const Program& program, const Limits& limits) {
  const auto deadline = Clock::now() + limits.deadline;
  const bool isPlain = program.choices.empty() && !hasGrid(program);
  if (!hasGrid(program) && !program.choices.empty()) {
    Solution solution = solveChoices(program, limits, deadline);
    if (solution.status != Status::Failed) return solution;
  }
  Solution smooth = solveSmoothly(program, limits, deadline);
  if (smooth.status != Status::Failed && isPlain) return smooth;
  if (smooth.status == Status::Infeasible || smooth.status == Status::Stopped) return smooth;
  if (hasGrid(program)) return solveConesInWholeSteps(program, smooth, limits, deadline);
  std::vector<Eigen::VectorXd> touching;
  if (smooth.status == Status::Optimal) touching.push_back(smooth.x);
  Limits left = limits;
  left.deadline = std::chrono::duration_cast<std::chrono::milliseconds>(deadline - Clock::now());
  return solveByTangents(program, touching, left);
}

}  // namespace tarebowl::solver
