// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/ladder_track.h"

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

TEST(Track, PutsTheZoneInsideWithRoomOnBothSides) {
  const TrackScale scale(5.0, 12.0);
  EXPECT_GT(scale.zone().from, 0.1);
  EXPECT_LT(scale.zone().to, 0.9);
  EXPECT_DOUBLE_EQ(scale.position(5.0), scale.zone().from);
  EXPECT_DOUBLE_EQ(scale.position(12.0), scale.zone().to);
}

TEST(Track, WithoutAMaximumIsOpenToTheRight) {
  const TrackScale scale(5.0, std::nullopt);
  EXPECT_GT(scale.zone().from, 0.0);
  EXPECT_DOUBLE_EQ(scale.zone().to, 1.0);
}

TEST(Track, WithoutAMinimumIsOpenToTheLeft) {
  const TrackScale scale(std::nullopt, 2.0);
  EXPECT_DOUBLE_EQ(scale.zone().from, 0.0);
  EXPECT_LT(scale.zone().to, 1.0);
}

TEST(Track, SaysOnWhichSideAFarValueLies) {
  const TrackScale scale(5.0, 12.0);
  EXPECT_TRUE(scale.isAbove(400.0));
  EXPECT_DOUBLE_EQ(scale.position(400.0), 1.0);
  EXPECT_TRUE(scale.isBelow(0.0));
  EXPECT_DOUBLE_EQ(scale.position(0.0), 0.0);
}

TEST(Track, OfABoundOfNothingStillHasALength) {
  for (const TrackScale& scale : {TrackScale(std::nullopt, 0.0), TrackScale(0.0, 0.0),
                                  TrackScale(0.0, std::nullopt), TrackScale(3.0, 3.0)})
    EXPECT_GT(scale.high(), scale.low());
}

TEST(Track, WhiskerReachesAsFarToBothSides) {
  const TrackScale scale(5.0, 12.0);
  const Span whisker = scale.whisker(8.0, 1.0);
  EXPECT_DOUBLE_EQ(whisker.from, scale.position(7.0));
  EXPECT_DOUBLE_EQ(whisker.to, scale.position(9.0));
}

TEST(Track, HatchesNothingWhereAllIsKnown) {
  EXPECT_FALSE(TrackScale(5.0, 12.0).unknown(8.0, 1.0));
}

TEST(Track, HatchesAllWhereNothingIsKnown) {
  const auto hatch = TrackScale(5.0, 12.0).unknown(0.0, 0.0);
  ASSERT_TRUE(hatch);
  EXPECT_DOUBLE_EQ(hatch->from, 0.0);
  EXPECT_DOUBLE_EQ(hatch->to, 1.0);
}

// Half of the dry matter is known and holds 6: were the other half alike, it would be 12.
TEST(Track, HatchesFromWhatIsKnownToWhatItCouldBe) {
  const TrackScale scale(5.0, 12.0);
  const auto hatch = scale.unknown(6.0, 0.5);
  ASSERT_TRUE(hatch);
  EXPECT_DOUBLE_EQ(hatch->from, scale.position(6.0));
  EXPECT_DOUBLE_EQ(hatch->to, scale.position(12.0));
}

TEST(Track, HatchNeverLeavesTheTrack) {
  const auto hatch = TrackScale(5.0, 12.0).unknown(500.0, 0.5);
  ASSERT_TRUE(hatch);
  EXPECT_LE(hatch->to, 1.0);
}

}  // namespace
}  // namespace tarebowl::ui
