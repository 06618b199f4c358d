// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/continuous.h"

#include "core/solver/continuous_solver.h"
#include "core/solver/linear_solver.h"
#include "core/solver/shortfall_vertex.h"

#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr double kNoViolation = 1e-11;  // stage 1 values below this are rounding

bool pressesLimit(const ScaledProgram& program, const Eigen::VectorXd& z) {
  for (Eigen::Index j = 0; j < z.size(); ++j) {
    if (program.generous[std::size_t(j)] != 0 && z[j] >= program.upper[j] * (1 - 1e-9)) return true;
  }
  return false;
}

ContinuousAnswer measured(const ScaledProgram& program, Eigen::VectorXd z, Eigen::VectorXd multipliers) {
  ContinuousAnswer answer;
  const Eigen::VectorXd x = program.toSource(z);
  answer.violation = elasticViolation(*program.source, x);
  answer.objective = objectiveValue(*program.source, x);
  answer.pressesGenerousLimit = pressesLimit(program, z);
  answer.z = std::move(z);
  answer.rowMultipliers = std::move(multipliers);
  answer.status = Status::Optimal;
  return answer;
}

ContinuousAnswer failed(Status status, std::string reason) {
  ContinuousAnswer answer;
  answer.status = status;
  answer.reason = std::move(reason);
  return answer;
}

/// The scaled program over the box, as a solver for quadratic objectives takes it.
ContinuousSolver quadraticSolver(const ScaledProgram& program, const Box& box) {
  const Program& source = *program.source;
  const Eigen::VectorXd centre = source.centre.cwiseQuotient(program.unit);
  const Eigen::VectorXd curvature = source.curvature.cwiseProduct(program.unit.cwiseAbs2());
  const Eigen::VectorXd cost = source.cost.cwiseProduct(program.unit);
  return ContinuousSolver({program.rows, program.rowLower, program.rowUpper, program.price, box.lower,
                           box.upper, centre, curvature, cost});
}

LinearSolver linearSolver(const ScaledProgram& program, const Box& box, const Eigen::VectorXd& cost) {
  const Eigen::VectorXd centre = program.source->centre.cwiseQuotient(program.unit);
  const Eigen::VectorXd curvature = Eigen::VectorXd::Zero(centre.size());
  std::vector<char> far = program.generous;
  for (Eigen::Index j = 0; j < cost.size(); ++j) {
    if (box.upper[j] < program.upper[j]) far[std::size_t(j)] = 0;
  }
  return LinearSolver({program.rows, program.rowLower, program.rowUpper, program.price, box.lower, box.upper,
                       centre, curvature, cost},
                      far);
}

LinearSolver linearSolver(const ScaledProgram& program, const Box& box) {
  return linearSolver(program, box, program.source->cost.cwiseProduct(program.unit));
}

/// Nothing too where a limit that only stands for none is in use.
std::optional<ShortfallVertex> vertexOf(const ScaledProgram& program, const Box& box) {
  const Eigen::VectorXd none = Eigen::VectorXd::Zero(program.rows.cols());
  std::optional<ShortfallVertex> vertex =
      shortfallVertex({program.rows, program.rowLower, program.rowUpper, program.price, box.lower, box.upper,
                       none, none, none},
                      program.generous);
  if (vertex && pressesLimit(program, vertex->x)) vertex.reset();
  return vertex;
}

template <class Solver>
ContinuousAnswer answerOf(const ScaledProgram& program, const Solver& solver) {
  if (solver.status() != Status::Optimal) return failed(solver.status(), std::string(solver.reason()));
  return measured(program, solver.x(), solver.rowMultipliers());
}

/// The second stage: where nothing need be violated, at the least violation itself.
template <class Solver>
ContinuousAnswer withinBudget(const ScaledProgram& program, Solver solver, double least) {
  const double budget = violationBudget(least);
  if (least < kNoViolation && solver.solve() == Status::Optimal && solver.violation() <= budget)
    return answerOf(program, solver);
  solver.solveWithin(budget);
  return answerOf(program, solver);
}

bool isQuadratic(const ScaledProgram& program) {
  return (program.source->curvature.array() > 0).all();
}

}  // namespace

ContinuousAnswer leastViolation(const ScaledProgram& program, const Box& box) {
  if ((box.lower.array() > box.upper.array()).any()) return failed(Status::Infeasible, "");
  ContinuousAnswer answer;
  if (isQuadratic(program)) {
    ContinuousSolver solver = quadraticSolver(program, box);
    solver.solve(ContinuousSolver::Budget::Exact);
    answer = answerOf(program, solver);
  } else if (std::optional<ShortfallVertex> vertex = vertexOf(program, box)) {
    answer = measured(program, std::move(vertex->x), std::move(vertex->multipliers));
  } else {
    LinearSolver solver = linearSolver(program, box, Eigen::VectorXd::Zero(program.rows.cols()));
    solver.solve(LinearSolver::Budget::Exact);
    answer = answerOf(program, solver);
    answer.rowMultipliers = solver.violationMultipliers();
  }
  if (answer.status == Status::Optimal && answer.violation < kNoViolation) answer.violation = 0.0;
  return answer;
}

ContinuousAnswer leastObjective(const ScaledProgram& program, const Box& box, double least) {
  return isQuadratic(program) ? withinBudget(program, quadraticSolver(program, box), least)
                              : withinBudget(program, linearSolver(program, box), least);
}

ContinuousAnswer leastOfBoth(const ScaledProgram& program, const Box& box) {
  if (isQuadratic(program)) {
    ContinuousSolver solver = quadraticSolver(program, box);
    if (solver.solve() == Status::Optimal) return answerOf(program, solver);
  } else {
    LinearSolver solver = linearSolver(program, box);
    solver.solve();
    return answerOf(program, solver);
  }
  ContinuousAnswer first = leastViolation(program, box);
  if (first.status != Status::Optimal) return first;
  return leastObjective(program, box, first.violation);
}

}  // namespace tarebowl::solver
