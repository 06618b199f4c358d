// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/counted_bowl.h"

namespace tarebowl::intake {

CountedBowl counted(const Bowl& bowl) {
  CountedBowl made{.group = bowl.key.group,
                   .day = bowl.key.day,
                   .label = bowl.label,
                   .diet = bowl.diet,
                   .animals = bowl.animals};
  if (const auto remainder = entryThatCounts(bowl.remainders)) made.remainder = remainder->left;
  for (const BowlItem& item : bowl.items) {
    if (item.swappedOut) continue;
    CountedItem& copy = made.items.emplace_back();
    copy.food = item.food;
    copy.planned = item.planned;
    copy.swappedIn = item.swap.has_value();
    if (const auto weighed = entryThatCounts(item.weighings)) copy.weighed = weighed->actual;
    if (const auto left = entryThatCounts(item.leftovers))
      copy.leftover = CountedLeftover{left->kind, left->left, left->lost};
  }
  return made;
}

}  // namespace tarebowl::intake
