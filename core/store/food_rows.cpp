// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/food_rows.h"

#include "core/quantity/unit.h"
#include "core/store/column_types.h"
#include "core/store/made_food_rows.h"
#include "core/store/row_query.h"

#include <fmt/format.h>

namespace tarebowl::store {

namespace {

using quantity::AsFedContent;
using quantity::Grams;

/// A food's own row, in the types that SQL speaks.
struct FoodRow {
  long long id = 0;
  int revision = 0;
  std::string code;
  std::string name;
  std::string form;
  std::string group;
  std::optional<double> unitMass;
  double scaleStep = 1.0;
  double edibleFraction = 1.0;
  std::optional<double> price;
  int inStock = 1;
  std::string note;
  int invented = 0;

  [[nodiscard]] food::Food food() const {
    food::Food food{.code = code, .name = name, .form = form, .group = group};
    if (unitMass) food.unitMass = Grams(*unitMass);
    food.scaleStep = Grams(scaleStep);
    food.edibleFraction = edibleFraction;
    food.pricePerKg = price;
    food.inStock = inStock != 0;
    food.note = note;
    food.invented = invented != 0;
    return food;
  }
};

constexpr const char* kFoodColumns =
    "SELECT id, revision, code, name, form, food_group, unit_mass_g, scale_step_g, edible_fraction, "
    "price_per_kg, in_stock, note, invented FROM food";

FoodRow rowOf(long long id, int revision, const food::Food& food) {
  FoodRow row{id,
              revision,
              food.code,
              food.name,
              food.form,
              food.group,
              {},
              food.scaleStep.value(),
              food.edibleFraction,
              food.pricePerKg,
              food.inStock ? 1 : 0,
              food.note,
              food.invented ? 1 : 0};
  if (food.unitMass) row.unitMass = food.unitMass->value();
  return row;
}

bool nextOf(RowQuery& rows, FoodRow& row) {
  return rows.next(row.id, row.revision, row.code, row.name, row.form, row.group, row.unitMass, row.scaleStep,
                   row.edibleFraction, row.price, row.inStock, row.note, row.invented);
}

/// The row in which a column that tells foods apart has this value; false where there is none.
template <class Value>
bool readRow(Collection::Inner& inner, std::string_view column, const Value& value, FoodRow& row) {
  RowQuery rows(inner.connection, fmt::format("{} WHERE {} = :value", kFoodColumns, column), value);
  return nextOf(rows, row);
}

void loadCautions(Collection::Inner& inner, long long id, food::Food& food) {
  RowQuery rows(inner.connection, "SELECT caution FROM food_caution WHERE food_id = :id ORDER BY place", id);
  for (std::string caution; rows.next(caution);) food.cautions.push_back(caution);
}

void loadOverrides(Collection::Inner& inner, long long id, FoodRecord& record) {
  long long component = 0;
  AsFedContent amount;
  std::optional<AsFedContent> sd;
  std::string reason;
  RowQuery rows(inner.connection,
                "SELECT component_id, amount, sd, reason FROM food_override WHERE food_id = :id "
                "ORDER BY component_id",
                id);
  while (rows.next(component, amount, sd, reason))
    if (const auto nutrient = inner.components.nutrientOf(inner.connection, component))
      record.overrides.push_back({*nutrient, amount, sd, reason});
}

void loadPlan(Collection::Inner& inner, long long id, FoodRecord& record) {
  long long component = 0;
  int months = 0;
  RowQuery rows(inner.connection,
                "SELECT component_id, every_months FROM food_plan WHERE food_id = :id ORDER BY component_id",
                id);
  while (rows.next(component, months))
    if (const auto nutrient = inner.components.nutrientOf(inner.connection, component))
      record.plan.push_back({*nutrient, months});
}

void insertCautions(Collection::Inner& inner, long long id, const food::Food& food) {
  int place = 0;
  for (const std::string& caution : food.cautions) {
    ++place;
    inner.sql() << "INSERT INTO food_caution (food_id, place, caution) VALUES (:id, :place, :caution)",
        soci::use(id), soci::use(place), soci::use(caution);
  }
}

void insertOverrides(Collection::Inner& inner, long long id, const FoodRecord& record) {
  for (const food::Override& over : record.overrides) {
    const long long component = inner.components.numberOf(inner.sql(), over.nutrient);
    const double amount = over.amount.value();
    std::optional<double> sd;
    if (over.sd) sd = over.sd->value();
    inner.sql() << "INSERT INTO food_override (food_id, component_id, amount, sd, reason) "
                   "VALUES (:id, :component, :amount, :sd, :reason)",
        soci::use(id), soci::use(component), soci::use(amount), soci::use(sd), soci::use(over.reason);
  }
}

void insertPlan(Collection::Inner& inner, long long id, const FoodRecord& record) {
  for (const auto& [nutrient, months] : record.plan) {
    const long long component = inner.components.numberOf(inner.sql(), nutrient);
    inner.sql()
        << "INSERT INTO food_plan (food_id, component_id, every_months) VALUES (:id, :component, :months)",
        soci::use(id), soci::use(component), soci::use(months);
  }
}

void insertParts(Collection::Inner& inner, long long id, const FoodRecord& record) {
  insertCautions(inner, id, record.food);
  insertOverrides(inner, id, record);
  insertMaking(inner, id, record);
  insertPlan(inner, id, record);
}

void deleteParts(Collection::Inner& inner, long long id) {
  for (const char* table : {"food_caution", "food_override", "food_plan"})
    inner.sql() << std::string("DELETE FROM ") + table + " WHERE food_id = :id", soci::use(id);
  deleteMaking(inner, id);
}

}  // namespace

long long nextId(soci::session& sql, const std::string& table) {
  long long id = 0;
  sql << "SELECT COALESCE(MAX(id), 0) + 1 FROM " + table, soci::into(id);
  return id;
}

std::optional<StoredFood> loadFood(Collection::Inner& inner, long long id) {
  FoodRow row;
  const AskedTogether together(inner.connection);
  const bool isThere = readRow(inner, "id", id, row);
  if (!isThere && !together.lacksAnswers()) return std::nullopt;
  StoredFood stored{FoodId{row.id}, row.revision, {.food = row.food()}};
  loadCautions(inner, id, stored.record.food);
  loadOverrides(inner, id, stored.record);
  loadMaking(inner, id, stored.record);
  loadPlan(inner, id, stored.record);
  together.end();
  return isThere ? std::optional(std::move(stored)) : std::nullopt;
}

std::vector<std::pair<long long, food::Food>> foodRows(Collection::Inner& inner) {
  FoodRow row;
  RowQuery rows(inner.connection, fmt::format("{} ORDER BY id", kFoodColumns));
  std::vector<std::pair<long long, food::Food>> foods;
  while (nextOf(rows, row)) foods.emplace_back(row.id, row.food());
  return foods;
}

std::vector<std::pair<long long, food::Food>> foodRowsOf(Collection::Inner& inner, const CodeList& codes) {
  FoodRow row;
  RowQuery rows(inner.connection, fmt::format("{} WHERE code IN ({})", kFoodColumns, codes.places()), codes);
  std::vector<std::pair<long long, food::Food>> foods;
  while (nextOf(rows, row)) foods.emplace_back(row.id, row.food());
  return foods;
}

std::optional<std::pair<long long, food::Food>> foodRow(Collection::Inner& inner, const std::string& code) {
  FoodRow row;
  if (!readRow(inner, "code", code, row)) return std::nullopt;
  return std::pair(row.id, row.food());
}

std::optional<long long> foodWithCode(Collection::Inner& inner, const std::string& code) {
  long long id = 0;
  RowQuery rows(inner.connection, "SELECT id FROM food WHERE code = :code", code);
  return rows.next(id) ? std::optional(id) : std::nullopt;
}

void insertFood(Collection::Inner& inner, long long id, int revision, const FoodRecord& record) {
  const FoodRow row = rowOf(id, revision, record.food);
  inner.sql()
      << "INSERT INTO food (id, revision, code, name, form, food_group, unit_mass_g, scale_step_g, "
         "edible_fraction, price_per_kg, in_stock, note, invented) VALUES (:id, :revision, :code, :name, "
         ":form, :food_group, :unit_mass, :scale_step, :edible, :price, :in_stock, :note, :invented)",
      soci::use(row.id), soci::use(row.revision), soci::use(row.code), soci::use(row.name),
      soci::use(row.form), soci::use(row.group), soci::use(row.unitMass), soci::use(row.scaleStep),
      soci::use(row.edibleFraction), soci::use(row.price), soci::use(row.inStock), soci::use(row.note),
      soci::use(row.invented);
  insertParts(inner, id, record);
}

void updateFood(Collection::Inner& inner, long long id, int revision, const FoodRecord& record) {
  const FoodRow row = rowOf(id, revision, record.food);
  inner.sql() << "UPDATE food SET revision = :revision, code = :code, name = :name, form = :form, "
                 "food_group = :food_group, unit_mass_g = :unit_mass, scale_step_g = :scale_step, "
                 "edible_fraction = :edible, price_per_kg = :price, in_stock = :in_stock, note = :note, "
                 "invented = :invented WHERE id = :id",
      soci::use(row.revision), soci::use(row.code), soci::use(row.name), soci::use(row.form),
      soci::use(row.group), soci::use(row.unitMass), soci::use(row.scaleStep), soci::use(row.edibleFraction),
      soci::use(row.price), soci::use(row.inStock), soci::use(row.note), soci::use(row.invented),
      soci::use(row.id);
  deleteParts(inner, id);
  insertParts(inner, id, record);
}

void deleteFood(Collection::Inner& inner, long long id) {
  deleteParts(inner, id);
  inner.sql() << "DELETE FROM food WHERE id = :id", soci::use(id);
}

}  // namespace tarebowl::store
