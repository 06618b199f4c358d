// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// From the plan of a study to its report with what was digested.
#include "tests/app/own_collections.h"
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <iterator>

namespace tarebowl::app {
namespace {

using nlohmann::json;
using testing::HasSubstr;

std::string brackenmere() {
  return sampleCollection("studies.tarebowl");
}

TEST(PlanStudyCommand, SaysHowManyDaysForThePrecisionWanted) {
  const std::string file = brackenmere();
  const auto days = [&](const char* percent) {
    const Outcome outcome = tarebowl({"plan-study", file, "--group", "fennecs", "--from", "2026-11-25",
                                      "--nutrient", "CA", "--precision", percent});
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    return json::parse(outcome.out).at("days").get<int>();
  };
  EXPECT_GT(days("2"), days("10"));
  const Outcome text =
      tarebowl({"plan-study", file, "--group", "fennecs", "--from", "2026-11-25", "--table"});
  EXPECT_THAT(text.out, HasSubstr("Put out a control pan in Small Mammals each day"));
  const auto page = fileWith("plan.html", "");
  ASSERT_EQ(
      tarebowl({"plan-study", file, "--group", "fennecs", "--from", "2026-11-25", page.string()}).status, 0);
  std::ifstream in(page);
  EXPECT_THAT((std::string{std::istreambuf_iterator<char>(in), {}}), HasSubstr("Pans put out"));
}

TEST(PlanStudyCommand, WhatCannotBePlannedIsToldWithWhatToDo) {
  const std::string file = brackenmere();
  const Outcome unfed = tarebowl({"plan-study", file, "--group", "fennecs", "--from", "2027-03-01"});
  EXPECT_EQ(unfed.status, 3);
  EXPECT_THAT(unfed.err, HasSubstr("no bowl in the week before --from"));
  EXPECT_EQ(tarebowl({"plan-study", file, "--group", "fennecs", "--precision", "0"}).status, 2);
  const Outcome two = tarebowl({"plan-study", file, "--group", "fennecs", "--nutrient", "CA,P"});
  EXPECT_EQ(two.status, 2);
  EXPECT_THAT(two.err, HasSubstr("expected one tagname"));
  EXPECT_EQ(tarebowl({"plan-study", file, "--group", "fennecs", "plan.doc"}).status, 2);
}

TEST(FaecesCommand, WhatWasCollectedStandsInTheReportOfItsDays) {
  const std::string file = brackenmere();
  const Outcome kept =
      tarebowl({"faeces", file, "--group", "fennecs", "--from", "2026-11-10", "--to", "2026-11-14", "--fresh",
                "100", "--dry-matter", "25", "--nutrient", "CA=2000±100", "--source", "invented"});
  ASSERT_EQ(kept.status, 0) << kept.err;
  EXPECT_EQ(json::parse(kept.out).at("faeces").at(0).at("values").at(0).at("sd"), 100.0);
  const Outcome report =
      tarebowl({"intake", file, "--group", "fennecs", "--from", "2026-11-08", "--to", "2026-11-16"});
  ASSERT_EQ(report.status, 0) << report.err;
  const json trial = json::parse(report.out).at("digestibility").at(0);
  EXPECT_EQ(trial.at("days"), 5);
  const json& dryMatter = trial.at("lines").at(0);
  EXPECT_NEAR(dryMatter.at("in_faeces").get<double>(), 25.0, 1e-9);                 // 100 g · 25 / 100
  EXPECT_NEAR(trial.at("lines").at(1).at("in_faeces").get<double>(), 500.0, 1e-9);  // 25 g · 2000 mg / 100 g
  for (const json& line : trial.at("lines"))
    if (!line.at("apparent").is_null()) {
      const double eaten = line.at("eaten").get<double>();
      EXPECT_NEAR(line.at("apparent").get<double>(), (eaten - line.at("in_faeces").get<double>()) / eaten,
                  1e-9);
    }
  const Outcome table = tarebowl(
      {"intake", file, "--group", "fennecs", "--from", "2026-11-08", "--to", "2026-11-16", "--table"});
  EXPECT_THAT(table.out, HasSubstr("apparently digested"));
  const Outcome without =
      tarebowl({"intake", file, "--group", "fennecs", "--from", "2026-11-12", "--to", "2026-11-16"});
  EXPECT_TRUE(json::parse(without.out).at("digestibility").empty()) << "its days are not all in the report";
}

TEST(FaecesCommand, WhatIsMissingOrWrongIsNamedAndNothingIsKept) {
  const std::string file = brackenmere();
  const auto complaint = [&](std::vector<std::string> further) {
    std::vector<std::string> arguments{"faeces", file, "--group", "fennecs", "--fresh", "100"};
    arguments.insert(arguments.end(), further.begin(), further.end());
    const Outcome outcome = tarebowl(arguments);
    EXPECT_NE(outcome.status, 0);
    return outcome.err;
  };
  EXPECT_THAT(complaint({"--dry-matter", "25"}), HasSubstr("--from"));
  EXPECT_THAT(complaint({"--from", "2026-11-10"}), HasSubstr("--dry-matter"));
  EXPECT_THAT(complaint({"--from", "2026-11-10", "--dry-matter", "250"}), HasSubstr("at most 100 g"));
  EXPECT_THAT(complaint({"--from", "2026-11-10", "--dry-matter", "25", "--nutrient", "CALC=1"}),
              HasSubstr("there is no CALC"));
  EXPECT_THAT(complaint({"--from", "2026-11-10", "--dry-matter", "25", "--nutrient", "CA"}),
              HasSubstr("TAGNAME=NUMBER"));
  EXPECT_THAT(complaint({"--from", "2026-11-10", "--dry-matter", "25", "--nutrient", "ENERC=100"}),
              HasSubstr("leave energy out"));
  const Outcome none = tarebowl({"faeces", file, "--group", "fennecs"});
  EXPECT_TRUE(json::parse(none.out).at("faeces").empty());
}

}  // namespace
}  // namespace tarebowl::app
