// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/feeding_days.h"

#include "tests/core/store/larder.h"

namespace tarebowl::store {

using quantity::Grams;

Kitchen::Kitchen() {
  for (const char* food : {"kale", "endive", "pellet-a"}) addFood(collection, plain(food), kKeeper);
  const Written draft = addVersion(collection, "lemur-morning", fullVersion(), kKeeper);
  submitVersion(collection, VersionId{draft.id}, 1, "", kKeeper);
  approveVersion(collection, VersionId{draft.id}, 2, decision(), {day("2026-11-20"), 0}, "tried", kKeeper);
  openSheet(collection, "Small Mammals", today, planned(), kKeeper);
}

std::vector<intake::Bowl> Kitchen::planned() const {
  return {{.key = {"family", today, 1},
           .meal = "morning",
           .label = "Family, morning",
           .diet = "lemur-morning",
           .version = 1,
           .animals = 5,
           .items = {{.food = "kale", .planned = Grams(120), .preparation = "torn"},
                     {.item = 2, .food = "pellet-a", .planned = Grams(30.5)}}},
          {.key = {"pair", today, 1},
           .label = "Pair",
           .animals = 2,
           .items = {{.food = "kale", .planned = Grams(40)}}}};
}

}  // namespace tarebowl::store
