// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/feeding_reading.h"
#include "core/store/food_reading.h"
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

constexpr const char* kDay = "2026-11-25";

intake::Bowl bowlOf(const std::string& collection, const char* group) {
  const auto opened = store::Collection::open(collection, "2026-11-25T07:30:00Z");
  return store::findBowl(opened, {group, quantity::parseDate(kDay).value(), 1}).value();
}

Outcome weighIn(const std::string& collection, const std::string& lines, const char* option = nullptr) {
  std::vector<std::string> arguments{"weigh-in", collection, "-", "--day", kDay};
  if (option != nullptr) arguments.emplace_back(option);
  return tarebowl(arguments, "group,bowl,food,g,reason\n" + lines);
}

TEST(KitchenCommands, PrepGivesTheBowlsOfASectionInGramsForThoseWhoShareThem) {
  const Outcome outcome = tarebowl({"prep", brackenmere(), "--day", kDay, "--section", "Small Mammals"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const json sheet = json::parse(outcome.out);
  EXPECT_EQ(sheet.at("format"), "tarebowl-prep/1");
  EXPECT_TRUE(sheet.at("invented").get<bool>());
  for (const json& bowl : sheet.at("bowls"))
    if (bowl.at("group") == "fennecs") {
      EXPECT_EQ(bowl.at("animals"), 3);
      EXPECT_EQ(bowl.at("items").at(0).at("food"), "chick-day-old");
      EXPECT_EQ(bowl.at("items").at(0).at("planned_g"),
                120);  // 40 g each, sample-data/diets/fennec-evening.json
    }
  EXPECT_EQ(sheet.at("without_bowl").at(0).at("group"),
            "streaked-tenrecs");  // theirs is still to be designed
  EXPECT_EQ(sheet.at("thaw_for_tomorrow").at(0).at("food"), "chick-day-old");
  EXPECT_FALSE(sheet.at("gut_load_for_tomorrow").empty());
}

TEST(KitchenCommands, PrepNamesTheSectionsWhereNoneIsNamed) {
  const Outcome outcome = tarebowl({"prep", brackenmere(), "--day", kDay});
  EXPECT_EQ(outcome.status, 2);
  EXPECT_THAT(outcome.err, HasSubstr("Reptiles and Bats, Small Mammals"));
}

TEST(KitchenCommands, PrepWritesAPageAndLabels) {
  const std::string collection = brackenmere();
  const auto page = fileWith("sheet.html", "");
  const Outcome outcome =
      tarebowl({"prep", collection, page.string(), "--day", kDay, "--section", "Reptiles and Bats"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  std::ifstream in(page);
  std::stringstream text;
  text << in.rdbuf();
  EXPECT_THAT(text.str(), HasSubstr("Rodrigues fruit bats"));
  EXPECT_EQ(
      tarebowl({"prep", collection, page.string(), "--labels", "--section", "Reptiles and Bats"}).status, 0);
}

TEST(KitchenCommands, WeighInKeepsWhatWasWeighedAndOpensTheSheet) {
  const std::string collection = brackenmere();
  const Outcome outcome = weighIn(collection, "fennecs,1,chick-day-old,120,\nfennecs,1,2,56.7,\n");
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  EXPECT_THAT(outcome.out, HasSubstr("2 entries kept"));
  const intake::Bowl bowl = bowlOf(collection, "fennecs");
  EXPECT_EQ(bowl.items.at(0).weighings.at(0).actual, quantity::Grams(120));
  EXPECT_EQ(bowl.items.at(1).weighings.at(0).actual, quantity::Grams(56.7));  // 3 * 18.9 g planned
}

TEST(KitchenCommands, TwoThousandTypedForTwoHundredIsAskedAboutAndKeptWhenConfirmed) {
  const std::string collection = brackenmere();
  const Outcome asked = weighIn(collection, "fennecs,1,chick-day-old,1200,\n");
  EXPECT_EQ(asked.status, 2);
  EXPECT_THAT(asked.err, HasSubstr("line 2: 1200 g chick-day-old for Fennec foxes"));
  EXPECT_THAT(asked.err, HasSubstr("ten times the plan"));
  EXPECT_THAT(asked.err, HasSubstr("nothing was written"));
  ASSERT_EQ(weighIn(collection, "fennecs,1,chick-day-old,1200,\n", "--confirm").status, 0);
  EXPECT_EQ(bowlOf(collection, "fennecs").items.at(0).weighings.at(0).actual, quantity::Grams(1200));
  ASSERT_EQ(weighIn(collection, "fennecs,1,chick-day-old,120,a zero too many\n").status, 0);
  const auto weighings = bowlOf(collection, "fennecs").items.at(0).weighings;
  EXPECT_EQ(weighings.size(), 2U);
  EXPECT_EQ(intake::entryThatCounts(weighings)->actual, quantity::Grams(120));
}

TEST(KitchenCommands, AWrongLineIsNamedAndNothingIsWritten) {
  const Outcome outcome =
      weighIn(brackenmere(), "fennecs,1,chick-day-old,120,\nfoxes,1,kale,3,\nfennecs,7,1,3,\n");
  EXPECT_EQ(outcome.status, 2);
  EXPECT_THAT(outcome.err, HasSubstr("line 3: there is no group foxes"));
  EXPECT_THAT(outcome.err, HasSubstr("line 4: fennecs has no bowl 7"));
  EXPECT_THAT(outcome.err, HasSubstr("nothing was written"));
}

TEST(KitchenCommands, LeftoversAreTakenFoodByFoodOrTogether) {
  const std::string collection = brackenmere();
  ASSERT_EQ(weighIn(collection, "fennecs,1,chick-day-old,120,\n").status, 0);
  const Outcome outcome =
      tarebowl({"leftovers", collection, "-", "--day", kDay},
               "group,bowl,food,how,left_g,lost_g,reason\nfennecs,1,chick-day-old,all-eaten,,,\n"
               "fennecs,1,*,weighed,31.5,,\nfennecs,1,carrot-boiled,stolen,,4,\n");
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const intake::Bowl bowl = bowlOf(collection, "fennecs");
  EXPECT_EQ(bowl.remainders.at(0).left, quantity::Grams(31.5));
  EXPECT_EQ(bowl.items.at(0).leftovers.at(0).kind, intake::LeftoverKind::AllEaten);
  EXPECT_EQ(bowl.items.at(2).leftovers.at(0).lost, quantity::Grams(4));
}

TEST(KitchenCommands, TheToleranceIsARuleThatTheHouseCanSet) {
  const std::string collection = brackenmere();
  const json rule = json::parse(tarebowl({"tolerance", collection}).out);
  EXPECT_EQ(rule.at("of_bowl"), 0.02);
  EXPECT_EQ(rule.at("of_body"), 0.003);
  ASSERT_EQ(tarebowl({"tolerance", collection, "--of-bowl", "0.05", "--least-steps", "3"}).status, 0);
  const json changed = json::parse(tarebowl({"tolerance", collection}).out);
  EXPECT_EQ(changed.at("of_bowl"), 0.05);
  EXPECT_EQ(changed.at("least_steps"), 3);
  EXPECT_EQ(changed.at("of_step"), 0.5);
  EXPECT_EQ(tarebowl({"tolerance", collection, "--of-bowl", "-1"}).status, 2);
}

TEST(KitchenCommands, StockIsListedAndChanged) {
  const std::string collection = brackenmere();
  const Outcome outcome = tarebowl({"stock", collection, "--out", "kale-raw,endive-raw", "--table"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const auto opened = store::Collection::open(collection, "2026-11-25T07:30:00Z");
  EXPECT_FALSE(store::findFood(opened, "kale-raw")->record.food.inStock);
  EXPECT_TRUE(store::findFood(opened, "carrot-raw")->record.food.inStock);
  EXPECT_EQ(tarebowl({"stock", collection, "--in", "kale-raw"}).status, 0);
  EXPECT_TRUE(store::findFood(opened, "kale-raw")->record.food.inStock);
  EXPECT_THAT(tarebowl({"stock", collection, "--out", "unicorn"}).err, HasSubstr("there is no food unicorn"));
}

}  // namespace
}  // namespace tarebowl::app
