// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/lot_verbs.h"

#include "tests/core/store/herd.h"
#include "tests/core/store/larder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using intake::FoodLot;
using ::testing::HasSubstr;

class LotVerbs : public testing::Test {
 protected:
  LotVerbs() {
    for (const char* food : {"kale", "crickets"}) addFood(collection, plain(food), kKeeper);
  }
  static FoodLot lot(const char* food, const char* name, const char* from) {
    return {.food = food, .lot = name, .from = day(from), .who = "Keeper A"};
  }
  [[nodiscard]] std::optional<std::string> fedOn(const char* food, const char* on) const {
    const auto found = intake::lotOn(lotsOf(listLots(collection)), food, day(on));
    return found ? std::optional(found->lot) : std::nullopt;
  }

  OwnFolder folder;
  Collection collection = Collection::create(folder.collection("lots"), kKeeper);
};

TEST_F(LotVerbs, ALotIsFedUntilTheNextOneOfItsFoodBegins) {
  addLot(collection, lot("crickets", "C-17", "2026-11-20"), kKeeper);
  addLot(collection, lot("crickets", "C-18", "2026-11-24"), kKeeper);
  addLot(collection, lot("kale", "K-3", "2026-11-22"), kKeeper);
  EXPECT_EQ(fedOn("crickets", "2026-11-19"), std::nullopt);
  EXPECT_EQ(fedOn("crickets", "2026-11-20"), "C-17");
  EXPECT_EQ(fedOn("crickets", "2026-11-23"), "C-17");
  EXPECT_EQ(fedOn("crickets", "2026-12-01"), "C-18");
  EXPECT_EQ(fedOn("kale", "2026-12-01"), "K-3");
}

TEST_F(LotVerbs, WhatCannotBeALotIsRefused) {
  addLot(collection, lot("kale", "K-3", "2026-11-22"), kKeeper);
  const auto refused = [&](const FoodLot& wrong) {
    return refusal(collection, [&] { addLot(collection, wrong, kKeeper); });
  };
  EXPECT_THAT(refused(lot("kale", "", "2026-11-23")), HasSubstr("what does the box say"));
  EXPECT_THAT(refused(lot("melon", "M-1", "2026-11-23")), HasSubstr("no food melon"));
  EXPECT_THAT(refused(lot("kale", "K-4", "2026-11-22")), HasSubstr("already"));
  EXPECT_EQ(listLots(collection).size(), 1U);
}

TEST_F(LotVerbs, ALotIsPutRightTakenOutAndTakenBack) {
  const Written added = addLot(collection, lot("kale", "K-3", "2026-11-22"), kKeeper);
  editLot(collection, LotId{added.id}, 1, lot("kale", "K-8", "2026-11-22"), kKeeper);
  EXPECT_EQ(fedOn("kale", "2026-11-22"), "K-8");
  const Written removed = removeLot(collection, LotId{added.id}, 2, kKeeper);
  EXPECT_TRUE(listLots(collection).empty());
  undo(collection, removed.change, kKeeper);
  EXPECT_EQ(fedOn("kale", "2026-11-22"), "K-8");
}

TEST_F(LotVerbs, LotsFollowTheNewCodeOfTheirFoodAndKeepItFromBeingRemoved) {
  addLot(collection, lot("kale", "K-3", "2026-11-22"), kKeeper);
  StoredFood kale = findFood(collection, "kale").value();
  kale.record.food.code = "kale-raw";
  editFood(collection, kale.id, kale.revision, kale.record, kKeeper);
  EXPECT_EQ(fedOn("kale-raw", "2026-11-22"), "K-3");
  EXPECT_THAT(refusal(collection, [&] { removeFood(collection, kale.id, kale.revision + 1, kKeeper); }),
              HasSubstr("has lots"));
}

}  // namespace
}  // namespace tarebowl::store
