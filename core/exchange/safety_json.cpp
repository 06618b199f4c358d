// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/safety_json.h"

#include "core/animal/animal_words.h"
#include "core/exchange/origin_json.h"
#include "core/food/folding.h"

#include <nlohmann/json.hpp>

#include <array>

namespace tarebowl::exchange {

namespace {

using Json = nlohmann::ordered_json;
using Texts = std::vector<std::string>;

constexpr std::array<std::string_view, 7> kExclusionKeys{"id",     "group",      "food",         "reason",
                                                         "source", "provenance", "model_species"};
constexpr std::array<std::string_view, 11> kCautionKeys{"id",     "words",      "groups",       "forms",
                                                        "taxa",   "severity",   "reason",       "advice",
                                                        "source", "provenance", "model_species"};
constexpr std::array<std::string_view, 5> kLiftedKeys{"ban", "food", "reason", "who", "on"};

std::string optionalText(const JsonReader& reader, std::string_view key) {
  const auto value = reader.find(key);
  return value ? value->text() : std::string();
}

/// As names of foods are compared.
Texts foldedTexts(const JsonReader& reader, std::string_view key) {
  Texts list;
  if (const auto value = reader.find(key))
    for (const std::string& text : value->texts()) list.push_back(food::folded(text));
  return list;
}

void putTexts(Json& object, const char* key, const Texts& texts) {
  if (!texts.empty()) object[key] = texts;
}

Json toJson(const animal::Exclusion& exclusion) {
  return writeExclusion(exclusion);
}

Json toJson(const animal::FoodCaution& caution) {
  Json json{{"id", caution.id}};
  putTexts(json, "words", caution.words);
  putTexts(json, "groups", caution.groups);
  putTexts(json, "forms", caution.forms);
  putTexts(json, "taxa", caution.taxa);
  json["severity"] = animal::symbolOf(caution.severity);
  putText(json, "reason", caution.reason);
  putText(json, "advice", caution.advice);
  writeOrigin(caution.origin, json);
  return json;
}

Json toJson(const diet::LiftedBan& lifted) {
  return writeLifted(lifted);
}

template <class Entry>
void writeList(const std::vector<Entry>& entries, const char* key, Json& json) {
  for (const Entry& entry : entries) json[key].push_back(toJson(entry));
}

}  // namespace

animal::Exclusion readExclusion(const JsonReader& reader) {
  reader.refuseSlips(kExclusionKeys);
  animal::Exclusion exclusion;
  exclusion.id = reader.member("id").nonEmptyText();
  exclusion.group = optionalText(reader, "group");
  exclusion.food = optionalText(reader, "food");
  if (exclusion.group.empty() == exclusion.food.empty()) reader.complain("either a group or a food");
  exclusion.reason = optionalText(reader, "reason");
  exclusion.origin = readOrigin(reader);
  return exclusion;
}

Json writeExclusion(const animal::Exclusion& exclusion) {
  Json json{{"id", exclusion.id}};
  putText(json, "group", exclusion.group);
  putText(json, "food", exclusion.food);
  putText(json, "reason", exclusion.reason);
  writeOrigin(exclusion.origin, json);
  return json;
}

animal::FoodCaution readCaution(const JsonReader& reader) {
  reader.refuseSlips(kCautionKeys);
  animal::FoodCaution caution;
  caution.id = reader.member("id").nonEmptyText();
  caution.words = foldedTexts(reader, "words");
  caution.groups = foldedTexts(reader, "groups");
  caution.forms = foldedTexts(reader, "forms");
  if (const auto taxa = reader.find("taxa")) caution.taxa = taxa->texts();
  caution.severity =
      reader.member("severity")
          .word(animal::parseWord<animal::CautionSeverity>, animal::Words<animal::CautionSeverity>::kWords);
  caution.reason = reader.member("reason").nonEmptyText();
  caution.advice = optionalText(reader, "advice");
  caution.origin = readOrigin(reader);
  return caution;
}

diet::LiftedBan readLifted(const JsonReader& reader) {
  reader.refuseSlips(kLiftedKeys);
  diet::LiftedBan lifted;
  lifted.ban = reader.member("ban").nonEmptyText();
  lifted.food = optionalText(reader, "food");
  lifted.reason = reader.member("reason").nonEmptyText();
  lifted.who = optionalText(reader, "who");
  lifted.on = optionalText(reader, "on");
  return lifted;
}

Json writeLifted(const diet::LiftedBan& lifted) {
  Json json{{"ban", lifted.ban}};
  putText(json, "food", lifted.food);
  json["reason"] = lifted.reason;
  putText(json, "who", lifted.who);
  putText(json, "on", lifted.on);
  return json;
}

void writeSafety(const diet::BalanceProblem& problem, Json& json) {
  writeList(problem.exclusions, "exclusions", json);
  writeList(problem.cautions, "house_cautions", json);
  writeList(problem.lifted, "lifted", json);
}

Json findingsToJson(const diet::BalanceProblem& problem, const diet::Diet& diet) {
  Json list = Json::array();
  for (const diet::FoodFinding& finding : diet::findingsOn(problem, diet)) {
    Json& json = list.emplace_back(Json{{"food", problem.foods[finding.food].id}, {"caution", finding.ban}});
    json["severity"] = animal::symbolOf(finding.severity);
    json["forbidden"] = finding.forbids();
    json["animal_known"] = finding.inForce;
    putText(json, "lifted", finding.lifted);
    putText(json, "reason", finding.reason);
    putText(json, "advice", finding.advice);
    writeOrigin(finding.origin, json);
  }
  return list;
}

}  // namespace tarebowl::exchange
