// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/diet_words.h"
#include "core/exchange/diet_json.h"
#include "core/exchange/rule_writer.h"
#include "core/exchange/safety_json.h"

namespace tarebowl::exchange {

namespace {

using diet::DietVersion;

Json writeLine(const diet::DietLine& line) {
  Json json{{"food", line.food}, {"g", toJson(line.amount.value())}};
  if (line.min > quantity::Grams(0)) json["min_g"] = toJson(line.min.value());
  if (line.max) json["max_g"] = toJson(line.max->value());
  if (line.locked) json["locked"] = true;
  if (line.purpose != diet::Purpose::Bowl) json["purpose"] = animal::symbolOf(line.purpose);
  putText(json, "meal", line.meal);
  putText(json, "preparation", line.preparation);
  return json;
}

Json writeAllowance(const diet::Allowance& allowance) {
  Json json{{"food", allowance.food},
            {"low_g", toJson(allowance.low.value())},
            {"high_g", toJson(allowance.high.value())},
            {"purpose", animal::symbolOf(allowance.purpose)}};
  putText(json, "note", allowance.note);
  return json;
}

Json writeBound(const diet::ChangedBound& bound) {
  Json json{{"rule", bound.rule}};
  put(json, "min", bound.min);
  put(json, "max", bound.max);
  putText(json, "reason", bound.reason);
  return json;
}

Json writeStep(const diet::VersionStep& step) {
  Json json{{"to", animal::symbolOf(step.to)}, {"who", step.who}, {"at", step.at}};
  putText(json, "reason", step.reason);
  return json;
}

template <class List, class Write>
void putList(Json& json, const char* key, const List& list, Write write) {
  if (!list.empty()) json[key] = writeList(list, write);
}

void putWishes(const DietVersion& version, Json& json) {
  json["objective"] = {{"kind", animal::symbolOf(version.objective.kind)}};
  if (version.objective.nutrient)
    json["objective"]["nutrient"] = food::describe(*version.objective.nutrient).tagname;
  put(json, "confidence", version.confidence);
  json["energy_method"] = food::symbolOf(version.energyMethod);
  json["whole_steps"] = version.wholeSteps;
}

Json writeVersion(const DietVersion& version) {
  Json json{{"number", version.number}, {"state", animal::symbolOf(version.state)}};
  if (version.madeFrom) json["made_from"] = *version.madeFrom;
  if (!version.profile.code.empty())
    json["profile"] = {{"code", version.profile.code}, {"version", version.profile.version}};
  putWishes(version, json);
  json["lines"] = writeList(version.lines, writeLine);
  putList(json, "allowances", version.allowances, writeAllowance);
  putList(json, "changed_bounds", version.changedBounds, writeBound);
  putList(json, "shares", version.shares, writeShare);
  putList(json, "choices", version.choices, writeChoice);
  putList(json, "lifted", version.lifted, writeLifted);
  if (version.fedFrom) json["fed_from"] = quantity::isoDate(*version.fedFrom);
  if (version.phaseInDays > 0) json["phase_in_days"] = version.phaseInDays;
  putText(json, "note", version.note);
  putList(json, "steps", version.steps, writeStep);
  return json;
}

}  // namespace

std::string writeDiet(const DietFile& file) {
  Json json{{"format", kDietFormat},
            {"code", file.diet.code},
            {"name", file.diet.name},
            {"group", file.diet.group}};
  putText(json, "note", file.diet.note);
  if (file.diet.invented) json["invented"] = true;
  json["versions"] = writeList(file.versions, writeVersion);
  return toText(json);
}

}  // namespace tarebowl::exchange
