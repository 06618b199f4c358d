// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/held_days.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <utility>

namespace tarebowl::transfer {

using quantity::Date;

HeldDays::HeldDays(Date from, Date to, std::vector<intake::CountedBowl> bowls,
                   std::vector<intake::ControlPan> pans)
    : from_(from), to_(to), bowls_(std::move(bowls)), pans_(std::move(pans)), foods_(fed(from, to).foods) {}

void HeldDays::read(Date from, Date to, const std::function<void(const intake::CountedBowl&)>& take) const {
  for (const intake::CountedBowl& bowl : bowls_)
    if (from <= bowl.day && bowl.day <= to) take(bowl);
}

store::CountedBowlReader::Fed HeldDays::fed(Date from, Date to) const {
  store::CountedBowlReader::Fed fed;
  std::set<std::string> foods;
  read(from, to, [&](const intake::CountedBowl& bowl) {
    for (const intake::CountedItem& item : bowl.items) foods.insert(item.food);
    if (bowl.diet.empty()) return;
    fed.diet = bowl.diet;
    fed.lastDay = bowl.day;
  });
  fed.foods.assign(foods.begin(), foods.end());
  return fed;
}

std::vector<intake::ControlPan> HeldDays::pans(Date from, Date to) const {
  std::vector<intake::ControlPan> pans;
  std::ranges::copy_if(pans_, std::back_inserter(pans),
                       [&](const intake::ControlPan& pan) { return from <= pan.day && pan.day <= to; });
  return pans;
}

}  // namespace tarebowl::transfer
