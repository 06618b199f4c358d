// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/problem_json.h"
#include "tests/core/exchange/sound_problem.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace tarebowl::exchange {
namespace {

using Json = nlohmann::ordered_json;
using diet::TargetBalance;
using diet::TargetKind;
using diet::TargetState;
using quantity::Grams;
using ::testing::ElementsAre;

diet::BalanceProblem sound() {
  return parseProblem(kSoundProblem, "bowl.json");
}

TargetBalance line(TargetKind kind, std::size_t index, const char* id, TargetState state) {
  TargetBalance balance;
  balance.kind = kind;
  balance.index = index;
  balance.id = id;
  balance.state = state;
  return balance;
}

TargetBalance calciumShort() {
  TargetBalance calcium = line(TargetKind::Nutrient, 1, "calcium", TargetState::Short);
  calcium.value = 4.5;
  calcium.min = 5;
  calcium.max = 12;
  calcium.atLeast = true;
  calcium.shortfall = 0.1;
  calcium.coverage = 0.75;
  calcium.sd = 0.4;
  calcium.chance = 0.11;
  return calcium;
}

TargetBalance ratioUnknown() {
  TargetBalance ratio = line(TargetKind::Ratio, 0, "ca-p", TargetState::Unknown);
  ratio.min = 1.2;
  ratio.coverage = 0.0;
  return ratio;
}

TargetBalance fruitMet() {
  TargetBalance share = line(TargetKind::Share, 0, "fruit-share", TargetState::Met);
  share.value = 0.0;
  share.max = 0.1;
  share.chance = 1.0;
  return share;
}

/// An answer to the sound problem with made-up numbers: a target, the ratio, the share.
diet::DietSolution answer() {
  diet::DietSolution solution;
  solution.status = diet::DietStatus::Compromise;
  solution.grams = {Grams(22), Grams(3 * 0.1), Grams(0)};
  solution.shortfall = 0.25;
  solution.objective = 0.0131;
  solution.balance.targets = {calciumShort(), ratioUnknown(), fruitMet()};
  solution.multipliers = {-0.5, 0.0, 0.0};
  solution.conflict = {"calcium", "fruit-share"};
  solution.solveTime = std::chrono::microseconds(180);
  return solution;
}

Json written(const diet::BalanceProblem& problem, const diet::DietSolution& solution) {
  return Json::parse(writeResult(problem, solution));
}

std::vector<std::string> keysOf(const Json& object) {
  std::vector<std::string> keys;
  for (const auto& item : object.items()) keys.push_back(item.key());
  return keys;
}

TEST(ResultWriter, WritesTheDocumentedKeysInTheirOrder) {
  const Json result = written(sound(), answer());
  EXPECT_THAT(keysOf(result), ElementsAre("format", "status", "grams", "shortfall", "objective", "proven_gap",
                                          "targets", "conflict", "remedies", "solve_us"));
  EXPECT_THAT(keysOf(result["targets"][0]),
              ElementsAre("id", "value", "min", "max", "unit", "basis", "state", "at_least", "shortfall",
                          "coverage", "sd", "chance", "multiplier"));
  EXPECT_EQ(result["format"], "tarebowl-result/1");
  EXPECT_EQ(result["status"], "compromise");
  EXPECT_EQ(result["conflict"], Json({"calcium", "fruit-share"}));
  EXPECT_EQ(result["remedies"], Json::array());
  EXPECT_EQ(result["solve_us"], 180);
}

TEST(ResultWriter, WritesATargetWithItsUnitAndBasis) {
  const Json calcium = written(sound(), answer())["targets"][0];
  EXPECT_EQ(
      calcium,
      Json::parse(R"({"id": "calcium", "value": 4.5, "min": 5, "max": 12, "unit": "g", "basis": "dry-matter",
    "state": "short", "at_least": true, "shortfall": 0.1, "coverage": 0.75, "sd": 0.4, "chance": 0.11, "multiplier": -0.5})"));
}

TEST(ResultWriter, WritesNullForWhatIsNotDefined) {
  const Json targets = written(sound(), answer())["targets"];
  EXPECT_TRUE(targets[1]["value"].is_null());
  EXPECT_TRUE(targets[1]["unit"].is_null());
  EXPECT_TRUE(targets[1]["basis"].is_null());
  EXPECT_TRUE(targets[1]["chance"].is_null());
  EXPECT_EQ(targets[1]["state"], "unknown");
  EXPECT_TRUE(targets[2]["min"].is_null());
  EXPECT_EQ(targets[2]["basis"], "as-fed");
}

TEST(ResultWriter, WritesGramsAsTheScaleShowsThem) {
  diet::BalanceProblem problem = sound();
  problem.wholeSteps = true;
  problem.foods[1].scaleStep = Grams(0.1);
  EXPECT_THAT(writeResult(problem, answer()), ::testing::HasSubstr("\"egg-boiled\": 0.3,"));
  EXPECT_EQ(written(problem, answer())["grams"],
            Json::parse(R"({"kale-raw": 22, "egg-boiled": 0.3, "apple-raw": 0})"));
}

TEST(ResultWriter, WritesNoDietWhereTheHardRulesContradictEachOther) {
  diet::DietSolution solution;
  solution.status = diet::DietStatus::Impossible;
  solution.conflict = {"energy-day", "choice:leafy vegetable"};
  const Json result = written(sound(), solution);
  EXPECT_EQ(result["status"], "impossible");
  EXPECT_EQ(result["grams"], Json::object());
  EXPECT_TRUE(result["shortfall"].is_null());
  EXPECT_TRUE(result["objective"].is_null());
  EXPECT_EQ(result["conflict"].size(), 2U);
}

TEST(ResultWriter, SaysWhyThereIsNoAnswer) {
  diet::DietSolution solution;
  solution.status = diet::DietStatus::Unbounded;
  solution.reason = "unbounded: CA";
  const Json result = written(sound(), solution);
  EXPECT_EQ(result["status"], "unbounded");
  EXPECT_EQ(result["reason"], "unbounded: CA");
}

}  // namespace
}  // namespace tarebowl::exchange
