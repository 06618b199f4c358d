// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/food_reading.h"

#include "core/food/sums.h"
#include "core/store/food_rows.h"
#include "core/store/row_query.h"

#include <algorithm>

namespace tarebowl::store {

namespace {

/// A chain of made-from is short; the verbs refuse a cycle, and a file from elsewhere must not hang us.
constexpr int kLongestChain = 20;

std::vector<food::Sample> bare(const std::vector<StoredSample>& stored) {
  std::vector<food::Sample> samples;
  samples.reserve(stored.size());
  for (const StoredSample& sample : stored) samples.push_back(sample.sample);
  return samples;
}

std::optional<KnownFood> know(Collection::Inner& inner, long long id, const food::DerivationRule& rule,
                              int chain);

/// What a food that goes into another is stated to be made of; nothing where it is not known.
std::optional<food::Composition> compositionOf(Collection::Inner& inner, const std::string& code,
                                               const food::DerivationRule& rule, int chain) {
  const auto id = foodWithCode(inner, code);
  const auto part = id && chain < kLongestChain ? know(inner, *id, rule, chain + 1) : std::nullopt;
  return part ? std::optional(part->derivation.stated()) : std::nullopt;
}

/// Adds what was worked out of nutrients that nobody measured in the food itself.
void addWorkedOut(KnownFood& known, const food::Composition& composition, food::DerivedBy by) {
  const food::Composition measured = known.derivation.composition();
  for (const food::NutrientId nutrient : composition.knownNutrients()) {
    if (measured.find(nutrient) != nullptr) continue;
    const food::NutrientValue& workedOut = *composition.find(nutrient);
    std::erase_if(known.derivation.values, [&](const auto& value) { return value.nutrient == nutrient; });
    known.derivation.values.push_back({.nutrient = nutrient, .value = workedOut, .by = by});
  }
  std::ranges::sort(known.derivation.values, {}, &food::DerivedValue::nutrient);
}

void addCooked(Collection::Inner& inner, KnownFood& known, const food::DerivationRule& rule, int chain) {
  const food::Cooking& cooking = *known.food.record.cooking;
  const auto raw = compositionOf(inner, cooking.rawCode, rule, chain);
  if (!raw) return;
  const auto cooked = food::cook(*raw, cooking);
  if (const auto* problem = std::get_if<food::CookingProblem>(&cooked))
    known.cookingProblem = *problem;
  else
    addWorkedOut(known, std::get<food::Composition>(cooked), food::DerivedBy::Cooking);
}

void addMixed(Collection::Inner& inner, KnownFood& known, const food::DerivationRule& rule, int chain) {
  const food::Recipe& recipe = *known.food.record.recipe;
  std::vector<food::Composition> parts;
  for (const food::RecipePart& part : recipe.parts)
    parts.push_back(compositionOf(inner, part.code, rule, chain).value_or(food::Composition{}));
  const auto mixed = food::mix(recipe, parts);
  if (const auto* problem = std::get_if<food::RecipeProblem>(&mixed))
    known.recipeProblem = *problem;
  else
    addWorkedOut(known, std::get<food::Composition>(mixed), food::DerivedBy::Recipe);
}

std::optional<KnownFood> know(Collection::Inner& inner, long long id, const food::DerivationRule& rule,
                              int chain) {
  std::optional<StoredFood> stored;
  std::vector<SampleRows> samples;
  {
    const AskedTogether together(inner.connection);
    inner.components.learn(inner.connection);
    stored = loadFood(inner, id);
    samples = samplesOfFood(inner, id);
    together.end();
  }
  if (!stored) return std::nullopt;
  KnownFood known{.food = std::move(*stored)};
  for (const SampleRows& sample : samples) known.samples.push_back(toStored(inner, sample));
  known.derivation = food::derive(bare(known.samples), known.food.record.overrides, rule);
  if (known.food.record.cooking) addCooked(inner, known, rule, chain);
  if (known.food.record.recipe) addMixed(inner, known, rule, chain);
  food::addSums(known.derivation);
  known.composition = known.derivation.composition();
  return known;
}

}  // namespace

std::vector<food::FoodLine> listFoods(const Collection& collection) {
  return guarded(collection.file(), [&] {
    food::FoodLine line;
    long long id = 0;
    RowQuery rows(collection.inner().connection,
                  "SELECT id, code, name, form, food_group FROM food ORDER BY id");
    std::vector<food::FoodLine> lines;
    while (rows.next(id, line.code, line.name, line.form, line.group)) {
      line.id = id;
      lines.push_back(line);
    }
    return lines;
  });
}

std::size_t countFoods(const Collection& collection) {
  return guarded(collection.file(), [&] {
    long long count = 0;
    collection.inner().sql() << "SELECT COUNT(*) FROM food", soci::into(count);
    return static_cast<std::size_t>(count);
  });
}

std::optional<StoredFood> findFood(const Collection& collection, FoodId food) {
  return guarded(collection.file(),
                 [&] { return loadFood(collection.inner(), static_cast<long long>(food)); });
}

std::optional<StoredFood> findFood(const Collection& collection, const std::string& code) {
  return guarded(collection.file(), [&] {
    const auto id = foodWithCode(collection.inner(), code);
    return id ? loadFood(collection.inner(), *id) : std::nullopt;
  });
}

std::vector<StoredSample> samplesOf(const Collection& collection, FoodId food) {
  return guarded(collection.file(), [&] {
    std::vector<StoredSample> samples;
    for (const SampleRows& rows : samplesOfFood(collection.inner(), static_cast<long long>(food)))
      samples.push_back(toStored(collection.inner(), rows));
    return samples;
  });
}

std::vector<OtherValue> otherValuesOf(const Collection& collection, FoodId food) {
  return guarded(collection.file(), [&] {
    Collection::Inner& inner = collection.inner();
    const auto id = static_cast<long long>(food);
    OtherValue value;
    ValueRow row;
    RowQuery rows(
        inner.connection,
        "SELECT v.component_id, c.tagname, c.unit, v.amount, v.basis, v.qualifier, v.sd, "
        "v.determinations, s.source FROM sample s JOIN sample_value v ON v.sample_id = s.id JOIN "
        "component c ON c.id = v.component_id WHERE s.food_id = :food AND s.excluded IS NULL ORDER BY "
        "c.tagname, s.id",
        id);
    std::vector<OtherValue> others;
    while (rows.next(row.component, value.name, value.unit, row.amount, row.basis, row.qualifier, row.sd,
                     row.count, value.source)) {
      const auto amount = contentOf(row.basis, row.amount);
      if (!amount || inner.components.nutrientOf(inner.connection, row.component)) continue;
      value.amount = *amount;
      value.sd = row.sd;
      value.count = row.count;
      value.qualifier = qualifierOf(row.qualifier);
      others.push_back(value);
    }
    return others;
  });
}

std::optional<KnownFood> knowFood(const Collection& collection, FoodId food,
                                  const food::DerivationRule& rule) {
  return guarded(collection.file(),
                 [&] { return know(collection.inner(), static_cast<long long>(food), rule, 0); });
}

diet::DietFood asDietFood(const KnownFood& known) {
  const food::Food& food = known.food.record.food;
  diet::DietFood made;
  made.id = food.code;
  made.name = food.name;
  made.form = food.form;
  made.group = food.group;
  made.composition = known.composition;
  made.scaleStep = food.unitMass.value_or(food.scaleStep);
  made.costPerKg = food.pricePerKg;
  made.invented = food.invented;
  made.cautions = food.cautions;
  return made;
}

std::optional<diet::DietFood> dietFood(const Collection& collection, const std::string& code,
                                       const food::DerivationRule& rule) {
  return guarded(collection.file(), [&]() -> std::optional<diet::DietFood> {
    const auto id = foodWithCode(collection.inner(), code);
    const auto known = id ? know(collection.inner(), *id, rule, 0) : std::nullopt;
    return known ? std::optional(asDietFood(*known)) : std::nullopt;
  });
}

}  // namespace tarebowl::store
