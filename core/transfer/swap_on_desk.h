// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/swap.h"
#include "core/food/food.h"
#include "core/transfer/desk_diet.h"

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace tarebowl::transfer {

/// Whether a food may be offered in place of another: the one place where stock decides.
[[nodiscard]] bool isOnHand(const food::Food& food);

/// Every food of the collection that is on hand, as a diet takes it, those of `firstGroups` first; fewer
/// where a stop was asked for. Throws StoreError.
[[nodiscard]] std::vector<diet::DietFood> foodsOnHand(const store::Collection& collection,
                                                      const std::vector<std::string>& firstGroups = {},
                                                      const std::stop_token& stop = {});

/// The swap that is asked for where these foods (codes) are missing from a version of a diet: all its weighed
/// lines of them. Nothing where the version gives none of them.
[[nodiscard]] std::optional<diet::SwapRequest> swapRequestOn(const DeskDiet& desk,
                                                             const std::vector<std::string>& missing,
                                                             std::vector<diet::DietFood> candidates);

}  // namespace tarebowl::transfer
