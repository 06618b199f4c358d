// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/rule_writer.h"

namespace tarebowl::exchange {

void put(Json& object, const char* key, std::optional<double> number) {
  if (number) object[key] = toJson(*number);
}

namespace {

template <class Rule>
void writeBoundsAndUrgency(const Rule& rule, Json& json) {
  put(json, "min", rule.min);
  put(json, "max", rule.max);
  json["hard"] = rule.hard;
  json["weight"] = toJson(rule.weight);
}

}  // namespace

Json writeTarget(const animal::Target& target) {
  Json json{{"id", target.id}, {"nutrient", food::describe(target.nutrient).tagname}};
  json["unit"] = quantity::symbolOf(target.unit);
  json["basis"] = quantity::symbolOf(target.basis);
  writeBoundsAndUrgency(target, json);
  writeOrigin(target.origin, json);
  return json;
}

Json writeRatio(const animal::RatioTarget& ratio) {
  Json json{{"id", ratio.id}};
  json["of"] = food::describe(ratio.of).tagname;
  json["to"] = food::describe(ratio.to).tagname;
  writeBoundsAndUrgency(ratio, json);
  writeOrigin(ratio.origin, json);
  return json;
}

Json writeShare(const animal::ShareRule& share) {
  Json json{{"id", share.id}, {"group", share.group}};
  json["basis"] = quantity::symbolOf(share.basis);
  writeBoundsAndUrgency(share, json);
  writeOrigin(share.origin, json);
  return json;
}

Json writeChoice(const animal::ChoiceRule& choice) {
  Json json{{"group", choice.group}};
  json["at_least"] = choice.atLeast;
  if (choice.atMost) json["at_most"] = *choice.atMost;
  json["min_g_each"] = toJson(choice.minEach.value());
  return json;
}

}  // namespace tarebowl::exchange
