// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A desk's own copy of what the kitchen needs.
#include "core/store/station_copy.h"

#include "core/store/food_reading.h"
#include "core/store/opening.h"
#include "core/store/section_reading.h"
#include "tests/core/store/cut_off_desk.h"
#include "tests/core/store/larder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <atomic>
#include <iterator>
#include <thread>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;
using quantity::Grams;

class StationCopyTest : public testing::Test {
 protected:
  Kitchen kitchen;
  Collection& shared = kitchen.collection;
  CutOffDesk desk{kitchen.folder, "bench"};
};

TEST_F(StationCopyTest, HoldsTheDaysSheetWithWhatWasWeighed) {
  kitchen.weigh(kitchen.item("family", 1), 119);
  EXPECT_FALSE(stationCopy(desk.own));
  desk.takeCopyOf(shared);
  EXPECT_EQ(bowlsOfDay(desk.own, kitchen.today), bowlsOfDay(shared, kitchen.today));
  EXPECT_EQ(listGroups(desk.own).size(), listGroups(shared).size());
  EXPECT_EQ(findFood(desk.own, "kale")->record, findFood(shared, "kale")->record);
  const auto fed = everyDietFedOn(desk.own, kitchen.today);
  ASSERT_TRUE(fed.contains("lemur-morning"));
  EXPECT_EQ(fed.at("lemur-morning").lines, everyDietFedOn(shared, kitchen.today).at("lemur-morning").lines);
  desk.own.checkIntegrity();
}

TEST_F(StationCopyTest, SaysOfWhichServerAndForWhichDaysItIs) {
  desk.takeCopyOf(shared);
  const StationCopy copy = stationCopy(desk.own).value();
  EXPECT_EQ(copy.server, shared.file().string());
  EXPECT_EQ(copy.takenAt, kNow);
  EXPECT_TRUE(copy.has(day("2026-11-24")));
  EXPECT_TRUE(copy.has(day("2026-11-26")));
  EXPECT_FALSE(copy.has(day("2026-11-01")));
}

TEST_F(StationCopyTest, LeavesOutYearsOfSheetsAndLaboratoryValues) {
  auto longAgo = kitchen.planned();
  for (intake::Bowl& bowl : longAgo) bowl.key.day = day("2025-03-01");
  openSheet(shared, "Small Mammals", day("2025-03-01"), longAgo, kKeeper);
  addSample(shared, findFood(shared, "kale")->id, analysis("Field lab", "2026-10-01", 250), kKeeper);
  desk.takeCopyOf(shared);
  EXPECT_TRUE(bowlsOfDay(desk.own, day("2025-03-01")).empty());
  EXPECT_EQ(bowlsOfDay(desk.own, kitchen.today).size(), 2U);
  int samples = -1;
  desk.own.inner().sql() << "SELECT COUNT(*) FROM sample", soci::into(samples);
  EXPECT_EQ(samples, 0);
}

TEST_F(StationCopyTest, KeepsTheMassesByWhichWeightsAreJudged) {
  for (const char* on : {"2024-01-01", "2026-11-01", "2026-11-20"})
    addMass(shared, weighed("a", on, 2.5), Confirmed::Yes, kKeeper);
  addMass(shared, weighed("b", "2025-06-01", 2.25), Confirmed::Yes, kKeeper);
  desk.takeCopyOf(shared);
  const auto massesIn = [&](const Collection& collection) {
    return bodyMassesOn(collection, groupsHousedOn(collection, kitchen.today), kitchen.today);
  };
  EXPECT_EQ(massesIn(desk.own), massesIn(shared));
  int kept = 0;
  desk.own.inner().sql() << "SELECT COUNT(*) FROM mass_reading WHERE on_day < '2025-01-01'", soci::into(kept);
  EXPECT_EQ(kept, 0);
}

TEST_F(StationCopyTest, TakenAnewItFollowsTheServerAndForgetsDaysThatAreOver) {
  desk.takeCopyOf(shared);
  kitchen.weigh(kitchen.item("family", 1), 118);
  correctWeight(shared, {kitchen.item("family", 1), Grams(121)}, "misread", kKeeper);
  addFood(shared, plain("fennel"), kKeeper);
  desk.takeCopyOf(shared);
  EXPECT_EQ(bowlsOfDay(desk.own, kitchen.today), bowlsOfDay(shared, kitchen.today));
  EXPECT_TRUE(findFood(desk.own, "fennel"));
  desk.takeCopyOf(shared, "2026-12-24");
  EXPECT_TRUE(bowlsOfDay(desk.own, kitchen.today).empty());
  EXPECT_TRUE(findFood(desk.own, "fennel"));
  desk.startAgain();
  desk.own.checkIntegrity();
}

TEST_F(StationCopyTest, OfTheKitchenAloneNothingElseIsRead) {
  desk.takeCopyOf(shared);
  kitchen.weigh(kitchen.item("family", 1), 118);
  addFood(shared, plain("fennel"), kKeeper);
  desk.takeCopyOf(shared, "2026-11-25", CopyExtent::Kitchen);
  EXPECT_EQ(bowlsOfDay(desk.own, kitchen.today), bowlsOfDay(shared, kitchen.today));
  EXPECT_FALSE(findFood(desk.own, "fennel"));
}

TEST_F(StationCopyTest, WhatStillWaitsIsOnTheSheetAfterItWasTakenAnew) {
  desk.takeCopyOf(shared);
  desk.weigh("family", 2, 30, 1);
  desk.takeCopyOf(shared);
  EXPECT_EQ(valueThatCounts(desk.bowl("family"), 2, Noted::Weight)->value.grams, Grams(30));
  EXPECT_EQ(countWaiting(desk.own).waiting, 1U);
}

/// Its triggers are taken off while the copy is written; they are there again.
TEST_F(StationCopyTest, IsACollectionLikeAnyOther) {
  desk.takeCopyOf(shared);
  desk.startAgain();
  EXPECT_EQ(desk.own.schemaVersion(), currentSchemaVersion());
  int triggers = 0;
  desk.own.inner().sql() << "SELECT COUNT(*) FROM sqlite_master WHERE type = 'trigger'", soci::into(triggers);
  EXPECT_EQ(triggers, 6);  // change_log, feeding_correction, station_sent: no change, no removal
}

TEST_F(StationCopyTest, OnlyItsOwnerReadsIt) {
  const fs::path folder = kitchen.folder / "stations";
  const fs::path file = stationFile(folder, "postgresql://anna@zoo/herds");
  (void)openStation(file, kKeeper);
  EXPECT_EQ(fs::status(file).permissions() & fs::perms::all, fs::perms::owner_read | fs::perms::owner_write);
  EXPECT_EQ(fs::status(folder).permissions() & fs::perms::all, fs::perms::owner_all);
}

TEST(StationFile, TwoWhoMakeItAtOnceHaveOneFile) {
  const OwnFolder folder;
  const fs::path file = stationFile(folder / "desks", "postgresql://anna@zoo/herds");
  std::atomic<int> sound = 0;
  {
    std::vector<std::jthread> windows;
    windows.reserve(4);
    for (int i = 0; i < 4; ++i)
      windows.emplace_back([&] {
        Collection station = openStation(file, kKeeper);
        addFood(station, plain(fmt::format("food-{}", sound++)), kKeeper);
      });
  }
  EXPECT_EQ(countFoods(openStation(file, kKeeper)), 4U);
  EXPECT_EQ(std::distance(fs::directory_iterator(folder / "desks"), fs::directory_iterator()), 1);
}

TEST(StationFile, EachAddressHasItsOwn) {
  const auto name = [](const char* address) { return stationFile("/d", address).filename().string(); };
  EXPECT_THAT(name("postgresql://anna@zoo/herds"), testing::StartsWith("herds-"));
  EXPECT_NE(name("postgresql://anna@zoo/herds"), name("postgresql://anna@other/herds"));
  EXPECT_EQ(name("postgresql://anna@zoo/herds"), name("postgres://anna@zoo/herds"));
}

}  // namespace
}  // namespace tarebowl::store
