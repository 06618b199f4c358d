// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace tarebowl::app {
namespace {

using nlohmann::json;
using testing::HasSubstr;

std::string rules() {
  return sample("rotation/lemur-week.json");
}

TEST(RotateCommand, AWeekForTheLemursIsBalancedAndVaries) {
  const Outcome outcome = tarebowl({"rotate", sample("lemur-no-fruit.json"), "--rules", rules()});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const json plan = json::parse(outcome.out);
  EXPECT_EQ(plan.at("status"), "balanced");
  EXPECT_EQ(plan.at("invented"), true);
  ASSERT_EQ(plan.at("days").size(), 7U);
  EXPECT_EQ(plan.at("wishes").at("value"), 0);
  for (const json& day : plan.at("days")) EXPECT_FALSE(day.at("grams").contains("banana-raw"));
}

TEST(RotateCommand, ATableHasADayInEachColumnAndWhatToBuy) {
  const Outcome outcome =
      tarebowl({"rotate", sample("lemur-no-fruit.json"), "--rules", rules(), "--days", "3", "--table"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  EXPECT_THAT(outcome.out, HasSubstr("INVENTED SAMPLE"));
  EXPECT_THAT(outcome.out, HasSubstr("11-30"));
  EXPECT_THAT(outcome.out, HasSubstr("12-02"));
  EXPECT_THAT(outcome.out, HasSubstr("To buy for 5 animals"));
}

TEST(RotateCommand, WhatWasFedStaysWhereTheRestIsPlannedAnew) {
  const Outcome first = tarebowl({"rotate", sample("lemur-no-fruit.json"), "--rules", rules()});
  ASSERT_EQ(first.status, 0) << first.err;
  json fed = json::parse(first.out);
  fed["days"][0]["grams"] = {{"kale-raw", 60}};  // all that had come
  const std::string file = fileWith("fed.json", fed.dump()).string();
  const Outcome second = tarebowl({"rotate", sample("lemur-no-fruit.json"), "--rules", rules(), "--replan",
                                   file, "--today", "2026-12-02"});
  ASSERT_EQ(second.status, 0) << second.err;
  const json plan = json::parse(second.out);
  EXPECT_EQ(plan.at("days")[0].at("grams"), (json{{"kale-raw", 60}}));
  EXPECT_EQ(plan.at("days")[1].at("grams"), fed.at("days")[1].at("grams"));
  EXPECT_EQ(plan.at("days")[1].at("over"), true);
  EXPECT_EQ(plan.at("days")[2].at("over"), false);
}

TEST(RotateCommand, ARuleThatNoDayCanKeepIsImpossibleAndNamed) {
  const std::string file = fileWith("impossible-rules.json", R"({"format": "tarebowl-rotation-rules/1",
      "structure": [{"id": "roots", "group": "raw root", "at_least": 2}]})")
                               .string();
  const Outcome outcome = tarebowl({"rotate", sample("lemur-no-fruit.json"), "--rules", file, "--table"});
  EXPECT_EQ(outcome.status, 3);  // the problem itself wants one root a day at most
  EXPECT_THAT(outcome.out, HasSubstr("Impossible"));
}

TEST(RotateCommand, RulesThatCannotBeReadAreRefusedInOneLine) {
  const std::string file =
      fileWith("wrong-rules.json", R"({"format": "tarebowl-rotation-rules/2"})").string();
  const Outcome outcome = tarebowl({"rotate", sample("lemur-no-fruit.json"), "--rules", file});
  EXPECT_EQ(outcome.status, 2);
  EXPECT_EQ(outcome.out, "");
  EXPECT_THAT(outcome.err, HasSubstr("tarebowl-rotation-rules/1"));
  EXPECT_EQ(tarebowl({"rotate", sample("lemur-no-fruit.json")}).status, 2);
}

}  // namespace
}  // namespace tarebowl::app
