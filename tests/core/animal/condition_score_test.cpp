// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/condition_score.h"

#include <gtest/gtest.h>

#include <limits>

namespace tarebowl::animal {
namespace {

ConditionReading scored(const char* scale, double score) {
  ConditionReading reading;
  reading.scale = scale;
  reading.score = score;
  return reading;
}

TEST(ConditionScale, TheIdealLiesHalfWayOnBoth) {
  for (const ScoreScale& scale : conditionScales()) {
    EXPECT_EQ(scale.ideal, (scale.lowest + scale.highest) / 2.0) << scale.id;
    EXPECT_EQ(findConditionScale(scale.id), &scale);
    EXPECT_FALSE(scale.source.empty());
  }
  EXPECT_EQ(conditionScales().size(), 2U);
}

TEST(ConditionScore, WithoutItsScaleSaysNothing) {
  EXPECT_EQ(problemWith(scored("", 5)), ConditionProblem::UnknownScale);
  EXPECT_EQ(problemWith(scored("condition-7", 5)), ConditionProblem::UnknownScale);
}

TEST(ConditionScore, HalfAPointIsAStepOfTheFivePointScaleOnly) {
  EXPECT_EQ(problemWith(scored("condition-5", 2.5)), std::nullopt);
  EXPECT_EQ(problemWith(scored("condition-5", 2.25)), ConditionProblem::BetweenSteps);
  EXPECT_EQ(problemWith(scored("condition-9", 2.5)), ConditionProblem::BetweenSteps);
}

TEST(ConditionScore, LiesWithinItsScale) {
  for (const double score : {0.5, 5.5, 9.0, std::numeric_limits<double>::quiet_NaN()})
    EXPECT_EQ(problemWith(scored("condition-5", score)), ConditionProblem::OffTheScale) << score;
  EXPECT_EQ(problemWith(scored("condition-9", 9.0)), std::nullopt);
  EXPECT_EQ(problemWith(scored("condition-9", 1.0)), std::nullopt);
}

}  // namespace
}  // namespace tarebowl::animal
