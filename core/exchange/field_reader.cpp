// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/field_reader.h"

#include "core/exchange/food_reader.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/problem_words.h"

#include <fmt/format.h>

#include <array>

namespace tarebowl::exchange {

namespace {

constexpr std::array<std::string_view, 2> kObjectiveKeys{"kind", "nutrient"};

}  // namespace

std::string textOf(const JsonReader& reader, const char* key) {
  const auto found = reader.find(key);
  return found ? found->text() : std::string();
}

bool flagOf(const JsonReader& reader, const char* key) {
  const auto found = reader.find(key);
  return found && found->flag();
}

std::optional<double> numberOf(const JsonReader& reader, const char* key, const NumberRange& range) {
  const auto found = reader.find(key);
  return found ? std::optional(found->number(range)) : std::nullopt;
}

quantity::Date dateOf(const JsonReader& reader) {
  const auto date = quantity::parseDate(reader.text());
  if (!date) reader.refuse("a day as YYYY-MM-DD");
  return *date;
}

std::optional<quantity::Date> dateOf(const JsonReader& reader, const char* key) {
  const auto found = reader.find(key);
  return found ? std::optional(dateOf(*found)) : std::nullopt;
}

diet::Objective readObjective(const JsonReader& reader) {
  using Kind = diet::Objective::Kind;
  reader.refuseSlips(kObjectiveKeys);
  diet::Objective objective;
  objective.kind = wordOf<Kind>(reader.member("kind"));
  if (objective.kind != Kind::Lowest && objective.kind != Kind::Highest) return objective;
  const JsonReader nutrient = reader.member("nutrient");
  objective.nutrient = readTagname(nutrient.nonEmptyText(), nutrient);
  return objective;
}

double readConfidence(const JsonReader& reader) {
  return reader.number({.least = 0.5,
                        .most = 1.0,
                        .leastIncluded = false,
                        .mostIncluded = false,
                        .inWords = "a number above 0.5 and below 1"});
}

std::vector<JsonReader> entriesOf(const JsonReader& reader, const char* key) {
  const auto list = reader.find(key);
  if (!list) return {};
  std::vector<JsonReader> entries = list->elements();
  if (entries.size() > kMostEntries)
    list->complain(fmt::format("at most {} entries, found {}", kMostEntries, entries.size()));
  return entries;
}

}  // namespace tarebowl::exchange
