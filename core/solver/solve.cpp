// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/solve.h"

#include "core/solver/chance.h"
#include "core/solver/choice_search.h"
#include "core/solver/continuous.h"
#include "core/solver/endless_gain.h"
#include "core/solver/shortfall_vertex.h"
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

Solution solutionOf(const Program& program, Eigen::VectorXd x, Eigen::VectorXd multipliers) {
  Solution solution;
  solution.status = Status::Optimal;
  solution.violation = elasticViolation(program, x);
  solution.objective = objectiveValue(program, x);
  solution.x = std::move(x);
  solution.multipliers = std::move(multipliers);
  return solution;
}

/// Nothing but rows and limits, and a quadratic objective or none: the program is taken as it stands. Nothing
/// where that comes to no verified answer.
std::optional<Solution> solveAsItStands(const Program& program) {
  if (!program.choices.empty() || hasGrid(program) || !(program.upper.array() < kInfinity).all())
    return std::nullopt;
  const ContinuousProgram continuous = ContinuousProgram::of(program);
  if (isQuadratic(program)) {
    ContinuousSolver solver(continuous);
    if (solver.solve() != Status::Optimal) return std::nullopt;
    return solutionOf(program, solver.x(), solver.rowMultipliers());
  }
  if ((program.curvature.array() != 0.0).any() || (program.cost.array() != 0.0).any()) return std::nullopt;
  std::optional<ShortfallVertex> vertex = shortfallVertex(continuous);
  if (!vertex) return std::nullopt;
  return solutionOf(program, std::move(vertex->x), Eigen::VectorXd::Zero(program.rowCount()));
}

/// Continuous amounts with choices: who is used is searched for, the amounts are then solved exactly.
Solution solveChoices(const ScaledProgram& program, const Limits& limits, Clock::time_point deadline) {
  const ChoiceAnswer answer = searchChoices(program, continuousAsker(program), limits, deadline);
  Solution solution = fromContinuous(program, answer.best);
  solution.gap = answer.gap;
  solution.nodes = answer.nodes;
  return solution;
}

Solution attempt(const Program& program, const Limits& limits, const Eigen::VectorXd* known) {
  if (hasScatter(program)) return solveWithChance(program, limits);
  if (std::optional<Solution> solution = solveAsItStands(program)) return std::move(*solution);
  const auto deadline = Clock::now() + limits.deadline;
  const ScaledProgram scaled(program);
  if (scaled.isEmptyBox()) return ended(Status::Infeasible);
  if (!hasGrid(program))
    return program.choices.empty() ? solveContinuous(scaled) : solveChoices(scaled, limits, deadline);
  return solveWholeSteps(scaled, limits, deadline, known);
}

Solution solved(const Program& program, const Limits& limits, const Eigen::VectorXd* known) {
  Solution solution = attempt(program, limits, known);
  if (solution.status == Status::Unbounded && !gainsWithoutEnd(program))
    return ended(Status::Failed, "amounts beyond what the program speaks of");
  return solution;
}

}  // namespace

Solution solve(const Program& program, const Limits& limits) {
  return solved(program, limits, nullptr);
}

Solution solve(const Program& program, const Limits& limits, const Eigen::VectorXd& known) {
  return solved(program, limits, &known);
}

}  // namespace tarebowl::solver
