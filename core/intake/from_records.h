// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/counted_bowl.h"
#include "core/intake/fed_bowl.h"
#include "core/intake/water_pans.h"

#include <functional>
#include <optional>
#include <string>

/// What the kitchen wrote down, as intake is worked out from it: the one place that knows both.
namespace tarebowl::intake {

/// What must be known of a food beside its records.
struct FoodKind {
  std::string foodClass{};  ///< food group
  quantity::Grams step{};   ///< of the scale
};
using FoodKindLookup = std::function<FoodKind(const std::string& code)>;

/// Entries that count, swapped-out lines left out. What was not weighed in counts as planned. Where a bowl
/// has a mixed remainder, foods without an entry are in it. What was spilled or stolen without a word on what
/// was found in the bowl is not weighed. Parts of a remainder are their estimated grams over the sum of
/// these; a remainder that was estimated and never weighed is that sum. place: where the bowl's pans stand.
[[nodiscard]] FedBowl fedBowl(const CountedBowl& bowl, const std::string& place,
                              const FoodKindLookup& kindOf);
[[nodiscard]] FedBowl fedBowl(const Bowl& bowl, const std::string& place, const FoodKindLookup& kindOf);

/// A pan that stands for a class has no food. Nothing of one that was not weighed when it came back: it says
/// nothing of water yet.
[[nodiscard]] std::optional<WaterPan> waterPan(const ControlPan& pan, const FoodKindLookup& kindOf);

}  // namespace tarebowl::intake
