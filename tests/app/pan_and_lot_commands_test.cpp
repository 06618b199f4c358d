// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/food_reading.h"
#include "core/store/lot_verbs.h"
#include "core/store/swap_verbs.h"
#include "core/store/verbs.h"
#include "tests/app/own_collections.h"
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace tarebowl::app {
namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::MatchesRegex;

constexpr const char* kTitles = "date,place,food,food_class,start_g,end_g,by\n";

/// With one food, kale.
std::string collection() {
  store::Collection made = freshCollection("pans.tarebowl");
  store::FoodRecord kale;
  kale.food.code = "kale";
  kale.food.name = "Kale";
  store::addFood(made, kale, kSampleKeeper);
  return made.file().string();
}

Outcome take(const std::string& file, const std::string& rows, const char* option = nullptr) {
  std::vector<std::string> arguments{"pans", file, fileWith("pans.csv", kTitles + rows).string()};
  if (option != nullptr) arguments.emplace_back(option);
  return tarebowl(arguments);
}

std::size_t keptIn(const std::string& file) {
  const auto day = quantity::parseDate("2026-11-24").value();
  return store::controlPansBetween(store::Collection::open(file, "2026-11-25T07:30:00Z"), day, day).size();
}

TEST(Pans, ATableIsTakenInAndShownWithWhatWasLost) {
  const std::string file = collection();
  const Outcome taken = take(file,
                             "2026-11-24,Mammals,kale,,100,88,Keeper B\n"
                             "2026-11-24,Mammals,,leafy vegetable,50,46,\n");
  ASSERT_EQ(taken.status, 0) << taken.err;
  const Outcome shown = tarebowl({"pans", file, "--day", "2026-11-24"});
  ASSERT_EQ(shown.status, 0) << shown.err;
  const json pans = json::parse(shown.out);
  EXPECT_EQ(pans.at("format"), "tarebowl-pans/1");
  ASSERT_EQ(pans.at("pans").size(), 2U);
  EXPECT_NEAR(pans["pans"][0].at("water_loss").get<double>(), 0.12, 1e-12);  // 1 - 88/100
  EXPECT_EQ(pans["pans"][1].at("food_class"), "leafy vegetable");
  EXPECT_EQ(json::parse(tarebowl({"pans", file, "--day", "2026-11-25"}).out).at("pans").size(), 0U);
}

TEST(Pans, WhatIsToBeAskedIsKeptOnlyWithConfirm) {
  const std::string file = collection();
  const Outcome asked = take(file, "2026-11-24,Mammals,kale,,88,100,Keeper B\n");
  EXPECT_NE(asked.status, 0);
  EXPECT_THAT(asked.err, HasSubstr("the wrong way round"));
  EXPECT_EQ(keptIn(file), 0U);
  EXPECT_EQ(take(file, "2026-11-24,Mammals,kale,,88,100,Keeper B\n", "--confirm").status, 0);
  EXPECT_EQ(keptIn(file), 1U);
}

TEST(Pans, AnUnknownFoodOrAnEmptyPanLeavesAllOfTheTableOut) {
  const std::string file = collection();
  const Outcome refused = take(file,
                               "2026-11-24,Mammals,kale,,100,88,Keeper B\n"
                               "2026-11-24,Mammals,melon,,100,88,Keeper B\n"
                               "2026-11-24,Mammals,,fruit,0,5,Keeper B\n",
                               "--confirm");
  EXPECT_NE(refused.status, 0);
  EXPECT_THAT(refused.err, HasSubstr("no food melon"));
  EXPECT_THAT(refused.err, HasSubstr("put out empty"));
  EXPECT_EQ(keptIn(file), 0U);
}

TEST(Pans, APanStandsUntilATableSaysWhatCameBack) {
  const std::string file = collection();
  const Outcome out = take(file, "2026-11-24,Mammals,kale,,100,,Keeper B\n");
  ASSERT_EQ(out.status, 0) << out.err;
  EXPECT_THAT(out.out, HasSubstr("1 still to be weighed"));
  const json standing = json::parse(tarebowl({"pans", file, "--day", "2026-11-24"}).out).at("pans").at(0);
  EXPECT_TRUE(standing.at("end_g").is_null());
  EXPECT_TRUE(standing.at("water_loss").is_null());
  EXPECT_THAT(tarebowl({"pans", file, "--day", "2026-11-24", "--table"}).out, HasSubstr("still stands"));
  ASSERT_EQ(take(file, "2026-11-24,Mammals,kale,,100,88,Keeper A\n").status, 0);
  const json pans = json::parse(tarebowl({"pans", file, "--day", "2026-11-24"}).out).at("pans");
  ASSERT_EQ(pans.size(), 1U) << "the same pan, weighed again";
  EXPECT_EQ(pans[0].at("end_g"), 88);
  EXPECT_EQ(pans[0].at("by"), "Keeper A");
}

TEST(Pans, TheHourIsKeptWhereAPanIsWrittenDownAsItIsWeighed) {
  const std::string file = collection();
  ASSERT_EQ(take(file, "2026-11-24,Mammals,kale,,100,,Keeper B\n").status, 0);
  const auto pan = [&] {
    return json::parse(tarebowl({"pans", file, "--day", "2026-11-24"}).out).at("pans").at(0);
  };
  EXPECT_TRUE(pan().at("start_at").is_null()) << "a table of a day that is over";
  EXPECT_TRUE(pan().at("end_at").is_null());
  ASSERT_EQ(take(file, "2026-11-24,Mammals,kale,,100,88,Keeper A\n").status, 0);
  EXPECT_THAT(pan().at("end_at").get<std::string>(), MatchesRegex("....-..-..T..:..:..Z"));
}

TEST(Pans, OfAPanWhoseTwoWeightsATableBringsNobodySaidTheHours) {
  const std::string file = collection();
  ASSERT_EQ(take(file, "2026-11-24,Mammals,kale,,100,88,Keeper B\n").status, 0);
  const json pan = json::parse(tarebowl({"pans", file, "--day", "2026-11-24"}).out).at("pans").at(0);
  EXPECT_TRUE(pan.at("start_at").is_null());
  EXPECT_TRUE(pan.at("end_at").is_null());
}

TEST(Pans, WhatCameBackOfAPanThatBeganOtherwiseIsAskedAbout) {
  const std::string file = collection();
  ASSERT_EQ(take(file, "2026-11-24,Mammals,kale,,100,,Keeper B\n").status, 0);
  const Outcome asked = take(file, "2026-11-24,Mammals,kale,,90,80,Keeper A\n");
  EXPECT_NE(asked.status, 0);
  EXPECT_THAT(asked.err, HasSubstr("was put out with 100 g, and the table says 90 g"));
  EXPECT_EQ(keptIn(file), 1U);
}

TEST(Lots, ALotBeginsAndIsShown) {
  const std::string file = collection();
  const Outcome begun = tarebowl({"lots", file, "--food", "kale", "--lot", "K-7", "--day", "2026-11-24"});
  ASSERT_EQ(begun.status, 0) << begun.err;
  const json lots = json::parse(begun.out);
  EXPECT_EQ(lots.at("lots").at(0).at("lot"), "K-7");
  EXPECT_EQ(lots.at("lots").at(0).at("from"), "2026-11-24");
  EXPECT_NE(tarebowl({"lots", file, "--lot", "K-8"}).status, 0);  // of which food?
  EXPECT_NE(tarebowl({"lots", file, "--food", "melon", "--lot", "M-1"}).status, 0);
}

}  // namespace
}  // namespace tarebowl::app
