// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/cooking.h"
#include "core/food/derivation.h"
#include "core/food/food.h"
#include "core/food/recipe.h"
#include "core/food/sample.h"
#include "core/food/sampling_plan.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace tarebowl::store {

enum class FoodId : std::int64_t {};
enum class SampleId : std::int64_t {};

/// Everything the house decides about a food; what it is made of stands in its samples.
struct FoodRecord {
  food::Food food{};
  std::vector<food::Override> overrides{};
  std::optional<food::Cooking> cooking{};  ///< rawCode must be the code of a food of the collection
  std::optional<food::Recipe> recipe{};  ///< so must those of its parts; a food is cooked or mixed, not both
  std::vector<food::PlannedAnalysis> plan{};
  bool operator==(const FoodRecord&) const = default;
};

/// revision grows with every edit; an edit names the one it saw, so that no update is lost.
struct StoredFood {
  FoodId id{};
  int revision = 0;
  FoodRecord record{};
};

struct StoredSample {
  SampleId id{};
  FoodId food{};
  int revision = 0;
  food::Sample sample{};
};

}  // namespace tarebowl::store
