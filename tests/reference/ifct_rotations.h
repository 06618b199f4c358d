// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation.h"
#include "tests/reference/ifct_foods.h"

namespace tarebowl::reference {

struct RandomRotation {
  std::uint64_t seed = 0;
  int days = 7;
  std::size_t lists = 6;  ///< each with `listed` foods, of which `chosen` are fed a day
  std::size_t listed = 4;
  int chosen = 2;
  std::size_t others = 6;  ///< foods outside the lists
  std::size_t targets = 30;
  double displaced = 0.0;        ///< how many targets are set beside what the hidden days hold
  std::size_t leastLimit = 20;   ///< steps of a food a day, at most so many …
  std::size_t limitSpread = 40;  ///< … to so many more
  double minEach = 5.0;          ///< grams of a listed food
  double largestStep = 5.0;      ///< of some foods; 1 g of the others
  bool cheapest = true;          ///< else the closest
};

/// Foods of the Indian tables in lists, targets around the mean of hidden days that keep the structure;
/// prices are invented.
[[nodiscard]] diet::RotationProblem randomRotation(const std::vector<diet::DietFood>& table,
                                                   const RandomRotation& wanted);

}  // namespace tarebowl::reference
