// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/checked_foods.h"

#include "core/store/food_reading.h"
#include "core/store/reading.h"

#include <algorithm>
#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace tarebowl::store {

namespace {

constexpr std::size_t kAtATime = 100;

std::optional<quantity::Date> newestOf(const std::vector<StoredSample>& samples) {
  std::optional<quantity::Date> newest;
  for (const StoredSample& stored : samples) {
    const food::Sample& sample = stored.sample;
    if (sample.excluded || !sample.date) continue;
    if (!newest || *sample.date > *newest) newest = sample.date;
  }
  return newest;
}

std::vector<std::optional<KnownFood>> knowAll(const Collection& collection,
                                              std::span<const food::FoodLine> lines) {
  return readTogether(collection, [lines](const Collection& from) {
    for (const food::FoodLine& line : lines) askAhead(from, [&] { return knowFood(from, FoodId{line.id}); });
    std::vector<std::optional<KnownFood>> known;
    for (const food::FoodLine& line : lines) known.push_back(knowFood(from, FoodId{line.id}));
    return known;
  });
}

}  // namespace

CheckedFoods readForChecks(const Collection& collection, const std::stop_token& stop) {
  CheckedFoods read;
  std::vector<food::FoodLine> lines = listFoods(collection);
  for (std::size_t first = 0; first < lines.size() && !stop.stop_requested(); first += kAtATime) {
    const std::span<food::FoodLine> some =
        std::span(lines).subspan(first, std::min(kAtATime, lines.size() - first));
    const auto known = knowAll(collection, some);
    for (std::size_t i = 0; i < some.size(); ++i) {
      if (!known[i]) continue;  // removed meanwhile
      read.foods.push_back({.name = some[i].name,
                            .form = some[i].form,
                            .group = some[i].group,
                            .composition = known[i]->derivation.stated(),
                            .newestSample = newestOf(known[i]->samples)});
      read.lines.push_back(std::move(some[i]));
    }
  }
  return read;
}

}  // namespace tarebowl::store
