// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/brackenmere.h"
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace tarebowl::app {
namespace {

using nlohmann::json;
using testing::HasSubstr;

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
  const std::string collection = brackenmere(transfer::FeedingDays::LeftOut);
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
  const std::string collection = brackenmere(transfer::FeedingDays::LeftOut);
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
  const std::string collection = brackenmere(transfer::FeedingDays::LeftOut);
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

}  // namespace
}  // namespace tarebowl::app
