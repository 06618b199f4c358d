// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/solve.h"

#include "core/solver/chance.h"
#include "core/solver/choice_search.h"
#include "core/solver/continuous.h"
#include "core/solver/whole_steps.h"

#include <cmath>
#include <optional>

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;

bool isQuadratic(const Program& program) {
  return (program.curvature.array() > 0).all();
}
bool hasGrid(const Program& program) {
  return (program.step.array() > 0).any();
}

Solution ended(Status status, std::string reason = {}) {
  Solution solution;
  solution.status = status;
  solution.reason = std::move(reason);
  return solution;
}

Eigen::VectorXd sourceMultipliers(const ScaledProgram& program, const Eigen::VectorXd& scaled) {
  return scaled.size() == program.rowScale.size() ? Eigen::VectorXd(scaled.cwiseQuotient(program.rowScale))
                                                  : Eigen::VectorXd::Zero(program.rowScale.size());
}

Solution fromContinuous(const ScaledProgram& program, const ContinuousAnswer& answer) {
  if (answer.status != Status::Optimal) return ended(answer.status, answer.reason);
  if (answer.pressesGenerousLimit && !isQuadratic(*program.source))
    return ended(Status::Unbounded, "no limit");
  Solution solution;
  solution.status = Status::Optimal;
  solution.x = program.toSource(answer.z);
  solution.violation = answer.violation;
  solution.objective = answer.objective;
  solution.multipliers = sourceMultipliers(program, answer.rowMultipliers);
  return solution;
}

Solution solveContinuous(const ScaledProgram& program) {
  return fromContinuous(program, leastOfBoth(program, {program.lower, program.upper}));
}

/// Nothing but a quadratic objective over limits and rows: the solver takes the program as it stands. Nothing
/// where it comes to no verified answer.
std::optional<Solution> solveAsItStands(const Program& program) {
  if (!isQuadratic(program) || !program.choices.empty() || hasGrid(program)) return std::nullopt;
  if (!(program.upper.array() < kInfinity).all()) return std::nullopt;
  ContinuousSolver solver(ContinuousProgram::of(program));
  if (solver.solve() != Status::Optimal) return std::nullopt;
  Solution solution;
  solution.status = Status::Optimal;
  solution.x = solver.x();
  solution.violation = elasticViolation(program, solution.x);
  solution.objective = objectiveValue(program, solution.x);
  solution.multipliers = solver.rowMultipliers();
  return solution;
}

/// Continuous amounts with choices: who is used is searched for, the amounts are then solved exactly.
Solution solveChoices(const ScaledProgram& program, const Limits& limits, Clock::time_point deadline) {
  const ChoiceAnswer answer = searchChoices(program, continuousAsker(program), limits, deadline);
  Solution solution = fromContinuous(program, answer.best);
  solution.gap = answer.gap;
  solution.nodes = answer.nodes;
  return solution;
}

}  // namespace

Solution solve(const Program& program, const Limits& limits) {
  if (hasScatter(program)) return solveWithChance(program, limits);
  if (std::optional<Solution> solution = solveAsItStands(program)) return std::move(*solution);
  const auto deadline = Clock::now() + limits.deadline;
  const ScaledProgram scaled(program);
  if (scaled.isEmptyBox()) return ended(Status::Infeasible);
  if (!hasGrid(program))
    return program.choices.empty() ? solveContinuous(scaled) : solveChoices(scaled, limits, deadline);
  return solveWholeSteps(scaled, limits, deadline);
}

}  // namespace tarebowl::solver
