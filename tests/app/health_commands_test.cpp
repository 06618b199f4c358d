// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/health_verbs.h"
#include "tests/app/brackenmere.h"
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <sstream>

namespace tarebowl::app {
namespace {

using nlohmann::json;
using testing::HasSubstr;

TEST(HealthCommands, CalciumIsReviewedAsEatenAndADoseIsAdvised) {
  const std::string collection = brackenmere();
  const Outcome outcome = tarebowl({"calcium", collection, "--group", "dragons", "--from", "2026-08-07",
                                    "--to", "2026-08-16", "--supplement", "limestone", "--retained", "0.5"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const json review = json::parse(outcome.out);
  EXPECT_EQ(review.at("format"), "tarebowl-calcium/1");
  EXPECT_TRUE(review.at("invented").get<bool>());
  EXPECT_EQ(review.at("days").at("in_period"), 10);
  EXPECT_LT(review.at("ca_p").at("eaten").get<double>(), review.at("ca_p").at("offered").get<double>());
  EXPECT_EQ(review.at("nutrients").at(0).at("nutrient"), "CA");
  EXPECT_EQ(review.at("supplement").at("dose").at("answer"), "found");
  EXPECT_GE(review.at("supplement").at("ca_p_after").get<double>(), 1.0);
  EXPECT_EQ(review.at("supplement").at("retained"), 0.5);
  const Outcome table =
      tarebowl({"calcium", collection, "--group", "dragons", "--to", "2026-08-16", "--table"});
  EXPECT_THAT(table.out, HasSubstr("Ca:P"));
  EXPECT_THAT(table.out, HasSubstr("INVENTED SAMPLE"));
}

TEST(HealthCommands, NoIntakeInThePeriodIsSaidAndNotCountedAsNothing) {
  const Outcome outcome = tarebowl(
      {"calcium", brackenmere(), "--group", "dragons", "--from", "2025-01-01", "--to", "2025-01-10"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const json review = json::parse(outcome.out);
  EXPECT_EQ(review.at("days").at("with_bowls"), 0);
  EXPECT_TRUE(review.at("ca_p").at("eaten").is_null());
  EXPECT_TRUE(review.at("nutrients").at(0).at("eaten").at("per_day").is_null());
}

TEST(HealthCommands, LookBackFindsTheBroccoliAndSaysThatItIsNoCause) {
  const std::string collection = brackenmere();
  const Outcome outcome =
      tarebowl({"look-back", collection, "--group", "lemurs", "--sign", "faeces", "--day", "2026-11-17"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const json found = json::parse(outcome.out);
  EXPECT_EQ(found.at("format"), "tarebowl-look-back/1");
  const json& first = found.at("foods").at(0);
  EXPECT_EQ(first.at("food"), "broccoli-raw");
  EXPECT_GE(first.at("eaten_sign").get<int>(), 6);
  EXPECT_LE(first.at("not_eaten_sign").get<int>(), 4);
  EXPECT_TRUE(first.at("pointed_out").get<bool>());
  EXPECT_THAT(found.at("caution").get<std::string>(), HasSubstr("not what caused what"));
  const Outcome table = tarebowl(
      {"look-back", collection, "--group", "lemurs", "--sign", "faeces", "--day", "2026-11-17", "--table"});
  EXPECT_THAT(table.out, HasSubstr(" days with it, "));
  const Outcome none =
      tarebowl({"look-back", collection, "--group", "lemurs", "--sign", "faeces", "--day", "2026-11-20"});
  EXPECT_EQ(none.status, 2);
  EXPECT_THAT(none.err, HasSubstr("no sign of faeces on 2026-11-20"));
}

TEST(HealthCommands, WhatIsObservedCanBeLookedBackFromByItsNumber) {
  const std::string collection = brackenmere();
  const Outcome kept = tarebowl({"observe", collection, "--group", "fennecs", "--sign", "vomiting", "--day",
                                 "2026-11-20", "--time", "14:30"});
  ASSERT_EQ(kept.status, 0) << kept.err;
  const std::string number = kept.out.substr(std::string("observation ").size(),
                                             kept.out.find(" kept") - std::string("observation ").size());
  const Outcome outcome = tarebowl({"look-back", collection, "--observation", number, "--hours", "48"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const json found = json::parse(outcome.out);
  EXPECT_EQ(found.at("sign").at("kind"), "vomiting");
  EXPECT_EQ(found.at("hours"), 48);
  EXPECT_EQ(found.at("days").at("with_sign"), 1);
}

TEST(HealthCommands, BadInputIsRefusedWithWhatToDo) {
  const std::string collection = brackenmere();
  const auto refused = [&](std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), {"observe", collection, "--group", "lemurs"});
    const Outcome outcome = tarebowl(arguments);
    EXPECT_NE(outcome.status, 0);
    return outcome.err;
  };
  EXPECT_THAT(refused({"--sign", "faeces", "--score", "2"}), HasSubstr("--score needs its --scale"));
  EXPECT_THAT(refused({"--sign", "faeces", "--score", "9", "--scale", "faeces-7"}),
              HasSubstr("not on its scale"));
  EXPECT_THAT(refused({"--sign", "blood", "--blood", "calcium 9.6 mmol/l", "--day", "2026-11-20"}),
              HasSubstr("ordinary in mg/dl"));
  EXPECT_THAT(refused({"--sign", "blood", "--blood", "calcium much"}),
              HasSubstr("expected \"calcium 2.4 mmol/l\""));
  EXPECT_THAT(refused({"--sign", "limping", "--day", "2001-01-01"}),
              HasSubstr("nobody was in the group lemurs"));
  EXPECT_THAT(refused({"--sign", "limping", "--attach", "../x.pdf", "--day", "2026-11-20"}),
              HasSubstr("collection's folder"));
  const Outcome kept = tarebowl({"observe", collection, "--group", "lemurs", "--sign", "blood", "--blood",
                                 "calcium 9.6 mmol/l", "--day", "2026-11-20", "--confirm"});
  EXPECT_EQ(kept.status, 0) << kept.err;
}

TEST(HealthCommands, ThePageForTheFileHoldsCautionsSourcesAndTheMark) {
  const auto page = fileWith("calcium.html", "");
  const Outcome outcome = tarebowl({"calcium", brackenmere(), page.string(), "--group", "dragons", "--to",
                                    "2026-11-25", "--supplement", "limestone"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  std::ostringstream text;
  text << std::ifstream(page).rdbuf();
  for (const char* part : {"INVENTED SAMPLE", "Calcium review: ", "Smallest addition", "Ca:P", "Oxalate",
                           "Values of foods: ", "licensed vet"})
    EXPECT_THAT(text.str(), HasSubstr(part));
}

}  // namespace
}  // namespace tarebowl::app
