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

/// Of what is on hand: all, or what stands nearest to what is missing and is read in no time.
enum class Candidates { OwnGroup, All };

/// Foods of a collection that are on hand, as a problem counts them: with no more than it looks at.
struct OnHand {
  /// Only foods of these groups; empty: all. What stands nearest is read in no time, all that there is is
  /// not.
  std::vector<std::string> groups{};
  /// Of each food as much counts as these eat of it; nothing: all of it.
  std::optional<Eaters> eaters{};
  std::stop_token stop{};  ///< fewer foods where it was asked for
};
/// Who eats what the desk counts; nothing where it counts what is offered.
[[nodiscard]] std::optional<Eaters> eatersOf(const DeskDiet& desk, quantity::Date day);
/// Throws StoreError.
[[nodiscard]] std::vector<diet::DietFood> foodsOnHand(const store::Collection& collection,
                                                      const diet::BalanceProblem& problem,
                                                      const OnHand& which = {});

/// The swap that is asked for where these foods (codes) are missing from a version of a diet: all its weighed
/// lines of them. Nothing where the version gives none of them.
[[nodiscard]] std::optional<diet::SwapRequest> swapRequestOn(const DeskDiet& desk,
                                                             const std::vector<std::string>& missing,
                                                             std::vector<diet::DietFood> candidates);

}  // namespace tarebowl::transfer
