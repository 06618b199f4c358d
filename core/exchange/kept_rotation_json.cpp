// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/kept_rotation_json.h"

#include "core/diet/diet_words.h"
#include "core/exchange/field_reader.h"
#include "core/exchange/food_reader.h"
#include "core/exchange/json_document.h"
#include "core/exchange/numbers.h"
#include "core/exchange/origin_json.h"
#include "core/exchange/rotation_json.h"
#include "core/exchange/rule_writer.h"
#include "core/exchange/text_file.h"

#include <nlohmann/json.hpp>

#include <array>
#include <limits>

namespace tarebowl::exchange {

namespace {

using diet::KeptRotation;
using diet::PlannedCell;
using diet::Reached;

constexpr std::array<std::string_view, 18> kKeys{
    "format", "invented", "diet",  "version", "from",      "until", "planned_from", "seed", "as_eaten",
    "rules",  "period",   "daily", "wishes",  "objective", "who",   "at",           "note", "cells"};
constexpr std::array<std::string_view, 6> kCellKeys{"day", "food", "purpose", "meal", "g", "locked"};

/// Whole numbers up to here are numbers of JSON.
constexpr double kLargestSeed = 9007199254740991.0;

NumberRange anyNumber() {
  return {.least = std::numeric_limits<double>::lowest(), .inWords = "a number"};
}

Reached reachedOf(const JsonReader& reader) {
  return {reader.member("value").number(anyNumber()), reader.member("bound").number(anyNumber())};
}

PlannedCell cellOf(const JsonReader& reader, int days) {
  reader.refuseSlips(kCellKeys);
  PlannedCell cell{.day = reader.member("day").wholeNumber(1, days) - 1,
                   .food = reader.member("food").nonEmptyText(),
                   .meal = textOf(reader, "meal"),
                   .amount = quantity::Grams(reader.member("g").number(massRange())),
                   .locked = flagOf(reader, "locked")};
  if (const auto purpose = reader.find("purpose")) cell.purpose = wordOf<diet::Purpose>(*purpose);
  return cell;
}

/// Days of a period that is no longer than a rotation may be.
void readPeriod(const JsonReader& root, KeptRotation& rotation) {
  rotation.from = dateOf(root.member("from"));
  const JsonReader until = root.member("until");
  rotation.until = dateOf(until);
  if (rotation.days() < 1 || rotation.days() > kMostRotationDays) until.refuse("the last of 1 to 28 days");
  rotation.plannedFrom = dateOf(root, "planned_from").value_or(rotation.from);
}

Json reachedJson(const Reached& reached) {
  return {{"value", toJson(reached.value)}, {"bound", toJson(reached.bound)}};
}

Json cellJson(const PlannedCell& cell) {
  Json json{{"day", cell.day + 1}, {"food", cell.food}};
  if (cell.purpose != diet::Purpose::Bowl) json["purpose"] = animal::symbolOf(cell.purpose);
  putText(json, "meal", cell.meal);
  json["g"] = toJson(cell.amount.value());
  if (cell.locked) json["locked"] = true;
  return json;
}

}  // namespace

KeptRotationFile parseKeptRotation(std::string_view text, const std::string& fileName) {
  const nlohmann::json document = parseDocument(text, fileName);
  const JsonReader root(document, fileName);
  root.refuseSlips(kKeys);
  const JsonReader format = root.member("format");
  if (format.text() != kKeptRotationFormat) format.refuse(inQuotes(kKeptRotationFormat));
  KeptRotationFile file{.rotation = {}, .invented = flagOf(root, "invented")};
  KeptRotation& rotation = file.rotation;
  rotation.diet = root.member("diet").nonEmptyText();
  rotation.version = root.member("version").wholeNumber(1, std::numeric_limits<int>::max());
  readPeriod(root, rotation);
  if (const auto seed =
          numberOf(root, "seed", {.most = kLargestSeed, .inWords = "a whole number, 0 or more"}))
    rotation.seed = static_cast<long long>(*seed);
  rotation.asEaten = flagOf(root, "as_eaten");
  rotation.rules = root.member("rules").asJson();
  rotation.period = reachedOf(root.member("period"));
  rotation.daily = reachedOf(root.member("daily"));
  rotation.wishes = reachedOf(root.member("wishes"));
  rotation.objective = reachedOf(root.member("objective"));
  rotation.who = textOf(root, "who");
  rotation.at = root.member("at").nonEmptyText();
  rotation.note = textOf(root, "note");
  rotation.cells =
      listOf(root, "cells", [&](const JsonReader& cell) { return cellOf(cell, rotation.days()); });
  return file;
}

KeptRotationFile readKeptRotation(const std::filesystem::path& file) {
  return parseKeptRotation(readText(file), file.string());
}

std::string writeKeptRotation(const KeptRotationFile& file) {
  const KeptRotation& rotation = file.rotation;
  Json json{{"format", kKeptRotationFormat}};
  if (file.invented) json["invented"] = true;
  json["diet"] = rotation.diet;
  json["version"] = rotation.version;
  json["from"] = quantity::isoDate(rotation.from);
  json["until"] = quantity::isoDate(rotation.until);
  json["planned_from"] = quantity::isoDate(rotation.plannedFrom);
  json["seed"] = rotation.seed;
  if (rotation.asEaten) json["as_eaten"] = true;
  json["rules"] = Json::parse(rotation.rules);
  json["period"] = reachedJson(rotation.period);
  json["daily"] = reachedJson(rotation.daily);
  json["wishes"] = reachedJson(rotation.wishes);
  json["objective"] = reachedJson(rotation.objective);
  putText(json, "who", rotation.who);
  json["at"] = rotation.at;
  putText(json, "note", rotation.note);
  json["cells"] = writeList(rotation.cells, cellJson);
  return toText(json);
}

}  // namespace tarebowl::exchange
