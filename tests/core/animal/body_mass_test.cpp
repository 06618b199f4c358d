// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/body_mass.h"

#include "tests/core/animal/days.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

namespace tarebowl::animal {
namespace {

using quantity::Kilograms;
using ::testing::IsEmpty;

MassReading weighed(quantity::Date on, double kilograms) {
  MassReading reading;
  reading.on = on;
  reading.mass = Kilograms(kilograms);
  return reading;
}

/// Once a week from 1 January 2026 on.
std::vector<MassReading> weekly(const std::vector<double>& kilograms) {
  std::vector<MassReading> series;
  std::chrono::sys_days on(day("2026-01-01"));
  for (const double mass : kilograms) {
    series.push_back(weighed(on, mass));
    on += std::chrono::days(7);
  }
  return series;
}

const quantity::Date kLater = day("2026-12-31");

TEST(BodyMass, ATenrecOf180KilogramsIsQuestioned) {
  const auto series = weekly({0.180, 0.182, 0.179, 0.181});
  const MassReading typed = weighed(day("2026-02-01"), 180.0);
  EXPECT_EQ(doubtAbout(typed, series, kLater), MassDoubt::GramsAsKilograms);
}

TEST(BodyMass, TheFirstReadingIsQuestionedByWhatIsExpectedOfTheKind) {
  const MassReading typed = weighed(day("2026-02-01"), 180.0);
  EXPECT_EQ(doubtAbout(typed, {}, kLater, Kilograms(0.15)), MassDoubt::GramsAsKilograms);
  EXPECT_EQ(doubtAbout(typed, {}, kLater), std::nullopt) << "nothing says what it should weigh";
}

TEST(BodyMass, KilogramsTypedAsGramsAreQuestionedToo) {
  const auto series = weekly({3.1, 3.0, 3.2});
  EXPECT_EQ(doubtAbout(weighed(day("2026-02-01"), 0.0031), series, kLater), MassDoubt::KilogramsAsGrams);
}

TEST(BodyMass, TheWrongOneOfASeriesIsNamedWithWhatTheOthersSay) {
  const auto doubts = doubtsAbout(weekly({0.180, 0.182, 179.0, 0.181, 0.180}), kLater);
  ASSERT_EQ(doubts.size(), 1U);
  EXPECT_EQ(doubts[0].reading, 2U);
  EXPECT_EQ(doubts[0].doubt, MassDoubt::GramsAsKilograms);
  EXPECT_DOUBLE_EQ(doubts[0].expected, 0.1805);  // median of 0.180, 0.182, 0.181, 0.180
}

TEST(BodyMass, NoneOrLessAndNoNumberAreNoMass) {
  for (const double mass : {0.0, -0.2, std::numeric_limits<double>::quiet_NaN()})
    EXPECT_EQ(doubtAbout(weighed(day("2026-01-01"), mass), {}, kLater), MassDoubt::NotAboveZero);
}

TEST(BodyMass, AReadingOfTomorrowIsQuestioned) {
  EXPECT_EQ(doubtAbout(weighed(day("2026-03-02"), 0.18), {}, day("2026-03-01")), MassDoubt::InTheFuture);
  EXPECT_EQ(doubtAbout(weighed(day("2026-03-01"), 0.18), {}, day("2026-03-01")), std::nullopt);
}

TEST(BodyMass, ALeapAwayAndBackIsFarFromItsOwnHistory) {
  const auto doubts = doubtsAbout(weekly({3.00, 3.02, 2.99, 3.01, 3.60, 3.00, 3.02, 3.01}), kLater);
  ASSERT_EQ(doubts.size(), 1U);
  EXPECT_EQ(doubts[0].reading, 4U);
  EXPECT_EQ(doubts[0].doubt, MassDoubt::FarFromOwnHistory);
}

TEST(BodyMass, ALeapIsFoundAtEitherEndAndOneBeforeTheEnd) {
  const auto only = [](const std::vector<double>& masses) {
    const auto doubts = doubtsAbout(weekly(masses), kLater);
    return doubts.size() == 1 ? static_cast<int>(doubts[0].reading) : -1;
  };
  EXPECT_EQ(only({3.00, 3.02, 2.99, 3.01, 3.00, 3.02, 3.60}), 6);
  EXPECT_EQ(only({3.60, 3.02, 2.99, 3.01, 3.00, 3.02, 3.01}), 0);
  EXPECT_EQ(only({3.00, 3.02, 2.99, 3.01, 3.00, 3.60, 3.01}), 5);
}

TEST(BodyMass, ALossThatLaterReadingsConfirmIsBelieved) {
  EXPECT_THAT(doubtsAbout(weekly({3.00, 3.02, 2.99, 3.01, 2.60, 2.61, 2.59, 2.60}), kLater), IsEmpty());
}

TEST(BodyMass, AGrowingYoungIsNotDoubted) {
  std::vector<double> masses;
  for (int week = 0; week < 20; ++week) masses.push_back(0.003 * std::pow(1.2, week));
  EXPECT_THAT(doubtsAbout(weekly(masses), kLater), IsEmpty());
}

TEST(BodyMass, WhatWasExcludedIsNeitherDoubtedNorCounted) {
  auto series = weekly({0.180, 180.0, 0.181});
  series[1].excluded = "typed in grams";
  EXPECT_THAT(doubtsAbout(series, kLater), IsEmpty());
  EXPECT_DOUBLE_EQ(massOn(series, day("2026-01-15"), 30)->mass.value(), 0.1805);
}

RC_GTEST_PROP(BodyMass, DoubtsDoNotDependOnTheOrderOfEntry, ()) {
  auto series = weekly({});
  const auto count = *rc::gen::inRange<std::size_t>(1, 12);
  for (std::size_t i = 0; i < count; ++i)
    series.push_back(weighed(
        quantity::Date(std::chrono::sys_days(day("2026-01-01")) + std::chrono::days(7 * static_cast<int>(i))),
        *rc::gen::inRange(1, 9000) / 1000.0));
  auto reversed = series;
  std::ranges::reverse(reversed);
  const auto forward = doubtsAbout(series, kLater);
  const auto backward = doubtsAbout(reversed, kLater);
  RC_ASSERT(forward.size() == backward.size());
  for (const DoubtedReading& doubted : forward)
    RC_ASSERT(std::ranges::any_of(backward, [&](const DoubtedReading& other) {
      return other.reading == count - 1 - doubted.reading && other.doubt == doubted.doubt;
    }));
}

TEST(CurrentMass, IsTheMedianOfTheLastFortnight) {
  const auto series = weekly({3.0, 3.2, 3.1, 3.5});  // 1, 8, 15, 22 January
  const auto current = massOn(series, day("2026-01-22"));
  ASSERT_TRUE(current);
  EXPECT_DOUBLE_EQ(current->mass.value(), 3.3);  // of 15 and 22 January; the 8th is 14 days ago
  EXPECT_EQ(current->on, day("2026-01-22"));
  EXPECT_EQ(current->readings, 2U);
  EXPECT_DOUBLE_EQ(massOn(series, day("2026-01-22"), 15)->mass.value(), 3.2);
}

TEST(CurrentMass, IsTheNewestBeforeWhereNoneIsRecent) {
  const auto series = weekly({3.0, 3.2});
  const auto current = massOn(series, day("2026-06-01"));
  ASSERT_TRUE(current);
  EXPECT_DOUBLE_EQ(current->mass.value(), 3.2);
  EXPECT_EQ(current->on, day("2026-01-08"));
  EXPECT_EQ(current->readings, 1U);
}

TEST(CurrentMass, OfADayBeforeTheFirstReadingIsUnknown) {
  EXPECT_EQ(massOn(weekly({3.0}), day("2025-12-31")), std::nullopt);
  EXPECT_EQ(massOn({}, day("2025-12-31")), std::nullopt);
}

std::optional<CurrentMass> current(double kilograms) {
  return CurrentMass{Kilograms(kilograms), day("2026-02-01"), 1};
}

TEST(GroupMass, IsTheMeanOfTheMembersThatWereWeighed) {
  const std::vector members{current(3.0), std::optional<CurrentMass>(), current(4.0)};
  const auto mass = groupMass(members, current(9.0));
  ASSERT_TRUE(mass);
  EXPECT_EQ(mass->mass, Kilograms(3.5)) << "and not of the group as a whole, which was weighed too";
  EXPECT_EQ(mass->weighed, 2U);
}

TEST(GroupMass, IsThatOfTheGroupAsAWholeWhereNoMemberWasWeighed) {
  const std::vector<std::optional<CurrentMass>> members(2);
  const auto mass = groupMass(members, current(9.0));
  ASSERT_TRUE(mass);
  EXPECT_EQ(mass->mass, Kilograms(9.0));
  EXPECT_EQ(mass->weighed, 0U);
}

TEST(GroupMass, IsUnknownWhereNobodyWeighedAnything) {
  EXPECT_FALSE(groupMass({}, std::nullopt));
}

}  // namespace
}  // namespace tarebowl::animal
