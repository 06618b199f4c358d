// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/bowl_swap.h"

#include "core/diet/swap_effect.h"
#include "core/store/diet_reading.h"
#include "core/transfer/day_of_rotation.h"
#include "core/transfer/eaten_before.h"

#include <cstddef>
#include <string_view>
#include <utility>
#include <vector>

namespace tarebowl::transfer {

namespace {

/// As it is given on the day of the bowl.
std::optional<DeskDiet> dietOf(const store::Collection& collection, const intake::Bowl& bowl,
                               CountedAs counted) {
  for (const store::StoredVersion& version : store::versionsOfDiet(collection, bowl.diet))
    if (version.record.version.number == bowl.version) {
      auto desk = readDesk(collection, version.id, bowl.key.day, counted);
      if (desk) desk->made.amounts = amountsOn(collection, *desk, bowl.key.day);
      return desk;
    }
  return std::nullopt;
}

std::string groupOf(const DeskDiet& desk, const std::string& food) {
  for (std::size_t j = 0; j < desk.made.places.size(); ++j)
    if (desk.made.places[j].food == food) return desk.made.problem.foods[j].group;
  return {};
}

/// Of the diet's lines, that of this bowl: a food may be given at another meal too.
bool isOfBowl(const diet::PlaceInVersion& place, const intake::PrepBowl& bowl) {
  const std::string_view purpose =
      place.purpose == diet::Purpose::Bowl ? std::string_view() : diet::symbolOf(place.purpose);
  return place.meal == bowl.bowl.meal && purpose == bowl.purpose;
}

}  // namespace

std::variant<diet::SwapRequest, NoSwap> swapRequestOn(const store::Collection& collection,
                                                      const intake::PrepBowl& bowl,
                                                      const intake::BowlItem& item, Candidates which,
                                                      CountedAs counted) {
  if (!item.weighings.empty()) return NoSwap::Weighed;
  const auto desk = dietOf(collection, bowl.bowl, counted);
  if (!desk) return NoSwap::NoDiet;
  OnHand onHand{.eaters = eatersOf(*desk, bowl.bowl.key.day)};
  if (which == Candidates::OwnGroup) onHand.groups = {groupOf(*desk, item.food)};
  auto request = swapRequestOn(*desk, {item.food}, foodsOnHand(collection, desk->made.problem, onHand));
  if (!request) return NoSwap::NotInDiet;
  std::erase_if(request->missing, [&](std::size_t j) { return !isOfBowl(desk->made.places[j], bowl); });
  if (request->missing.empty()) return NoSwap::NotInDiet;
  std::erase_if(request->candidates, [&](const diet::DietFood& food) { return food.id == item.food; });
  request->eatenBefore = eatenBefore(collection, bowl.bowl.key.group, bowl.bowl.key.day);
  return std::move(*request);
}

intake::SwapMade swapMade(const intake::Bowl& bowl, const intake::BowlItem& item,
                          const diet::SwapRequest& request, const diet::Swap& swap, std::string why) {
  intake::SwapMade made{.instead = {bowl.key, item.item}, .food = item.food, .why = std::move(why)};
  for (const diet::SwapPart& part : swap.parts)
    made.given.push_back(
        {request.candidates[part.candidate].id, part.grams * static_cast<double>(bowl.animals)});
  const bool keeperMay = diet::effectOf(request, swap).approval.keeperMay();
  made.approval = keeperMay ? intake::SwapApproval::KeeperDecides : intake::SwapApproval::Waiting;
  return made;
}

}  // namespace tarebowl::transfer
