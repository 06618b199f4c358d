// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/component_list.h"

#include "core/quantity/unit.h"
#include "core/store/row_query.h"

#include <string>

namespace tarebowl::store {

std::int64_t ComponentList::numberOf(soci::session& sql, std::string_view tagname, std::string_view unit) {
  const std::string name(tagname);
  const std::string inUnit(unit);
  long long number = 0;
  sql << "SELECT id FROM component WHERE tagname = :name", soci::use(name), soci::into(number);
  if (sql.got_data()) return number;
  sql << "SELECT COALESCE(MAX(id), 0) + 1 FROM component", soci::into(number);
  sql << "INSERT INTO component (id, tagname, unit) VALUES (:id, :name, :unit)", soci::use(number),
      soci::use(name), soci::use(inUnit);
  return number;
}

std::int64_t ComponentList::numberOf(soci::session& sql, food::NutrientId nutrient) {
  if (const auto known = numbers_.find(nutrient.index()); known != numbers_.end()) return known->second;
  const food::Nutrient& meant = food::describe(nutrient);
  const std::int64_t number = numberOf(sql, meant.tagname, quantity::symbolOf(meant.unit));
  numbers_.emplace(nutrient.index(), number);
  return number;
}

void ComponentList::learn(Connection& connection) {
  if (nutrients_.empty()) readAll(connection);
}

/// All of them at once: whoever reads one value reads many.
std::optional<food::NutrientId> ComponentList::nutrientOf(Connection& connection, std::int64_t number) {
  if (!nutrients_.contains(number)) readAll(connection);
  const auto known = nutrients_.find(number);
  return known == nutrients_.end() ? std::nullopt : known->second;
}

void ComponentList::readAll(Connection& connection) {
  std::int64_t id = 0;
  std::string tagname;
  std::string unit;
  RowQuery rows(connection, "SELECT id, tagname, unit FROM component");
  while (rows.next(id, tagname, unit)) {
    std::optional<food::NutrientId> nutrient = food::findByTagname(tagname);
    // A unit that is not ours would make numbers of another size: better unknown than wrong.
    if (nutrient && quantity::symbolOf(food::describe(*nutrient).unit) != unit) nutrient.reset();
    nutrients_.insert_or_assign(id, nutrient);
  }
}

void ComponentList::forget() {
  numbers_.clear();
  nutrients_.clear();
}

}  // namespace tarebowl::store
