// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checked_foods.h"

#include "core/store/food_reading.h"

#include <utility>

namespace tarebowl::store {

namespace {

std::optional<quantity::Date> newestOf(const std::vector<StoredSample>& samples) {
  std::optional<quantity::Date> newest;
  for (const StoredSample& stored : samples) {
    const food::Sample& sample = stored.sample;
    if (sample.excluded || !sample.date) continue;
    if (!newest || *sample.date > *newest) newest = sample.date;
  }
  return newest;
}

}  // namespace

CheckedFoods readForChecks(const Collection& collection, const std::stop_token& stop) {
  CheckedFoods read;
  for (food::FoodLine& line : listFoods(collection)) {
    if (stop.stop_requested()) break;
    auto known = knowFood(collection, FoodId{line.id});
    if (!known) continue;  // removed meanwhile
    read.foods.push_back({.name = line.name,
                          .form = line.form,
                          .group = line.group,
                          .composition = known->derivation.stated(),
                          .newestSample = newestOf(known->samples)});
    read.lines.push_back(std::move(line));
  }
  return read;
}

}  // namespace tarebowl::store
