// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/pooling.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace tarebowl::food {
namespace {

// 9, 10, 11: mean 10, sd 1. 13 - sqrt 2, 13 + sqrt 2: mean 13, sd 2. All five: mean 56/5 = 11.2,
// sum of squares 2*1 + 1*4 + 3*1.2^2 + 2*1.8^2 = 16.8, sd^2 = 16.8/4 = 4.2.
TEST(Pooling, TwoReportsBecomeWhatTheirFiveDeterminationsWouldGive) {
  const std::array reports{ReportedMean{10.0, 1.0, 3}, ReportedMean{13.0, 2.0, 2}};
  const ReportedMean pooled = pool(reports);
  EXPECT_DOUBLE_EQ(pooled.mean, 11.2);
  EXPECT_DOUBLE_EQ(pooled.sd.value(), std::sqrt(4.2));
  EXPECT_EQ(pooled.count, 5);
}

TEST(Pooling, TheIdentityHoldsForTheSingleDeterminations) {
  const std::array all{9.0, 10.0, 11.0, 13.0 - std::sqrt(2.0), 13.0 + std::sqrt(2.0)};
  double squares = 0.0;
  for (const double one : all) squares += (one - 11.2) * (one - 11.2);
  EXPECT_NEAR(squares / 4.0, 4.2, 1e-12);
}

// 8, 10, 12 one by one: mean 10, sd^2 = (4 + 0 + 4)/2 = 4.
TEST(Pooling, SingleDeterminationsScatterAmongThemselves) {
  const std::array reports{ReportedMean{8.0, {}, 1}, ReportedMean{10.0, {}, {}}, ReportedMean{12.0, {}, 1}};
  const ReportedMean pooled = pool(reports);
  EXPECT_DOUBLE_EQ(pooled.mean, 10.0);
  EXPECT_DOUBLE_EQ(pooled.sd.value(), 2.0);
  EXPECT_EQ(pooled.count, 3);
}

TEST(Pooling, OneReportStaysAsItIs) {
  const std::array reports{ReportedMean{10.0, 1.5, {}}};
  EXPECT_EQ(pool(reports).sd, 1.5);
  EXPECT_EQ(pool(reports).count, std::nullopt);
}

TEST(Pooling, ScatterThatAReportKeepsToItselfIsNotInvented) {
  const std::array severalWithoutSd{ReportedMean{10.0, {}, 3}, ReportedMean{13.0, 2.0, 2}};
  EXPECT_FALSE(pool(severalWithoutSd).sd);
  const std::array sdWithoutNumber{ReportedMean{10.0, 1.0, {}}, ReportedMean{13.0, 2.0, 2}};
  EXPECT_FALSE(pool(sdWithoutNumber).sd);
  EXPECT_DOUBLE_EQ(pool(severalWithoutSd).mean, 11.2);
}

}  // namespace
}  // namespace tarebowl::food
