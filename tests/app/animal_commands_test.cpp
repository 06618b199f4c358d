// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"
#include "core/exchange/profile_json.h"
#include "core/store/profile_reading.h"
#include "core/store/verbs.h"
#include "core/transfer/herd_import.h"
#include "tests/app/program.h"
#include "tests/source_dir.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>

namespace tarebowl::app {
namespace {

using nlohmann::json;
using testing::HasSubstr;

constexpr const char* kDay = "2026-11-25";

struct Content {
  const char* tagname;
  double per100g;
};

void addFood(store::Collection& collection, const std::string& code, const std::string& group,
             const std::vector<Content>& contents) {
  const store::Author author{"Keeper A", "2026-11-25T07:30:00Z"};
  const store::FoodId id{
      store::addFood(collection, {.food = {.code = code, .name = code, .group = group, .invented = true}},
                     author)
          .id};
  food::Sample sample{.source = "invented report"};
  for (const Content& content : contents) {
    food::SampleValue value{.nutrient = food::findByTagname(content.tagname).value()};
    value.amount = quantity::AsFedContent(content.per100g);
    sample.values.push_back(value);
  }
  store::addSample(collection, id, sample, author);
}

/// The animals of the invented sample with a few invented foods.
std::string brackenmere() {
  const auto file = fileWith("brackenmere.tarebowl", "");
  std::filesystem::remove(file);
  const store::Author author{"Keeper A", "2026-11-25T07:30:00Z"};
  store::Collection collection = store::Collection::create(file, author);
  transfer::importHerd(collection, std::filesystem::path(TAREBOWL_SOURCE_DIR) / "sample-data" / "herd",
                       author);
  const std::vector<Content> leaf{{"WATER", 85}, {"PROCNT", 3},   {"FAT", 0.6}, {"ASH", 1.5},
                                  {"FIBC", 1.5}, {"CHOCDF", 9.9}, {"CA", 180},  {"P", 60}};
  addFood(collection, "kale", "leafy vegetable", leaf);
  addFood(collection, "endive", "leafy vegetable", leaf);
  addFood(collection, "beet", "raw root", leaf);
  addFood(collection, "banana", "fruit", leaf);
  return file.string();
}

TEST(AnimalCommands, AnimalsListsEveryGroupWithHeadcountMassAndProfile) {
  const Outcome outcome = tarebowl({"animals", brackenmere(), "--day", kDay});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const json read = json::parse(outcome.out);
  EXPECT_EQ(read.at("format"), "tarebowl-animals/1");
  EXPECT_EQ(read.at("groups").size(), 8U);
  for (const json& group : read.at("groups")) {
    if (group.at("code") == "lemurs") {
      EXPECT_EQ(group.at("animals"), 5);
      EXPECT_EQ(group.at("profile").at("code"), "brackenmere-ruffed-lemur");
    }
    if (group.at("code") == "streaked-tenrecs") {
      EXPECT_TRUE(group.at("profile").is_null());
    }
  }
  const Outcome table = tarebowl({"animals", brackenmere(), "--day", kDay, "--table"});
  EXPECT_THAT(table.out, HasSubstr("8 groups on 2026-11-25"));
  EXPECT_THAT(table.out, HasSubstr("brackenmere-streaked-tenrec, none in force"));
}

TEST(AnimalCommands, AGroupShowsItsAnimalsAndAnEnergyNeedToCheckByHand) {
  const Outcome outcome = tarebowl({"animals", brackenmere(), "--group", "lemurs", "--day", kDay});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const json group = json::parse(outcome.out).at("groups")[0];
  EXPECT_EQ(group.at("members").size(), 5U);
  const json& steps = group.at("energy").at("steps");
  double value = group.at("body_mass_kg");
  EXPECT_DOUBLE_EQ(steps[0].at("low"), value);
  value = std::pow(value, steps[1].at("by").get<double>());
  EXPECT_DOUBLE_EQ(steps[1].at("low"), value);
  EXPECT_DOUBLE_EQ(steps[2].at("low"), value * 70.0);
  const Outcome table = tarebowl({"animals", brackenmere(), "--group", "dragons", "--day", kDay, "--table"});
  EXPECT_THAT(table.out, HasSubstr("this is no feeding rate"));
  EXPECT_THAT(table.out, HasSubstr("Dragon 1"));
  EXPECT_THAT(table.out, HasSubstr("does not replace"));
}

TEST(AnimalCommands, TargetsSayWhereEachWasStatedAndHowSureItsSourceIs) {
  const Outcome outcome = tarebowl({"targets", brackenmere(), "--group", "lemurs", "--day", kDay, "--json"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const json read = json::parse(outcome.out);
  EXPECT_EQ(read.at("format"), "tarebowl-targets/1");
  bool found = false;
  for (const json& target : read.at("targets")) {
    EXPECT_TRUE(target.contains("provenance")) << target;
    if (target.at("id") != "iron") continue;
    found = true;
    EXPECT_EQ(target.at("max"), 100);
    EXPECT_EQ(target.at("stated_in").at("code"), "brackenmere-ruffed-lemur");
    EXPECT_EQ(target.at("in_place_of")[0].at("code"), "primate-nrc2003");
  }
  EXPECT_TRUE(found);
  const Outcome table = tarebowl({"targets", brackenmere(), "--group", "bats", "--day", kDay, "--table"});
  EXPECT_THAT(table.out, HasSubstr("No table of requirements of fruit bats has been published"));
}

TEST(AnimalCommands, WhatHasNoTargetsSaysWhyAndWhatThereIs) {
  const Outcome none = tarebowl({"targets", brackenmere(), "--group", "streaked-tenrecs", "--day", kDay});
  EXPECT_EQ(none.status, 2);
  EXPECT_THAT(none.err, HasSubstr("no version is in force on 2026-11-25"));
  const Outcome unknown = tarebowl({"targets", brackenmere(), "--group", "unicorns"});
  EXPECT_EQ(unknown.status, 2);
  EXPECT_THAT(unknown.err, HasSubstr("there is no group unicorns; it has bats, dragons"));
  EXPECT_EQ(tarebowl({"targets", brackenmere(), "--group", "bats", "--day", "yesterday"}).status, 2);
}

TEST(AnimalCommands, SolveBuildsTheProblemFromTheGroup) {
  const Outcome outcome = tarebowl(
      {"solve", brackenmere(), "--group", "lemurs", "--day", kDay, "--foods", "kale,endive,beet,banana"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const json result = json::parse(outcome.out);
  EXPECT_EQ(result.at("format"), "tarebowl-result/1");
  EXPECT_EQ(result.at("grams").value("banana", 0.0), 0.0);
  EXPECT_GE(result.at("grams").at("kale").get<double>(), 15.0);  // two leafy vegetables of 15 g at least
  EXPECT_THAT(outcome.err, HasSubstr("not given: banana (no-fruit: cultivated fruit is far sweeter"));
  bool energy = false;
  for (const json& target : result.at("targets")) energy = energy || target.at("id") == "energy";
  EXPECT_TRUE(energy);
}

TEST(AnimalCommands, SolveTakesTheFoodsFromAFileToo) {
  const std::string list = fileWith("foods.txt", "kale\nendive\r\n\nbeet\n").string();
  const std::string file = brackenmere();
  const Outcome outcome = tarebowl({"solve", file, "--group", "lemurs", "--foods", list, "--day", kDay});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  EXPECT_EQ(json::parse(outcome.out).at("grams").size(), 3U);
  const Outcome unknown =
      tarebowl({"solve", file, "--group", "lemurs", "--foods", "kale,hay", "--day", kDay});
  EXPECT_EQ(unknown.status, 2);
  EXPECT_THAT(unknown.err, HasSubstr("there is no food hay"));
  EXPECT_EQ(tarebowl({"solve", file, "--group", "lemurs"}).status, 2);
}

TEST(AnimalCommands, AProfileGoesOutAndComesIntoAnotherCollection) {
  const std::string from = brackenmere();
  const std::string written = fileWith("dragon.json", "").string();
  const Outcome out = tarebowl({"export", from, written, "--profile", "brackenmere-dragon"});
  ASSERT_EQ(out.status, 0) << out.err;
  EXPECT_THAT(out.out, HasSubstr("brackenmere-dragon 1 is written"));
  animal::TargetProfile profile = exchange::readProfile(written);

  EXPECT_THAT(tarebowl({"import", from, written}).out, HasSubstr("is there already; nothing was written"));
  profile.ratios.clear();
  const std::string changed = fileWith("changed.json", exchange::writeProfile(profile)).string();
  EXPECT_THAT(tarebowl({"import", from, changed, "--dry-run"}).out, HasSubstr("as version 2"));
  const Outcome in = tarebowl({"import", from, changed});
  ASSERT_EQ(in.status, 0) << in.err;
  EXPECT_THAT(in.out, HasSubstr("brackenmere-dragon 2 is a draft"));
  const auto collection = store::Collection::open(from, "2026-11-25T07:30:00Z");
  EXPECT_TRUE(store::findProfile(collection, animal::ProfileReference{"brackenmere-dragon", 2})
                  ->record.profile.ratios.empty());
  const Outcome absent = tarebowl({"export", from, written, "--profile", "brackenmere-dragon:7"});
  EXPECT_EQ(absent.status, 2);
  EXPECT_THAT(absent.err, HasSubstr("there is no target profile brackenmere-dragon:7"));
}

}  // namespace
}  // namespace tarebowl::app
