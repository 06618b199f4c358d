// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/piecewise_cost.h"

namespace tarebowl::solver {

int PiecewiseCost::placeOfSlope(double slope) const {
  if (!isGrid_) {
    if (first_ > last_) return first_;
    if (first_ == last_) return first_;
    return slope <= between_ ? 0 : 1;
  }
  // The parabola's own minimiser, then one look left and right: chords cross slope next to it.
  const double ideal = weight_ > 0 ? centre_ + slope / (2.0 * weight_) : (slope > 0 ? last_ : first_);
  int place = static_cast<int>(std::lround(std::clamp(ideal, double(first_), double(last_))));
  if (gap_ > 1 && place > 0 && place < gap_) place = gap_ <= last_ ? gap_ : 0;
  while (place > first_ && slope < slopeBelow(place)) place = previous(place);
  while (place < last_ && next(place) <= last_ && slope > slopeAbove(place)) place = next(place);
  return place;
}

double PiecewiseCost::leastWith(double gradient) const {
  const int place = placeOfSlope(-gradient);
  return costAt(place) + gradient * at(place);
}

void PiecewiseCost::setBounds(double lower, double upper) {
  if (!isGrid_) {
    lower_ = lower;
    upper_ = upper;
    return;
  }
  first_ = static_cast<int>(lower);
  last_ = static_cast<int>(upper);
  if (first_ > 0) gap_ = 1;
}

bool PiecewiseCost::narrowToWithin(double gradient, double slack, bool wholeNumbers) {
  double low = lowest();
  double high = highest();
  if (isGrid_) {
    const double ideal = centre_ - gradient / (2.0 * weight_);
    const double floorValue = weight_ * (ideal - centre_) * (ideal - centre_) + gradient * ideal;
    const double room = leastWith(gradient) + slack - floorValue;
    const double reach = std::sqrt(std::max(0.0, room) / weight_) + 1e-9;
    low = std::max(low, std::ceil(ideal - reach));
    high = std::min(high, std::floor(ideal + reach));
    if (gap_ > 1 && low > 0 && low < gap_) low = gap_;
    if (gap_ > 1 && high > 0 && high < gap_) high = 0;
  } else {
    const double slope = between_ + gradient;
    const double reach = std::abs(slope) > 1e-300 ? slack / std::abs(slope) : kInfinity;
    if (slope > 0 && low + reach < high) high = wholeNumbers ? std::floor(low + reach + 1e-9) : low + reach;
    if (slope < 0 && high - reach > low) low = wholeNumbers ? std::ceil(high - reach - 1e-9) : high - reach;
  }
  if (low <= lowest() && high >= highest()) return false;
  if (low > high) return false;  // cannot happen beyond rounding: the minimiser itself lies within
  setBounds(low, high);
  return true;
}

}  // namespace tarebowl::solver
