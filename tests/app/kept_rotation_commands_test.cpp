// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/own_collections.h"
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace tarebowl::app {
namespace {

using nlohmann::json;
using testing::HasSubstr;

/// The invented sample without its feeding days and rotations of the foxes.
std::string brackenmere() {
  return sampleCollection("rotations.tarebowl", transfer::FeedingDays::LeftOut);
}

/// A week for the foxes from Monday 2026-11-30: they fast on Thursday.
Outcome keepAWeek(const std::string& collection) {
  const std::string rules = fileWith("fox-rules.json", R"({"format": "tarebowl-rotation-rules/1",
      "from": "2026-11-30", "daily_zones": {"widen": 5}, "off": [{"days": ["thu"]}]})")
                                .string();
  return tarebowl({"rotate", collection, "--diet", "fennec-evening", "--version", "2", "--rules", rules,
                   "--keep", "--gap", "100"});
}

json foxes(const std::string& collection) {
  const Outcome listed = tarebowl({"rotations", collection, "--diet", "fennec-evening"});
  EXPECT_EQ(listed.status, 0) << listed.err;
  return json::parse(listed.out).at("rotations");
}

json bowlsOn(const std::string& collection, const std::string& day) {
  const Outcome outcome = tarebowl({"prep", collection, "--day", day, "--section", "Small Mammals"});
  EXPECT_EQ(outcome.status, 0) << outcome.err;
  const json sheet = json::parse(outcome.out);
  json bowls = json::array();
  for (const json& bowl : sheet.at("bowls"))
    if (bowl.at("group") == "fennecs") bowls.push_back(bowl);
  return bowls;
}

TEST(KeptRotationCommands, APlanThatIsKeptIsListedAndPrepared) {
  const std::string collection = brackenmere();
  const Outcome made = keepAWeek(collection);
  ASSERT_EQ(made.status, 0) << made.err;
  EXPECT_THAT(made.err, HasSubstr("kept as rotation"));
  const json listed = foxes(collection);
  ASSERT_EQ(listed.size(), 1U);
  EXPECT_EQ(listed[0].at("from"), "2026-11-30");
  EXPECT_EQ(listed[0].at("until"), "2026-12-06");
  EXPECT_EQ(bowlsOn(collection, "2026-12-02").size(), 1U);
  EXPECT_EQ(bowlsOn(collection, "2026-12-03").size(), 0U);
  const Outcome again = keepAWeek(collection);
  EXPECT_NE(again.status, 0);
  EXPECT_THAT(again.err, HasSubstr("has a rotation from 2026-11-30 to 2026-12-06"));
}

TEST(KeptRotationCommands, OneIsShownWithWhatIsBoughtForIt) {
  const std::string collection = brackenmere();
  ASSERT_EQ(keepAWeek(collection).status, 0);
  const std::string number = std::to_string(foxes(collection)[0].at("rotation").get<int>());
  const Outcome shown = tarebowl({"rotations", collection, "--rotation", number});
  ASSERT_EQ(shown.status, 0) << shown.err;
  const json plan = json::parse(shown.out);
  EXPECT_EQ(plan.at("days").size(), 7U);
  EXPECT_TRUE(plan.at("days")[3].at("grams").empty());
  EXPECT_FALSE(plan.at("purchase_groups").empty());
  const Outcome table = tarebowl({"rotations", collection, "--rotation", number, "--table"});
  EXPECT_THAT(table.out, HasSubstr("To buy for 3 animals"));
  EXPECT_THAT(table.out, HasSubstr("in all"));
  const Outcome kept = tarebowl({"rotations", collection, "--rotation", number, "--as-kept"});
  EXPECT_EQ(json::parse(kept.out).at("format"), "tarebowl-kept-rotation/1");
  const Outcome unknown = tarebowl({"rotations", collection, "--rotation", "999"});
  EXPECT_EQ(unknown.status, 2);
  EXPECT_THAT(unknown.err, HasSubstr("no rotation 999"));
}

TEST(KeptRotationCommands, DaysThatAreOverStayWhenTheRestIsPlannedAnew) {
  const std::string collection = brackenmere();
  ASSERT_EQ(keepAWeek(collection).status, 0);
  const std::string number = std::to_string(foxes(collection)[0].at("rotation").get<int>());
  const json before = json::parse(tarebowl({"rotations", collection, "--rotation", number}).out);
  const Outcome again =
      tarebowl({"replan", collection, "--rotation", number, "--day", "2026-12-02", "--seconds", "1"});
  ASSERT_EQ(again.status, 0) << again.err;
  const json after = json::parse(tarebowl({"rotations", collection, "--rotation", number}).out);
  for (const std::size_t day : {0U, 1U}) {
    EXPECT_EQ(after.at("days")[day].at("grams"), before.at("days")[day].at("grams"));
    EXPECT_EQ(after.at("days")[day].at("over"), true);
  }
  EXPECT_EQ(after.at("days")[2].at("over"), false);
  EXPECT_EQ(foxes(collection)[0].at("planned_from"), "2026-12-02");
  const Outcome late = tarebowl({"replan", collection, "--rotation", number, "--day", "2026-12-07"});
  EXPECT_EQ(late.status, 2);
  EXPECT_THAT(late.err, HasSubstr("no day of it is left to plan"));
}

/// What the foxes are given of a food on a day of their rotation, by the day's place.
double gramsOf(const std::string& collection, const std::string& number, std::size_t day,
               const std::string& food) {
  const json plan = json::parse(tarebowl({"rotations", collection, "--rotation", number}).out);
  const json& grams = plan.at("days").at(day).at("grams");
  return grams.contains(food) ? grams.at(food).get<double>() : 0.0;
}

/// A food that is fed on the first day.
std::string aFoodOfMonday(const std::string& collection, const std::string& number) {
  const json plan = json::parse(tarebowl({"rotations", collection, "--rotation", number}).out);
  return plan.at("days").at(0).at("grams").items().begin().key();
}

/// The foxes' diet asks for each of its foods every day.
TEST(KeptRotationCommands, WhatHardRulesForbidIsNotKept) {
  const std::string collection = brackenmere();
  ASSERT_EQ(keepAWeek(collection).status, 0);
  const std::string number = std::to_string(foxes(collection)[0].at("rotation").get<int>());
  const std::string food = aFoodOfMonday(collection, number);
  const double grams = gramsOf(collection, number, 0, food);
  const Outcome moved = tarebowl({"adapt", collection, "--rotation", number, "--food", food, "--day",
                                  "2026-11-30", "--to", "2026-12-01", "--today", "2026-11-29"});
  EXPECT_EQ(moved.status, 3);
  EXPECT_THAT(moved.err, HasSubstr("nothing was kept"));
  EXPECT_EQ(gramsOf(collection, number, 0, food), grams);
}

/// A food of the monkeys' fortnight in the sample that is fed on its first day and not on its second.
std::string aFoodOfTheFirstDayAlone(const std::string& collection, const std::string& number) {
  const json plan = json::parse(tarebowl({"rotations", collection, "--rotation", number}).out);
  const json& second = plan.at("days").at(1).at("grams");
  for (const auto& [food, grams] : plan.at("days").at(0).at("grams").items())
    if (grams.get<double>() > 0.0 && !second.contains(food)) return food;
  return {};
}

TEST(KeptRotationCommands, AFoodGoesToAnotherDayAndTheRestFollows) {
  const std::string collection = brackenmere();
  const json listed =
      json::parse(tarebowl({"rotations", collection, "--diet", "monkey-daily"}).out).at("rotations");
  ASSERT_EQ(listed.size(), 1U);
  const std::string number = std::to_string(listed[0].at("rotation").get<int>());
  const std::string food = aFoodOfTheFirstDayAlone(collection, number);
  ASSERT_FALSE(food.empty());
  const double grams = gramsOf(collection, number, 0, food);
  const Outcome moved = tarebowl({"adapt", collection, "--rotation", number, "--food", food, "--day",
                                  "2026-11-30", "--to", "2026-12-01", "--today", "2026-11-29"});
  EXPECT_LE(moved.status, 1) << moved.err;
  EXPECT_EQ(gramsOf(collection, number, 0, food), 0.0);
  EXPECT_EQ(gramsOf(collection, number, 1, food), grams);
  EXPECT_EQ(json::parse(tarebowl({"rotations", collection, "--rotation", number}).out).at("status"),
            "balanced")
      << "the other days make up for it";
}

TEST(KeptRotationCommands, ACellIsGivenGramsLockedAndFree) {
  const std::string collection = brackenmere();
  ASSERT_EQ(keepAWeek(collection).status, 0);
  const std::string number = std::to_string(foxes(collection)[0].at("rotation").get<int>());
  const std::string food = aFoodOfMonday(collection, number);
  const double other = gramsOf(collection, number, 0, food) + 1.0;
  const auto adapt = [&](const std::vector<std::string>& words) {
    std::vector<std::string> all{"adapt", collection, "--rotation", number,    "--food",
                                 food,    "--day",    "2026-11-30", "--today", "2026-11-29"};
    all.insert(all.end(), words.begin(), words.end());
    return tarebowl(all);
  };
  EXPECT_LE(adapt({"--grams", std::to_string(other)}).status, 1);
  EXPECT_EQ(gramsOf(collection, number, 0, food), other);
  const auto locked = [&] {
    const json kept = json::parse(tarebowl({"rotations", collection, "--rotation", number, "--as-kept"}).out);
    return kept.dump().find("\"locked\":true") != std::string::npos;
  };
  EXPECT_TRUE(locked());
  EXPECT_LE(adapt({"--free"}).status, 1);
  EXPECT_FALSE(locked());
  EXPECT_EQ(gramsOf(collection, number, 0, food), other) << "free, but as it was";
  EXPECT_LE(adapt({"--lock"}).status, 1);
  EXPECT_TRUE(locked());
}

TEST(KeptRotationCommands, WhatCannotBeAdaptedIsSaid) {
  const std::string collection = brackenmere();
  ASSERT_EQ(keepAWeek(collection).status, 0);
  const std::string number = std::to_string(foxes(collection)[0].at("rotation").get<int>());
  const std::string food = aFoodOfMonday(collection, number);
  const auto refused = [&](const std::string& code, const std::string& day, const std::string& to) {
    const Outcome outcome = tarebowl({"adapt", collection, "--rotation", number, "--food", code, "--day", day,
                                      "--to", to, "--today", "2026-12-01"});
    EXPECT_EQ(outcome.status, 2);
    return outcome.err;
  };
  EXPECT_THAT(refused("no-such-food", "2026-12-01", "2026-12-02"), HasSubstr("not a food of the rotation"));
  EXPECT_THAT(refused(food, "2026-12-01", "2026-12-09"), HasSubstr("from 2026-11-30 to 2026-12-06"));
  EXPECT_THAT(refused(food, "2026-11-30", "2026-12-02"), HasSubstr("is over: what was fed stays"));
  EXPECT_EQ(
      tarebowl({"adapt", collection, "--rotation", number, "--food", food, "--day", "2026-11-30"}).status, 2);
}

}  // namespace
}  // namespace tarebowl::app
