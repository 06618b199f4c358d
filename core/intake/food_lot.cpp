// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/food_lot.h"

namespace tarebowl::intake {

std::optional<FoodLot> lotOn(std::span<const FoodLot> lots, const std::string& food, quantity::Date day) {
  const FoodLot* newest = nullptr;
  for (const FoodLot& lot : lots)
    if (lot.food == food && lot.from <= day && (newest == nullptr || lot.from >= newest->from)) newest = &lot;
  return newest == nullptr ? std::nullopt : std::optional(*newest);
}

}  // namespace tarebowl::intake
