// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/rotation_json.h"

#include "core/exchange/problem_json.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>

namespace tarebowl::exchange {
namespace {

using diet::DayList;
using nlohmann::json;
using testing::HasSubstr;

/// Invented foods with round numbers.
diet::BalanceProblem base() {
  return parseProblem(R"({"format": "tarebowl-problem/1", "animal": {"name": "lemur", "count": 2},
    "foods": [
      {"id": "kale", "name": "Kale", "group": "leaf", "per_100_g": {"WATER": 90, "CA": 200}, "max_g": 50},
      {"id": "endive", "name": "Endive", "group": "leaf", "per_100_g": {"WATER": 90, "CA": 50}, "max_g": 50,
       "eaten_fraction": 0.5}],
    "targets": [{"id": "ca", "nutrient": "CA", "min": 40, "unit": "mg", "basis": "day"}]})",
                      "base.json");
}

RotationRulesFile rulesOf(const json& keys, const RotationPeriod& asked = {}) {
  json file = keys;
  file["format"] = kRotationRulesFormat;
  return parseRotationRules(file.dump(), "rules.json", base(), asked);
}

std::string complaintAbout(const json& keys) {
  try {
    static_cast<void>(rulesOf(keys));
  } catch (const FormatError& error) {
    return error.what();
  }
  return "accepted";
}

TEST(RotationRules, AFileThatSaysNothingIsAWeek) {
  const RotationRulesFile file = rulesOf(json::object());
  EXPECT_EQ(file.rules, diet::RotationRules{});
  EXPECT_EQ(file.rules.days, 7);
}

TEST(RotationRules, WhatIsAskedForGoesBeforeWhatTheFileSays) {
  const json keys{{"days", 14}, {"from", "2026-11-30"}};
  EXPECT_EQ(rulesOf(keys).rules.days, 14);
  const RotationRulesFile asked = rulesOf(keys, {28, quantity::parseDate("2026-12-07")});
  EXPECT_EQ(asked.rules.days, 28);
  EXPECT_EQ(asked.from, quantity::parseDate("2026-12-07"));
}

TEST(RotationRules, EveryKeyIsRead) {
  const RotationRulesFile file = rulesOf(json::parse(R"({
    "days": 7, "from": "2026-11-30",
    "structure": [{"id": "greens", "foods": ["kale", "endive"], "at_least": 1, "at_most": 2, "min_g_each": 5,
                   "days": [1, "2026-12-02"]}],
    "daily_zones": {"widen": 0.4, "of": [{"id": "ca", "widen": null}]},
    "period_zones": {"widen": 0.1},
    "often": [{"group": "leaf", "longest_run": 2, "least_days": 1, "most_days": 5}],
    "variety": [{"wanted": 2, "weight": 3}],
    "off": [{"days": ["sun"]}, {"foods": ["kale"], "days": [3]}],
    "season": [{"foods": ["endive"], "from": "2026-12-01", "to": "2026-12-04"}],
    "delivered": [{"foods": ["kale"], "on": ["mon", "thu"], "keeps_days": 1}],
    "stock": [{"food": "kale", "most_g": 100, "use_up_g": 40, "by": 2}],
    "portions": [{"foods": ["kale"], "min_g": 5, "max_g": 30}],
    "kitchen": {"most_foods": 2, "at_hand": [{"day": 1, "foods": ["kale", "carrot"]}]},
    "purchase": [{"group": "leaf", "edible_fraction": 0.8, "waste_fraction": 0.1}],
    "locked": [{"day": 2, "food": "kale", "g": 12.5}]})"));
  const diet::RotationRules& rules = file.rules;
  ASSERT_EQ(rules.structure.size(), 1U);
  EXPECT_EQ(rules.structure[0].id, "greens");
  EXPECT_EQ(rules.structure[0].days, (DayList{0, 2}));  // 30 November 2026 is a Monday
  EXPECT_EQ(rules.structure[0].minEach.value(), 5.0);
  EXPECT_EQ(rules.daily.widen, 0.4);
  EXPECT_EQ(rules.daily.of[0].widen, std::nullopt);
  EXPECT_EQ(rules.period.widen, 0.1);
  EXPECT_EQ(rules.frequency[0].longestRun, 2);
  EXPECT_EQ(rules.variety[0].weight, 3.0);
  ASSERT_EQ(rules.off.size(), 4U);
  EXPECT_TRUE(rules.off[0].of.isAll());
  EXPECT_EQ(rules.off[0].days, (DayList{6}));
  EXPECT_EQ(rules.off[2].days, (DayList{0, 5, 6}));  // in season 1 to 4 December
  EXPECT_EQ(rules.off[3].days, (DayList{2, 5, 6}));  // there on Mon, Tue, Thu, Fri
  EXPECT_EQ(rules.stock[0].by, 1);
  EXPECT_EQ(rules.portions[0].max->value(), 30.0);
  EXPECT_EQ(rules.kitchen.atHand[0].foods, (std::vector<std::string>{"kale", "carrot"}));
  EXPECT_EQ(rules.purchase[0].waste, 0.1);
  EXPECT_EQ(rules.locked[0].day, 1);
}

TEST(RotationRules, WhatIsWrongIsNamedWithItsPlace) {
  EXPECT_THAT(complaintAbout({{"often", {{{"foods", {"kail"}}}}}}), HasSubstr("often[0].foods[0]"));
  EXPECT_THAT(complaintAbout({{"often", {{{"group", "leaves"}}}}}), HasSubstr("often[0].group"));
  EXPECT_THAT(complaintAbout({{"offen", json::array()}}), HasSubstr("did you mean"));
  EXPECT_THAT(complaintAbout({{"days", 29}}), HasSubstr("from 1 to 28"));
  EXPECT_THAT(complaintAbout({{"off", {{{"days", {"sun"}}}}}}), HasSubstr("--from"));
  EXPECT_THAT(complaintAbout({{"off", {{{"days", {8}}}}}}), HasSubstr("off[0].days[0]"));
  EXPECT_THAT(complaintAbout({{"from", "2026-11-30"}, {"off", {{{"days", {"2026-12-07"}}}}}}),
              HasSubstr("a day of the 7 days"));
  EXPECT_THAT(complaintAbout({{"structure", {{{"at_least", 1}}}}}), HasSubstr("group or foods"));
  EXPECT_THAT(complaintAbout({{"structure", {{{"group", "leaf"}, {"at_least", 2}, {"at_most", 1}}}}}),
              HasSubstr("structure[0].at_most"));
  EXPECT_THAT(complaintAbout({{"daily_zones", {{"of", {{{"id", "calcium"}, {"widen", 1}}}}}}}),
              HasSubstr("daily_zones.of[0].id"));
  EXPECT_THAT(complaintAbout({{"purchase", {{{"edible_fraction", 0}}}}}), HasSubstr("above 0"));
  EXPECT_THAT(complaintAbout({{"format", 1}, {"portions", {{{"min_g", 9}, {"max_g", 3}}}}}),
              HasSubstr("portions[0].max_g"));
}

class FedDays : public testing::Test {
 protected:
  void TearDown() override { std::filesystem::remove(file_); }

  std::vector<diet::FedDay> read(const std::string& text, std::optional<int> before = {}) {
    std::ofstream(file_) << text;
    return readFedDays(file_, base(), {7, quantity::parseDate("2026-11-30")}, before);
  }

 private:
  // The tests of a fixture run beside each other, so that each has a file of its own.
  std::filesystem::path file_ = std::filesystem::temp_directory_path() /
                                (std::string("tarebowl-fed-days-") +
                                 testing::UnitTest::GetInstance()->current_test_info()->name() + ".json");
};

TEST_F(FedDays, WhatWasNotWeighedBackWasEatenAsUsual) {
  const auto fed = read(R"({"days": [{"day": "2026-12-01", "grams": {"kale": 30, "endive": 20},
                                      "eaten": {"kale": 12}}]})");
  ASSERT_EQ(fed.size(), 1U);
  EXPECT_EQ(fed[0].day, 1);
  EXPECT_EQ(fed[0].fed[0].value(), 30.0);
  ASSERT_TRUE(fed[0].eaten);
  EXPECT_EQ((*fed[0].eaten)[0].value(), 12.0);
  EXPECT_EQ((*fed[0].eaten)[1].value(), 10.0);  // half of 20 g
}

TEST_F(FedDays, AnEarlierPlanIsTakenUpToTheDayThatIsPlannedFrom) {
  diet::RotationProblem problem{base(), {}};
  diet::RotationOptions options;
  options.rounds = 2;
  const std::string plan =
      writeRotation(problem, diet::rotate(problem, options), quantity::parseDate("2026-11-30"));
  EXPECT_EQ(read(plan, 3).size(), 3U);
  EXPECT_EQ(read(plan).size(), 7U);
}

TEST_F(FedDays, AFoodThatIsNotInTheProblemIsNotLostInSilence) {
  EXPECT_THROW(static_cast<void>(read(R"({"days": [{"day": 1, "grams": {"carrot": 5}}]})")), FormatError);
  EXPECT_THROW(static_cast<void>(read(R"({"days": [{"day": 1, "grams": {}}, {"day": 1, "grams": {}}]})")),
               FormatError);
  EXPECT_THROW(static_cast<void>(read("{}")), FormatError);
}

TEST(RotationFile, SaysHowGoodThePlanIsAndWhatToBuy) {
  const diet::RotationProblem problem{base(), {}};
  const json file =
      json::parse(writeRotation(problem, diet::rotate(problem, {}), quantity::parseDate("2026-11-30")));
  EXPECT_EQ(file.at("format"), "tarebowl-rotation/1");
  EXPECT_EQ(file.at("status"), "balanced");
  EXPECT_EQ(file.at("days").size(), 7U);
  EXPECT_EQ(file.at("days")[6].at("date"), "2026-12-06");
  EXPECT_EQ(file.at("period").at("gap"), 0);
  double kale = 0.0;
  for (const json& day : file.at("days")) kale += day.at("grams").value("kale", 0.0);
  double bought = 0.0;
  for (const json& line : file.at("purchase"))
    if (line.at("food") == "kale") bought += line.at("bought_kg").get<double>();
  EXPECT_NEAR(bought, 2 * kale / 1000.0, 1e-12);  // two animals
}

}  // namespace
}  // namespace tarebowl::exchange
