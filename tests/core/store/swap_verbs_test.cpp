// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/swap_verbs.h"

#include "tests/core/store/feeding_days.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using intake::SwapApproval;
using quantity::Grams;
using testing::HasSubstr;

const Author kOther{"Nutritionist", "2026-11-25T08:00:00Z"};

class SwapVerbs : public testing::Test {
 protected:
  Kitchen kitchen;
  Collection& collection = kitchen.collection;

  intake::SwapMade pelletForEndive(SwapApproval approval = SwapApproval::KeeperDecides) {
    return {.instead = kitchen.item("family", 2),
            .given = {{"endive", Grams(60)}, {"kale", Grams(5)}},
            .why = "not delivered",
            .approval = approval};
  }
  std::vector<std::string> foods() {
    std::vector<std::string> codes;
    for (const auto& item : kitchen.bowl("family").items)
      codes.push_back((item.swappedOut ? "-" : "") + item.food);
    return codes;
  }
};

TEST_F(SwapVerbs, ASwapTakesOneFoodOutOfTheBowlAndPutsTheOthersIn) {
  addSwap(collection, pelletForEndive(), kKeeper);
  EXPECT_THAT(foods(), testing::ElementsAre("kale", "-pellet-a", "endive", "kale"));
  const auto swaps = swapsBetween(collection, kitchen.today, kitchen.today);
  ASSERT_EQ(swaps.size(), 1U);
  EXPECT_EQ(swaps[0].record.food, "pellet-a");
  EXPECT_EQ(swaps[0].record.by.who, "Keeper A");
  EXPECT_EQ(kitchen.bowl("family").items.at(2).planned, Grams(60));
  EXPECT_THAT(refusal(collection, [&] { kitchen.weigh(kitchen.item("family", 2), 30); }),
              HasSubstr("was swapped for another"));
}

TEST_F(SwapVerbs, OneThatWaitsLeavesTheBowlAsItIsUntilItIsApproved) {
  const Written swap = addSwap(collection, pelletForEndive(SwapApproval::Waiting), kKeeper);
  EXPECT_THAT(foods(), testing::ElementsAre("kale", "pellet-a"));
  EXPECT_EQ(swapsWaiting(collection).size(), 1U);
  decideSwap(collection, SwapId{swap.id}, 1, true, "", kOther);
  EXPECT_THAT(foods(), testing::ElementsAre("kale", "-pellet-a", "endive", "kale"));
  EXPECT_TRUE(swapsWaiting(collection).empty());
  EXPECT_EQ(swapsBetween(collection, kitchen.today, kitchen.today).at(0).record.decidedBy.who,
            "Nutritionist");
}

TEST_F(SwapVerbs, ARefusedOneComesOutAgainUnlessItIsInTheBowl) {
  const Written swap = addSwap(collection, pelletForEndive(), kKeeper);
  EXPECT_THAT(refusal(collection, [&] { decideSwap(collection, SwapId{swap.id}, 1, false, "", kOther); }),
              HasSubstr("needs a reason"));
  decideSwap(collection, SwapId{swap.id}, 1, false, "too much oxalate", kOther);
  EXPECT_THAT(foods(), testing::ElementsAre("kale", "pellet-a"));
  const Written other = addSwap(collection, pelletForEndive(), kKeeper);
  kitchen.weigh(kitchen.item("family", 3), 60);
  EXPECT_THAT(refusal(collection, [&] { decideSwap(collection, SwapId{other.id}, 1, false, "no", kOther); }),
              HasSubstr("is weighed in"));
}

TEST_F(SwapVerbs, WhatIsWeighedInIsNotSwapped) {
  kitchen.weigh(kitchen.item("family", 2), 30.5);
  EXPECT_THAT(refusal(collection, [&] { addSwap(collection, pelletForEndive(), kKeeper); }),
              HasSubstr("is weighed in already"));
}

TEST_F(SwapVerbs, ASwapNeedsAReasonAndSomethingToGive) {
  auto swap = pelletForEndive();
  swap.why.clear();
  EXPECT_THAT(refusal(collection, [&] { addSwap(collection, swap, kKeeper); }), HasSubstr("reason"));
  swap = pelletForEndive();
  swap.given.clear();
  EXPECT_THAT(refusal(collection, [&] { addSwap(collection, swap, kKeeper); }),
              HasSubstr("nothing is given"));
}

TEST(ControlPan, IsKeptAsItWasWeighedAlsoWhereItGainedWater) {
  Kitchen kitchen;
  const intake::ControlPan pan{.place = "lemur house",
                               .day = kitchen.today,
                               .foodClass = "leafy vegetable",
                               .start = Grams(50),
                               .end = Grams(51.2),
                               .startAt = "2026-11-25T08:00:00Z",
                               .endAt = "2026-11-26T08:00:00Z",
                               .who = "Keeper A"};
  const Written added = addControlPan(kitchen.collection, pan, kKeeper);
  const auto pans = controlPansBetween(kitchen.collection, kitchen.today, kitchen.today);
  ASSERT_EQ(pans.size(), 1U);
  EXPECT_EQ(pans[0].record, pan);
  undo(kitchen.collection, added.change, kKeeper);
  EXPECT_TRUE(controlPansBetween(kitchen.collection, kitchen.today, kitchen.today).empty());
}

TEST(ControlPan, StandsUntilSomebodyWeighsWhatCameBack) {
  Kitchen kitchen;
  intake::ControlPan pan{
      .place = "shed", .day = kitchen.today, .food = "kale", .start = Grams(50), .startAt = kNow};
  const Written added = addControlPan(kitchen.collection, pan, kKeeper);
  ASSERT_EQ(controlPansThatStand(kitchen.collection).size(), 1U);
  EXPECT_EQ(controlPansThatStand(kitchen.collection)[0].record, pan);
  pan.end = Grams(46);
  editControlPan(kitchen.collection, ControlPanId{added.id}, 1, pan, kKeeper);
  EXPECT_TRUE(controlPansThatStand(kitchen.collection).empty());
  EXPECT_EQ(pansOfPlace(kitchen.collection, "shed", kitchen.today, kitchen.today).at(0).end, Grams(46));
}

TEST(ControlPan, AGroupsPansAreThoseOfItsSection) {
  Kitchen kitchen;
  for (const char* place : {"Small Mammals", "shed"})
    addControlPan(kitchen.collection,
                  {.place = place, .day = kitchen.today, .food = "kale", .start = Grams(50), .startAt = kNow},
                  kKeeper);
  const auto pans = pansOfGroup(kitchen.collection, "family", kitchen.today, kitchen.today);
  ASSERT_EQ(pans.size(), 1U);
  EXPECT_EQ(pans[0].place, "Small Mammals");
  EXPECT_EQ(pans[0].start, Grams(50));
}

TEST(ControlPan, StandsForOneFoodOrOneClassAndHoldsSomethingAtItsStart) {
  Kitchen kitchen;
  intake::ControlPan pan{.place = "shed", .day = kitchen.today, .food = "kale", .start = Grams(50)};
  pan.foodClass = "leafy vegetable";
  EXPECT_THAT(refusal(kitchen.collection, [&] { addControlPan(kitchen.collection, pan, kKeeper); }),
              HasSubstr("one food or for one class"));
  pan.foodClass.clear();
  pan.start = Grams(0);
  EXPECT_THAT(refusal(kitchen.collection, [&] { addControlPan(kitchen.collection, pan, kKeeper); }),
              HasSubstr("holds something at its start"));
}

}  // namespace
}  // namespace tarebowl::store
