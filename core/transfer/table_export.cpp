// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/table_export.h"

#include "core/store/food_reading.h"

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

}  // namespace

exchange::ExportSource foodsOf(const store::Collection& collection) {
  return [&collection, foods = store::listFoods(collection),
          next = std::size_t{0}]() mutable -> std::optional<exchange::ExportedFood> {
    while (next < foods.size()) {
      const food::FoodLine& line = foods[next++];
      if (auto known = store::knowFood(collection, store::FoodId(line.id)))
        return exported(collection, line, *known);
    }
    return std::nullopt;
  };
}

}  // namespace tarebowl::transfer
