// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/swap_frame.h"

#include <optional>
#include <string>

namespace tarebowl::diet {

/// What some grams of a bowl come to beside the approved one.
struct SwapStanding {
  double hard = 0.0;        ///< sum by which hard bounds are missed beyond the approved bowl
  double shortfall = 0.0;   ///< Swap::shortfall
  double difference = 0.0;  ///< Swap::difference
};

/// Swaps of one food while every other line is held. Hard misses, shortfall and difference are each convex in
/// its grams, so that the nearest whole number of steps is found by halving, exactly and without a solver.
class SingleSwaps {
 public:
  SingleSwaps(const SwapFrame& frame, const SwapColumns& columns);

  struct Answer {
    std::optional<Swap> swap;
    std::string brokenRule;  ///< without one: the hard rule that is missed by most at the least miss of all
    SwapStanding standing;   ///< of the swap, or at that least miss
  };
  /// range: of the candidate, not empty.
  [[nodiscard]] Answer nearest(std::size_t candidate, const SwapRange& range) const;

  /// Where so many grams of it would stand, counted with what the diet has of it.
  [[nodiscard]] SwapStanding at(std::size_t candidate, double grams) const;

 private:
  const SwapFrame& frame_;
  const SwapColumns& columns_;
};

/// Hard bounds may be missed by rounding alone.
inline constexpr double kHardSlack = 1e-9;
/// The shortfall up to which the difference decides: the slack of the problem format.
[[nodiscard]] double shortfallAllowed(double least);

}  // namespace tarebowl::diet
