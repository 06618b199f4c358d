// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/food_reader.h"

#include "core/exchange/problem_words.h"

#include <fmt/format.h>

#include <array>
#include <functional>
#include <utility>

namespace tarebowl::exchange {

namespace {

using food::NutrientId;
using quantity::AsFedContent;
using quantity::Grams;

constexpr std::array<std::string_view, 19> kFoodKeys{
    "cautions",       "id",      "from",       "name",         "form",
    "preparation",    "group",   "invented",   "source",       "per_100_g",
    "sd_per_100_g",   "min_g",   "max_g",      "scale_step_g", "cost_per_kg",
    "eaten_fraction", "sources", "qualifiers", "n_samples"};

/// 100 g of food hold at most 100 g of anything; for energy the limit lies above pure fat (9.4 kcal/g gross),
/// so that kilojoules written as kilocalories are noticed.
constexpr double kMostEnergyPer100g = 1000.0;
constexpr double kMostProximatesPer100g = 105.0;
constexpr double kSmallestScaleStepGrams = 1e-6;

NumberRange contentRange(NutrientId id) {
  const food::Nutrient& nutrient = food::describe(id);
  const auto perGram = quantity::conversionFactor(quantity::Unit::Gram, nutrient.unit);
  NumberRange range;
  range.most = perGram ? 100.0 * *perGram : kMostEnergyPer100g;
  range.tooMuchInWords = fmt::format("at most {} {} in 100 g", range.most, quantity::symbolOf(nutrient.unit));
  return range;
}

food::Composition readAmounts(const JsonReader& amounts) {
  food::Composition composition;
  for (const auto& [tagname, amount] : amounts.members()) {
    const NutrientId nutrient = readTagname(tagname, amount);
    if (composition.find(nutrient) != nullptr) {
      amount.complain(fmt::format("{} once, found it under two names", food::describe(nutrient).tagname));
    }
    composition.set(nutrient, {.amount = AsFedContent(amount.number(contentRange(nutrient)))});
  }
  return composition;
}

/// Adds what an object like {TAGNAME: …} says about the values already read.
void readDetails(const JsonReader& food, std::string_view key, food::Composition& composition,
                 const std::function<void(NutrientId, food::NutrientValue&, const JsonReader&)>& apply) {
  const auto details = food.find(key);
  if (!details) return;
  for (const auto& [tagname, detail] : details->members()) {
    const NutrientId nutrient = readTagname(tagname, detail);
    const food::NutrientValue* known = composition.find(nutrient);
    if (known == nullptr)
      detail.complain(fmt::format("a nutrient that per_100_g states, found {}", inQuotes(tagname)));
    food::NutrientValue value = *known;
    apply(nutrient, value, detail);
    composition.set(nutrient, std::move(value));
  }
}

void readSource(const JsonReader& food, food::Composition& composition) {
  const auto source = food.find("source");
  if (!source) return;
  const std::string text = source->text();
  for (const NutrientId nutrient : composition.knownNutrients()) {
    food::NutrientValue value = *composition.find(nutrient);
    value.source = text;
    composition.set(nutrient, std::move(value));
  }
}

void checkProximates(const JsonReader& amounts, const food::Composition& composition) {
  using namespace food::nutrients;
  double sum = 0.0;
  for (const NutrientId nutrient : {water(), protein(), fat(), ash(), carbohydrateByDifference()}) {
    sum += composition.amountPer100g(nutrient).value_or(0.0);
  }
  if (sum <= kMostProximatesPer100g + 1e-9) return;
  amounts.complain(
      fmt::format("WATER, PROCNT, FAT, ASH and CHOCDF of at most {:g} g in 100 g together, found {:.6g}",
                  kMostProximatesPer100g, sum));
}

food::Composition readComposition(const JsonReader& reader) {
  const JsonReader amounts = reader.member("per_100_g");
  food::Composition composition = readAmounts(amounts);
  checkProximates(amounts, composition);
  readSource(reader, composition);
  readDetails(
      reader, "sources", composition,
      [](NutrientId, food::NutrientValue& value, const JsonReader& detail) { value.source = detail.text(); });
  readDetails(reader, "sd_per_100_g", composition,
              [](NutrientId id, food::NutrientValue& value, const JsonReader& detail) {
                value.sd = AsFedContent(detail.number(contentRange(id)));
              });
  readDetails(reader, "qualifiers", composition,
              [](NutrientId, food::NutrientValue& value, const JsonReader& detail) {
                value.qualifier = detail.word(parseQualifier, kQualifierWords);
              });
  readDetails(reader, "n_samples", composition,
              [](NutrientId, food::NutrientValue& value, const JsonReader& detail) {
                value.sampleCount = detail.wholeNumber(1, 1'000'000);
              });
  return composition;
}

void readLimits(const JsonReader& reader, diet::DietFood& food) {
  if (const auto min = reader.find("min_g")) food.min = Grams(min->number(massRange()));
  if (const auto max = reader.find("max_g")) {
    food.max = Grams(max->number(massRange()));
    if (*food.max < food.min) max->refuse(fmt::format("at least min_g, {}", food.min.value()));
  }
  if (const auto step = reader.find("scale_step_g")) {
    food.scaleStep = Grams(step->number({.least = kSmallestScaleStepGrams,
                                         .most = kLargestMassGrams,
                                         .inWords = "a number above 0 (0.000001 or more)",
                                         .tooMuchInWords = massRange().tooMuchInWords}));
  }
  if (const auto cost = reader.find("cost_per_kg")) {
    food.costPerKg = cost->number({.most = 1e9, .tooMuchInWords = "a number of at most 1e9"});
  }
  if (const auto eaten = reader.find("eaten_fraction")) {
    food.eatenFraction = eaten->number({.most = 1.0, .inWords = "a number from 0 to 1"});
  }
}

diet::DietFood takeFrom(const FoodSource& collection, const JsonReader& reader, const std::string& id) {
  const auto from = reader.find("from");
  const std::string code = from ? from->nonEmptyText() : id;
  const JsonReader place = from.value_or(reader.member("id"));
  if (!collection)
    place.complain("per_100_g beside it, or a collection to take the food from (--collection FILE)");
  auto food = collection(code);
  if (!food)
    place.complain(
        fmt::format("per_100_g, or the code of a food in the collection, found {}", inQuotes(code)));
  return std::move(*food);
}

}  // namespace

NumberRange massRange() {
  return {.most = kLargestMassGrams, .tooMuchInWords = fmt::format("at most {:g} g", kLargestMassGrams)};
}

NutrientId readTagname(std::string_view tagname, const JsonReader& reader) {
  if (const auto nutrient = food::findByTagname(tagname)) return *nutrient;
  reader.complain(fmt::format("a FAO/INFOODS tagname that is known here, found {}; did you mean {}?",
                              inQuotes(tagname), food::nearestTagname(tagname.substr(0, 64))));
}

diet::DietFood readFood(const JsonReader& reader, const FoodSource& collection) {
  reader.refuseSlips(kFoodKeys);
  const std::string id = reader.member("id").nonEmptyText();
  const bool isTaken = !reader.find("per_100_g") && (collection || reader.find("from"));
  diet::DietFood food = isTaken ? takeFrom(collection, reader, id) : diet::DietFood{};
  food.id = id;
  if (const auto name = reader.find("name")) food.name = name->nonEmptyText();
  if (food.name.empty()) food.name = food.id;
  if (const auto form = reader.find("form")) food.form = form->text();
  if (const auto preparation = reader.find("preparation")) food.preparation = preparation->text();
  if (const auto group = reader.find("group")) food.group = group->text();
  if (const auto invented = reader.find("invented")) food.invented = invented->flag();
  if (const auto cautions = reader.find("cautions")) food.cautions = cautions->texts();
  if (!isTaken) food.composition = readComposition(reader);
  readLimits(reader, food);
  return food;
}

}  // namespace tarebowl::exchange
