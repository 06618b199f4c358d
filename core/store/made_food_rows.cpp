// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/made_food_rows.h"

#include "core/store/food_rows.h"
#include "core/store/row_query.h"
#include "core/store/write.h"

#include <optional>

namespace tarebowl::store {

namespace {

long long partOf(Collection::Inner& inner, const std::string& code, const std::string& toDoWhat) {
  const auto part = foodWithCode(inner, code);
  if (!part) refuse(inner, "there is no food " + code + " to " + toDoWhat + " from");
  return *part;
}

std::vector<food::Retention> loadRetentions(Collection::Inner& inner, long long id) {
  long long component = 0;
  double factor = 0.0;
  RowQuery rows(inner.connection,
                "SELECT component_id, factor FROM food_retention WHERE food_id = :id ORDER BY component_id",
                id);
  std::vector<food::Retention> retentions;
  while (rows.next(component, factor))
    if (const auto nutrient = inner.components.nutrientOf(inner.connection, component))
      retentions.push_back({*nutrient, factor});
  return retentions;
}

void insertRetentions(Collection::Inner& inner, long long id,
                      const std::vector<food::Retention>& retentions) {
  for (const auto& [nutrient, factor] : retentions) {
    const long long component = inner.components.numberOf(inner.sql(), nutrient);
    inner.sql()
        << "INSERT INTO food_retention (food_id, component_id, factor) VALUES (:id, :component, :factor)",
        soci::use(id), soci::use(component), soci::use(factor);
  }
}

std::optional<food::Cooking> loadCooking(Collection::Inner& inner, long long id) {
  food::Cooking cooking;
  RowQuery rows(
      inner.connection,
      "SELECT raw.code, food_cooking.mass_yield, food_cooking.source FROM food_cooking JOIN food AS raw "
      "ON raw.id = food_cooking.raw_food_id WHERE food_cooking.food_id = :id",
      id);
  const bool isCooked = rows.next(cooking.rawCode, cooking.massYield, cooking.source);
  if (isCooked || inner.connection.gathers()) cooking.retentions = loadRetentions(inner, id);
  if (!isCooked) return std::nullopt;
  return cooking;
}

std::optional<food::Recipe> loadRecipe(Collection::Inner& inner, long long id) {
  food::Recipe recipe;
  RowQuery own(inner.connection, "SELECT mass_yield, source FROM food_recipe WHERE food_id = :id", id);
  if (!own.next(recipe.massYield, recipe.source)) return std::nullopt;
  std::string code;
  double grams = 0.0;
  RowQuery rows(inner.connection,
                "SELECT part.code, mass_g FROM food_recipe_part JOIN food AS part ON part.id = part_food_id "
                "WHERE food_id = :id ORDER BY place",
                id);
  while (rows.next(code, grams)) recipe.parts.push_back({code, quantity::Grams(grams)});
  recipe.retentions = loadRetentions(inner, id);
  return recipe;
}

void insertCooking(Collection::Inner& inner, long long id, const food::Cooking& cooking) {
  const long long raw = partOf(inner, cooking.rawCode, "cook");
  inner.sql() << "INSERT INTO food_cooking (food_id, raw_food_id, mass_yield, source) "
                 "VALUES (:id, :raw, :yield, :source)",
      soci::use(id), soci::use(raw), soci::use(cooking.massYield), soci::use(cooking.source);
  insertRetentions(inner, id, cooking.retentions);
}

void insertRecipe(Collection::Inner& inner, long long id, const food::Recipe& recipe) {
  inner.sql() << "INSERT INTO food_recipe (food_id, mass_yield, source) VALUES (:id, :yield, :source)",
      soci::use(id), soci::use(recipe.massYield), soci::use(recipe.source);
  int place = 0;
  for (const food::RecipePart& part : recipe.parts) {
    ++place;
    const long long food = partOf(inner, part.code, "mix");
    const double grams = part.mass.value();
    inner.sql() << "INSERT INTO food_recipe_part (food_id, place, part_food_id, mass_g) "
                   "VALUES (:id, :place, :part, :grams)",
        soci::use(id), soci::use(place), soci::use(food), soci::use(grams);
  }
  insertRetentions(inner, id, recipe.retentions);
}

}  // namespace

void loadMaking(Collection::Inner& inner, long long id, FoodRecord& record) {
  record.cooking = loadCooking(inner, id);
  record.recipe = loadRecipe(inner, id);
}

void insertMaking(Collection::Inner& inner, long long id, const FoodRecord& record) {
  if (record.cooking) insertCooking(inner, id, *record.cooking);
  if (record.recipe) insertRecipe(inner, id, *record.recipe);
}

void deleteMaking(Collection::Inner& inner, long long id) {
  for (const char* table : {"food_cooking", "food_recipe_part", "food_recipe", "food_retention"})
    inner.sql() << std::string("DELETE FROM ") + table + " WHERE food_id = :id", soci::use(id);
}

std::vector<std::string> madeFrom(Collection::Inner& inner, const std::string& code) {
  std::string part;
  soci::statement rows =
      (inner.sql().prepare
           << "SELECT part.code FROM food JOIN food_cooking c ON c.food_id = food.id JOIN food AS part ON "
              "part.id = c.raw_food_id WHERE food.code = :cooked UNION ALL SELECT part.code FROM food JOIN "
              "food_recipe_part r ON r.food_id = food.id JOIN food AS part ON part.id = r.part_food_id "
              "WHERE food.code = :mixed",
       soci::use(code, "cooked"), soci::use(code, "mixed"), soci::into(part));
  rows.execute();
  std::vector<std::string> parts;
  while (rows.fetch()) parts.push_back(part);
  return parts;
}

std::string foodMadeFrom(Collection::Inner& inner, long long id) {
  std::string code;
  inner.sql() << "SELECT code FROM food WHERE id IN (SELECT food_id FROM food_cooking WHERE raw_food_id = "
                 ":raw UNION SELECT food_id FROM food_recipe_part WHERE part_food_id = :part) ORDER BY code",
      soci::use(id, "raw"), soci::use(id, "part"), soci::into(code);
  return code;
}

}  // namespace tarebowl::store
