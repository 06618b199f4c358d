// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/study_plan_page.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace tarebowl::exchange {
namespace {

using ::testing::HasSubstr;

StudyPlanToWrite plan() {
  return {.group = "foxes",
          .groupName = "Foxes <trio>",
          .section = "Small Mammals",
          .invented = true,
          .nutrient = food::nutrients::calcium(),
          .first = quantity::parseDate("2026-12-01").value(),
          .learnedFrom = quantity::parseDate("2026-10-06").value(),
          .learnedUntil = quantity::parseDate("2026-11-30").value(),
          .plan = {.days = 3,
                   .variation = {.mean = 200.0, .sd = 20.0, .lag1 = 0.6, .days = 50},
                   .precision = {.halfWidth = 20.0},
                   .foods = {"kale", "mouse"},
                   .pans = {{"Small Mammals", "leafy vegetable", {"kale"}}}},
          .foodNames = {{"kale", "Kale"}, {"mouse", "Mouse"}}};
}

TEST(StudyPlanPage, SaysHowManyDaysAndWhy) {
  const auto reasons = reasonsOf(plan());
  EXPECT_THAT(reasons.at(0), HasSubstr("3 days, 2026-12-01 to 2026-12-03"));
  EXPECT_THAT(reasons.at(0), HasSubstr("± 20 mg (10 % of it) with 95 % confidence"));
  EXPECT_THAT(reasons.at(1), HasSubstr("on 50 days all was known, with a mean of 200 mg"));
  // 20 · sqrt(1.6 / 0.4) = 40
  EXPECT_THAT(reasons.at(2), HasSubstr("planned with 40 mg"));
}

TEST(StudyPlanPage, SaysWhatIsDoneEachDay) {
  const std::string text = studyPlanAsText(plan());
  EXPECT_THAT(text, HasSubstr("Kale, Mouse"));
  EXPECT_THAT(text, HasSubstr("leafy vegetable: one of Kale"));
  EXPECT_THAT(text, HasSubstr("weighed on 2026-12-04"));
}

TEST(StudyPlanPage, ThePageHasARowForEachDayAndIsEscaped) {
  const std::string html = studyPlanAsHtml(plan());
  EXPECT_THAT(html, HasSubstr("Foxes &lt;trio&gt;"));
  EXPECT_THAT(html, HasSubstr("INVENTED SAMPLE"));
  for (const char* day : {"2026-12-01", "2026-12-02", "2026-12-03"}) EXPECT_THAT(html, HasSubstr(day));
}

TEST(StudyPlanPage, TheFileHoldsWhatItRestsOn) {
  const auto json = nlohmann::json::parse(studyPlanAsJson(plan()));
  EXPECT_EQ(json.at("format"), "tarebowl-study-plan/1");
  EXPECT_EQ(json.at("nutrient"), "CA");
  EXPECT_EQ(json.at("days"), 3);
  EXPECT_EQ(json.at("to"), "2026-12-03");
  EXPECT_NEAR(json.at("history").at("sd_for_planning").get<double>(), 40.0, 1e-9);
  EXPECT_EQ(json.at("pans").at(0).at("foods").at(0), "kale");
}

}  // namespace
}  // namespace tarebowl::exchange
