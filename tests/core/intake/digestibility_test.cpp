// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/digestibility.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tarebowl::intake {
namespace {

TEST(Digestibility, ByCollectionIsWhatDidNotComeOut) {
  // 200 g of dry matter eaten, 50 g of faeces: 150 / 200.
  const auto share = byCollection({200.0, 4.0}, {50.0, 2.0}).value();
  EXPECT_DOUBLE_EQ(share.share, 0.75);
  EXPECT_DOUBLE_EQ(share.sd, std::hypot(2.0, 0.25 * 4.0) / 200.0);
  EXPECT_FALSE(byCollection({0.0, 0.0}, {50.0, 2.0}));
}

TEST(Digestibility, ByMarkerIsTheRatioOfItsConcentrations) {
  // Acid-insoluble ash 1.2 % in what was eaten, 4.0 % in the faeces: 1 - 1.2 / 4.0.
  EXPECT_NEAR(byMarker({.markerInFeed = {1.2, 0}, .markerInFaeces = {4.0, 0}}).value().share, 0.7, 1e-15);
  // Protein 20 % and 15 %: 1 - 0.3 · 0.75.
  const MarkerTrial protein{{1.2, 0}, {4.0, 0}, {20.0, 0}, {15.0, 0}};
  EXPECT_NEAR(byMarker(protein).value().share, 0.775, 1e-15);
  EXPECT_FALSE(byMarker({.markerInFeed = {1.2, 0}, .markerInFaeces = {0, 0}}));
}

TEST(Digestibility, BothMethodsAgreeOnAMarkerThatAllComesOut) {
  // 200 g eaten with 2.4 g of marker, 60 g of faeces with the same 2.4 g.
  const auto collected = byCollection({200.0, 0.0}, {60.0, 0.0}).value().share;
  const auto marked =
      byMarker({.markerInFeed = {2.4 / 200.0, 0}, .markerInFaeces = {2.4 / 60.0, 0}}).value().share;
  EXPECT_NEAR(collected, marked, 1e-15);
}

TEST(Digestibility, RelativeErrorsOfTheMarkerAdd) {
  // 0.3 · sqrt(0.05² + 0.1²)
  const auto share = byMarker({.markerInFeed = {1.2, 0.06}, .markerInFaeces = {4.0, 0.4}}).value();
  EXPECT_NEAR(share.sd, 0.3 * std::sqrt(0.0125), 1e-12);
}

}  // namespace
}  // namespace tarebowl::intake
