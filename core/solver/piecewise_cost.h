// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {

/// A convex piecewise-linear cost of one variable, known by its breakpoints and the slopes between them.
///
///  Band: at most two breakpoints, place 0 = lower and place 1 = upper, with a slope below, between and
///  above. A hard bound has
///        an infinite slope outside; an elastic row has its price as the slope; an absent bound is an
///        infinite breakpoint.
///  Grid: weight (k - centre)^2 at the whole numbers k = first ... last, straight chords between them. On the
///  lattice it is the
///        parabola itself, off it lies above: the relaxation is as tight as a convex function of one variable
///        can be. With gap > 1 the places strictly between 0 and gap are not on the lattice (a food is left
///        out, or at least so much).
///
/// A place is the index of a breakpoint. first() - 1 and last() + 1 stand for minus and plus infinity.
class PiecewiseCost {
 public:
  static PiecewiseCost band(double lower, double upper, double below, double between, double above) {
    PiecewiseCost cost;
    cost.lower_ = lower;
    cost.upper_ = upper;
    cost.below_ = below;
    cost.between_ = between;
    cost.above_ = above;
    cost.first_ = lower > -kInfinity ? 0 : 1;
    cost.last_ = upper < kInfinity ? 1 : 0;
    return cost;
  }
  static PiecewiseCost grid(double weight, double centre, int first, int last, int gap) {
    PiecewiseCost cost;
    cost.isGrid_ = true;
    cost.weight_ = weight;
    cost.centre_ = centre;
    cost.first_ = first;
    cost.last_ = last;
    cost.gap_ = gap;
    return cost;
  }

  [[nodiscard]] bool isGrid() const { return isGrid_; }
  [[nodiscard]] int first() const { return first_; }
  [[nodiscard]] int last() const { return last_; }
  [[nodiscard]] int next(int place) const {
    return place == 0 && hasGap() ? std::min(gap_, last_ + 1) : place + 1;
  }
  [[nodiscard]] int previous(int place) const { return hasGap() && place == gap_ ? 0 : place - 1; }

  /// Where the breakpoint lies; infinite for the places outside.
  [[nodiscard]] double at(int place) const {
    if (place < first_) return -kInfinity;
    if (place > last_) return kInfinity;
    if (isGrid_) return place;
    return place == 0 ? lower_ : upper_;
  }
  /// Slope just right of a breakpoint (place first() - 1: the slope of the leftmost piece).
  [[nodiscard]] double slopeAbove(int place) const {
    if (isGrid_) {
      if (place >= last_) return kInfinity;
      if (place < first_) return -kInfinity;
      return chordSlope(place, next(place));
    }
    return place < 0 ? below_ : place == 0 ? between_ : above_;
  }
  [[nodiscard]] double slopeBelow(int place) const {
    if (isGrid_) {
      if (place <= first_) return -kInfinity;
      if (place > last_) return kInfinity;
      return chordSlope(previous(place), place);
    }
    return place <= 0 ? below_ : place == 1 ? between_ : above_;
  }
  /// A place whose slopes enclose slope, i.e. where cost(z) - slope z is least.
  [[nodiscard]] int placeOfSlope(double slope) const;
  /// Least value of cost(z) + gradient z over the breakpoints; the variable must be bounded on the side it is
  /// pushed to.
  [[nodiscard]] double leastWith(double gradient) const;
  /// cost at a place (a Grid's, or a Band's: 0 offset, slope between times position).
  [[nodiscard]] double costAt(int place) const {
    if (isGrid_) return weight_ * (place - centre_) * (place - centre_);
    return between_ * at(place);
  }

  /// Narrows to [lower, upper] (Band) or the whole numbers in it (Grid).
  void setBounds(double lower, double upper);
  [[nodiscard]] double lowest() const { return at(first_); }
  [[nodiscard]] double highest() const { return at(last_); }
  /// Narrows to where cost(z) + gradient z <= least + slack. True when anything changed.
  bool narrowToWithin(double gradient, double slack, bool wholeNumbers);

  void setPrice(double price) {
    below_ = -price;
    above_ = price;
  }

 private:
  [[nodiscard]] int nearestTo(double slope) const;
  bool narrowGrid(double gradient, double slack);
  bool narrowBand(double gradient, double slack, bool wholeNumbers);
  bool adopt(double low, double high);
  [[nodiscard]] bool hasGap() const { return gap_ > 1 && first_ == 0; }
  [[nodiscard]] double chordSlope(int from, int to) const {
    return weight_ * (double(from) + double(to) - 2.0 * centre_);
  }

  bool isGrid_ = false;
  int first_ = 0;
  int last_ = 0;
  int gap_ = 1;
  double weight_ = 0.0;
  double centre_ = 0.0;
  double lower_ = 0.0;
  double upper_ = 0.0;
  double below_ = 0.0;
  double between_ = 0.0;
  double above_ = 0.0;
};

}  // namespace tarebowl::solver
