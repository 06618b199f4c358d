// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/explore.h"

#include "core/diet/traced_problem.h"
#include "core/solver/chance.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::diet {
namespace {

Trace failed(std::string reason) {
  Trace trace;
  trace.reason = std::move(reason);
  return trace;
}

Trace exploreRule(const BalanceProblem& problem, const TracedBound& moved, double from, double to,
                  const TraceOptions& options) {
  const TracedProblem traced(problem, options);
  if (traced.defect()) return failed(*traced.defect());
  const auto row = traced.rowOf(moved.index, moved.side);
  if (!row) return failed("no-such-bound");
  const auto at = [&](double bound) { return traced.withBound(*row, bound); };
  return traced.traceOf(solver::curveOf(at, from, to, traced.limits()), at);
}

Trace exploreFood(const BalanceProblem& problem, const TracedBound& moved, double from, double to,
                  const TraceOptions& options) {
  const TracedProblem traced(problem, options);
  if (traced.defect()) return failed(*traced.defect());
  const auto column = static_cast<Eigen::Index>(moved.index);
  const bool isMin = moved.side == BoundSide::Min;
  const auto at = [&](double grams) {
    solver::Program program = traced.program();
    (isMin ? program.lower : program.upper)[column] = grams;
    return program;
  };
  if (solver::hasScatter(traced.program()))
    return traced.traceOf(solver::curveOf(at, from, to, traced.limits()), at);
  const double now = (isMin ? traced.program().lower : traced.program().upper)[column];
  const auto kind = isMin ? solver::MovingBound::Kind::ColumnLower : solver::MovingBound::Kind::ColumnUpper;
  return traced.traceOf(solver::curveOf(traced.program(), {kind, column}, from, to, now), at);
}

}  // namespace

Trace explore(const BalanceProblem& problem, const TracedBound& moved, double from, double to,
              const TraceOptions& options) {
  if (!std::isfinite(from) || !std::isfinite(to) || from == to || std::min(from, to) < 0.0)
    return failed("no-such-range");
  if (moved.of == TracedBound::Of::Rule) return exploreRule(problem, moved, from, to, options);
  if (moved.index >= problem.foods.size()) return failed("no-such-food");
  return exploreFood(problem, moved, from, to, options);
}

std::optional<double> boundNow(const BalanceProblem& problem, const TracedBound& moved) {
  if (moved.of == TracedBound::Of::Rule) {
    const auto measures = measuresOf(problem);
    return moved.index < measures.size() ? measures[moved.index].bound(moved.side) : std::nullopt;
  }
  if (moved.index >= problem.foods.size()) return std::nullopt;
  const DietFood& food = problem.foods[moved.index];
  if (moved.side == BoundSide::Min) return food.min.value();
  return food.max ? std::optional(food.max->value()) : std::nullopt;
}

TraceRange rangeWorthTracing(const BalanceProblem& problem, const TracedBound& moved, const Diet& now) {
  const auto bound = boundNow(problem, moved);
  if (moved.of == TracedBound::Of::Rule)
    return bound && *bound > 0.0 ? TraceRange{0.5 * *bound, 2.0 * *bound} : TraceRange{};
  double most = bound.value_or(0.0);
  if (moved.index < now.size()) most = std::max(most, now[moved.index].value());
  return {0.0, most > 0.0 ? 2.0 * most : 10.0};
}

const TracePoint* pointNear(const Trace& trace, double at) {
  const auto nearest = std::ranges::min_element(
      trace.points, {}, [at](const TracePoint& point) { return std::abs(point.at - at); });
  return nearest == trace.points.end() ? nullptr : &*nearest;
}

std::optional<TracePoint> readAt(const Trace& trace, double at) {
  const auto& points = trace.points;
  if (points.empty() || at < points.front().at || at > points.back().at) return std::nullopt;
  const auto after = std::ranges::lower_bound(points, at, {}, &TracePoint::at);
  if (after == points.begin() || after->at == at) return *after;
  const TracePoint& low = *std::prev(after);
  const double t = (at - low.at) / (after->at - low.at);
  const auto between = [t](double a, double b) { return (1.0 - t) * a + t * b; };
  TracePoint point = low;
  point.at = at;
  point.isBreakpoint = false;
  point.shortfall = between(low.shortfall, after->shortfall);
  point.objective = between(low.objective, after->objective);
  for (std::size_t j = 0; j < point.grams.size(); ++j)
    point.grams[j] = quantity::Grams(between(low.grams[j].value(), after->grams[j].value()));
  for (std::size_t i = 0; i < point.shortfalls.size(); ++i)
    point.shortfalls[i] = between(low.shortfalls[i], after->shortfalls[i]);
  return point;
}

}  // namespace tarebowl::diet
