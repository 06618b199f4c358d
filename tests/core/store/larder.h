// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/food_reading.h"
#include "core/store/food_records.h"
#include "core/store/verbs.h"
#include "tests/core/store/own_folder.h"

namespace tarebowl::store {

/// An invented food with something in every field.
[[nodiscard]] FoodRecord pellet();
[[nodiscard]] FoodRecord plain(const std::string& code);
[[nodiscard]] food::Sample analysis(const std::string& source, const std::string& date, double calcium);
[[nodiscard]] food::NutrientId nutrient(const char* tagname);

inline StoredFood theFood(const Collection& collection, std::int64_t id) {
  return findFood(collection, FoodId{id}).value();
}

}  // namespace tarebowl::store
