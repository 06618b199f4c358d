// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/eaten.h"

#include "tests/core/intake/feeding.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace tarebowl::intake {
namespace {

using namespace testing;

const std::vector<WaterPan> kDried = {pan(100, 88)};  // L = 0.12

EatenItem only(const EatenBowl& bowl) {
  return bowl.items.at(0);
}

bool found(const EatenBowl& bowl, FindingKind kind) {
  return std::ranges::find(bowl.findings, kind, &Finding::kind) != bowl.findings.end();
}

// Worked example of a feeding trial: 500 g offered, 120 g refused, control pan 100 -> 88 g.
TEST(Eaten, CorrectsTheLeftoverForTheWaterItLost) {
  const EatenItem item = only(eatenFrom(bowlOf({fed("kale", 500, weighed(120))}), PanBook(kDried), 1));
  EXPECT_NEAR(*item.leftAsOffered, 136.363636, 5e-7);
  EXPECT_NEAR(item.eaten->value(), 363.636364, 5e-7);
}

// The same by dry matter, 15 % of the food: 75 g - 120 g · 0.15 / 0.88 = 54.545455 g.
TEST(Eaten, AgreesWithTheBalanceOfDryMatter) {
  const EatenItem item = only(eatenFrom(bowlOf({fed("kale", 500, weighed(120))}), PanBook(kDried), 1));
  EXPECT_NEAR(item.eaten->value() * 0.15, 54.545455, 5e-7);
  EXPECT_NEAR(item.eaten->value() * 0.15, 75.0 - 120.0 * (0.15 / 0.88), 1e-9);
}

TEST(Eaten, AGainOfWaterMakesTheLeftoverLess) {
  const std::vector<WaterPan> wet = {pan(100, 125)};  // L = -0.25
  const EatenItem item = only(eatenFrom(bowlOf({fed("kale", 100, weighed(50))}), PanBook(wet), 1));
  EXPECT_NEAR(item.eaten->value(), 60.0, 1e-9);  // 100 - 50 / 1.25
}

TEST(Eaten, WithoutAPanTheUncorrectedIntakeIsAnUpperBound) {
  const EatenBowl bowl = eatenFrom(bowlOf({fed("kale", 500, weighed(120))}), PanBook({}), 1);
  EXPECT_FALSE(only(bowl).eaten);
  EXPECT_DOUBLE_EQ(only(bowl).atMost, 380.0);
  EXPECT_TRUE(found(bowl, FindingKind::NoPan));
}

TEST(Eaten, AllEatenNeedsNoPan) {
  const EatenBowl bowl =
      eatenFrom(bowlOf({fed("kale", 500, AllEaten{}), fed("endive", 80, weighed(0))}), PanBook({}), 1);
  EXPECT_DOUBLE_EQ(bowl.items[0].eaten->value(), 500.0);
  EXPECT_DOUBLE_EQ(bowl.items[1].eaten->value(), 80.0);
  EXPECT_TRUE(bowl.items[1].allEaten);
  EXPECT_TRUE(bowl.findings.empty());
}

TEST(Eaten, NotWeighedStaysMissing) {
  const EatenBowl bowl = eatenFrom(bowlOf({fed("kale", 500, NotWeighed{})}), PanBook(kDried), 1);
  EXPECT_FALSE(only(bowl).eaten);
  EXPECT_EQ(only(bowl).atLeast, 0.0);
  EXPECT_EQ(only(bowl).atMost, 500.0);
}

TEST(Eaten, MoreLeftThanOfferedIsReportedAndNotClamped) {
  FedItem item = fed("kale", 100, weighed(95, 1.0));
  item.offered.step = quantity::Grams(1);
  const EatenBowl bowl = eatenFrom(bowlOf({item}), PanBook(kDried), 1);
  // 95 / 0.88 = 107.954545 g of what was 100 g.
  EXPECT_NEAR(only(bowl).eaten->value(), -7.954545, 5e-7);
  ASSERT_EQ(bowl.findings.size(), 1U);
  EXPECT_EQ(bowl.findings[0].kind, FindingKind::LeftoverAboveOffered);
  EXPECT_NEAR(bowl.findings[0].amount, 7.954545, 5e-7);
  // sd: sqrt(1/12 + 1/12/0.88²) = 0.436976; 7.954545 / 0.436976
  EXPECT_NEAR(bowl.findings[0].sds, 18.2036, 5e-4);
}

TEST(Eaten, SpilledAndStolenAreNotEatenAndToldApart) {
  FedItem spilled = fed("kale", 100, weighed(44));
  spilled.loss = Loss{LossKind::Spilled, quantity::Grams(10)};
  FedItem stolen = fed("endive", 100, AllEaten{});
  stolen.loss = Loss{LossKind::Stolen, quantity::Grams(30)};
  const EatenBowl bowl = eatenFrom(bowlOf({spilled, stolen}), PanBook(kDried), 1);
  EXPECT_NEAR(bowl.items[0].eaten->value(), 100.0 - 50.0 - 10.0, 1e-9);  // 44 / 0.88 = 50
  EXPECT_EQ(bowl.items[0].spilled, 10.0);
  EXPECT_EQ(bowl.items[1].eaten->value(), 70.0);
  EXPECT_EQ(bowl.items[1].stolen, 30.0);
}

TEST(Eaten, ALossOfUnknownSizeLeavesTheIntakeUnknownWithItsBound) {
  FedItem item = fed("kale", 100, weighed(44));
  item.loss = Loss{LossKind::Stolen, {}};
  const EatenBowl bowl = eatenFrom(bowlOf({item}), PanBook(kDried), 1);
  EXPECT_FALSE(only(bowl).eaten);
  EXPECT_NEAR(only(bowl).atMost, 50.0, 1e-9);
  EXPECT_TRUE(found(bowl, FindingKind::LossUnknown));
}

TEST(Eaten, ErrorsAreThoseOfTheDeltaMethod) {
  FedItem item = fed("kale", 500, weighed(120, 2.0));
  item.offered.step = quantity::Grams(1);
  const std::vector<WaterPan> pans = {pan(100, 90), pan(100, 88), pan(100, 86)};  // L 0.12, sd 0.0230940
  const Uncertain eaten = *only(eatenFrom(bowlOf({item}), PanBook(pans), 1)).eaten;
  // offered 1/sqrt(12), leftover 2/sqrt(12)/0.88: sqrt(1/12 + 4/12 / 0.88²)
  EXPECT_NEAR(eaten.sd(Origin::Weighing), 0.7167804, 1e-6);
  // 120 · 0.0230940 / 0.88²
  EXPECT_NEAR(eaten.sd(Origin::Water), 3.578617, 1e-6);
}

TEST(Eaten, AMixedRemainderIsPartedByEyeAndSaysSo) {
  FedBowl bowl = bowlOf({fed("kale", 100, InRemainder{0.75}), fed("endive", 100, InRemainder{0.25})});
  bowl.remainder = weighed(44);
  const EatenBowl eaten = eatenFrom(bowl, PanBook(kDried), 1, {.piecesSorted = 15.0});
  EXPECT_TRUE(eaten.items[0].estimated);
  EXPECT_NEAR(eaten.items[0].eaten->value(), 100.0 - 33.0 / 0.88, 1e-9);
  EXPECT_NEAR(eaten.items[1].eaten->value(), 100.0 - 11.0 / 0.88, 1e-9);
  // 44 sqrt(0.75 · 0.25 / 16) / 0.88 = 5.412659 g either way, and none in the two together.
  EXPECT_NEAR(eaten.items[0].eaten->sd(Origin::Parts), 5.412659, 5e-7);
  EXPECT_NEAR(eaten.items[1].eaten->sd(Origin::Parts), 5.412659, 5e-7);
  EXPECT_NEAR((*eaten.items[0].eaten + *eaten.items[1].eaten).sd(Origin::Parts), 0.0, 1e-9);
}

TEST(Eaten, PartsThatDoNotAddUpAreTakenInProportionAndTold) {
  FedBowl bowl = bowlOf({fed("kale", 100, InRemainder{0.6}), fed("endive", 100, InRemainder{0.2})});
  bowl.remainder = weighed(44);
  const EatenBowl eaten = eatenFrom(bowl, PanBook(kDried), 1);
  EXPECT_NEAR(*eaten.items[0].left, 33.0, 1e-9);
  EXPECT_TRUE(found(eaten, FindingKind::PartsMissing));
}

TEST(Eaten, ARemainderNobodyPartedLeavesBounds) {
  FedBowl bowl = bowlOf({fed("kale", 100, InRemainder{}), fed("endive", 30, InRemainder{})});
  bowl.remainder = weighed(44);
  const EatenBowl eaten = eatenFrom(bowl, PanBook(kDried), 1);
  EXPECT_FALSE(eaten.items[0].eaten);
  EXPECT_NEAR(eaten.items[0].atLeast, 50.0, 1e-9);  // all of the remainder is kale: 44 / 0.88
  EXPECT_EQ(eaten.items[0].atMost, 100.0);
  EXPECT_EQ(eaten.items[1].atLeast, 0.0);
  EXPECT_TRUE(found(eaten, FindingKind::NoEstimate));
}

TEST(Eaten, BorrowedPansAreTold) {
  const std::vector<WaterPan> pans = {pan(100, 88, day("2026-08-30"))};
  EXPECT_TRUE(
      found(eatenFrom(bowlOf({fed("kale", 500, weighed(120))}), PanBook(pans), 1), FindingKind::BorrowedPan));
}

}  // namespace
}  // namespace tarebowl::intake
