// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/table_export.h"

#include "core/store/food_reading.h"
#include "core/store/reading.h"

#include <algorithm>
#include <deque>
#include <span>
#include <utility>

namespace tarebowl::transfer {

namespace {

std::optional<exchange::ExportedOther> exported(const store::OtherValue& value) {
  const auto unit = quantity::parseUnit(value.unit);
  if (!unit) return std::nullopt;
  const quantity::Basis basis = food::basisOf(value.amount);
  return exchange::ExportedOther{
      .name = value.name,
      .unit = {.unit = *unit, .per = basis == quantity::Basis::Energy ? 1000.0 : 100.0, .basis = basis},
      .amount = food::amountOf(value.amount),
      .sd = value.sd,
      .count = value.count,
      .qualifier = value.qualifier,
      .source = value.source};
}

exchange::ExportedFood exported(const store::Collection& collection, const food::FoodLine& line,
                                const store::KnownFood& known) {
  exchange::ExportedFood food{line.code, line.name, line.form, line.group, known.derivation.stated(), {}};
  for (const store::OtherValue& value : store::otherValuesOf(collection, store::FoodId(line.id)))
    if (auto other = exported(value)) food.others.push_back(std::move(*other));
  return food;
}

constexpr std::size_t kAtATime = 100;

/// Without those that were removed meanwhile.
std::deque<exchange::ExportedFood> readSome(const store::Collection& collection,
                                            std::span<const food::FoodLine> lines) {
  for (const food::FoodLine& line : lines)
    store::askAhead(
        collection, [&] { return store::knowFood(collection, store::FoodId(line.id)); },
        [&] { return store::otherValuesOf(collection, store::FoodId(line.id)); });
  std::deque<exchange::ExportedFood> foods;
  for (const food::FoodLine& line : lines)
    if (auto known = store::knowFood(collection, store::FoodId(line.id)))
      foods.push_back(exported(collection, line, *known));
  return foods;
}

}  // namespace

exchange::ExportSource foodsOf(const store::Collection& collection) {
  return [&collection, lines = store::listFoods(collection), next = std::size_t{0},
          read = std::deque<exchange::ExportedFood>()]() mutable -> std::optional<exchange::ExportedFood> {
    while (read.empty() && next < lines.size()) {
      const auto some = std::span(lines).subspan(next, std::min(kAtATime, lines.size() - next));
      next += some.size();
      read = store::readTogether(collection,
                                 [some](const store::Collection& whole) { return readSome(whole, some); });
    }
    if (read.empty()) return std::nullopt;
    auto food = std::move(read.front());
    read.pop_front();
    return food;
  };
}

}  // namespace tarebowl::transfer
