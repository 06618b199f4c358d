// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/from_records.h"

#include "tests/core/intake/feeding.h"

#include <gtest/gtest.h>

#include <vector>

namespace tarebowl::intake {
namespace {

using namespace testing;
using quantity::Grams;

FoodKind kindOf(const std::string& food) {
  return {food == "kale" ? "greens" : "roots", Grams(0.1)};
}

BowlItem item(const std::string& food, double planned, std::optional<double> weighed,
              std::optional<Leftover> leftover) {
  BowlItem made{.food = food, .planned = Grams(planned)};
  if (weighed) made.weighings.push_back({.actual = Grams(*weighed)});
  if (leftover) made.leftovers.push_back(*leftover);
  return made;
}

Bowl bowl(std::vector<BowlItem> items) {
  return {.key = {"lemurs", day("2026-09-01"), 1}, .items = std::move(items)};
}

TEST(FromRecords, TakesWhatWentInAndWhatWasFound) {
  const FedBowl fed = fedBowl(
      bowl({item("kale", 50, 49.7, Leftover{.kind = LeftoverKind::Weighed, .left = Grams(12.3)}),
            item("beet", 30, {}, Leftover{.kind = LeftoverKind::AllEaten}), item("carrot", 20, 20.0, {})}),
      "Small Mammals", kindOf);
  EXPECT_EQ(fed.place, "Small Mammals");
  EXPECT_EQ(fed.items[0].foodClass, "greens");
  EXPECT_EQ(fed.items[0].offered, (ScaleReading{Grams(49.7), Grams(0.1)}));
  EXPECT_EQ(fed.items[0].remains, Remains(ScaleReading{Grams(12.3), Grams(0.1)}));
  EXPECT_EQ(fed.items[1].offered.grams, Grams(30));  // as planned: it was not weighed in
  EXPECT_EQ(fed.items[1].remains, Remains(AllEaten{}));
  EXPECT_EQ(fed.items[2].remains, Remains(NotWeighed{}));  // nobody has been there yet
}

TEST(FromRecords, ACorrectionGoesBeforeTheFirstEntryAndASecondDoesNot) {
  BowlItem corrected = item("kale", 50, 49.7, Leftover{.kind = LeftoverKind::Weighed, .left = Grams(41)});
  corrected.leftovers.push_back(
      {.kind = LeftoverKind::Weighed, .left = Grams(4.1), .correction = "point forgotten"});
  corrected.leftovers.push_back({.kind = LeftoverKind::AllEaten, .second = true});
  const FedBowl fed = fedBowl(bowl({corrected}), "", kindOf);
  EXPECT_EQ(std::get<ScaleReading>(fed.items[0].remains).grams, Grams(4.1));
}

TEST(FromRecords, WhatWasSwappedOutWasNotOffered) {
  BowlItem gone = item("kale", 50, {}, {});
  gone.swappedOut = true;
  EXPECT_TRUE(fedBowl(bowl({gone}), "", kindOf).items.empty());
}

TEST(FromRecords, EstimatesArePartsOfTheRemainderThatWasWeighed) {
  Bowl mixed = bowl({item("kale", 50, 50.0, Leftover{.kind = LeftoverKind::Estimated, .left = Grams(15)}),
                     item("beet", 50, 50.0, Leftover{.kind = LeftoverKind::Estimated, .left = Grams(5)})});
  EXPECT_EQ(fedBowl(mixed, "", kindOf).remainder.value().grams, Grams(20));  // never weighed: their sum
  mixed.remainders.push_back({.left = Grams(24)});
  const FedBowl fed = fedBowl(mixed, "", kindOf);
  EXPECT_EQ(fed.remainder.value().grams, Grams(24));
  EXPECT_EQ(fed.items[0].remains, Remains(InRemainder{0.75}));
  EXPECT_EQ(fed.items[1].remains, Remains(InRemainder{0.25}));
}

TEST(FromRecords, FoodsWithoutAnEntryAreInTheRemainder) {
  Bowl mixed =
      bowl({item("kale", 50, 50.0, {}), item("beet", 50, 50.0, Leftover{.kind = LeftoverKind::AllEaten})});
  mixed.remainders.push_back({.left = Grams(24)});
  const FedBowl fed = fedBowl(mixed, "", kindOf);
  EXPECT_EQ(fed.items[0].remains, Remains(InRemainder{}));
  EXPECT_EQ(fed.items[1].remains, Remains(AllEaten{}));
}

TEST(FromRecords, SpilledWithNothingSaidOfTheBowlIsNotWeighed) {
  const FedBowl fed =
      fedBowl(bowl({item("kale", 50, 50.0, Leftover{.kind = LeftoverKind::Spilled}),
                    item("beet", 50, 50.0,
                         Leftover{.kind = LeftoverKind::Stolen, .left = Grams(3), .lost = Grams(9)})}),
              "", kindOf);
  EXPECT_EQ(fed.items[0].remains, Remains(NotWeighed{}));
  EXPECT_EQ(fed.items[0].loss, (Loss{LossKind::Spilled, {}}));
  EXPECT_EQ(fed.items[1].loss, (Loss{LossKind::Stolen, Grams(9)}));
}

TEST(FromRecords, APanOfAFoodStandsForItsClassToo) {
  const WaterPan pan = waterPan({.food = "kale", .start = Grams(40), .end = Grams(33)}, kindOf).value();
  EXPECT_EQ(pan.foodClass, "greens");
  EXPECT_EQ(waterPan({.foodClass = "roots", .start = Grams(40), .end = Grams(33)}, kindOf)->food, "");
  EXPECT_FALSE(waterPan({.foodClass = "roots", .start = Grams(40)}, kindOf)) << "it still stands there";
}

}  // namespace
}  // namespace tarebowl::intake
