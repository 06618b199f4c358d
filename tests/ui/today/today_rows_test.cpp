// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/today_rows.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;

transfer::DayOverview dayWith(const transfer::SectionToday& section) {
  return {.day = quantity::parseDate("2026-11-25").value(), .sections = {section}};
}

TEST(TodayRows, SayHowFarASectionIsWeighedIn) {
  const auto row = [](std::size_t weighed) {
    return todayCards(dayWith({.section = "Reptiles", .bowls = 2, .lines = 5, .weighed = weighed}))
        .at(0)
        .rows.at(0);
  };
  EXPECT_EQ(row(0).text, QStringLiteral("2 bowls to prepare: 0 of 5 foods are weighed in, 5 missing"));
  EXPECT_EQ(row(0).mark, Mark::Lacking);
  EXPECT_EQ(row(2).mark, Mark::AtLimit);
  EXPECT_EQ(row(5).text, QStringLiteral("2 bowls to prepare: all foods are weighed in"));
  EXPECT_EQ(row(5).mark, Mark::Met);
  EXPECT_EQ(row(5).section, QStringLiteral("Reptiles"));
}

TEST(TodayRows, NameLeftoversOfYesterdayAndGroupsWithoutABowl) {
  const auto rows =
      todayCards(dayWith({.section = "Reptiles", .leftoversMissing = 3, .groupsWithoutBowl = 1})).at(0).rows;
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_EQ(rows[0].text, QStringLiteral("no bowl to prepare"));
  EXPECT_EQ(rows[0].mark, Mark::Unknown);  // nobody knows whether somebody is to be fed
  EXPECT_THAT(rows[1].text.toStdString(), HasSubstr("1 group without a bowl"));
  EXPECT_EQ(rows[2].place, TodayPlace::Leftovers);
  EXPECT_THAT(rows[2].text.toStdString(), HasSubstr("3 bowls of yesterday"));
}

TEST(TodayRows, ListPansThatStandWithThoseOfEarlierDaysAsDue) {
  transfer::DayOverview overview = dayWith({.section = "Reptiles"});
  const auto pan = [&](const char* place, const char* day) {
    return store::StoredControlPan{.record = {.place = place,
                                              .day = quantity::parseDate(day).value(),
                                              .foodClass = "leafy vegetable",
                                              .start = quantity::Grams(50)}};
  };
  overview.pansThatStand = {pan("Reptiles", "2026-11-24"), pan("Reptiles", "2026-11-25"),
                            pan("Shed", "2026-11-24")};
  const auto rows = todayCards(overview).at(1).rows;
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_EQ(rows[0].mark, Mark::Lacking);
  EXPECT_EQ(rows[0].place, TodayPlace::Pans);
  EXPECT_THAT(rows[0].text.toStdString(), HasSubstr("any leafy vegetable, 50 g put out on"));
  EXPECT_THAT(rows[0].text.toStdString(), HasSubstr("is not weighed yet"));
  EXPECT_EQ(rows[1].mark, Mark::AtLimit);
  EXPECT_THAT(rows[1].text.toStdString(), HasSubstr("stands until tomorrow"));
  EXPECT_EQ(rows[2].place, TodayPlace::Nowhere);
  EXPECT_THAT(rows[2].text.toStdString(), HasSubstr("tarebowl pans"));
}

TEST(TodayRows, NameSwapsAndWhatWaitsForADecision) {
  transfer::DayOverview overview = dayWith({.section = "Reptiles"});
  const store::StoredSwap swap{.record = {.instead = {{"foxes", overview.day, 1}, 3},
                                          .food = "carrot",
                                          .given = {{"beetroot", quantity::Grams(24)}},
                                          .why = "not delivered",
                                          .by = {"Keeper A", "2026-11-25T07:00:00Z"},
                                          .approval = intake::SwapApproval::Waiting}};
  overview.swapsMade = {swap};
  overview.swapsWaiting = {swap};
  overview.dietsWaiting = {{.version = {.number = 2}, .name = "evening bowl", .group = "foxes"}};
  overview.groups.emplace("foxes", transfer::DayOverview::Group{"Fennec foxes (three)", "Small Mammals"});
  overview.foodNames = {{"carrot", "Carrot, raw"}};
  const auto cards = todayCards(overview);
  ASSERT_EQ(cards.size(), 3U);
  EXPECT_THAT(cards[1].rows.at(0).text.toStdString(),
              HasSubstr("24 g beetroot in place of Carrot, raw (not delivered, Keeper A)"));
  ASSERT_EQ(cards[2].rows.size(), 2U);
  EXPECT_EQ(cards[2].rows[0].place, TodayPlace::SwapDecision);
  EXPECT_EQ(cards[2].rows[1].text, QStringLiteral("diet: evening bowl, version 2, for Fennec foxes (three)"));
}

}  // namespace
}  // namespace tarebowl::ui
