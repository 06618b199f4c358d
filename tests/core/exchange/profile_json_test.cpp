// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/profile_json.h"

#include "core/exchange/problem_json.h"
#include "tests/source_dir.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <functional>

namespace tarebowl::exchange {
namespace {

using testing::HasSubstr;

/// Something in every field.
constexpr const char* kFull = R"({ "format": "tarebowl-profile/1", "code": "lemurs", "version": 3,
  "name": "Lemurs, low iron", "parent": { "code": "primates", "version": 1 },
  "model_species": "macaque", "why_model": "the nearest that was measured", "life_stage": "adult",
  "kcal_per_g_dm": 4.0, "dm_fraction": 0.9, "note": "invented", "invented": true,
  "targets": [{ "id": "iron", "nutrient": "FE", "unit": "mg", "basis": "dry-matter", "min": 40, "max": 100,
                "hard": false, "weight": 2.5, "preferred": 60, "safe_upper_limit": true,
                "lifted": { "who": "Vet", "on": "2026-11-01", "reason": "pregnant" }, "note": "as printed",
                "source": "an invented handbook", "provenance": "seen", "model_species": "macaque" }],
  "ratios": [{ "id": "ca-p", "of": "CA", "to": "P", "min": 1, "max": 2, "hard": true, "weight": 1,
               "preferred": 1.5, "note": "in g" }],
  "shares": [{ "id": "browse", "group": "browse", "min": 0.1, "basis": "as-fed", "hard": true, "weight": 1 }],
  "choices": [{ "group": "raw root", "at_least": 1, "at_most": 2, "min_g_each": 8 }],
  "exclusions": [{ "id": "no-fruit", "group": "fruit", "reason": "too sweet", "source": "the house",
                   "provenance": "house-rule" }],
  "dropped": [{ "id": "chromium", "reason": "never analysed" }] })";

std::string refusal(const std::function<void(nlohmann::json&)>& spoil) {
  auto json = nlohmann::json::parse(kFull);
  spoil(json);
  try {
    (void)parseProfile(json.dump(), "lemurs.json");
  } catch (const FormatError& error) {
    return error.what();
  }
  return "";
}

TEST(ProfileJson, AProfileIsReadWithEverythingItStates) {
  const animal::TargetProfile profile = parseProfile(kFull, "lemurs.json");
  EXPECT_EQ(profile.version, 3);
  EXPECT_EQ(profile.parent, (animal::ProfileReference{"primates", 1}));
  EXPECT_EQ(profile.whyModel, "the nearest that was measured");
  EXPECT_EQ(profile.kcalPerGramDryMatter, 4.0);
  ASSERT_EQ(profile.targets.size(), 1U);
  EXPECT_EQ(profile.targets[0].preferred, 60.0);
  EXPECT_TRUE(profile.targets[0].safeUpperLimit);
  EXPECT_EQ(profile.targets[0].lifted, (animal::LiftedLimit{"Vet", "2026-11-01", "pregnant"}));
  EXPECT_EQ(profile.targets[0].target.origin.provenance, animal::Provenance::Seen);
  EXPECT_EQ(profile.ratios.at(0).note, "in g");
  EXPECT_EQ(profile.shares.at(0).min, 0.1);
  EXPECT_EQ(profile.choices.at(0).atMost, 2);
  EXPECT_EQ(profile.exclusions.at(0).reason, "too sweet");
  EXPECT_EQ(profile.dropped.at(0).id, "chromium");
}

TEST(ProfileJson, WhatIsWrittenReadsBackTheSame) {
  const animal::TargetProfile profile = parseProfile(kFull, "lemurs.json");
  const std::string text = writeProfile(profile);
  EXPECT_EQ(parseProfile(text, "again"), profile);
  EXPECT_EQ(writeProfile(parseProfile(text, "again")), text);
}

TEST(ProfileJson, WhatIsNoProfileIsRefusedWithItsPlace) {
  EXPECT_THAT(refusal([](auto& p) { p["format"] = "tarebowl-problem/1"; }), HasSubstr("tarebowl-profile/1"));
  EXPECT_THAT(refusal([](auto& p) { p.erase("code"); }), HasSubstr("code"));
  EXPECT_THAT(refusal([](auto& p) { p["targets"][0]["nutrient"] = "IRON"; }),
              HasSubstr("targets[0].nutrient"));
  EXPECT_THAT(refusal([](auto& p) { p["targets"][0]["min"] = 200; }), HasSubstr("targets[0].min"));
  EXPECT_THAT(refusal([](auto& p) { p["targets"][0]["preferred"] = 7; }),
              HasSubstr("preferred-outside-bounds in iron"));
  EXPECT_THAT(refusal([](auto& p) { p["shares"][0]["id"] = "iron"; }), HasSubstr("same-id-twice in iron"));
  EXPECT_THAT(refusal([](auto& p) { p["dm_fraction"] = 0; }), HasSubstr("dm_fraction"));
  EXPECT_THAT(refusal([](auto& p) { p["parent"]["version"] = 0; }), HasSubstr("parent.version"));
  EXPECT_THAT(refusal([](auto& p) { p["target"] = p["targets"]; }), HasSubstr("did you mean"));
  EXPECT_THAT(refusal([](auto& p) { p["dropped"][0]["reason"] = ""; }), HasSubstr("dropped[0].reason"));
}

TEST(ProfileJson, EveryProfileOfTheSampleReadsBackTheSame) {
  namespace fs = std::filesystem;
  int profiles = 0;
  for (const auto& entry :
       fs::directory_iterator(fs::path(TAREBOWL_SOURCE_DIR) / "sample-data" / "herd" / "profiles")) {
    const animal::TargetProfile profile = readProfile(entry.path());
    EXPECT_EQ(profile.code, entry.path().stem().string());
    EXPECT_TRUE(profile.invented) << profile.code;
    EXPECT_EQ(parseProfile(writeProfile(profile), "again"), profile) << profile.code;
    ++profiles;
  }
  EXPECT_EQ(profiles, 8);
}

TEST(TargetsJson, EachRuleSaysWhereItWasStatedAndWhatItStandsInThePlaceOf) {
  animal::TargetProfile parent = parseProfile(kFull, "parent");
  parent.code = "primates";
  parent.version = 1;
  parent.parent.reset();
  parent.dropped.clear();
  const animal::TargetProfile child = parseProfile(kFull, "child");
  const auto resolved = animal::resolve(
      child, [&](const animal::ProfileReference&) -> std::optional<animal::TargetProfile> { return parent; });
  const auto json = nlohmann::json::parse(
      writeTargets(std::get<animal::ResolvedProfile>(resolved), {"family", "2026-11-25"}));
  EXPECT_EQ(json.at("format"), "tarebowl-targets/1");
  EXPECT_EQ(json.at("group"), "family");
  EXPECT_EQ(json.at("day"), "2026-11-25");
  EXPECT_EQ(json.at("profile").at("version"), 3);
  EXPECT_EQ(json.at("takes_over_from")[0].at("code"), "primates");
  const auto& iron = json.at("targets")[0];
  EXPECT_EQ(iron.at("stated_in").at("code"), "lemurs");
  EXPECT_EQ(iron.at("in_place_of")[0].at("code"), "primates");
  EXPECT_EQ(iron.at("provenance"), "seen");
  EXPECT_EQ(iron.at("source"), "an invented handbook");
}

}  // namespace
}  // namespace tarebowl::exchange
