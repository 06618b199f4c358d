// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/lot_verbs.h"

#include "core/store/food_rows.h"
#include "core/store/lot_tables.h"
#include "core/store/record_reading.h"
#include "core/store/record_verbs.h"

#include <fmt/format.h>

namespace tarebowl::store {

void refuseUnsound(Collection::Inner& inner, long long id, const intake::FoodLot& lot) {
  if (lot.lot.empty()) refuse(inner, "a lot has a name: what does the box say?");
  if (!foodWithCode(inner, lot.food)) refuse(inner, "there is no food " + lot.food);
  const std::string day = quantity::isoDate(lot.from);
  long long others = 0;
  inner.sql() << "SELECT COUNT(*) FROM food_lot WHERE food = :food AND from_day = :day AND id <> :id",
      soci::use(lot.food), soci::use(day), soci::use(id), soci::into(others);
  if (others > 0)
    refuse(inner, fmt::format("a lot of {} begins on {} already: change that one", lot.food, day));
}

std::string nameOf(const intake::FoodLot& lot) {
  return fmt::format("the lot {} of {}", lot.lot, lot.food);
}

Written addLot(Collection& collection, const intake::FoodLot& lot, const Author& author) {
  return addThing(collection, lot, author);
}

Written editLot(Collection& collection, LotId lot, int seenRevision, const intake::FoodLot& changed,
                const Author& author) {
  return editThing(collection, static_cast<long long>(lot), seenRevision, changed, author);
}

Written removeLot(Collection& collection, LotId lot, int seenRevision, const Author& author) {
  return removeThing<intake::FoodLot>(collection, static_cast<long long>(lot), seenRevision, author);
}

std::vector<StoredLot> listLots(const Collection& collection) {
  return readAll<StoredLot>(collection, "ORDER BY food, from_day, id");
}

std::vector<intake::FoodLot> lotsOf(const std::vector<StoredLot>& stored) {
  std::vector<intake::FoodLot> lots;
  lots.reserve(stored.size());
  for (const StoredLot& lot : stored) lots.push_back(lot.record);
  return lots;
}

}  // namespace tarebowl::store
