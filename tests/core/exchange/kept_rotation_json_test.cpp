// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/kept_rotation_json.h"

#include "core/exchange/plain_rules.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/rotation_json.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::exchange {
namespace {

using quantity::Grams;
using testing::HasSubstr;

KeptRotationFile week() {
  diet::KeptRotation rotation;
  rotation.diet = "lemur-daily";
  rotation.version = 3;
  rotation.from = quantity::parseDate("2026-11-30").value();
  rotation.until = quantity::parseDate("2026-12-06").value();
  rotation.plannedFrom = quantity::parseDate("2026-12-02").value();
  rotation.rules = R"({"days":7,"format":"tarebowl-rotation-rules/1"})";
  rotation.seed = 9007199254740991;  // the last whole number that JSON keeps
  rotation.asEaten = true;
  rotation.period = {0.02, 0.0125};
  rotation.daily = {0.3, 0.25};
  rotation.wishes = {1, 1};
  rotation.objective = {-0.75, -1.5};
  rotation.who = "Nutritionist";
  rotation.at = "2026-11-28T09:00:00Z";
  rotation.note = "kale does not come on Thursday";
  rotation.cells = {
      {.day = 0, .food = "kale-raw", .meal = "morning", .amount = Grams(15)},
      {.day = 3, .food = "kale-raw", .amount = Grams(0), .locked = true},
      {.day = 6, .food = "pellet", .purpose = diet::Purpose::TrainingReward, .amount = Grams(0.5)}};
  return {rotation, true};
}

TEST(KeptRotationFile, IsReadAsItWasWritten) {
  EXPECT_EQ(parseKeptRotation(writeKeptRotation(week()), "week.json"), week());
}

std::string complaint(const std::string& from, const std::string& to) {
  std::string text = writeKeptRotation(week());
  text.replace(text.find(from), from.size(), to);
  try {
    (void)parseKeptRotation(text, "week.json");
  } catch (const FormatError& error) {
    return error.what();
  }
  return "nothing";
}

TEST(KeptRotationFile, ThatCannotBeIsRefusedWithItsPlace) {
  EXPECT_THAT(complaint("2026-12-06", "2026-11-29"), HasSubstr("the last of 1 to 28 days"));
  EXPECT_THAT(complaint("2026-12-06", "2027-12-06"), HasSubstr("the last of 1 to 28 days"));
  EXPECT_THAT(complaint("\"day\": 7", "\"day\": 8"), HasSubstr("cells[2].day"));
  EXPECT_THAT(complaint("\"g\": 15", "\"g\": -15"), HasSubstr("cells[0].g"));
  EXPECT_THAT(complaint("training-reward", "sweet"), HasSubstr("cells[2].purpose"));
  EXPECT_THAT(complaint("\"diet\": \"lemur-daily\"", "\"diet\": \"\""), HasSubstr("diet"));
  EXPECT_THAT(complaint("\"as_eaten\"", "\"as_eten\""), HasSubstr("as_eaten"));
  EXPECT_THAT(complaint("\"rules\": {", "\"rules\": 3, \"x\": {"), HasSubstr("rules"));
}

TEST(PlainRules, AreRulesAsAFileSaysThem) {
  diet::BalanceProblem problem;
  for (const char* food : {"kale", "endive"}) {
    diet::DietFood made;
    made.id = made.name = food;
    problem.foods.push_back(made);
  }
  const PlainRules plain{.days = 14,
                         .longestRun = 3,
                         .wanted = 2,
                         .widenDaily = 0.25,
                         .mostFoods = 5,
                         .fasting = {"mon", "thu"}};
  const auto monday = quantity::parseDate("2026-11-30").value();
  const diet::RotationRules rules =
      parseRotationRules(writeRotationRules(plain), "plain", problem, {std::nullopt, monday}).rules;
  EXPECT_EQ(rules.days, 14);
  EXPECT_EQ(rules.daily.widen, 0.25);
  EXPECT_EQ(rules.frequency.at(0).longestRun, 3);
  EXPECT_TRUE(rules.frequency.at(0).of.isAll());
  EXPECT_EQ(rules.variety.at(0).wanted, 2);
  EXPECT_EQ(rules.kitchen.mostFoods, 5);
  EXPECT_EQ(rules.off.at(0).days, (diet::DayList{0, 3, 7, 10}));
  EXPECT_TRUE(rules.off.at(0).of.isAll());
  const diet::RotationRules least =
      parseRotationRules(writeRotationRules({.days = 7, .longestRun = std::nullopt}), "plain", problem, {})
          .rules;
  EXPECT_TRUE(least.frequency.empty() && least.variety.empty() && least.off.empty());
}

}  // namespace
}  // namespace tarebowl::exchange
