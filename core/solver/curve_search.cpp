// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/curve_search.h"

#include "core/solver/curve_sample.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace tarebowl::solver {
namespace {

using Sample = CurveSample;

constexpr int kGrid = 16;             // intervals that are looked at whatever their ends say
constexpr double kSamePlace = 1e-11;  // of the span
constexpr double kNarrow = 1e-3;      // of the span
constexpr double kRounding = 1e-12;   // of the size of what is drawn
constexpr double kAsGood = 1e-8;      // of the span: two places that are one
constexpr double kNoJump = 1e-6;      // of the largest amount
constexpr double kStraight = 1e-8;    // of the size of what is drawn
constexpr double kFine = 1e-3;        // of what the curve spans
constexpr int kMostSamples = 6'000;
constexpr int kMostHalvings = 6;  // of a bend between two neighbours of the grid

/// What the numbers of a curve come to at most; less than this is nothing.
struct Sizes {
  double grams = kNothing;
  double violation = 1e-2;
  double objective = 1e-9;
};

/// By how much the middle one lies off the straight line between the others, relative to the size of
/// each number that is drawn.
double bendOf(const CurvePoint& a, const CurvePoint& middle, const CurvePoint& b, const Sizes& sizes) {
  const double t = (middle.at - a.at) / (b.at - a.at);
  const auto off = [t](double low, double between, double high, double size) {
    return size > 0.0 ? std::abs(between - (low + t * (high - low))) / size : 0.0;
  };
  double bend = std::max(off(a.violation, middle.violation, b.violation, sizes.violation),
                         off(a.objective, middle.objective, b.objective, sizes.objective));
  for (Eigen::Index j = 0; j < a.x.size(); ++j)
    bend = std::max(bend, off(a.x[j], middle.x[j], b.x[j], sizes.grams));
  return bend;
}

Sizes sizesOf(const std::vector<Sample>& samples) {
  Sizes sizes;
  for (const Sample& sample : samples) {
    if (!sample.exists()) continue;
    sizes.grams = std::max(sizes.grams, sample.point.x.cwiseAbs().maxCoeff());
    sizes.violation = std::max(sizes.violation, std::abs(sample.point.violation));
    sizes.objective = std::max(sizes.objective, std::abs(sample.point.objective));
  }
  return sizes;
}

class CurveMaker {
 public:
  CurveMaker(const std::function<Program(double)>& at, double from, double to, const CurveLimits& limits)
      : at_(at), from_(std::min(from, to)), to_(std::max(from, to)), limits_(limits) {}

  AnswerCurve run() {
    std::vector<Sample> grid;
    for (int k = 0; k <= kGrid; ++k) {
      // Off the round numbers, at which bounds like to be: no breakpoint lies on the grid itself.
      const double off = k == 0 || k == kGrid ? 0.0 : 0.0618034;
      grid.push_back(sampleAt(from_ + (to_ - from_) * (k + off) / kGrid));
      if (grid.back().status == Status::Failed && !bad_) bad_ = grid.back();
    }
    sizes_ = sizesOf(grid);
    std::vector<Sample> all{grid.front()};
    for (int k = 0; k < kGrid; ++k) {
      const auto place = static_cast<std::size_t>(k);
      split(all, grid[place], grid[place + 1]);
      all.push_back(grid[place + 1]);
    }
    return curveFrom(std::move(all));
  }

 private:
  [[nodiscard]] bool isOver() const {
    return limits_.stop.stop_requested() || std::chrono::steady_clock::now() >= limits_.deadline;
  }

  /// So many kinks that no more are placed: what is drawn by then is true all the same.
  [[nodiscard]] bool isFull() const { return stopped_ || samples_ > kMostSamples; }

  Sample sampleAt(double at) {
    if (isOver()) {
      stopped_ = true;
      return {};
    }
    ++samples_;
    Sample sample = sampleOf(at_(at), at);
    if (sample.status == Status::Unbounded && !bad_) bad_ = sample;
    return sample;
  }

  /// Adds the breakpoints between two samples.
  void split(std::vector<Sample>& all, const Sample& a, const Sample& b) {
    if (isFull() || bad_ || (!a.exists() && !b.exists())) return;
    const double width = (b.point.at - a.point.at) / (to_ - from_);
    if (width <= kSamePlace) {
      if (differs(a, b)) breakBetween(all, a, b);
      return;
    }
    const Sample middle = sampleAt(0.5 * (a.point.at + b.point.at));
    if (!differs(a, b) && !differs(a, middle)) return;
    if (isStraight(a, middle, b, width)) {
      // Wide, what stands otherwise does so for rounding alone; narrow, the kink is too small to be halved
      // on.
      if (width < kNarrow) breakBetween(all, a, b);
      return;
    }
    // So near a jump that rounding blurs it, one half is as good as the other.
    const bool isBlurred = width < kNarrow && differs(a, middle) && differs(middle, b);
    if (!isBlurred || isFurther(a, middle, b)) split(all, a, middle);
    if (!isBlurred || !isFurther(a, middle, b)) split(all, middle, b);
  }

  static bool differs(const Sample& a, const Sample& b) {
    return a.exists() != b.exists() || a.standing != b.standing;
  }
  /// Whether the answer changes more in the first half.
  static bool isFurther(const Sample& a, const Sample& middle, const Sample& b) {
    if (!middle.exists()) return a.exists();
    if (!a.exists() || !b.exists()) return !a.exists();
    return (middle.point.x - a.point.x).cwiseAbs().maxCoeff() >
           (b.point.x - middle.point.x).cwiseAbs().maxCoeff();
  }

  /// A kink bends in proportion to the width, and rounding does not.
  [[nodiscard]] bool isStraight(const Sample& a, const Sample& middle, const Sample& b, double width) const {
    return a.exists() && middle.exists() && b.exists() &&
           bendOf(a.point, middle.point, b.point, sizes_) <= std::max(kRounding, kStraight * width);
  }

  /// Adds points between two neighbours of one piece until straight lines through them are near enough.
  void bend(std::vector<CurvePoint>& all, const CurvePoint& a, const CurvePoint& b, int halvings) {
    if (isFull() || isSamePlace(a, b)) return;
    const Sample middle = sampleAt(0.5 * (a.at + b.at));
    if (!middle.exists()) return;
    const double off = bendOf(a, middle.point, b, sizes_);
    if (off <= kStraight) return;
    const bool isFine = off <= kFine || halvings >= kMostHalvings;
    if (!isFine) bend(all, a, middle.point, halvings + 1);
    all.push_back(middle.point);
    if (!isFine) bend(all, middle.point, b, halvings + 1);
  }

  static void breakBetween(std::vector<Sample>& all, Sample a, Sample b) {
    for (Sample* end : {&a, &b}) {
      if (!end->exists()) continue;
      end->point.isBreakpoint = true;
      all.push_back(std::move(*end));
    }
  }

  AnswerCurve curveFrom(std::vector<Sample> all) {
    AnswerCurve curve;
    if (stopped_) return ended(Status::Stopped, "stopped");
    if (bad_) return ended(bad_->status, bad_->reason);
    curve.endsLow = !all.front().exists();
    curve.endsHigh = !all.back().exists();
    std::erase_if(all, [](const Sample& sample) { return !sample.exists(); });
    if (all.empty()) return ended(Status::Infeasible, "");
    for (Sample& sample : all) curve.points.push_back(std::move(sample.point));
    mergeBreakpoints(curve.points);
    dropStraight(curve.points);
    addBends(curve.points);
    if (stopped_) return ended(Status::Stopped, "stopped");
    curve.status = Status::Optimal;
    return curve;
  }

  static AnswerCurve ended(Status status, std::string reason) {
    AnswerCurve curve;
    curve.status = status;
    curve.reason = std::move(reason);
    return curve;
  }

  /// At a breakpoint a point stands on two bounds at once, as far as rounding can tell: that is no piece.
  [[nodiscard]] bool isSamePlace(const CurvePoint& a, const CurvePoint& b) const {
    return std::abs(a.at - b.at) <= kAsGood * (to_ - from_);
  }

  /// Both sides of a breakpoint are one point, unless the answer jumps there.
  void mergeBreakpoints(std::vector<CurvePoint>& points) const {
    std::vector<CurvePoint> merged;
    for (CurvePoint& point : points) {
      const bool joins = !merged.empty() && isSamePlace(merged.back(), point) &&
                         (merged.back().x - point.x).cwiseAbs().maxCoeff() <= kNoJump * sizes_.grams;
      if (joins)
        merged.back().isBreakpoint = merged.back().isBreakpoint || point.isBreakpoint;
      else
        merged.push_back(std::move(point));
    }
    points = std::move(merged);
  }

  void dropStraight(std::vector<CurvePoint>& points) const {
    std::vector<CurvePoint> kept;
    for (std::size_t k = 0; k < points.size(); ++k) {
      const bool isEnd = k == 0 || k + 1 == points.size();
      const bool isPlain = !isEnd && points[k + 1].at > kept.back().at &&
                           bendOf(kept.back(), points[k], points[k + 1], sizes_) <= kStraight;
      // Of two sides of one breakpoint the second stays, and is still one.
      if (isPlain && points[k].isBreakpoint && isSamePlace(points[k], points[k + 1]))
        points[k + 1].isBreakpoint = true;
      if (!isPlain) kept.push_back(std::move(points[k]));
    }
    points = std::move(kept);
  }

  void addBends(std::vector<CurvePoint>& points) {
    std::vector<CurvePoint> all;
    for (std::size_t k = 0; k < points.size(); ++k) {
      all.push_back(points[k]);
      if (k + 1 < points.size()) bend(all, points[k], points[k + 1], 0);
    }
    points = std::move(all);
  }

  const std::function<Program(double)>& at_;
  double from_;
  double to_;
  CurveLimits limits_;
  Sizes sizes_;
  // The first that is neither an answer nor a contradiction. Right beside a jump rounding may leave a place
  // without an answer; over a stretch as wide as the grid it may not.
  std::optional<Sample> bad_;
  int samples_ = 0;
  bool stopped_ = false;
};

}  // namespace

AnswerCurve searchCurve(const std::function<Program(double)>& at, double from, double to,
                        const CurveLimits& limits) {
  return CurveMaker(at, from, to, limits).run();
}

}  // namespace tarebowl::solver
