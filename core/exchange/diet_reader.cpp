// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/diet_words.h"
#include "core/exchange/diet_json.h"
#include "core/exchange/field_reader.h"
#include "core/exchange/food_reader.h"
#include "core/exchange/json_document.h"
#include "core/exchange/problem_words.h"
#include "core/exchange/rule_reader.h"
#include "core/exchange/safety_json.h"
#include "core/exchange/text_file.h"

#include <nlohmann/json.hpp>

#include <array>

namespace tarebowl::exchange {

namespace {

using diet::DietVersion;

constexpr std::array<std::string_view, 7> kDietKeys{"format", "code",     "name",    "group",
                                                    "note",   "invented", "versions"};
constexpr std::array<std::string_view, 18> kVersionKeys{
    "number",        "state",       "made_from", "profile",       "objective",      "confidence",
    "energy_method", "whole_steps", "lines",     "allowances",    "changed_bounds", "shares",
    "choices",       "lifted",      "fed_from",  "phase_in_days", "note",           "steps"};
constexpr std::array<std::string_view, 8> kLineKeys{"food",   "g",       "min_g", "max_g",
                                                    "locked", "purpose", "meal",  "preparation"};
constexpr std::array<std::string_view, 5> kAllowanceKeys{"food", "low_g", "high_g", "purpose", "note"};
constexpr std::array<std::string_view, 4> kBoundKeys{"rule", "min", "max", "reason"};
constexpr std::array<std::string_view, 4> kStepKeys{"to", "who", "at", "reason"};
constexpr int kMostVersions = 1'000'000;
constexpr int kMostDays = 10'000;

quantity::Grams gramsOf(const JsonReader& reader) {
  return quantity::Grams(reader.number(massRange()));
}

diet::Purpose purposeOf(const JsonReader& reader, diet::Purpose otherwise) {
  const auto word = reader.find("purpose");
  return word ? wordOf<diet::Purpose>(*word) : otherwise;
}

diet::DietLine readLine(const JsonReader& reader) {
  reader.refuseSlips(kLineKeys);
  diet::DietLine line{.food = reader.member("food").nonEmptyText(), .amount = gramsOf(reader.member("g"))};
  if (const auto least = reader.find("min_g")) line.min = gramsOf(*least);
  if (const auto most = reader.find("max_g")) line.max = gramsOf(*most);
  line.locked = flagOf(reader, "locked");
  line.purpose = purposeOf(reader, diet::Purpose::Bowl);
  line.meal = textOf(reader, "meal");
  line.preparation = textOf(reader, "preparation");
  return line;
}

diet::Allowance readAllowance(const JsonReader& reader) {
  reader.refuseSlips(kAllowanceKeys);
  return {.food = reader.member("food").nonEmptyText(),
          .low = gramsOf(reader.member("low_g")),
          .high = gramsOf(reader.member("high_g")),
          .purpose = purposeOf(reader, diet::Purpose::Treat),
          .note = textOf(reader, "note")};
}

diet::ChangedBound readBound(const JsonReader& reader) {
  reader.refuseSlips(kBoundKeys);
  return {.rule = reader.member("rule").nonEmptyText(),
          .min = numberOf(reader, "min", {}),
          .max = numberOf(reader, "max", {}),
          .reason = textOf(reader, "reason")};
}

diet::VersionStep readStep(const JsonReader& reader) {
  reader.refuseSlips(kStepKeys);
  const JsonReader at = reader.member("at");
  if (!quantity::dayOfTime(at.text())) at.refuse("a time as YYYY-MM-DDThh:mm:ssZ");
  return {wordOf<diet::VersionState>(reader.member("to")), reader.member("who").nonEmptyText(), at.text(),
          textOf(reader, "reason")};
}

animal::ProfileReference readProfileReference(const JsonReader& reader) {
  return {reader.member("code").nonEmptyText(), reader.member("version").wholeNumber(1, kMostVersions)};
}

void readWishes(const JsonReader& reader, DietVersion& version) {
  if (const auto objective = reader.find("objective")) version.objective = readObjective(*objective);
  if (const auto confidence = reader.find("confidence")) version.confidence = readConfidence(*confidence);
  if (const auto method = reader.find("energy_method"))
    version.energyMethod = method->word(food::parseEnergyMethod, kEnergyMethodWords);
  if (const auto whole = reader.find("whole_steps")) version.wholeSteps = whole->flag();
}

DietVersion readVersion(const JsonReader& reader) {
  reader.refuseSlips(kVersionKeys);
  DietVersion version{.number = reader.member("number").wholeNumber(1, kMostVersions),
                      .state = wordOf<diet::VersionState>(reader.member("state"))};
  if (const auto origin = reader.find("made_from")) version.madeFrom = origin->wholeNumber(1, kMostVersions);
  if (const auto profile = reader.find("profile")) version.profile = readProfileReference(*profile);
  readWishes(reader, version);
  version.lines = listOf(reader, "lines", readLine);
  version.allowances = listOf(reader, "allowances", readAllowance);
  version.changedBounds = listOf(reader, "changed_bounds", readBound);
  version.shares = listOf(reader, "shares", readShare);
  version.choices = listOf(reader, "choices", readChoice);
  version.lifted = listOf(reader, "lifted", readLifted);
  version.fedFrom = dateOf(reader, "fed_from");
  if (const auto days = reader.find("phase_in_days")) version.phaseInDays = days->wholeNumber(0, kMostDays);
  version.note = textOf(reader, "note");
  version.steps = listOf(reader, "steps", readStep);
  return version;
}

}  // namespace

DietFile parseDiet(std::string_view text, const std::string& fileName) {
  const nlohmann::json document = parseDocument(text, fileName);
  const JsonReader root(document, fileName);
  root.refuseSlips(kDietKeys);
  const JsonReader format = root.member("format");
  if (format.text() != kDietFormat) format.refuse(inQuotes(kDietFormat));
  return {.diet = {.code = root.member("code").nonEmptyText(),
                   .name = root.member("name").nonEmptyText(),
                   .group = root.member("group").nonEmptyText(),
                   .note = textOf(root, "note"),
                   .invented = flagOf(root, "invented")},
          .versions = listOf(root, "versions", readVersion)};
}

DietFile readDiet(const std::filesystem::path& file) {
  return parseDiet(readText(file), file.string());
}

}  // namespace tarebowl::exchange
