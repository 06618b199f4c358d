// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/piecewise_cost.h"

namespace tarebowl::solver {

/// The whole number nearest to where the parabola with this slope is least; a gap left aside.
int PiecewiseCost::nearestTo(double slope) const {
  const double ideal = weight_ > 0 ? centre_ + slope / (2.0 * weight_) : (slope > 0 ? last_ : first_);
  const double within = std::clamp(ideal, double(first_), double(last_));  // not negative: halves up, cut off
  const double raised = within + 0.5;
  return static_cast<int>(raised);
}

int PiecewiseCost::placeOfSlope(double slope) const {
  if (!isGrid_) {
    if (first_ > last_) return first_;
    if (first_ == last_) return first_;
    return slope <= between_ ? 0 : 1;
  }
  // The parabola's own minimiser, then one look left and right: chords cross slope next to it.
  int place = nearestTo(slope);
  if (hasGap() && place > 0 && place < gap_) place = gap_ <= last_ ? gap_ : 0;
  while (place > first_ && slope < slopeBelow(place)) place = previous(place);
  while (place < last_ && next(place) <= last_ && slope > slopeAbove(place)) place = next(place);
  return place;
}

double PiecewiseCost::leastWith(double gradient) const {
  if (isGrid_ && !hasGap()) {
    const int place = nearestTo(-gradient);
    return costAt(place) + gradient * place;
  }
  const int place = placeOfSlope(-gradient);
  return costAt(place) + gradient * at(place);
}

void PiecewiseCost::setBounds(double lower, double upper) {
  if (isGrid_) {
    first_ = static_cast<int>(lower);
    last_ = static_cast<int>(upper);
    return;
  }
  lower_ = lower;
  upper_ = upper;
}

bool PiecewiseCost::narrowToWithin(double gradient, double slack, bool wholeNumbers) {
  return isGrid_ ? narrowGrid(gradient, slack) : narrowBand(gradient, slack, wholeNumbers);
}

bool PiecewiseCost::narrowGrid(double gradient, double slack) {
  const double most = leastWith(gradient) + slack;
  const double tolerance = 1e-9 * weight_ + 1e-13 * std::abs(most);
  if (costAt(first_) + gradient * first_ <= most + tolerance &&
      costAt(last_) + gradient * last_ <= most + tolerance)
    return false;
  const double ideal = centre_ - gradient / (2.0 * weight_);
  const double floorValue = weight_ * (ideal - centre_) * (ideal - centre_) + gradient * ideal;
  const double reach = std::sqrt(std::max(0.0, most - floorValue) / weight_) + 1e-9;
  double low = std::max(lowest(), std::ceil(ideal - reach));
  double high = std::min(highest(), std::floor(ideal + reach));
  if (hasGap() && low > 0 && low < gap_) low = gap_;
  if (hasGap() && high > 0 && high < gap_) high = 0;
  return adopt(low, high);
}

bool PiecewiseCost::narrowBand(double gradient, double slack, bool wholeNumbers) {
  const double slope = between_ + gradient;
  if (std::abs(slope) * (upper_ - lower_) <= slack) return false;
  const double reach = slack / std::abs(slope);
  double low = lower_;
  double high = upper_;
  if (slope > 0) high = wholeNumbers ? std::floor(low + reach + 1e-9) : low + reach;
  if (slope < 0) low = wholeNumbers ? std::ceil(high - reach - 1e-9) : high - reach;
  return adopt(low, high);
}

bool PiecewiseCost::adopt(double low, double high) {
  if (low <= lowest() && high >= highest()) return false;
  if (low > high) return false;  // cannot happen beyond rounding: the minimiser itself lies within
  setBounds(low, high);
  return true;
}

}  // namespace tarebowl::solver
