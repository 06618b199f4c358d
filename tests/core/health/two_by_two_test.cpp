// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/two_by_two.h"

#include <gtest/gtest.h>

#include <array>

namespace tarebowl::health {
namespace {

TEST(Fisher, tastesTea) {
  // Fisher's tea tasting: 1/70 and 17/70 one-sided, 2/70 and 34/70 two-sided (70 ways to choose 4 of 8).
  EXPECT_NEAR(fisherTest({4, 0, 0, 4}).oneSided, 0.0142857143, 1e-10);
  EXPECT_NEAR(fisherTest({4, 0, 0, 4}).twoSided, 0.0285714286, 1e-10);
  EXPECT_NEAR(fisherTest({3, 1, 1, 3}).oneSided, 0.2428571429, 1e-10);
  EXPECT_NEAR(fisherTest({3, 1, 1, 3}).twoSided, 0.4857142857, 1e-10);
}

TEST(Fisher, countsEveryTableThatIsNoMoreProbable) {
  // [[8,2],[1,5]], computed with SciPy.
  EXPECT_NEAR(fisherTest({8, 2, 1, 5}).oneSided, 0.0244755245, 1e-10);
  EXPECT_NEAR(fisherTest({8, 2, 1, 5}).twoSided, 0.0349650350, 1e-10);
}

TEST(Fisher, isTheSameWhicheverWayTheTableIsTurned) {
  const double p = fisherTest({8, 2, 1, 5}).twoSided;
  EXPECT_NEAR(fisherTest({8, 1, 2, 5}).twoSided, p, 1e-12);
  EXPECT_NEAR(fisherTest({1, 5, 8, 2}).twoSided, p, 1e-12);
}

TEST(Fisher, hasNothingToCompareWhereAllDaysAreAlike) {
  EXPECT_EQ(fisherTest({3, 9, 0, 0}).twoSided, 1.0);
  EXPECT_EQ(fisherTest({0, 9, 0, 7}).twoSided, 1.0);
  EXPECT_EQ(fisherTest({}).twoSided, 1.0);
}

TEST(RiskRatio, hasKatzsInterval) {
  // 8/10 against 1/6: 0.8 · 6 = 4.8; SE² = 1/8 - 1/10 + 1/1 - 1/6.
  const auto risk = riskRatio({8, 2, 1, 5});
  ASSERT_TRUE(risk);
  EXPECT_NEAR(risk->ratio, 4.8, 1e-12);
  EXPECT_NEAR(risk->standardError, 0.9264628, 1e-7);
  EXPECT_NEAR(risk->low, 0.780971, 1e-6);
  EXPECT_NEAR(risk->high, 29.501752, 1e-6);
  EXPECT_FALSE(risk->halfAdded);
}

TEST(RiskRatio, saysWhereACountOfNothingWasHelped) {
  const auto risk = riskRatio({4, 0, 0, 4});
  ASSERT_TRUE(risk);
  EXPECT_TRUE(risk->halfAdded);
  EXPECT_NEAR(risk->ratio, (4.5 / 5.0) / (0.5 / 5.0), 1e-12);
  EXPECT_FALSE(riskRatio({4, 4, 0, 0}));
}

TEST(BenjaminiHochberg, correctsForHowManyThereAre) {
  // By hand: 0.01·4/1, 0.04·4/3 and 0.03·4/2 (the lesser of 0.06 and 0.0533 counts), 0.5·4/4.
  const std::array<double, 4> p{0.04, 0.01, 0.5, 0.03};
  const auto corrected = benjaminiHochberg(p);
  EXPECT_NEAR(corrected[0], 0.16 / 3.0, 1e-12);
  EXPECT_NEAR(corrected[1], 0.04, 1e-12);
  EXPECT_NEAR(corrected[2], 0.5, 1e-12);
  EXPECT_NEAR(corrected[3], 0.16 / 3.0, 1e-12);
  EXPECT_TRUE(benjaminiHochberg({}).empty());
}

}  // namespace
}  // namespace tarebowl::health
