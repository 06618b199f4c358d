// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

namespace tarebowl::food {

/// The middle one; between the two middle ones of an even number. There must be at least one.
[[nodiscard]] double medianOf(std::vector<double> values);

/// Where the middle of some values lies and how far they scatter about it, by measures that a few wild values
/// do not move.
struct RobustScatter {
  double median = 0.0;
  double spread = 0.0;  ///< what a standard deviation would be if they were normal; above 0
};

/// The median and MAD / 0.6745; where more than half of the values are equal and the MAD is 0, 1.253314 times
/// the mean absolute deviation from the median. Nothing where all are equal, or there are none.
/// Iglewicz and Hoaglin (1993), How to Detect and Handle Outliers, ASQC Quality Press [from memory].
[[nodiscard]] std::optional<RobustScatter> robustScatter(std::span<const double> values);

/// Their modified z score, (value - median) / spread. They label a value whose score is beyond 3.5.
[[nodiscard]] double robustZ(double value, const RobustScatter& scatter);
inline constexpr double kRobustZLimit = 3.5;

}  // namespace tarebowl::food
