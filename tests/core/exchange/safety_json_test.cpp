// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/problem_json.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace tarebowl::exchange {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;

json problem() {
  return json::parse(R"({
    "format": "tarebowl-problem/1",
    "animal": {"name": "Foxes", "taxa": ["mammal", "canid"]},
    "foods": [{"id": "grapes", "name": "Grapes, raw", "group": "fruit", "per_100_g": {"WATER": 80, "CA": 10}},
              {"id": "kale", "group": "leaf", "cautions": ["oxalate"], "per_100_g": {"WATER": 90, "CA": 200}}],
    "targets": [{"id": "ca", "nutrient": "CA", "min": 100, "unit": "mg", "basis": "day"}],
    "reference": {"grapes": 50, "kale": 50}
  })");
}

diet::BalanceProblem read(const json& document) {
  return parseProblem(document.dump(), "bowl.json");
}

std::string refusalOf(const json& document) {
  try {
    (void)read(document);
  } catch (const FormatError& error) {
    return error.what();
  }
  return {};
}

TEST(SafetyOfAProblemFile, SaysWhoEatsAndWhatIsExcludedCautionedAndLifted) {
  json document = problem();
  document["exclusions"] = {
      {{"id", "no-fruit"}, {"group", "fruit"}, {"reason", "sweet"}, {"provenance", "house-rule"}}};
  document["house_cautions"] = {{{"id", "seed"},
                                 {"words", {"Seed Mix"}},
                                 {"severity", "limit"},
                                 {"reason", "fat"},
                                 {"taxa", {"parrot"}}}};
  document["lifted"] = {{{"ban", "grapes"}, {"food", "grapes"}, {"reason", "trial"}, {"who", "Vet A"}}};
  const diet::BalanceProblem found = read(document);
  EXPECT_EQ(found.eater.taxa, (std::vector<std::string>{"mammal", "canid"}));
  EXPECT_EQ(found.foods[1].cautions, std::vector<std::string>{"oxalate"});
  EXPECT_EQ(found.exclusions.at(0).origin.provenance, animal::Provenance::HouseRule);
  EXPECT_EQ(found.cautions.at(0).words, std::vector<std::string>{"seed mix"}) << "as names are compared";
  EXPECT_EQ(found.lifted.at(0).who, "Vet A");
  EXPECT_EQ(parseProblem(writeProblem(found), "again.json"), found);
}

TEST(SafetyOfAProblemFile, WhatCannotBeMeantIsRefused) {
  json document = problem();
  document["exclusions"] = {{{"id", "x"}, {"group", "fruit"}, {"food", "grapes"}}};
  EXPECT_THAT(refusalOf(document), HasSubstr("exclusions[0]"));
  document = problem();
  document["lifted"] = {{{"ban", "grapes"}, {"reason", ""}}};
  EXPECT_THAT(refusalOf(document), HasSubstr("lifted[0].reason")) << "nothing is lifted without a reason";
  document = problem();
  document["house_cautions"] = {{{"id", "x"}, {"severity", "deadly"}, {"reason", "y"}}};
  EXPECT_THAT(refusalOf(document), HasSubstr("never, limit or consider"));
  document = problem();
  document["animal"]["taxa"] = {""};
  EXPECT_THAT(refusalOf(document), HasSubstr("animal.taxa[0]"));
}

TEST(CautionsOfAResult, NameTheFoodsInTheBowlAndThoseKeptOutOfIt) {
  const diet::BalanceProblem foxes = read(problem());
  const json result = json::parse(writeResult(foxes, diet::solve(foxes)));
  EXPECT_EQ(result.at("grams").at("grapes"), 0);
  const json& cautions = result.at("cautions");
  ASSERT_EQ(cautions.size(), 2U);
  EXPECT_EQ(cautions[0].at("food"), "grapes");
  EXPECT_EQ(cautions[0].at("caution"), "grapes");
  EXPECT_EQ(cautions[0].at("severity"), "never");
  EXPECT_EQ(cautions[0].at("forbidden"), true);
  EXPECT_EQ(cautions[1].at("food"), "kale");
  EXPECT_EQ(cautions[1].at("caution"), "oxalate");
  EXPECT_EQ(cautions[1].at("forbidden"), false);
}

TEST(CautionsOfAResult, AreLeftOutWhereThereAreNone) {
  json document = problem();
  document["foods"].erase(0);
  document["foods"][0].erase("cautions");
  document["reference"].erase("grapes");
  const diet::BalanceProblem foxes = read(document);
  EXPECT_FALSE(json::parse(writeResult(foxes, diet::solve(foxes))).contains("cautions"));
}

}  // namespace
}  // namespace tarebowl::exchange
