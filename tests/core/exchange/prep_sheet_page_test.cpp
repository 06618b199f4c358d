// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/prep_sheet_page.h"

#include "core/exchange/kitchen_tables.h"
#include "core/exchange/problem_json.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <sstream>

namespace tarebowl::exchange {
namespace {

using intake::KitchenFood;
using quantity::Grams;
using testing::HasSubstr;
using testing::Not;

KitchenFood foodOf(const std::string& code) {
  if (code == "chick") return {.code = code, .name = "Chick & down", .form = "thawed", .unitMass = Grams(40)};
  if (code == "gone") return {.code = code, .name = code, .known = false};
  return {.code = code,
          .name = "Carrot, boiled",
          .form = "boiled",
          .step = Grams(0.1),
          .raw = "carrot-raw",
          .yield = 0.9,
          .rawName = "Carrot, raw"};
}

intake::PrepSheet sheet() {
  intake::PrepBowl bowl{.groupName = "Fennec foxes"};
  bowl.bowl = {.key = {"foxes", quantity::parseDate("2026-11-25").value(), 1},
               .label = "Fennec foxes, <evening>",
               .animals = 3,
               .items = {{.food = "chick", .planned = Grams(120), .preparation = "whole"},
                         {.item = 2, .food = "carrot", .planned = Grams(18)}}};
  bowl.phaseDay = 2;
  bowl.phaseDays = 7;
  bowl.allowances = {{.food = "chick", .low = Grams(0.2), .high = Grams(0.6), .note = "on the scale"}};
  intake::PrepSheet made{.section = "Small Mammals", .day = bowl.bowl.key.day, .bowls = {bowl}};
  made.totals = intake::totalsOf(made.bowls, foodOf);
  made.thawForTomorrow = {made.totals.at(1)};
  made.withoutBowl = {{"tenrecs", "Tenrecs", intake::NoBowl::NoDiet}};
  made.invented = true;
  return made;
}

TEST(PrepSheetPage, SaysWhatGoesIntoEachBowlAndWhatTheKitchenNeeds) {
  const std::string html = prepSheetAsHtml(sheet(), foodOf);
  for (const char* text :
       {"Small Mammals, 2026-11-25", "INVENTED SAMPLE", "Fennec foxes, &lt;evening&gt;", "3 pieces (120 g)",
        "Chick &amp; down, thawed", "18.0 g", "day 2 of 7", "0.2 … 0.6 g", "20 g Carrot, raw",
        "No bowl for Tenrecs: no diet is in force.", "Gloves on", "Out of the freezer today"})
    EXPECT_THAT(html, HasSubstr(text));  // 18 g / 0.9 = 20 g raw
  EXPECT_THAT(html, Not(HasSubstr("<evening>")));
}

TEST(PrepSheetPage, ALabelNamesTheBowlItsSectionAndItsDay) {
  const std::string html = bowlLabelsAsHtml(sheet());
  for (const char* text :
       {"Fennec foxes, &lt;evening&gt;", "Small Mammals, 2026-11-25", "3 animals, 138 g in all"})
    EXPECT_THAT(html, HasSubstr(text));
}

TEST(PrepSheetPage, SpeaksAnotherLanguageWithItsDaysAndDecimalMark) {
  const PageTongue german{.words =
                              [](std::string_view english) {
                                if (english == "{} pieces ({})") return std::string("{} Stück ({})");
                                if (english == "To weigh") return std::string("Zu wiegen");
                                return std::string(english);
                              },
                          .days = [](quantity::Date) { return std::string("25. Nov. 2026"); },
                          .decimalMark = ","};
  const std::string html = prepSheetAsHtml(sheet(), foodOf, german);
  for (const char* text : {"3 Stück (120 g)", "Zu wiegen", "18,0 g", "0,2 … 0,6 g", "25. Nov. 2026"})
    EXPECT_THAT(html, HasSubstr(text));
  EXPECT_THAT(html, Not(HasSubstr("18.0 g")));
  EXPECT_THAT(bowlLabelsAsHtml(sheet(), german), HasSubstr("25. Nov. 2026"));
}

TEST(PrepSheetPage, AsAFileItIsJsonThatAProgramReads) {
  const auto json = nlohmann::json::parse(prepSheetAsJson(sheet(), foodOf));
  EXPECT_EQ(json.at("format"), "tarebowl-prep/1");
  EXPECT_EQ(json.at("bowls").at(0).at("items").at(0).at("planned_g"), 120);
  EXPECT_EQ(json.at("bowls").at(0).at("phase_in").at("day"), 2);
  EXPECT_EQ(json.at("totals").at(0).at("raw"), "carrot-raw");
  EXPECT_NEAR(json.at("totals").at(0).at("raw_g").get<double>(), 20, 1e-9);
}

TEST(PrepSheetPage, WhatIsNotKnownOfACookedFoodIsSaidAndNotLeftOut) {
  intake::KitchenTotal total{.food = foodOf("carrot"), .amount = Grams(18)};
  EXPECT_EQ(rawText(total), "? raw amount unknown: no cooking yield");
  total.food = foodOf("chick");
  EXPECT_EQ(rawText(total), "");
  EXPECT_EQ(foodTitle(foodOf("gone")), "gone (not in the collection)");
}

TEST(KitchenTables, AWeightIsReadWithItsLineAndItsReason) {
  std::istringstream table("group,bowl,food,g,reason\nfoxes,,chick,120.5,\nfoxes,2,3,7,read wrongly\n");
  const auto lines = readWeights(table, "w.csv");
  ASSERT_EQ(lines.size(), 2U);
  EXPECT_EQ(lines[0].bowl, 1);
  EXPECT_EQ(lines[0].actual, Grams(120.5));
  EXPECT_EQ(lines[1].line, 3U);
  EXPECT_EQ(lines[1].reason, "read wrongly");
}

TEST(KitchenTables, ALeftoverIsReadWithHowItIsKnown) {
  std::istringstream table(
      "group,bowl,food,how,left_g,lost_g,reason\nfoxes,1,chick,all-eaten,,,\nfoxes,1,*,weighed,12.5,,\n"
      "foxes,1,carrot,stolen,1,3,\n");
  const auto lines = readLeftovers(table, "l.csv");
  ASSERT_EQ(lines.size(), 3U);
  EXPECT_EQ(lines[0].kind, intake::LeftoverKind::AllEaten);
  EXPECT_EQ(lines[0].left, std::nullopt);
  EXPECT_EQ(lines[1].food, "*");
  EXPECT_EQ(lines[2].lost, Grams(3));
}

TEST(KitchenTables, WhatCannotBeReadIsSaidWithItsPlace) {
  const auto told = [](const char* text) {
    std::istringstream table(text);
    try {
      (void)readWeights(table, "w.csv");
    } catch (const FormatError& error) {
      return std::string(error.what());
    }
    return std::string();
  };
  EXPECT_THAT(told("group,bowl,food,grams,reason\n"), HasSubstr("the title g"));
  EXPECT_THAT(told("group,bowl,food,g,reason\nfoxes,1,chick,-3,\n"), HasSubstr("line 2, column 4 (g)"));
  EXPECT_THAT(told("group,bowl,food,g,reason\nfoxes,1.5,chick,3,\n"), HasSubstr("number of a bowl"));
  EXPECT_THAT(told("group,bowl,food,g,reason\n,1,chick,3,\n"), HasSubstr("the code of a group"));
}

}  // namespace
}  // namespace tarebowl::exchange
