// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/rule_reader.h"

#include "core/exchange/food_reader.h"
#include "core/exchange/origin_json.h"
#include "core/exchange/problem_words.h"
#include "core/food/vitamin_units.h"

#include <fmt/format.h>

#include <array>

namespace tarebowl::exchange {

namespace {

constexpr std::array<std::string_view, 11> kTargetKeys{"id",     "nutrient",   "min",          "max",
                                                       "unit",   "basis",      "hard",         "weight",
                                                       "source", "provenance", "model_species"};
constexpr std::array<std::string_view, 10> kRatioKeys{
    "id", "of", "to", "min", "max", "hard", "weight", "source", "provenance", "model_species"};
constexpr std::array<std::string_view, 10> kShareKeys{
    "id", "group", "min", "max", "basis", "hard", "weight", "source", "provenance", "model_species"};
constexpr std::array<std::string_view, 4> kChoiceKeys{"group", "at_least", "at_most", "min_g_each"};

constexpr double kLargestBound = 1e12;
constexpr double kLargestWeight = 1e9;
constexpr int kMostFoodsOfAChoice = 100'000;

/// min and max of a target, ratio or share; without either it would say nothing.
template <class Rule>
void readBounds(const JsonReader& reader, const NumberRange& range, Rule& rule) {
  const auto min = reader.find("min");
  const auto max = reader.find("max");
  if (!min && !max) reader.complain("min or max, found neither");
  if (min) rule.min = min->number(range);
  if (max) rule.max = max->number(range);
  if (min && max && *rule.min > *rule.max) min->refuse(fmt::format("at most max, {}", *rule.max));
}

template <class Rule>
void readUrgency(const JsonReader& reader, Rule& rule) {
  if (const auto hard = reader.find("hard")) rule.hard = hard->flag();
  if (const auto weight = reader.find("weight")) {
    rule.weight = weight->number(
        {.most = kLargestWeight, .tooMuchInWords = fmt::format("at most {:g}", kLargestWeight)});
  }
}

food::NutrientId readNutrient(const JsonReader& reader) {
  return readTagname(reader.nonEmptyText(), reader);
}

NumberRange boundRange() {
  return {.most = kLargestBound, .tooMuchInWords = fmt::format("at most {:g}", kLargestBound)};
}

/// A unit in which this nutrient can be stated at all.
quantity::Unit readUnit(const JsonReader& reader, food::NutrientId nutrient) {
  const quantity::Unit unit = reader.word(quantity::parseUnit, kUnitWords);
  const food::Nutrient& known = food::describe(nutrient);
  if (food::toOwnUnitFactor(nutrient, unit)) return unit;
  const bool isEnergy = quantity::dimensionOf(known.unit) == quantity::Dimension::Energy;
  const bool hasActivity = food::toOwnUnitFactor(nutrient, quantity::Unit::InternationalUnit).has_value();
  reader.refuse(fmt::format("a unit of {}: {}{}", known.tagname, isEnergy ? "kcal or kJ" : "g, mg or ug",
                            hasActivity ? " (or IU)" : ""));
}

}  // namespace

animal::Target readTarget(const JsonReader& reader) {
  reader.refuseSlips(kTargetKeys);
  std::string id = reader.member("id").nonEmptyText();
  const food::NutrientId nutrient = readNutrient(reader.member("nutrient"));
  animal::Target target{.id = std::move(id),
                        .nutrient = nutrient,
                        .min = {},
                        .max = {},
                        .unit = readUnit(reader.member("unit"), nutrient),
                        .basis = reader.member("basis").word(quantity::parseBasis, kBasisWords),
                        .origin = readOrigin(reader)};
  readBounds(reader, boundRange(), target);
  readUrgency(reader, target);
  return target;
}

animal::RatioTarget readRatio(const JsonReader& reader) {
  reader.refuseSlips(kRatioKeys);
  animal::RatioTarget ratio{.id = reader.member("id").nonEmptyText(),
                            .of = readNutrient(reader.member("of")),
                            .to = readNutrient(reader.member("to")),
                            .min = {},
                            .max = {},
                            .origin = readOrigin(reader)};
  readBounds(reader, boundRange(), ratio);
  readUrgency(reader, ratio);
  return ratio;
}

diet::ShareRule readShare(const JsonReader& reader) {
  reader.refuseSlips(kShareKeys);
  diet::ShareRule share;
  share.id = reader.member("id").nonEmptyText();
  share.group = reader.member("group").nonEmptyText();
  share.basis = reader.member("basis").word(parseShareBasis, kShareBasisWords);
  share.origin = readOrigin(reader);
  readBounds(reader, {.most = 1.0, .inWords = "a number from 0 to 1"}, share);
  readUrgency(reader, share);
  return share;
}

diet::ChoiceRule readChoice(const JsonReader& reader) {
  reader.refuseSlips(kChoiceKeys);
  diet::ChoiceRule choice;
  choice.group = reader.member("group").nonEmptyText();
  if (const auto least = reader.find("at_least")) choice.atLeast = least->wholeNumber(0, kMostFoodsOfAChoice);
  if (const auto most = reader.find("at_most")) {
    choice.atMost = most->wholeNumber(0, kMostFoodsOfAChoice);
    if (*choice.atMost < choice.atLeast) most->refuse(fmt::format("at least at_least, {}", choice.atLeast));
  }
  if (const auto each = reader.find("min_g_each"))
    choice.minEach = quantity::Grams(each->number(massRange()));
  return choice;
}

}  // namespace tarebowl::exchange
