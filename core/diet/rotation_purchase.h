// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation.h"

#include <span>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// What a week of a plan needs of one food, for all animals that eat of it.
struct PurchaseLine {
  int week = 0;          ///< from 0: seven days each, from the first of the period
  std::size_t food = 0;  ///< position in the problem's foods
  quantity::Kilograms offered{0};
  quantity::Kilograms bought{0};  ///< offered / (edible (1 - waste))
  bool lossIsKnown = false;       ///< false: nothing is known to be lost
};

/// Weeks in their order, in each the foods by group and in the problem's order. Days that are over are bought
/// already and left out.
[[nodiscard]] std::vector<PurchaseLine> purchaseList(const RotationProblem& problem,
                                                     std::span<const Diet> days);

/// What is ordered of one group of foods, as suppliers have them.
struct PurchaseOfGroup {
  int week = 0;
  std::string group{};
  quantity::Kilograms offered{0};
  quantity::Kilograms bought{0};
  bool lossIsKnown = true;  ///< of each food of the group
};
/// Lines of one list, added up by week and group.
[[nodiscard]] std::vector<PurchaseOfGroup> byGroup(const RotationProblem& problem,
                                                   std::span<const PurchaseLine> lines);

}  // namespace tarebowl::diet
