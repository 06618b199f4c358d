// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/starter_profiles.h"

#include "core/animal/animal_words.h"
#include "resources/embedded.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <stdexcept>

namespace tarebowl::animal {

namespace {

using Json = nlohmann::json;

std::string text(const Json& entry, const char* key) {
  return entry.value(key, std::string());
}

template <class Number>
std::optional<Number> optional(const Json& entry, const char* key) {
  const auto place = entry.find(key);
  return place == entry.end() ? std::nullopt : std::optional(place->template get<Number>());
}

template <class Value>
Value known(const std::optional<Value>& value, const std::string& word) {
  if (!value) throw std::runtime_error("profiles: unknown word " + word);
  return *value;
}

food::NutrientId nutrient(const Json& entry, const char* key) {
  const auto tagname = entry.at(key).get<std::string>();
  return known(food::findByTagname(tagname), tagname);
}

quantity::Basis basis(const Json& entry) {
  const auto word = entry.at("basis").get<std::string>();
  return known(quantity::parseBasis(word), word);
}

TargetOrigin origin(const Json& entry) {
  const std::string word = text(entry, "provenance");
  return {text(entry, "source"), known(parseWord<Provenance>(word), word), text(entry, "model_species")};
}

template <class Rule>
void readBounds(const Json& entry, Rule& rule) {
  rule.min = optional<double>(entry, "min");
  rule.max = optional<double>(entry, "max");
  rule.hard = entry.value("hard", false);
  rule.weight = entry.value("weight", 1.0);
}

ProfileTarget target(const Json& entry) {
  const auto unit = entry.at("unit").get<std::string>();
  ProfileTarget rule{.target = {.id = entry.at("id").get<std::string>(),
                                .nutrient = nutrient(entry, "nutrient"),
                                .min = {},
                                .max = {},
                                .unit = known(quantity::parseUnit(unit), unit),
                                .basis = basis(entry),
                                .origin = origin(entry)}};
  readBounds(entry, rule.target);
  rule.preferred = optional<double>(entry, "preferred");
  rule.safeUpperLimit = entry.value("safe_upper_limit", false);
  rule.note = text(entry, "note");
  return rule;
}

ProfileRatio ratio(const Json& entry) {
  ProfileRatio rule{.target = {.id = entry.at("id").get<std::string>(),
                               .of = nutrient(entry, "of"),
                               .to = nutrient(entry, "to"),
                               .min = {},
                               .max = {},
                               .origin = origin(entry)}};
  readBounds(entry, rule.target);
  rule.preferred = optional<double>(entry, "preferred");
  rule.note = text(entry, "note");
  return rule;
}

ShareRule share(const Json& entry) {
  ShareRule rule{.id = entry.at("id").get<std::string>(),
                 .group = entry.at("group").get<std::string>(),
                 .min = {},
                 .max = {},
                 .basis = basis(entry),
                 .origin = origin(entry)};
  readBounds(entry, rule);
  return rule;
}

ChoiceRule choice(const Json& entry) {
  return {.group = entry.at("group").get<std::string>(),
          .atLeast = entry.value("at_least", 0),
          .atMost = optional<int>(entry, "at_most"),
          .minEach = quantity::Grams(entry.value("min_g_each", 0.0))};
}

Exclusion exclusion(const Json& entry) {
  return {.id = entry.at("id").get<std::string>(),
          .group = text(entry, "group"),
          .food = text(entry, "food"),
          .reason = text(entry, "reason"),
          .origin = origin(entry)};
}

DroppedRule dropped(const Json& entry) {
  return {entry.at("id").get<std::string>(), text(entry, "reason")};
}

template <class Read>
auto readList(const Json& object, const char* key, Read read) {
  std::vector<decltype(read(object))> list;
  if (const auto entries = object.find(key); entries != object.end())
    for (const Json& entry : *entries) list.push_back(read(entry));
  return list;
}

bool isSameRow(const PrintedRow& row, const Json& printed, const TargetOrigin& from) {
  return row.nutrient == text(printed, "nutrient") && row.min == text(printed, "min") &&
         row.max == text(printed, "max") && row.unit == text(printed, "unit") && row.origin == from;
}

/// A row that was read as two rules stands behind both of them, next to each other.
void readRows(const Json& object, const char* key, std::vector<PrintedRow>& rows) {
  const auto entries = object.find(key);
  if (entries == object.end()) return;
  for (const Json& entry : *entries) {
    const auto found = entry.find("printed");
    if (found == entry.end()) continue;
    const TargetOrigin from = origin(entry);
    const std::string id = text(entry, "id");
    if (!id.empty() && !rows.empty() && isSameRow(rows.back(), *found, from)) {
      rows.back().rules.push_back(id);
      continue;
    }
    rows.push_back({.nutrient = text(*found, "nutrient"),
                    .min = text(*found, "min"),
                    .max = text(*found, "max"),
                    .unit = text(*found, "unit"),
                    .basis = text(*found, "basis"),
                    .seenOrMemory = text(*found, "seen_or_memory"),
                    .note = text(*found, "note"),
                    .origin = from,
                    .remark = text(entry, "why")});
    if (!id.empty()) rows.back().rules.push_back(id);
  }
}

/// What was printed but is no target, in the profile's own note.
std::string noteOf(const Json& object, const std::vector<PrintedRow>& rows) {
  std::string note = text(object, "note");
  for (const PrintedRow& row : rows) {
    if (!row.rules.empty()) continue;
    if (!note.empty()) note += "; ";
    note += row.nutrient;
    if (!row.min.empty()) note += ' ' + row.min;
    if (!row.max.empty() && row.max != row.min) note += (row.min.empty() ? " at most " : " to ") + row.max;
    note += ' ' + row.unit + ": " + row.remark;
  }
  return note;
}

std::optional<ProfileReference> parent(const Json& object) {
  const auto place = object.find("parent");
  if (place == object.end()) return std::nullopt;
  return ProfileReference{place->at("code").get<std::string>(), place->at("version").get<int>()};
}

StarterProfile profile(const Json& object) {
  StarterProfile starter;
  readRows(object, "targets", starter.rows);
  readRows(object, "ratios", starter.rows);
  readRows(object, "remarks", starter.rows);
  starter.profile = {.code = object.at("code").get<std::string>(),
                     .version = object.at("version").get<int>(),
                     .name = text(object, "name"),
                     .parent = parent(object),
                     .modelSpecies = text(object, "model_species"),
                     .whyModel = text(object, "why_model"),
                     .lifeStage = text(object, "life_stage"),
                     .kcalPerGramDryMatter = optional<double>(object, "kcal_per_g_dry_matter"),
                     .dryMatterFraction = optional<double>(object, "dry_matter_fraction"),
                     .targets = readList(object, "targets", target),
                     .ratios = readList(object, "ratios", ratio),
                     .shares = readList(object, "shares", share),
                     .choices = readList(object, "choices", choice),
                     .exclusions = readList(object, "exclusions", exclusion),
                     .dropped = readList(object, "dropped", dropped),
                     .note = noteOf(object, starter.rows),
                     .invented = object.value("invented", false)};
  return starter;
}

std::vector<StarterProfile> starters() {
  std::vector<StarterProfile> list = parseProfiles(resources::starterProfilesJson());
  for (StarterProfile& starter : list) starter.profile.starter = true;
  return list;
}

}  // namespace

std::vector<StarterProfile> parseProfiles(std::string_view json) {
  try {
    const Json document = Json::parse(json);
    if (document.at("format") != "tarebowl-profiles/1") throw std::runtime_error("profiles: not this format");
    return readList(document, "profiles", profile);
  } catch (const Json::exception& error) {
    throw std::runtime_error(std::string("profiles: ") + error.what());
  }
}

std::span<const StarterProfile> starterProfiles() {
  static const std::vector<StarterProfile> kList = starters();
  return kList;
}

const StarterProfile* findStarterProfile(std::string_view code) {
  const auto list = starterProfiles();
  const auto found =
      std::ranges::find_if(list, [&](const StarterProfile& starter) { return starter.profile.code == code; });
  return found == list.end() ? nullptr : &*found;
}

ProfileLookup shippedProfiles() {
  return [](const ProfileReference& wanted) -> std::optional<TargetProfile> {
    const StarterProfile* found = findStarterProfile(wanted.code);
    if (found == nullptr || found->profile.version != wanted.version) return std::nullopt;
    return found->profile;
  };
}

}  // namespace tarebowl::animal
