// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/opening.h"
#include "core/store/swap_verbs.h"
#include "tests/core/store/herd.h"
#include "tests/core/store/old_collection.h"

#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using quantity::Grams;

const intake::ControlPan kWeighed{.place = "Small Mammals",
                                  .day = day("2026-11-24"),
                                  .foodClass = "leafy vegetable",
                                  .start = Grams(50),
                                  .end = Grams(44.5),
                                  .endAt = "2026-11-25T07:30:00Z",
                                  .who = "Keeper A",
                                  .note = "by the door"};

TEST(OpenPansMigration, PansOfAnOlderCollectionStayWhatTheyWereAndNewOnesMayStand) {
  const OwnFolder folder;
  makeOld(folder / "a.tarebowl", 7,
          [](Collection& collection) { addControlPan(collection, kWeighed, kKeeper); });
  Collection raised = Collection::open(folder / "a.tarebowl", kNow);
  raised.checkIntegrity();
  EXPECT_EQ(controlPansBetween(raised, kWeighed.day, kWeighed.day).at(0).record, kWeighed);
  EXPECT_TRUE(controlPansThatStand(raised).empty());
  intake::ControlPan standing = kWeighed;
  standing.end.reset();
  addControlPan(raised, standing, kKeeper);
  EXPECT_EQ(controlPansThatStand(raised).at(0).record, standing);
}

}  // namespace
}  // namespace tarebowl::store
