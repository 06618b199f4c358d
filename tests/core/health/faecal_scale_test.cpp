// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/faecal_scale.h"

#include <gtest/gtest.h>

namespace tarebowl::health {
namespace {

FaecalScore on(const char* scale, double score) {
  return scoreOn(*findFaecalScale(scale), score);
}

TEST(FaecalScale, theSameNumberIsSoftOnOneScaleAndHardOnAnother) {
  EXPECT_TRUE(isSoft(on("faeces-7", 6)));
  EXPECT_FALSE(isSoft(on("faeces-7-liquid-first", 6)));
  EXPECT_TRUE(isSoft(on("faeces-7-liquid-first", 2)));
}

TEST(FaecalScale, oneStepOffTheIdealIsNoSign) {
  EXPECT_FALSE(isSoft(on("faeces-7", 5)));
  EXPECT_FALSE(isSoft(on("faeces-5", 4)));
  EXPECT_TRUE(isSoft(on("faeces-5", 4.5)));
}

TEST(FaecalScale, liquidIsOneAndHardMinusOneWhicheverEndItIs) {
  EXPECT_DOUBLE_EQ(softness(on("faeces-7", 7)), 1.0);
  EXPECT_DOUBLE_EQ(softness(on("faeces-7", 1)), -1.0);
  EXPECT_DOUBLE_EQ(softness(on("faeces-5-liquid-first", 1)), 1.0);
  EXPECT_DOUBLE_EQ(softness(on("faeces-5-liquid-first", 5)), -1.0);
  EXPECT_DOUBLE_EQ(softness(on("faeces-5", 3)), 0.0);
}

TEST(FaecalScale, aScoreStandsOnItsOwnScaleOrIsRefused) {
  EXPECT_EQ(problemWith(on("faeces-7", 4)), std::nullopt);
  EXPECT_EQ(problemWith(on("faeces-5", 6)), ScoreProblem::OffTheScale);
  EXPECT_EQ(problemWith({.score = 4, .lowest = 1, .highest = 7, .ideal = 4}), ScoreProblem::NoScale);
  EXPECT_EQ(problemWith({.scale = "ours", .score = 2, .lowest = 3, .highest = 1, .ideal = 2}),
            ScoreProblem::ScaleUpsideDown);
  EXPECT_EQ(problemWith({.scale = "ours", .score = 2, .lowest = 1, .highest = 3, .ideal = 4}),
            ScoreProblem::IdealOffTheScale);
}

TEST(FaecalScale, eachKnownScaleSaysWhereItComesFrom) {
  for (const FaecalScale& scale : faecalScales()) {
    EXPECT_FALSE(scale.source.empty());
    EXPECT_EQ(problemWith(scoreOn(scale, scale.ideal)), std::nullopt);
  }
  EXPECT_EQ(findFaecalScale("faeces-9"), nullptr);
}

}  // namespace
}  // namespace tarebowl::health
