// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/traced_problem.h"

#include "core/diet/any_amounts.h"
#include "core/diet/food_safety.h"
#include "core/diet/objective.h"
#include "core/diet/supply.h"
#include "core/diet/verification.h"

#include <algorithm>

namespace tarebowl::diet {
namespace {

Trace::Status statusOf(solver::Status status) {
  switch (status) {
    case solver::Status::Optimal:
      return Trace::Status::Traced;
    case solver::Status::Infeasible:
      return Trace::Status::Impossible;
    case solver::Status::Unbounded:
      return Trace::Status::Unbounded;
    case solver::Status::Stopped:
      return Trace::Status::Stopped;
    case solver::Status::Failed:
      break;
  }
  return Trace::Status::Failed;
}

}  // namespace

TracedProblem::TracedProblem(const BalanceProblem& problem, const TraceOptions& options)
    : problem_(bansAnything(problem) ? withoutBanned(problem) : problem), defect_(unsolvable(problem_)) {
  if (defect_) return;
  // A count has no way between two numbers: what is traced is the closeness that is sought beside it.
  if (problem_.objective.kind == Objective::Kind::FewestFoods) problem_.objective = {};
  measures_ = measuresOf(problem_);
  defect_ = uncountable(measures_);
  if (defect_) return;
  reference_ = referenceDiet(problem_);
  formulation_ = formulate(problem_, measures_, reference_);
  std::optional<Eigen::VectorXd> bowl;
  if (options.bowl && !problem_.choices.empty()) bowl = gramsOf(problem_, *options.bowl);
  program_ = anyAmounts(formulation_, bowl ? &*bowl : nullptr);
  if (!program_.rows.allFinite()) defect_ = "not-a-number: rows";
  limits_ = {std::chrono::steady_clock::now() + options.deadline, options.stop};
}

solver::Program TracedProblem::withBound(std::size_t row, double bound) const {
  const RowOrigin& origin = formulation_.rows[row];
  Measure measure = measures_[origin.measure];
  (origin.side == BoundSide::Min ? measure.min : measure.max) = bound;
  solver::Program program = program_;
  writeRow(program, static_cast<Eigen::Index>(row), measure, origin.side);
  return program;
}

std::optional<std::size_t> TracedProblem::rowOf(std::size_t measure, BoundSide side) const {
  const auto found = std::ranges::find(formulation_.rows, RowOrigin{measure, side});
  if (found == formulation_.rows.end()) return std::nullopt;
  return static_cast<std::size_t>(found - formulation_.rows.begin());
}

Trace TracedProblem::traceOf(const solver::AnswerCurve& curve,
                             const std::function<solver::Program(double)>& at) const {
  Trace trace;
  trace.status = statusOf(curve.status);
  trace.reason = curve.reason;
  trace.endsLow = curve.endsLow;
  trace.endsHigh = curve.endsHigh;
  trace.ofAnyAmounts =
      (formulation_.program.step.array() > 0.0).any() || !formulation_.program.choices.empty();
  for (const solver::CurvePoint& found : curve.points) {
    TracePoint point{found.at,          {}, found.violation, 0.0, std::vector<double>(measures_.size(), 0.0),
                     found.isBreakpoint};
    for (const double grams : found.x) point.grams.emplace_back(std::max(grams, 0.0));
    point.objective = objectiveOf(problem_, reference_, point.grams);
    const solver::Program program = at(found.at);
    for (std::size_t row = 0; row < formulation_.rows.size(); ++row) {
      double& missed = point.shortfalls[formulation_.rows[row].measure];
      const double violation = solver::rowViolation(program, static_cast<Eigen::Index>(row), found.x);
      // What the solver takes for nothing is nothing.
      if (violation > 10 * kNoShortfall) missed = std::max(missed, violation);
    }
    if (point.shortfall <= kNoShortfall) point.shortfall = 0.0;
    trace.points.push_back(std::move(point));
  }
  return trace;
}

}  // namespace tarebowl::diet
