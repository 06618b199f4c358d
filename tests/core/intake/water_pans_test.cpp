// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/water_pans.h"

#include "tests/core/intake/feeding.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace tarebowl::intake {
namespace {

using namespace testing;

const std::string kPlace = "lemur house";

TEST(WaterPans, LossIsTheShareOfTheStart) {
  EXPECT_DOUBLE_EQ(waterLoss(pan(100, 88)), 0.12);  // facts: control 100 -> 88 g
  EXPECT_NEAR(waterLoss(pan(100, 104)), -0.04, 1e-15);
}

TEST(WaterPans, AGainIsLegalAndAnEmptyPanIsNot) {
  EXPECT_EQ(defectOf(pan(100, 104)), std::nullopt);
  EXPECT_EQ(defectOf(pan(0, 88)), PanDefect::StartedEmpty);
  EXPECT_EQ(defectOf(pan(100, 0)), PanDefect::EndedEmpty);  // L = 1
  const std::vector<WaterPan> pans = {pan(100, 88), pan(100, 0)};
  const PanBook book(pans);
  ASSERT_EQ(book.unsound().size(), 1U);
  EXPECT_EQ(book.unsound()[0].pan, 1U);
  EXPECT_DOUBLE_EQ(book.find(kPlace, day("2026-09-01"), "kale", "greens")->loss, 0.12);
}

TEST(WaterPans, TheScaleMakesALossUncertain) {
  WaterPan weighed = pan(100, 88);
  weighed.start.step = weighed.end.step = quantity::Grams(1);
  // Each reading 1 / sqrt(12) = 0.288675; sqrt(0.288675² + (0.88 · 0.288675)²) / 100
  EXPECT_NEAR(waterLossSd(weighed), 0.0038453435, 1e-10);
}

TEST(WaterPans, SeveralPansAreTheirMeanAndABowlScattersAsTheyDo) {
  const std::vector<WaterPan> pans = {pan(100, 90), pan(100, 88), pan(100, 86)};
  const auto water = PanBook(pans).find(kPlace, day("2026-09-01"), "kale", "greens");
  EXPECT_DOUBLE_EQ(water->loss, 0.12);
  EXPECT_EQ(water->pans, 3U);
  EXPECT_EQ(water->from, WaterFrom::SameFood);
  // Sample sd of 0.10, 0.12, 0.14 is 0.02; times sqrt(1 + 1/3).
  EXPECT_NEAR(water->sd, 0.02 * std::sqrt(4.0 / 3.0), 1e-12);
}

TEST(WaterPans, OnePanAloneCannotSayHowPansScatter) {
  const std::vector<WaterPan> pans = {pan(100, 88)};
  const auto water = PanBook(pans).find(kPlace, day("2026-09-01"), "kale", "greens");
  EXPECT_FALSE(water->scatterKnown);
  EXPECT_EQ(water->sd, 0.0);
}

TEST(WaterPans, OnePanScattersAsPairsOfOtherDaysDid) {
  // Two pairs, each with deviations ±0.01: 4 · 0.0001 over 2 degrees of freedom, s² = 0.0002.
  const std::vector<WaterPan> pans = {pan(100, 90, day("2026-08-20")), pan(100, 88, day("2026-08-20")),
                                      pan(100, 80, day("2026-08-21")), pan(100, 78, day("2026-08-21")),
                                      pan(100, 85, day("2026-09-01"))};
  const auto water = PanBook(pans).find(kPlace, day("2026-09-01"), "kale", "greens");
  EXPECT_TRUE(water->scatterKnown);
  EXPECT_NEAR(water->sd, std::sqrt(0.0002) * std::sqrt(2.0), 1e-12);
}

TEST(WaterPans, TheSameFoodGoesBeforeItsClassAndTheDayBeforeOthers) {
  const std::vector<WaterPan> pans = {pan(100, 70, day("2026-08-31"), "kale"),
                                      pan(100, 80, day("2026-09-01"), "endive"),
                                      pan(100, 90, day("2026-09-02"), "kale")};
  const PanBook book(pans);
  const auto onTheDay = book.find(kPlace, day("2026-09-01"), "kale", "greens");
  EXPECT_EQ(onTheDay->from, WaterFrom::SameClass);
  EXPECT_DOUBLE_EQ(onTheDay->loss, 0.2);
  const auto later = book.find(kPlace, day("2026-09-04"), "endive", "greens");
  EXPECT_EQ(later->from, WaterFrom::SameFoodOtherDays);
  EXPECT_EQ(later->daysApart, 3);
  const auto another = book.find(kPlace, day("2026-09-04"), "chard", "greens");
  EXPECT_EQ(another->from, WaterFrom::SameClassOtherDays);
  EXPECT_EQ(another->pans, 3U);
  EXPECT_DOUBLE_EQ(another->loss, 0.2);  // the mean of 0.3, 0.2 and 0.1
}

TEST(WaterPans, BorrowsTheNearestDaysAndNoneTooFar) {
  std::vector<WaterPan> pans;
  for (int i = 0; i < 10; ++i) pans.push_back(pan(100, 90 - i, dayAfter("2026-09-01", i)));
  const PanBook book(pans, {.daysApart = 7, .days = 2});
  const auto near = book.find(kPlace, day("2026-09-12"), "kale", "greens");  // 9 and 10 September: 2, 3 days
  EXPECT_EQ(near->pans, 2U);
  EXPECT_EQ(near->daysApart, 3);
  EXPECT_NEAR(near->loss, (0.19 + 0.18) / 2.0, 1e-12);
  EXPECT_FALSE(book.find(kPlace, day("2026-09-20"), "kale", "greens"));
}

TEST(WaterPans, AnotherPlaceSaysNothing) {
  const std::vector<WaterPan> pans = {pan(100, 88)};
  EXPECT_FALSE(PanBook(pans).find("bat cave", day("2026-09-01"), "kale", "greens"));
}

TEST(WaterPans, AClassStatedToBeUnchangedNeedsNone) {
  const auto water = PanBook({}, {}, {"mineral"}).find(kPlace, day("2026-09-01"), "limestone", "mineral");
  EXPECT_EQ(water->from, WaterFrom::Stated);
  EXPECT_EQ(water->loss, 0.0);
}

}  // namespace
}  // namespace tarebowl::intake
