// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/intake_trend.h"

#include "core/intake/daily_intake.h"
#include "core/transfer/intake_period.h"
#include "tests/core/transfer/brackenmere.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace tarebowl::transfer {
namespace {

quantity::Date on(const char* iso) {
  return quantity::parseDate(iso).value();
}

const store::Collection& brackenmere() {
  static const OwnSample kSample(FeedingDays::TakenIn);
  return kSample.collection;
}

TrendAsked asked(const std::string& group, int points = 180) {
  return {.group = group,
          .from = on("2026-07-28"),
          .to = on("2026-11-24"),
          .mostPoints = points,
          .subject = food::nutrients::calcium()};
}

IntakeTrend trendOf(const std::string& group, int points = 180) {
  return readTrend(brackenmere(), asked(group, points)).value();
}

TEST(IntakeTrend, APointIsADayWhereThereIsRoomForIt) {
  const IntakeTrend trend = trendOf("dragons");
  EXPECT_EQ(trend.daysAPoint, 1);
  ASSERT_EQ(trend.points.size(), 120U);
  for (std::size_t i = 1; i < trend.points.size(); ++i)
    EXPECT_EQ(std::chrono::sys_days(trend.points[i].from),
              std::chrono::sys_days(trend.points[i - 1].until) + std::chrono::days(1));
}

TEST(IntakeTrend, ElseItIsWholeWeeks) {
  // 120 days in 20 points: six days would do, a week is what Sundays fall into alike; 120 / 7 = 17.1.
  const IntakeTrend trend = trendOf("dragons", 20);
  EXPECT_EQ(trend.daysAPoint, 7);
  EXPECT_EQ(trend.points.size(), 18U);
}

TEST(IntakeTrend, SaysOfEachDayWhatTheDaysThemselvesSay) {
  const IntakeTrend trend = trendOf("dragons");
  const IntakePeriod period =
      readIntake(brackenmere(), "dragons", on("2026-07-28"), on("2026-11-24")).value();
  const auto days = intake::dailyIntake(period.eaten, contentsOf(period, food::nutrients::calcium()));
  const auto ratios = intake::dailyRatio(period.eaten, contentsOf(period, food::nutrients::calcium()),
                                         contentsOf(period, food::nutrients::phosphorus()));
  std::size_t compared = 0;
  for (const intake::IntakeStretch& point : trend.points) {
    const auto day = std::ranges::find(days, point.from, &intake::DayIntake::day);
    ASSERT_NE(day, days.end());
    EXPECT_EQ(point.daysKnown == 1, day->eaten.has_value());
    if (!day->eaten || !point.values[kSubjectLine].eaten) continue;
    const bool noSlip = std::ranges::none_of(period.eaten, [&](const intake::EatenBowl& bowl) {
      return bowl.day == point.from && std::ranges::any_of(bowl.items, [](const auto& item) {
               return item.eaten && item.eaten->value() < 0.0;
             });
    });
    if (!noSlip) continue;  // what is eaten counts as no less than nothing in a point
    EXPECT_NEAR(*point.values[kSubjectLine].eaten, day->eaten->value() / day->animals, 1e-9);
    const auto& ratio = ratios[static_cast<std::size_t>(day - days.begin())];
    EXPECT_NEAR(*point.values[kCalciumLine].eaten, ratio.eaten->value(), 1e-9);
    EXPECT_NEAR(point.values[kCalciumLine].sd, ratio.eaten->sd(), 1e-9 + 1e-6 * ratio.eaten->sd());
    ++compared;
  }
  EXPECT_GT(compared, 80U);
}

// 7 days: the sums of a week are those of its days.
TEST(IntakeTrend, AWeekIsTheSumOfItsDays) {
  const IntakeTrend days = trendOf("fennecs");
  const IntakeTrend weeks = trendOf("fennecs", 20);
  const intake::IntakeStretch& week = weeks.points.at(3);
  std::size_t known = 0;
  double eaten = 0.0;
  for (std::size_t i = 21; i < 28; ++i) {
    known += days.points[i].daysKnown;
    for (const intake::StretchFood& food : days.points[i].foods) eaten += food.eaten;
  }
  double ofWeek = 0.0;
  for (const intake::StretchFood& food : week.foods) ofWeek += food.eaten;
  EXPECT_EQ(week.daysKnown, known);
  EXPECT_NEAR(ofWeek, eaten, 1e-6);
}

// Second planted story: the dragons leave their greens from 7 August, so that their calcium falls.
TEST(IntakeTrend, FindsTheDaysOnWhichTheDragonsCalciumFell) {
  const IntakeTrend trend = trendOf("dragons");
  EXPECT_TRUE(std::ranges::any_of(trend.subjectDrops, [](const intake::Drop& drop) {
    return drop.until >= on("2026-11-08") && drop.from <= on("2026-11-17");
  }));
}

TEST(IntakeTrend, TellsTheSlipOfThePen) {
  const IntakeTrend trend = trendOf("dragons");
  EXPECT_TRUE(std::ranges::any_of(trend.slips, [](const TrendSlip& slip) {
    return slip.day == on("2026-09-22") && slip.food == "endive-raw";
  }));
}

TEST(IntakeTrend, FollowsATargetOfTheGroupInItsOwnUnit) {
  TrendAsked what = asked("dragons");
  const IntakeTrend all = trendOf("dragons");
  ASSERT_FALSE(all.problem.targets.empty());
  what.subject = all.problem.targets.front().id;
  const IntakeTrend trend = readTrend(brackenmere(), what).value();
  ASSERT_EQ(trend.followed.targets.size(), 1U);
  EXPECT_EQ(trend.followed.targets.front(), all.problem.targets.front());
}

TEST(IntakeTrend, OfAGroupThatIsNotThereThereIsNone) {
  EXPECT_FALSE(readTrend(brackenmere(), asked("unicorns")));
}

TEST(IntakeTrend, DaysWithoutABowlStayMissing) {
  TrendAsked before = asked("fennecs");
  before.from = on("2025-01-01");
  before.to = on("2025-01-31");
  const IntakeTrend trend = readTrend(brackenmere(), before).value();
  EXPECT_EQ(trend.points.size(), 31U);
  for (const intake::IntakeStretch& point : trend.points) EXPECT_TRUE(point.values.empty());
}

}  // namespace
}  // namespace tarebowl::transfer
