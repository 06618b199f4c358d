// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/animal_words.h"
#include "core/exchange/field_reader.h"
#include "core/exchange/json_document.h"
#include "core/exchange/json_reader.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/profile_json.h"
#include "core/exchange/rule_reader.h"
#include "core/exchange/safety_json.h"
#include "core/exchange/text_file.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <array>

namespace tarebowl::exchange {

namespace {

constexpr std::array<std::string_view, 19> kProfileKeys{
    "format",     "code",          "version",     "name",       "parent",  "model_species", "why_model",
    "life_stage", "kcal_per_g_dm", "dm_fraction", "note",       "starter", "invented",      "targets",
    "ratios",     "shares",        "choices",     "exclusions", "dropped"};
constexpr int kMostVersions = 1'000'000;
constexpr double kDensest = 9.5;  // kcal per g; fat holds about 9.4 (NRC 2006, gross energy)

animal::ProfileReference readReference(const JsonReader& reader) {
  return {reader.member("code").nonEmptyText(), reader.member("version").wholeNumber(1, kMostVersions)};
}

animal::ProfileTarget readProfileTarget(const JsonReader& reader) {
  animal::ProfileTarget rule{.target = readTarget(reader)};
  rule.preferred = numberOf(reader, "preferred", {});
  rule.safeUpperLimit = flagOf(reader, "safe_upper_limit");
  if (const auto lifted = reader.find("lifted"))
    rule.lifted = animal::LiftedLimit{textOf(*lifted, "who"), textOf(*lifted, "on"),
                                      lifted->member("reason").nonEmptyText()};
  rule.note = textOf(reader, "note");
  return rule;
}

animal::ProfileRatio readProfileRatio(const JsonReader& reader) {
  return {.target = readRatio(reader),
          .preferred = numberOf(reader, "preferred", {}),
          .note = textOf(reader, "note")};
}

animal::DroppedRule readDropped(const JsonReader& reader) {
  return {reader.member("id").nonEmptyText(), reader.member("reason").nonEmptyText()};
}

void readFacts(const JsonReader& root, animal::TargetProfile& profile) {
  profile.code = root.member("code").nonEmptyText();
  if (const auto version = root.find("version")) profile.version = version->wholeNumber(1, kMostVersions);
  profile.name = root.member("name").nonEmptyText();
  if (const auto parent = root.find("parent")) profile.parent = readReference(*parent);
  profile.modelSpecies = textOf(root, "model_species");
  profile.whyModel = textOf(root, "why_model");
  profile.lifeStage = textOf(root, "life_stage");
  profile.kcalPerGramDryMatter = numberOf(root, "kcal_per_g_dm",
                                          {.most = kDensest,
                                           .leastIncluded = false,
                                           .inWords = "kcal per g dry matter, above 0 and at most 9.5"});
  profile.dryMatterFraction =
      numberOf(root, "dm_fraction",
               {.most = 1.0, .leastIncluded = false, .inWords = "a number above 0 and at most 1"});
  profile.note = textOf(root, "note");
  profile.starter = flagOf(root, "starter");
  profile.invented = flagOf(root, "invented");
}

/// What no entry shows by itself: the same id twice, a preferred value outside its bounds.
void refuseFaults(const JsonReader& root, const animal::TargetProfile& profile) {
  const auto faults = animal::problemsWith(profile);
  if (faults.empty()) return;
  const auto word = animal::symbolOf(faults.front().problem);
  root.complain(fmt::format("a sound profile, found {} in {}", word,
                            faults.front().rule.empty() ? "it" : faults.front().rule));
}

}  // namespace

animal::TargetProfile parseProfile(std::string_view text, const std::string& fileName) {
  const nlohmann::json document = parseDocument(text, fileName);
  const JsonReader root(document, fileName);
  root.refuseSlips(kProfileKeys);
  const JsonReader format = root.member("format");
  if (format.text() != kProfileFormat) format.refuse(inQuotes(kProfileFormat));
  animal::TargetProfile profile;
  readFacts(root, profile);
  profile.targets = listOf(root, "targets", readProfileTarget);
  profile.ratios = listOf(root, "ratios", readProfileRatio);
  profile.shares = listOf(root, "shares", readShare);
  profile.choices = listOf(root, "choices", readChoice);
  profile.exclusions = listOf(root, "exclusions", readExclusion);
  profile.dropped = listOf(root, "dropped", readDropped);
  refuseFaults(root, profile);
  return profile;
}

animal::TargetProfile readProfile(const std::filesystem::path& file) {
  return parseProfile(readText(file), file.string());
}

}  // namespace tarebowl::exchange
