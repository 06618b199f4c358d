// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/food_lot.h"
#include "core/store/animal_records.h"
#include "core/store/collection.h"
#include "core/store/written.h"

#include <cstdint>
#include <vector>

/// Lots of foods: what writes and reads them; as all verbs (verbs.h).
namespace tarebowl::store {

enum class LotId : std::int64_t {};
using StoredLot = Stored<LotId, intake::FoodLot>;

/// Refused where the collection has no such food, and where a lot of it begins on that day already.
Written addLot(Collection& collection, const intake::FoodLot& lot, const Author& author);
Written editLot(Collection& collection, LotId lot, int seenRevision, const intake::FoodLot& changed,
                const Author& author);
Written removeLot(Collection& collection, LotId lot, int seenRevision, const Author& author);

/// In order of foods and days.
[[nodiscard]] std::vector<StoredLot> listLots(const Collection& collection);
/// The lots alone, as intake::lotOn takes them.
[[nodiscard]] std::vector<intake::FoodLot> lotsOf(const std::vector<StoredLot>& stored);

}  // namespace tarebowl::store
