// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/collection_checks.h"
#include "core/food/food_index.h"
#include "core/store/collection.h"

#include <stop_token>
#include <vector>

namespace tarebowl::store {

/// Every food as the checks of a whole collection see it; lines and foods stand at the same places.
struct CheckedFoods {
  std::vector<food::FoodLine> lines{};
  std::vector<food::CheckedFood> foods{};
};

/// Reads all foods through; fewer where a stop was asked for. Throws StoreError.
[[nodiscard]] CheckedFoods readForChecks(const Collection& collection, const std::stop_token& stop = {});

}  // namespace tarebowl::store
