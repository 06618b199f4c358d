// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/solve.h"

#include "core/solver/branch_and_bound.h"
#include "core/solver/chance.h"
#include "core/solver/choice_search.h"
#include "core/solver/continuous.h"

#include <cmath>

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
  const Box box{program.lower, program.upper};
  const ContinuousAnswer first = leastViolation(program, box);
  if (first.status != Status::Optimal) return ended(first.status, first.reason);
  return fromContinuous(program, leastObjective(program, box, first.violation));
}

/// Continuous amounts with choices: who is used is searched for, the amounts are then solved exactly.
Solution solveChoices(const ScaledProgram& program, const Limits& limits, Clock::time_point deadline) {
  const ChoiceAnswer answer = searchChoices(program, limits, deadline);
  Solution solution = fromContinuous(program, answer.best);
  solution.gap = answer.gap;
  solution.nodes = answer.nodes;
  return solution;
}

Solution fromSearch(const ScaledProgram& program, const SearchResult& result, double bound, double value) {
  Solution solution;
  if (!result.best)
    return ended(result.closed ? Status::Infeasible : Status::Stopped, "no answer within the limits");
  solution.status = Status::Optimal;
  solution.x = program.toSource(result.best->z);
  solution.violation = result.best->violation;
  solution.objective = result.best->objective;
  solution.nodes = result.nodes;
  if (!result.closed) solution.gap = std::max(0.0, value - bound) / std::max(1e-12, std::abs(value));
  return solution;
}

/// Multipliers say what a bound costs at the margin; on a grid there is no margin, so those of the relaxation
/// are given.
void addRelaxationMultipliers(const ScaledProgram& program, Solution& solution) {
  const Box box{program.lower, program.upper};
  const ContinuousAnswer first = leastViolation(program, box);
  if (first.status != Status::Optimal) return;
  const ContinuousAnswer second = leastObjective(program, box, first.violation);
  if (second.status == Status::Optimal)
    solution.multipliers = sourceMultipliers(program, second.rowMultipliers);
}

Clock::time_point partOf(Clock::time_point deadline, double share) {
  const auto now = Clock::now();
  return now + std::chrono::duration_cast<Clock::duration>((deadline - now) * share);
}

Solution solveWholeSteps(const ScaledProgram& program, const Limits& limits, Clock::time_point deadline) {
  const Box box{program.lower, program.upper};
  const ContinuousAnswer relaxed = leastViolation(program, box);
  if (relaxed.status == Status::Infeasible) return ended(Status::Infeasible);

  // Where the relaxation needs no violation the grid usually needs none either: ask the second question at
  // once, every row holding. Only if the grid has no such point is the first question worth its price.
  SearchResult hard;
  if (relaxed.status == Status::Optimal && relaxed.violation <= 0.0) {
    const Stage stage{Stage::Kind::ObjectiveHard, violationBudget(0.0), 1.0};
    hard = search(program, stage, std::nullopt, limits, partOf(deadline, 0.5));
    if (hard.best) {
      if (!hard.closed) {  // the rest of the time belongs to it
        SearchResult more = search(program, stage, hard.best, limits, deadline);
        more.nodes += hard.nodes;
        more.bound = std::max(more.bound, hard.bound);
        hard = std::move(more);
      }
      if (hard.pressesGenerousLimit && !isQuadratic(*program.source))
        return ended(Status::Unbounded, "no limit");
      return fromSearch(program, hard, hard.bound, hard.best->objective);
    }
  }

  const SearchResult first =
      search(program, {Stage::Kind::LeastViolation, 0.0, 1.0}, std::nullopt, limits, partOf(deadline, 0.6));
  if (!first.best) return fromSearch(program, first, 0.0, 0.0);
  const Stage stage{Stage::Kind::ObjectiveBudget, violationBudget(first.best->violation), 1.0};
  const SearchResult second = search(program, stage, first.best, limits, deadline);
  const SearchResult& last = second.best ? second : first;
  if (second.pressesGenerousLimit && !isQuadratic(*program.source))
    return ended(Status::Unbounded, "no limit");
  Solution solution = first.closed ? fromSearch(program, last, second.bound, last.best->objective)
                                   : fromSearch(program, last, 0.0, 0.0);
  if (!first.closed) {
    solution.gap = std::max(0.0, first.best->violation - std::max(0.0, first.bound)) /
                   std::max(1e-12, first.best->violation);
  }
  solution.nodes = hard.nodes + first.nodes + second.nodes;
  return solution;
}

}  // namespace

Solution solve(const Program& program, const Limits& limits) {
  if (hasScatter(program)) return solveWithChance(program, limits);
  const auto deadline = Clock::now() + limits.deadline;
  const ScaledProgram scaled(program);
  if (scaled.isEmptyBox()) return ended(Status::Infeasible);
  if (!hasGrid(program))
    return program.choices.empty() ? solveContinuous(scaled) : solveChoices(scaled, limits, deadline);
  Solution solution = solveWholeSteps(scaled, limits, deadline);
  if (solution.status == Status::Optimal) addRelaxationMultipliers(scaled, solution);
  return solution;
}

}  // namespace tarebowl::solver
