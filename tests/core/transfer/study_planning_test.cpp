// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/study_planning.h"

#include "tests/core/transfer/brackenmere.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::transfer {
namespace {

using exchange::StudyPlanToWrite;
using Why = NoStudyPlan::Why;

const store::Collection& brackenmere() {
  static const OwnSample kSample(FeedingDays::TakenIn);
  return kSample.collection;
}

StudyPlanToWrite plan(const StudyAsked& asked) {
  return std::get<StudyPlanToWrite>(planIntakeStudy(brackenmere(), asked));
}

TEST(StudyPlanning, TakesTheDaysFromTheGroupsOwnVariation) {
  const StudyPlanToWrite made = plan({.group = "fennecs", .first = kSampleDay});
  EXPECT_EQ(quantity::isoDate(made.learnedFrom), "2026-09-30");  // 56 days before the first
  EXPECT_EQ(quantity::isoDate(made.learnedUntil), "2026-11-24");
  const intake::Precision& precision = made.plan.precision;
  EXPECT_NEAR(precision.halfWidth, 0.1 * made.plan.variation.mean, 1e-12);
  EXPECT_EQ(made.plan.days, intake::daysNeeded(made.plan.variation.sdForPlanning(), precision));
}

TEST(StudyPlanning, MorePrecisionNeedsMoreDays) {
  const auto days = [](double precision) {
    return plan({.group = "fennecs",
                 .nutrient = food::nutrients::calcium(),
                 .first = kSampleDay,
                 .precision = precision})
        .plan.days;
  };
  EXPECT_GT(days(0.02), days(0.05));
  EXPECT_GE(days(0.05), days(0.2));
}

TEST(StudyPlanning, NamesWhatIsWeighedAndWherePansStand) {
  const StudyPlanToWrite made = plan({.group = "fennecs", .first = kSampleDay});
  EXPECT_THAT(made.plan.foods, testing::Contains("courgette-raw"));
  ASSERT_FALSE(made.plan.pans.empty());
  for (const intake::PanWanted& pan : made.plan.pans) {
    EXPECT_EQ(pan.place, "Small Mammals");
    EXPECT_NE(pan.foodClass, "supplement") << "powders neither dry nor draw water";
  }
  EXPECT_TRUE(made.invented);
}

TEST(StudyPlanning, SaysWhyThereIsNoPlan) {
  const auto why = [](const StudyAsked& asked) {
    return std::get<NoStudyPlan>(planIntakeStudy(brackenmere(), asked)).why;
  };
  EXPECT_EQ(why({.group = "nobody", .first = kSampleDay}), Why::NoGroup);
  EXPECT_EQ(why({.group = "fennecs", .first = quantity::parseDate("2027-03-01").value()}), Why::NoBowl);
  EXPECT_EQ(why({.group = "fennecs", .first = kSampleDay, .precision = 1e-9}), Why::OutOfReach);
}

}  // namespace
}  // namespace tarebowl::transfer
