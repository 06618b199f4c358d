// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/intake_trend.h"

#include "core/intake/daily_intake.h"
#include "core/transfer/intake_period.h"
#include "tests/core/transfer/brackenmere.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <utility>

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

/// Of one day as the period tells it; nothing where an entry is a slip: what is eaten counts as no less than
/// nothing in a point.
void expectSameDay(const intake::IntakeStretch& point, const IntakePeriod& period, std::size_t& compared) {
  const auto calcium = contentsOf(period, food::nutrients::calcium());
  const auto days = intake::dailyIntake(period.eaten, calcium);
  const auto ratios =
      intake::dailyRatio(period.eaten, calcium, contentsOf(period, food::nutrients::phosphorus()));
  const auto day = std::ranges::find(days, point.from, &intake::DayIntake::day);
  ASSERT_NE(day, days.end());
  EXPECT_EQ(point.daysKnown == 1, day->eaten.has_value());
  const bool isSlip = std::ranges::any_of(period.eaten, [&](const intake::EatenBowl& bowl) {
    return bowl.day == point.from && std::ranges::any_of(bowl.items, [](const auto& item) {
             return item.eaten && item.eaten->value() < 0.0;
           });
  });
  if (!day->eaten || isSlip) return;
  const intake::DayRatio& ratio = ratios[static_cast<std::size_t>(day - days.begin())];
  EXPECT_NEAR(point.values[kSubjectLine].eaten.value(), day->eaten->value() / day->animals, 1e-9);
  EXPECT_NEAR(point.values[kSubjectLine].sd, day->eaten->sd() / day->animals, 1e-9);
  EXPECT_NEAR(point.values[kCalciumLine].eaten.value(), ratio.eaten->value(), 1e-9);
  EXPECT_NEAR(point.values[kCalciumLine].sd, ratio.eaten->sd(), 1e-9);
  ++compared;
}

// A week is read as one stretch, so that both see the same pans.
TEST(IntakeTrend, SaysOfEachDayWhatTheDaysThemselvesSay) {
  std::size_t compared = 0;
  for (const auto& [from, to] :
       {std::pair{"2026-08-03", "2026-08-09"}, {"2026-09-20", "2026-09-26"}, {"2026-11-08", "2026-11-14"}}) {
    TrendAsked week = asked("dragons");
    week.from = on(from);
    week.to = on(to);
    const IntakeTrend trend = readTrend(brackenmere(), week).value();
    const IntakePeriod period = readIntake(brackenmere(), "dragons", week.from, week.to).value();
    for (const intake::IntakeStretch& point : trend.points) expectSameDay(point, period, compared);
  }
  EXPECT_GT(compared, 14U);
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
