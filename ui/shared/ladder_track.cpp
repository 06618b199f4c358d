// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/ladder_track.h"

#include <algorithm>

namespace tarebowl::ui {

TrackScale::TrackScale(std::optional<double> min, std::optional<double> max) {
  if (min && max) {
    const double width = *max - *min;
    const double margin = width > 0.0 ? 0.7 * width : 0.25 * (*max > 0.0 ? *max : 1.0);
    low_ = std::max(0.0, *min - std::max(margin, 0.5 * *min));
    high_ = *max + margin;
  } else if (min) {
    high_ = *min > 0.0 ? 2.5 * *min : 1.0;
  } else if (max) {
    high_ = *max > 0.0 ? 1.5 * *max : 1.0;
  }
  zone_ = {min ? position(*min) : 0.0, max ? position(*max) : 1.0};
}

double TrackScale::position(double value) const {
  return std::clamp((value - low_) / (high_ - low_), 0.0, 1.0);
}

Span TrackScale::whisker(double value, double halfWidth) const {
  return {position(value - halfWidth), position(value + halfWidth)};
}

std::optional<Span> TrackScale::unknown(std::optional<double> value, double coverage) const {
  if (coverage >= 1.0) return std::nullopt;
  if (coverage <= 0.0 || !value) return Span{0.0, 1.0};
  constexpr double kLeastToBeSeen = 0.04;
  const double from = position(*value);
  return Span{from, std::min(1.0, std::max(position(*value / coverage), from + kLeastToBeSeen))};
}

}  // namespace tarebowl::ui
