// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/feeding_records.h"
#include "core/store/animal_records.h"
#include "core/store/collection.h"
#include "core/store/written.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// Swaps and control pans; as all verbs (verbs.h). A swap that a keeper may decide on, or that was approved,
/// takes its food out of the bowl and puts the others in; one that waits leaves the bowl as it is.
namespace tarebowl::store {

enum class SwapId : std::int64_t {};
enum class ControlPanId : std::int64_t {};

using StoredSwap = Stored<SwapId, intake::SwapMade>;
using StoredControlPan = Stored<ControlPanId, intake::ControlPan>;

/// Refused where the food was weighed or swapped already. `by` and the food's name are written here.
Written addSwap(Collection& collection, const intake::SwapMade& swap, const Author& author);
/// Approved, or refused with a reason. One that was in the bowl comes out again when it is refused, unless
/// what was given was weighed.
Written decideSwap(Collection& collection, SwapId swap, int seenRevision, bool approved,
                   const std::string& reason, const Author& author);

Written addControlPan(Collection& collection, const intake::ControlPan& pan, const Author& author);
Written editControlPan(Collection& collection, ControlPanId pan, int seenRevision,
                       const intake::ControlPan& changed, const Author& author);
Written removeControlPan(Collection& collection, ControlPanId pan, int seenRevision, const Author& author);

/// In the order in which they were made.
[[nodiscard]] std::vector<StoredSwap> swapsBetween(const Collection& collection, quantity::Date from,
                                                   quantity::Date to);
/// All that wait for a decision, the oldest first.
[[nodiscard]] std::vector<StoredSwap> swapsWaiting(const Collection& collection);
[[nodiscard]] std::vector<StoredControlPan> controlPansBetween(const Collection& collection,
                                                               quantity::Date from, quantity::Date to);
/// All that still stand, the oldest first.
[[nodiscard]] std::vector<StoredControlPan> controlPansThatStand(const Collection& collection);

}  // namespace tarebowl::store
