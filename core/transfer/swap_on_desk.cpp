// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/swap_on_desk.h"

#include "core/diet/counted_nutrients.h"
#include "core/diet/locked.h"
#include "core/store/larder_reading.h"

#include <algorithm>

namespace tarebowl::transfer {

bool isOnHand(const food::Food& food) {
  return food.inStock;
}

std::optional<Eaters> eatersOf(const DeskDiet& desk, quantity::Date day) {
  if (desk.counted == CountedAs::Offered) return std::nullopt;
  return eatersOn(desk.group.group, day);
}

std::vector<diet::DietFood> foodsOnHand(const store::Collection& collection,
                                        const diet::BalanceProblem& problem, const OnHand& which) {
  store::LarderWish wish{.nutrients = diet::countedNutrients(problem), .stop = which.stop};
  wish.wants = [&](const food::Food& food) {
    return isOnHand(food) &&
           (which.groups.empty() || std::ranges::find(which.groups, food.group) != which.groups.end());
  };
  std::vector<diet::DietFood> foods = store::readLarder(collection, wish);
  if (which.eaters) countEaten(collection, *which.eaters, foods);
  return foods;
}

std::optional<diet::SwapRequest> swapRequestOn(const DeskDiet& desk, const std::vector<std::string>& missing,
                                               std::vector<diet::DietFood> candidates) {
  const auto isMissing = [&](const std::string& code) {
    return std::ranges::find(missing, code) != missing.end();
  };
  diet::SwapRequest request;
  request.problem = diet::withLocked(desk.made.problem, desk.made.amounts, desk.made.locked);
  request.approved = desk.made.amounts;
  for (std::size_t j = 0; j < desk.made.places.size(); ++j) {
    const diet::PlaceInVersion& place = desk.made.places[j];
    if (!place.allowance && isMissing(place.food) && request.approved[j] > quantity::Grams(0))
      request.missing.push_back(j);
  }
  if (request.missing.empty()) return std::nullopt;
  request.candidates = std::move(candidates);
  return request;
}

}  // namespace tarebowl::transfer
