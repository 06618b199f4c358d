// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/weighing_doubt.h"

#include "core/intake/time_of_sheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

namespace tarebowl::intake {
namespace {

using quantity::Grams;
using testing::ElementsAre;
using testing::IsEmpty;

const quantity::Date kDay = quantity::parseDate("2026-11-25").value();

/// 20 g planned, 0.2 g either way.
WeighingFacts twentyGrams() {
  return {.day = kDay, .planned = Grams(20), .tolerance = Grams(0.2)};
}

std::vector<WeighingDoubt> doubts(double actual, const WeighingFacts& facts = twentyGrams(),
                                  const std::string& at = "2026-11-25T07:30:30Z") {
  return doubtsAbout(Grams(actual), at, facts);
}

TEST(WeighingDoubt, AWeightWithinToleranceIsNotAskedAbout) {
  EXPECT_THAT(doubts(20.1), IsEmpty());
}

TEST(WeighingDoubt, TwoHundredTypedForTwentyIsToldAsTheSlipItIs) {
  EXPECT_THAT(doubts(200), ElementsAre(WeighingDoubt::TenTimes));
  EXPECT_THAT(doubts(2), ElementsAre(WeighingDoubt::TenthOf));
}

TEST(WeighingDoubt, AScaleInOuncesIsToldAsSuch) {
  EXPECT_THAT(doubts(0.705), ElementsAre(WeighingDoubt::NotInGrams));  // 20 g / 28.3495 g = 0.7055
}

TEST(WeighingDoubt, OutsideToleranceIsUnderOrOver) {
  EXPECT_THAT(doubts(19.5), ElementsAre(WeighingDoubt::Under));
  EXPECT_THAT(doubts(23), ElementsAre(WeighingDoubt::Over));
  EXPECT_THAT(doubts(0), ElementsAre(WeighingDoubt::Under));
}

TEST(WeighingDoubt, AWeightBelowNothingIsAWrongTare) {
  EXPECT_THAT(doubts(-3), ElementsAre(WeighingDoubt::BelowNothing));
  EXPECT_THAT(doubts(std::numeric_limits<double>::quiet_NaN()), ElementsAre(WeighingDoubt::BelowNothing));
}

TEST(WeighingDoubt, TheBowlBeforeReadTwiceWithinAMinuteIsAskedAbout) {
  WeighingFacts facts = twentyGrams();
  facts.before = WeightBefore{Grams(20), "2026-11-25T07:30:00Z", true};
  EXPECT_THAT(doubts(20, facts), ElementsAre(WeighingDoubt::AsBowlBefore));
  EXPECT_THAT(doubts(20, facts, "2026-11-25T07:31:00Z"), IsEmpty());
  EXPECT_THAT(doubts(20.1, facts), IsEmpty());
  facts.before->otherBowl = false;  // two foods of one bowl may well weigh the same
  EXPECT_THAT(doubts(20, facts), IsEmpty());
}

TEST(WeighingDoubt, AClockThatWentBackIsTold) {
  WeighingFacts facts = twentyGrams();
  facts.before = WeightBefore{Grams(5), "2026-11-25T08:00:00Z", false};
  EXPECT_THAT(doubts(20, facts), ElementsAre(WeighingDoubt::ClockWentBack));
}

TEST(WeighingDoubt, AfterMidnightTheBowlIsStillOfItsDay) {
  EXPECT_THAT(doubts(20, twentyGrams(), "2026-11-26T00:10:00Z"), IsEmpty());
  EXPECT_THAT(doubts(20, twentyGrams(), "2026-11-23T12:00:00Z"), ElementsAre(WeighingDoubt::DayToCome));
}

TEST(TimeOfSheet, IsCountedFromTheDayAndReadBackToTheSecond) {
  EXPECT_EQ(secondsFrom(kDay, "2026-11-25T07:30:05Z"), 7 * 3600 + 30 * 60 + 5);
  EXPECT_EQ(secondsFrom(kDay, "2026-11-24T23:59:59Z"), -1);
  EXPECT_EQ(secondsFrom(kDay, "2026-11-26T00:00:00Z"), 86400);
  for (const char* time : {"2026-11-25T07:30:05Z", "2026-11-24T23:59:59Z", "2026-11-23T00:00:00Z",
                           "2026-11-26T09:12:00Z", "2027-01-01T00:00:00Z"})
    EXPECT_EQ(timeFrom(kDay, secondsFrom(kDay, time).value()), time);
}

TEST(TimeOfSheet, AnythingElseIsNoTime) {
  for (const char* text : {"", "2026-11-25", "2026-11-25T07:30:05", "2026-11-25T24:30:05Z",
                           "2026-11-25T07:3x:05Z", "2026-02-30T07:30:05Z", "2026-11-25 07:30:05Z"})
    EXPECT_EQ(secondsFrom(kDay, text), std::nullopt) << text;
}

}  // namespace
}  // namespace tarebowl::intake
