// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/swap_on_desk.h"

#include "core/diet/locked.h"
#include "core/store/food_reading.h"

#include <algorithm>

namespace tarebowl::transfer {

bool isOnHand(const food::Food& food) {
  return food.inStock;
}

std::vector<diet::DietFood> foodsOnHand(const store::Collection& collection,
                                        const std::vector<std::string>& firstGroups,
                                        const std::stop_token& stop) {
  std::vector<food::FoodLine> lines = store::listFoods(collection);
  std::stable_partition(lines.begin(), lines.end(), [&](const food::FoodLine& line) {
    return std::ranges::find(firstGroups, line.group) != firstGroups.end();
  });
  std::vector<diet::DietFood> foods;
  for (const food::FoodLine& line : lines) {
    if (stop.stop_requested()) break;
    const auto known = store::knowFood(collection, store::FoodId{line.id});
    if (known && isOnHand(known->food.record.food)) foods.push_back(store::asDietFood(*known));
  }
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
