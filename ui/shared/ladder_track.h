// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

/// Where things lie on the track of a rung. Pure arithmetic on 0 … 1 from the left end to the right.
namespace tarebowl::ui {

struct Span {
  double from = 0.0;
  double to = 0.0;
};

/// The part of the number line that a track shows. It follows from the bounds alone, so that the track stands
/// still while the value moves.
class TrackScale {
 public:
  TrackScale(std::optional<double> min, std::optional<double> max);

  [[nodiscard]] double low() const { return low_; }
  [[nodiscard]] double high() const { return high_; }
  /// 0 … 1; values beyond an end stand at that end.
  [[nodiscard]] double position(double value) const;
  [[nodiscard]] bool isBelow(double value) const { return value < low_; }
  [[nodiscard]] bool isAbove(double value) const { return value > high_; }
  /// Where the target is met; open towards an end that has no bound.
  [[nodiscard]] Span zone() const { return zone_; }
  /// value minus and plus the half width.
  [[nodiscard]] Span whisker(double value, double halfWidth) const;
  /// The part that rests on unknown values: from the known value to what it would be if the foods without a
  /// value were like the others; the whole track where nothing is known; nothing where all is.
  [[nodiscard]] std::optional<Span> unknown(std::optional<double> value, double coverage) const;

 private:
  double low_ = 0.0;
  double high_ = 1.0;
  Span zone_;
};

}  // namespace tarebowl::ui
