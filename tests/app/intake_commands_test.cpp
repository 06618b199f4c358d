// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/own_collections.h"
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <sstream>

namespace tarebowl::app {
namespace {

using nlohmann::json;
using testing::HasSubstr;

/// The whole invented sample as a collection, read in once.
const std::string& brackenmere() {
  static const std::string kFile = sampleCollection("intake.tarebowl");
  return kFile;
}

json intakeOf(const std::string& group, const std::string& from, const std::string& to) {
  const Outcome outcome = tarebowl({"intake", brackenmere(), "--group", group, "--from", from, "--to", to});
  EXPECT_EQ(outcome.status, 0) << outcome.err;
  return json::parse(outcome.out);
}

const json& foodOf(const json& intake, const std::string& code) {
  return *std::ranges::find_if(intake.at("foods"), [&](const json& food) { return food.at("food") == code; });
}

TEST(IntakeCommand, TellsWhatWasOfferedLeftAndEaten) {
  const json intake = intakeOf("fennecs", "2026-10-12", "2026-11-24");
  EXPECT_EQ(intake.at("format"), "tarebowl-intake/1");
  EXPECT_TRUE(intake.at("invented").get<bool>());
  EXPECT_EQ(intake.at("days"), 44);
  const json& courgette = foodOf(intake, "courgette-raw");
  EXPECT_LT(courgette.at("eaten_fraction").get<double>(), 0.3);  // they leave their vegetables
  EXPECT_GT(courgette.at("left_as_offered_g").get<double>(), courgette.at("left_g").get<double>());
  EXPECT_GT(foodOf(intake, "chick-day-old").at("eaten_fraction").get<double>(), 0.9);
  // Offered is eaten, left as offered and lost.
  for (const json& food : intake.at("foods"))
    EXPECT_NEAR(food.at("offered_g").get<double>(),
                food.at("eaten_g").get<double>() + food.at("left_as_offered_g").get<double>() +
                    food.at("lost_g").get<double>(),
                1e-6);
}

TEST(IntakeCommand, SetsWhatWasEatenBesideTheTargets) {
  const json intake = intakeOf("fennecs", "2026-10-12", "2026-11-24");
  ASSERT_FALSE(intake.at("targets").empty());
  for (const json& target : intake.at("targets")) EXPECT_TRUE(target.contains("offered_state"));
  EXPECT_EQ(intake.at("ca_to_p").size(), 44U);
}

TEST(IntakeCommand, WritesARowForEachDayAndNutrientWithNothingInPlaceOfWhatIsMissing) {
  const Outcome outcome = tarebowl({"intake", brackenmere(), "--group", "dragons", "--from", "2026-08-07",
                                    "--to", "2026-08-16", "--nutrient", "CA,P", "--csv"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  std::istringstream lines(outcome.out);
  std::string line;
  std::getline(lines, line);
  EXPECT_EQ(line, "day,nutrient,unit,animals,offered,eaten,sd,at_least,at_most,coverage");
  std::size_t rows = 0;
  while (std::getline(lines, line)) {
    ++rows;
    EXPECT_EQ(std::ranges::count(line, ','), 9) << line;
  }
  EXPECT_EQ(rows, 20U);
}

TEST(IntakeCommand, SaysInWordsWhatIsToBeLookedInto) {
  const Outcome outcome = tarebowl({"intake", brackenmere(), "--group", "dragons", "--from", "2026-09-15",
                                    "--to", "2026-09-30", "--table"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  EXPECT_THAT(outcome.out, HasSubstr("2026-09-22, endive-raw: more was left than offered"));
  EXPECT_THAT(outcome.out, HasSubstr("16 days with a bowl"));
  EXPECT_THAT(outcome.out, HasSubstr("invented"));
}

TEST(IntakeCommand, AnswersWrongDaysGroupsAndNutrientsWithASentence) {
  const std::string& file = brackenmere();
  const Outcome later =
      tarebowl({"intake", file, "--group", "dragons", "--from", "2026-12-01", "--to", "2026-11-01"});
  EXPECT_EQ(later.status, 2);
  EXPECT_THAT(later.err, HasSubstr("--from: expected a day that is not after 2026-11-01"));
  const Outcome nobody = tarebowl({"intake", file, "--group", "unicorns"});
  EXPECT_EQ(nobody.status, 2);
  EXPECT_THAT(nobody.err, HasSubstr("dragons"));
  const Outcome misspelt = tarebowl({"intake", file, "--group", "dragons", "--nutrient", "PROCN"});
  EXPECT_EQ(misspelt.status, 2);
  EXPECT_THAT(misspelt.err, HasSubstr("PROCNT"));
  EXPECT_EQ(tarebowl({"intake", file, "--group", "dragons", "--to", "today"}).status, 2);
}

TEST(IntakeCommand, WritesTheReportOfAStudy) {
  const auto file = fileWith("fennec-study.html", "");
  const Outcome written = tarebowl({"intake", brackenmere(), "--group", "fennecs", "--from", "2026-10-12",
                                    "--to", "2026-11-24", file.string()});
  EXPECT_EQ(written.status, 0) << written.err;
  std::ifstream in(file);
  const std::string page{std::istreambuf_iterator<char>(in), {}};
  EXPECT_THAT(page, HasSubstr("INVENTED SAMPLE"));
  EXPECT_THAT(page, HasSubstr("The mean day against the targets"));
  const Outcome other = tarebowl({"intake", brackenmere(), "--group", "fennecs", "study.doc"});
  EXPECT_EQ(other.status, 2);
  EXPECT_THAT(other.err, HasSubstr("NAME.html or NAME.xlsx"));
}

TEST(ZooIntakeCommand, SetsAllGroupsSideBySide) {
  const Outcome outcome = tarebowl({"zoo-intake", brackenmere(), "--from", "2026-10-26", "--to", "2026-11-24",
                                    "--nutrient", "CA", "--csv"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  EXPECT_THAT(outcome.out,
              HasSubstr("section,group,days,days_known,bowls,nutrient,unit,offered,eaten,coverage"));
  for (const char* group : {"fennecs", "dragons", "lemurs", "tenrecs"})
    EXPECT_THAT(outcome.out, HasSubstr(std::string(",") + group + ",30,"));
}

TEST(IntakeCommand, DaysWithoutABowlAreNone) {
  const json intake = intakeOf("fennecs", "2025-01-01", "2025-01-31");
  EXPECT_EQ(intake.at("days"), 0);
  EXPECT_TRUE(intake.at("foods").empty());
}

}  // namespace
}  // namespace tarebowl::app
