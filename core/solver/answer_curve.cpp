// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/answer_curve.h"

#include "core/solver/curve_sample.h"
#include "core/solver/curve_search.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace tarebowl::solver {
namespace {

Program withBound(Program program, MovingBound moving, double bound) {
  using Kind = MovingBound::Kind;
  if (moving.kind == Kind::RowLower || moving.kind == Kind::RowBoth) program.rowLower[moving.index] = bound;
  if (moving.kind == Kind::RowUpper || moving.kind == Kind::RowBoth) program.rowUpper[moving.index] = bound;
  if (moving.kind == Kind::ColumnLower) program.lower[moving.index] = bound;
  if (moving.kind == Kind::ColumnUpper) program.upper[moving.index] = bound;
  return program;
}

/// The same walk both ways: rising points, and whether it came to the end.
struct Walked {
  Status status = Status::Failed;
  std::string reason;
  std::vector<CurvePoint> points;
  bool isComplete = false;
};

Walked walk(const Program& program, MovingBound moving, double from, double to) {
  const Program untied = withoutTies(program);
  ParametricPath path;
  if (isQuadratic(program)) {
    ContinuousSolver solver(ContinuousProgram::of(untied));
    path = followBound(solver, moving, from, to);
  } else {
    LinearSolver solver(ContinuousProgram::of(untied));
    path = followBound(solver, moving, from, to);
  }
  Walked walked{path.status, std::string(path.reason), {}, path.isComplete};
  for (std::size_t k = 0; k < path.points.size(); ++k) {
    Breakpoint& point = path.points[k];
    const bool isEnd = k == 0 || (k + 1 == path.points.size() && path.isComplete);
    walked.points.push_back({point.bound, std::move(point.x), point.violation, 0.0, !isEnd});
  }
  for (CurvePoint& point : walked.points) point.objective = objectiveValue(program, point.x);
  if (to < from) std::ranges::reverse(walked.points);
  return walked;
}

/// Between breakpoints the answer is a straight line and a quadratic objective a parabola: it is drawn from
/// the line.
void addParabolas(std::vector<CurvePoint>& points, const Program& program) {
  constexpr int kBetween = 8;
  if (!isQuadratic(program)) return;
  std::vector<CurvePoint> all;
  for (std::size_t k = 0; k < points.size(); ++k) {
    all.push_back(points[k]);
    if (k + 1 == points.size() || (points[k].x - points[k + 1].x).isZero(0.0)) continue;
    for (int i = 1; i < kBetween; ++i) {
      const double t = static_cast<double>(i) / kBetween;
      const auto between = [t](const auto& a, const auto& b) { return ((1.0 - t) * a + t * b); };
      CurvePoint point;
      point.at = between(points[k].at, points[k + 1].at);
      point.x = between(points[k].x, points[k + 1].x);
      point.violation = between(points[k].violation, points[k + 1].violation);
      point.objective = objectiveValue(program, point.x);
      all.push_back(std::move(point));
    }
  }
  points = std::move(all);
}

}  // namespace

AnswerCurve curveOf(const std::function<Program(double)>& at, double from, double to,
                    const CurveLimits& limits) {
  return searchCurve(at, from, to, limits);
}

AnswerCurve curveOf(const Program& program, MovingBound moving, double from, double to, double start) {
  const double low = std::min(from, to);
  const double high = std::max(from, to);
  AnswerCurve curve;
  for (const double begin : {std::clamp(start, low, high), low, high}) {
    Walked down = walk(program, moving, begin, low);
    curve.status = down.status;
    curve.reason = down.reason;
    if (down.status == Status::Infeasible) continue;
    Walked up = walk(program, moving, begin, high);
    if (down.status == Status::Optimal) {
      curve.status = up.status;
      curve.reason = up.reason;
    }
    curve.points = std::move(down.points);
    if (!curve.points.empty() && !up.points.empty()) curve.points.pop_back();
    std::ranges::move(up.points, std::back_inserter(curve.points));
    curve.endsLow = !down.isComplete;
    curve.endsHigh = !up.isComplete;
    break;
  }
  if (curve.status == Status::Failed) {
    // Where rounding has the better of the ratio tests, halving still finds the breakpoints.
    return curveOf([&](double at) { return withBound(program, moving, at); }, from, to);
  }
  if (curve.status != Status::Optimal) curve.points.clear();
  addParabolas(curve.points, program);
  return curve;
}

}  // namespace tarebowl::solver
