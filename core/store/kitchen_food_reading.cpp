// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/kitchen_food_reading.h"

#include "core/store/column_types.h"
#include "core/store/opening.h"
#include "core/store/row_query.h"

namespace tarebowl::store {

std::optional<intake::KitchenFood> findKitchenFood(const Collection& collection, const std::string& code) {
  return guarded(collection.file(), [&]() -> std::optional<intake::KitchenFood> {
    intake::KitchenFood food{.code = code};
    std::optional<std::string> raw;
    std::optional<std::string> rawName;
    std::optional<double> rawEdible;
    RowQuery rows(
        collection.inner().connection,
        "SELECT food.name, food.form, food.food_group, food.scale_step_g, food.unit_mass_g, "
        "food.edible_fraction, food.in_stock, raw.code, food_cooking.mass_yield, raw.name, "
        "raw.edible_fraction FROM food LEFT JOIN food_cooking ON food_cooking.food_id = food.id LEFT "
        "JOIN food AS raw ON raw.id = food_cooking.raw_food_id WHERE food.code = :code",
        code);
    if (!rows.next(food.name, food.form, food.group, food.step, food.unitMass, food.edibleFraction,
                   food.inStock, raw, food.yield, rawName, rawEdible))
      return std::nullopt;
    food.raw = raw.value_or("");
    food.rawName = rawName.value_or("");
    food.rawEdibleFraction = rawEdible.value_or(1.0);
    return food;
  });
}

}  // namespace tarebowl::store
