// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/food_json.h"

#include <nlohmann/json.hpp>

namespace tarebowl::store {

namespace {

using Json = nlohmann::ordered_json;
using quantity::AsFedContent;
using quantity::Grams;

template <class T>
void put(Json& json, const char* key, const std::optional<T>& value) {
  if (value) json[key] = *value;
}

template <class T>
std::optional<T> get(const Json& json, const char* key) {
  const auto place = json.find(key);
  return place == json.end() ? std::nullopt : std::optional(place->get<T>());
}

std::optional<double> numberOf(const std::optional<AsFedContent>& content) {
  return content ? std::optional(content->value()) : std::nullopt;
}

/// Applies `read` to each entry of a list like {TAGNAME: …} whose nutrient is known.
template <class Read>
void forEachNutrient(const Json& json, const char* key, Read read) {
  const auto list = json.find(key);
  if (list == json.end()) return;
  for (const auto& [tagname, entry] : list->items())
    if (const auto nutrient = food::findByTagname(tagname)) read(*nutrient, entry);
}

const std::string& tagnameOf(food::NutrientId nutrient) {
  return food::describe(nutrient).tagname;
}

Json cookingToJson(const food::Cooking& cooking) {
  Json json{{"from", cooking.rawCode}, {"mass_yield", cooking.massYield}, {"source", cooking.source}};
  for (const auto& [nutrient, factor] : cooking.retentions) json["retention"][tagnameOf(nutrient)] = factor;
  return json;
}

food::Cooking cookingFromJson(const Json& json) {
  food::Cooking cooking{json.at("from"), json.at("mass_yield"), {}, json.at("source")};
  forEachNutrient(json, "retention", [&](food::NutrientId nutrient, const Json& factor) {
    cooking.retentions.push_back({nutrient, factor.get<double>()});
  });
  return cooking;
}

Json recipeToJson(const food::Recipe& recipe) {
  Json json{{"parts", Json::array()}, {"mass_yield", recipe.massYield}, {"source", recipe.source}};
  for (const food::RecipePart& part : recipe.parts)
    json["parts"].push_back({{"food", part.code}, {"g", part.mass.value()}});
  for (const auto& [nutrient, factor] : recipe.retentions) json["retention"][tagnameOf(nutrient)] = factor;
  return json;
}

food::Recipe recipeFromJson(const Json& json) {
  food::Recipe recipe{.massYield = json.at("mass_yield"), .source = json.at("source")};
  for (const Json& part : json.at("parts")) recipe.parts.push_back({part.at("food"), Grams(part.at("g"))});
  forEachNutrient(json, "retention", [&](food::NutrientId nutrient, const Json& factor) {
    recipe.retentions.push_back({nutrient, factor.get<double>()});
  });
  return recipe;
}

Json ownFacts(const food::Food& food) {
  Json json{{"code", food.code}, {"name", food.name}, {"form", food.form}, {"group", food.group}};
  put(json, "unit_mass_g", food.unitMass ? std::optional(food.unitMass->value()) : std::nullopt);
  json["scale_step_g"] = food.scaleStep.value();
  json["edible_fraction"] = food.edibleFraction;
  put(json, "price_per_kg", food.pricePerKg);
  json["in_stock"] = food.inStock;
  json["cautions"] = food.cautions;
  json["note"] = food.note;
  json["invented"] = food.invented;
  return json;
}

food::Food ownFactsFrom(const Json& json) {
  food::Food food{
      .code = json.at("code"), .name = json.at("name"), .form = json.at("form"), .group = json.at("group")};
  if (const auto mass = get<double>(json, "unit_mass_g")) food.unitMass = Grams(*mass);
  food.scaleStep = Grams(json.at("scale_step_g"));
  food.edibleFraction = json.at("edible_fraction");
  food.pricePerKg = get<double>(json, "price_per_kg");
  food.inStock = json.at("in_stock");
  food.cautions = json.at("cautions").get<std::vector<std::string>>();
  food.note = json.at("note");
  food.invented = json.at("invented");
  return food;
}

Json valueToJson(Collection::Inner& inner, const ValueRow& row) {
  std::string tagname;
  std::string unit;
  inner.sql() << "SELECT tagname, unit FROM component WHERE id = :id", soci::use(row.component),
      soci::into(tagname), soci::into(unit);
  Json json{{"component", tagname},
            {"unit", unit},
            {"amount", row.amount},
            {"basis", row.basis},
            {"qualifier", row.qualifier}};
  put(json, "sd", row.sd);
  put(json, "n", row.count);
  put(json, "reported_amount", row.reportedAmount);
  put(json, "reported_unit", row.reportedUnit);
  put(json, "reported_per", row.reportedPer);
  return json;
}

ValueRow valueFromJson(Collection::Inner& inner, const Json& json) {
  ValueRow row{.component = inner.components.numberOf(inner.sql(), json.at("component").get<std::string>(),
                                                      json.at("unit").get<std::string>()),
               .amount = json.at("amount"),
               .basis = json.at("basis"),
               .qualifier = json.at("qualifier")};
  row.sd = get<double>(json, "sd");
  row.count = get<int>(json, "n");
  row.reportedAmount = get<double>(json, "reported_amount");
  row.reportedUnit = get<std::string>(json, "reported_unit");
  row.reportedPer = get<double>(json, "reported_per");
  return row;
}

}  // namespace

std::string toJson(const FoodRecord& record) {
  Json json = ownFacts(record.food);
  for (const food::Override& over : record.overrides) {
    Json& entry = json["overrides"][tagnameOf(over.nutrient)];
    entry["amount"] = over.amount.value();
    put(entry, "sd", numberOf(over.sd));
    entry["reason"] = over.reason;
  }
  if (record.cooking) json["cooking"] = cookingToJson(*record.cooking);
  if (record.recipe) json["recipe"] = recipeToJson(*record.recipe);
  for (const auto& [nutrient, months] : record.plan) json["plan_months"][tagnameOf(nutrient)] = months;
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

FoodRecord foodFromJson(const std::string& text) {
  const Json json = Json::parse(text);
  FoodRecord record{.food = ownFactsFrom(json)};
  forEachNutrient(json, "overrides", [&](food::NutrientId nutrient, const Json& entry) {
    food::Override over{nutrient, AsFedContent(entry.at("amount")), {}, entry.at("reason")};
    if (const auto sd = get<double>(entry, "sd")) over.sd = AsFedContent(*sd);
    record.overrides.push_back(std::move(over));
  });
  if (const auto cooking = json.find("cooking"); cooking != json.end())
    record.cooking = cookingFromJson(*cooking);
  if (const auto recipe = json.find("recipe"); recipe != json.end()) record.recipe = recipeFromJson(*recipe);
  forEachNutrient(json, "plan_months", [&](food::NutrientId nutrient, const Json& months) {
    record.plan.push_back({nutrient, months.get<int>()});
  });
  return record;
}

std::string toJson(Collection::Inner& inner, const SampleRows& rows) {
  const food::Sample& sample = rows.sample;
  Json json{{"food", rows.food},
            {"origin", food::symbolOf(sample.origin)},
            {"source", sample.source},
            {"source_code", sample.sourceCode}};
  put(json, "date", sample.date ? std::optional(quantity::isoDate(*sample.date)) : std::nullopt);
  json["lab"] = sample.lab;
  json["method"] = sample.method;
  json["batch"] = sample.batch;
  json["note"] = sample.note;
  put(json, "excluded", sample.excluded);
  json["values"] = Json::array();
  for (const ValueRow& row : rows.values) json["values"].push_back(valueToJson(inner, row));
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

SampleRows sampleFromJson(Collection::Inner& inner, const std::string& text) {
  const Json json = Json::parse(text);
  SampleRows rows{.food = json.at("food")};
  food::Sample& sample = rows.sample;
  sample.origin = food::parseSampleOrigin(json.at("origin").get<std::string>()).value();
  sample.source = json.at("source");
  sample.sourceCode = json.at("source_code");
  if (const auto date = get<std::string>(json, "date")) sample.date = quantity::parseDate(*date);
  sample.lab = json.at("lab");
  sample.method = json.at("method");
  sample.batch = json.at("batch");
  sample.note = json.at("note");
  sample.excluded = get<std::string>(json, "excluded");
  for (const Json& value : json.at("values")) rows.values.push_back(valueFromJson(inner, value));
  return rows;
}

}  // namespace tarebowl::store
