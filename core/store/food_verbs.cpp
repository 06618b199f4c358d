// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/food_json.h"
#include "core/store/food_rules.h"
#include "core/store/fresh_id.h"
#include "core/store/made_food_rows.h"
#include "core/store/verbs.h"
#include "core/store/write.h"

#include <cmath>

namespace tarebowl::store {

namespace {

std::string_view wordsFor(food::FoodProblem problem) {
  switch (problem) {
    case food::FoodProblem::NoCode:
      return "a food needs a code";
    case food::FoodProblem::NoName:
      return "a food needs a name";
    case food::FoodProblem::UnitMassNotAboveZero:
      return "the mass of one piece must be above 0 g";
    case food::FoodProblem::ScaleStepNotAboveZero:
      return "the scale step must be above 0 g";
    case food::FoodProblem::EdibleFractionOutOfRange:
      return "the edible fraction must be above 0 and at most 1";
    case food::FoodProblem::PriceNegative:
      return "the price must not be negative";
  }
  return "the food is not sound";
}

bool isAmount(double value) {
  return std::isfinite(value) && value >= 0.0;
}

std::string_view wordsFor(food::RecipeProblem problem) {
  switch (problem) {
    case food::RecipeProblem::NoParts:
      return "a recipe needs a part";
    case food::RecipeProblem::MassNotAboveZero:
      return "each part of a recipe weighs more than 0 g";
    case food::RecipeProblem::YieldNotAboveZero:
    case food::RecipeProblem::FactorOutOfRange:
    case food::RecipeProblem::MoreThanFood:
      break;
  }
  return "the yield must be above 0 and every retention factor from 0 to 2";
}

void refuseUnsoundRecipe(const Collection::Inner& inner, const FoodRecord& record) {
  if (!record.recipe) return;
  if (record.cooking) refuse(inner, "a food is cooked from one food or mixed from several, not both");
  if (const auto problem = food::problemWith(*record.recipe)) refuse(inner, std::string(wordsFor(*problem)));
}

void refuseUnsound(const Collection::Inner& inner, const FoodRecord& record) {
  if (const auto problem = food::problemWith(record.food)) refuse(inner, std::string(wordsFor(*problem)));
  for (const food::Override& over : record.overrides) {
    if (over.reason.empty()) refuse(inner, "an override needs a reason");
    const double sd = over.sd ? over.sd->value() : 0.0;
    if (!isAmount(over.amount.value()) || !isAmount(sd))
      refuse(inner, "an override must be a number of 0 or more");
  }
  if (record.cooking && food::problemWith(*record.cooking))
    refuse(inner, "the yield must be above 0 and every retention factor from 0 to 2");
  refuseUnsoundRecipe(inner, record);
  for (const auto& [nutrient, months] : record.plan)
    if (months < 1) refuse(inner, "a sampling plan counts whole months from 1 on");
}

/// The food as it is now; a conflict where it is not the one that was seen. mine: empty for a removal.
StoredFood seen(Collection::Inner& inner, FoodId food, int revision, const std::string& mine) {
  auto current = loadFood(inner, static_cast<long long>(food));
  if (!current) throw ConflictError(inner.file(), "the food", mine, "");
  if (current->revision == revision) return std::move(*current);
  throw ConflictError(inner.file(), "the food " + current->record.food.code, mine, toJson(current->record));
}

long long countOf(Collection::Inner& inner, const std::string& query, long long id) {
  long long count = 0;
  inner.sql() << "SELECT COUNT(*) FROM " + query, soci::use(id), soci::into(count);
  return count;
}

}  // namespace

Written addFood(Collection& collection, const FoodRecord& record, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) -> Written {
    refuseUnsound(inner, record);
    const long long id = freshFoodId(inner);
    refuseTakenCode(inner, record.food.code, id);
    insertFood(inner, id, 1, record);
    refuseCycle(inner, record.food.code);
    return {id, 1, store::record(inner, {0, author, "add food", "food", id, {}, toJson(record)})};
  });
}

Written editFood(Collection& collection, FoodId food, int seenRevision, const FoodRecord& record,
                 const Author& author) {
  return write(collection, [&](Collection::Inner& inner) -> Written {
    refuseUnsound(inner, record);
    const std::string after = toJson(record);
    const StoredFood before = seen(inner, food, seenRevision, after);
    const auto id = static_cast<long long>(food);
    refuseTakenCode(inner, record.food.code, id);
    updateFood(inner, id, seenRevision + 1, record);
    refuseCycle(inner, record.food.code);
    return {id, seenRevision + 1,
            store::record(inner, {0, author, "edit food", "food", id, toJson(before.record), after})};
  });
}

Written removeFood(Collection& collection, FoodId food, int seenRevision, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) -> Written {
    const StoredFood before = seen(inner, food, seenRevision, "");
    const auto id = static_cast<long long>(food);
    if (countOf(inner, "sample WHERE food_id = :id", id) > 0)
      refuse(inner, before.record.food.code + " has samples; remove them first");
    if (countOf(inner, "fed_food WHERE food_id = :id", id) > 0)
      refuse(inner, before.record.food.code + " was fed: it stays, out of stock");
    if (countOf(inner, "food_lot JOIN food ON food.code = food_lot.food WHERE food.id = :id", id) > 0)
      refuse(inner, before.record.food.code + " has lots; remove them first");
    if (const std::string made = foodMadeFrom(inner, id); !made.empty())
      refuse(inner, made + " is made from " + before.record.food.code);
    deleteFood(inner, id);
    return {id, 0, store::record(inner, {0, author, "remove food", "food", id, toJson(before.record), {}})};
  });
}

}  // namespace tarebowl::store
