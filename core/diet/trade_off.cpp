// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/explore.h"
#include "core/diet/objective.h"
#include "core/diet/traced_problem.h"
#include "core/solver/chance.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace tarebowl::diet {
namespace {

Trace failed(Trace::Status status, std::string reason) {
  Trace trace;
  trace.status = status;
  trace.reason = std::move(reason);
  return trace;
}

bool isQuadratic(const Objective& objective) {
  return objective.kind == Objective::Kind::Closest || objective.kind == Objective::Kind::FewestFoods;
}

/// The program with one more hard row at its end: what the other objective may come to at most.
solver::Program withRow(const solver::Program& program, const Eigen::VectorXd& cost, double most) {
  solver::Program more = program;
  const Eigen::Index rows = program.rowCount();
  more.rows.conservativeResize(rows + 1, Eigen::NoChange);
  more.rows.row(rows) = cost.transpose();
  for (auto* side : {&more.rowLower, &more.rowUpper, &more.price}) side->conservativeResize(rows + 1);
  more.rowLower[rows] = -solver::kInfinity;
  more.rowUpper[rows] = most;
  more.price[rows] = solver::kInfinity;
  if (more.scatter) {
    more.scatter->conservativeResize(rows + 1, Eigen::NoChange);
    more.scatter->row(rows).setZero();
  }
  return more;
}

/// The best bowl of one program; nothing where the curve has to say why.
struct Best {
  Trace::Status status = Trace::Status::Traced;
  std::string reason;
  Eigen::VectorXd x;
};

Best bestOf(const TracedProblem& traced) {
  const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(traced.limits().deadline -
                                                                          std::chrono::steady_clock::now());
  solver::Limits limits;
  limits.deadline = std::max(left, std::chrono::milliseconds(0));
  limits.stop = traced.limits().stop;
  const solver::Solution solution = solver::solve(traced.program(), limits);
  switch (solution.status) {
    case solver::Status::Optimal:
      return {Trace::Status::Traced, {}, solution.x};
    case solver::Status::Infeasible:
      return {Trace::Status::Impossible, {}, {}};
    case solver::Status::Unbounded:
      return {Trace::Status::Unbounded, solution.reason, {}};
    case solver::Status::Stopped:
      return {Trace::Status::Stopped, solution.reason, {}};
    case solver::Status::Failed:
      break;
  }
  return {Trace::Status::Failed, solution.reason, {}};
}

/// other is linear.
Trace tradeFor(const BalanceProblem& problem, const Objective& other, const TraceOptions& options) {
  BalanceProblem sought = problem;
  sought.objective = other;
  const TracedProblem first(problem, options);
  if (first.defect()) return failed(Trace::Status::Failed, *first.defect());
  const TracedProblem second(sought, options);
  if (second.defect()) return failed(Trace::Status::Failed, *second.defect());
  const Eigen::VectorXd cost = second.program().cost;
  const Best dear = bestOf(first);
  if (dear.status != Trace::Status::Traced) return failed(dear.status, dear.reason);
  const Best cheap = bestOf(second);
  if (cheap.status != Trace::Status::Traced) return failed(cheap.status, cheap.reason);
  const double most = std::max(cost.dot(dear.x), cost.dot(cheap.x));
  const double least = cost.dot(cheap.x);
  const auto at = [&](double value) { return withRow(first.program(), cost, value); };
  const Eigen::Index row = first.program().rowCount();
  const double size = cost.cwiseAbs().dot(dear.x.cwiseAbs()) + cost.cwiseAbs().dot(cheap.x.cwiseAbs());
  const double from = most - least > 1e-9 * size ? least : most - 1e-9 * std::max(size, 1e-9);
  const solver::AnswerCurve curve =
      solver::hasScatter(first.program())
          ? solver::curveOf(at, from, most, first.limits())
          : solver::curveOf(at(most), {solver::MovingBound::Kind::RowUpper, row}, from, most, most);
  return first.traceOf(curve, at);
}

/// Where the most of something is sought, the solver looked for the least of its negative.
void turnRound(Trace& trace) {
  for (TracePoint& point : trace.points) point.at = -point.at;
  std::ranges::reverse(trace.points);
  std::swap(trace.endsLow, trace.endsHigh);
}

void swapAxes(Trace& trace) {
  for (TracePoint& point : trace.points) std::swap(point.at, point.objective);
  std::ranges::stable_sort(trace.points, {}, &TracePoint::at);
}

}  // namespace

Trace tradeOff(const BalanceProblem& problem, const Objective& other, const TraceOptions& options) {
  if (problem.objective == other || (isQuadratic(problem.objective) && isQuadratic(other)))
    return failed(Trace::Status::Failed, "nothing-to-trade");
  BalanceProblem first = problem;
  Objective second = other;
  const bool turned = isQuadratic(other);
  if (turned) std::swap(first.objective, second);
  Trace trace = tradeFor(first, second, options);
  if (second.kind == Objective::Kind::Highest) turnRound(trace);
  if (turned) swapAxes(trace);
  // Its ends are the best of the one and of the other, and no contradiction.
  trace.endsLow = trace.endsHigh = false;
  return trace;
}

}  // namespace tarebowl::diet
