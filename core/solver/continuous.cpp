// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/continuous.h"

#include "core/solver/continuous_solver.h"
#include "core/solver/optimality.h"
#include "core/solver/piecewise_simplex.h"

#include <cmath>

namespace tarebowl::solver {
namespace {

using Rows = ScaledProgram::Rows;

constexpr double kAgree =
    1e-9;  // largest relative error of the optimality conditions that counts as verified
constexpr double kNoViolation = 1e-11;  // stage 1 values below this are rounding
constexpr double kLastDigits = 2e-13;   // of a linear answer, in scaled terms
constexpr double kLambdaMost = 1e13;

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

/// A linear programme: column costs as given, elastic rows at lambda times their price (or hard).
ContinuousAnswer solveLinear(const ScaledProgram& program, const Box& box, Rows rows, double lambda,
                             double columnFactor) {
  std::vector<PiecewiseCost> costs;
  for (Eigen::Index j = 0; j < program.rows.cols(); ++j) {
    const double cost = columnFactor * program.source->cost[j] * program.unit[j];
    costs.push_back(PiecewiseCost::band(box.lower[j], box.upper[j], -kInfinity, cost, kInfinity));
  }
  for (Eigen::Index i = 0; i < program.rows.rows(); ++i) costs.push_back(program.rowCost(i, rows, lambda));
  PiecewiseSimplex simplex(program.rows, costs);
  auto outcome = simplex.optimise();
  if (outcome != PiecewiseSimplex::Outcome::IterationLimit) {
    // once more on a fresh tableau and to the last digits: removes what rounding piled up, and no one is told
    // "impossible" for it
    simplex.setFeasibility(kLastDigits);
    simplex.restart(simplex.basis());
    outcome = simplex.optimise();
  }
  if (outcome == PiecewiseSimplex::Outcome::Infeasible) return failed(Status::Infeasible, "");
  if (outcome != PiecewiseSimplex::Outcome::Optimal)
    return failed(Status::Failed, "linear stage: iteration limit");

  Eigen::VectorXd z;
  Eigen::VectorXd slopes;
  simplex.polish(z, slopes);
  z = z.cwiseMax(box.lower).cwiseMin(box.upper);
  ContinuousAnswer answer = measured(program, std::move(z), std::move(slopes));
  Eigen::VectorXd price(program.price.size());
  for (Eigen::Index i = 0; i < price.size(); ++i) price[i] = program.rowCost(i, rows, lambda).slopeAbove(1);
  const Eigen::VectorXd gradient = columnFactor * program.source->cost.cwiseProduct(program.unit);
  const PricedRows priced{program.rows, program.rowLower, program.rowUpper, price, box.lower, box.upper};
  if (optimalityError(priced, gradient, answer.z, answer.rowMultipliers) > kAgree) {
    return failed(Status::Failed, "linear stage: not verified");
  }
  if (hardViolation(*program.source, program.toSource(answer.z)) > kAgree) {
    return failed(Status::Failed, "linear stage: a hard row does not hold");
  }
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

ContinuousAnswer answerOf(const ScaledProgram& program, const ContinuousSolver& solver) {
  if (solver.status() != Status::Optimal) return failed(solver.status(), std::string(solver.reason()));
  return measured(program, solver.x(), solver.rowMultipliers());
}

/// Two answers of a priced stage 2: one within the budget, one beyond it, and the prices that gave them.
struct Bracket {
  ContinuousAnswer within;
  ContinuousAnswer beyond;
  double lambdaWithin = 0.0;
  double lambdaBeyond = 0.0;
};

/// Raises the price of violation until the answer is within the budget.
template <class Solve>
ContinuousAnswer firstWithin(const Solve& solveAt, double budget, Bracket& bracket) {
  for (double lambda = 1.0; lambda < kLambdaMost; lambda *= 10.0) {
    ContinuousAnswer answer = solveAt(lambda);
    if (answer.status != Status::Optimal) return answer;
    if (answer.violation <= budget) {
      bracket.lambdaWithin = lambda;
      bracket.within = answer;
      return answer;
    }
    bracket.lambdaBeyond = lambda;
    bracket.beyond = std::move(answer);
  }
  return failed(Status::Failed, "second stage: the least violation was not reached again");
}

/// A linear answer jumps from corner to corner: at the right price the two corners beside the budget cost the
/// same, and the answer lies between them.
ContinuousAnswer cheapestWithinBudget(const ScaledProgram& program, const Box& box, double budget) {
  const auto solveAt = [&](double lambda) { return solveLinear(program, box, Rows::Priced, lambda, 1.0); };
  Bracket bracket;
  bracket.beyond = solveAt(0.0);
  if (bracket.beyond.status != Status::Optimal) return bracket.beyond;
  if (bracket.beyond.violation <= budget) return bracket.beyond;
  if (ContinuousAnswer first = firstWithin(solveAt, budget, bracket); first.status != Status::Optimal)
    return first;
  for (int round = 0; round < 200; ++round) {
    const double lambda = (bracket.within.objective - bracket.beyond.objective) /
                          (bracket.beyond.violation - bracket.within.violation);
    if (!(lambda > 0)) return bracket.within;  // what costs more violation saves nothing
    ContinuousAnswer answer = solveAt(lambda);
    if (answer.status != Status::Optimal) return answer;
    const double corner = bracket.within.objective + lambda * bracket.within.violation;
    const double value = answer.objective + lambda * answer.violation;
    if (value >= corner - 1e-12 * (1.0 + std::abs(corner))) break;
    (answer.violation <= budget ? bracket.within : bracket.beyond) = std::move(answer);
  }
  const double share =
      (budget - bracket.within.violation) / (bracket.beyond.violation - bracket.within.violation);
  Eigen::VectorXd between = (1.0 - share) * bracket.within.z + share * bracket.beyond.z;
  ContinuousAnswer mixed = measured(program, std::move(between), bracket.within.rowMultipliers);
  return mixed.violation <= budget * (1 + 1e-9) ? mixed : bracket.within;
}

bool isQuadratic(const ScaledProgram& program) {
  return (program.source->curvature.array() > 0).all();
}

bool hasNoObjective(const ScaledProgram& program) {
  return (program.source->curvature.array() == 0).all() && (program.source->cost.array() == 0).all();
}

}  // namespace

ContinuousAnswer leastViolation(const ScaledProgram& program, const Box& box) {
  if ((box.lower.array() > box.upper.array()).any()) return failed(Status::Infeasible, "");
  ContinuousAnswer answer;
  if (isQuadratic(program)) {
    ContinuousSolver solver = quadraticSolver(program, box);
    solver.solve(ContinuousSolver::Budget::Exact);
    answer = answerOf(program, solver);
  } else {
    answer = solveLinear(program, box, Rows::Priced, 1.0, 0.0);
  }
  if (answer.status == Status::Optimal && answer.violation < kNoViolation) answer.violation = 0.0;
  return answer;
}

ContinuousAnswer leastObjective(const ScaledProgram& program, const Box& box, double least) {
  if (isQuadratic(program)) {
    ContinuousSolver solver = quadraticSolver(program, box);
    if (least < kNoViolation && solver.solve() == Status::Optimal &&
        solver.violation() <= violationBudget(least))
      return answerOf(program, solver);
    solver.solveWithin(violationBudget(least));
    return answerOf(program, solver);
  }
  const double budget = violationBudget(least);
  if (least < kNoViolation) {
    if (ContinuousAnswer answer = solveLinear(program, box, Rows::Hard, 1.0, 1.0);
        answer.status == Status::Optimal)
      return answer;
  }
  return cheapestWithinBudget(program, box, budget);
}

ContinuousAnswer leastOfBoth(const ScaledProgram& program, const Box& box) {
  if (isQuadratic(program)) {
    ContinuousSolver solver = quadraticSolver(program, box);
    if (solver.solve() == Status::Optimal) return answerOf(program, solver);
  }
  ContinuousAnswer first = leastViolation(program, box);
  if (first.status != Status::Optimal || hasNoObjective(program)) return first;
  return leastObjective(program, box, first.violation);
}

}  // namespace tarebowl::solver
