// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A collection moves between places. Where the tests are on a server, from a file to it and back.
#include "core/store/move.h"

#include "core/store/change_log.h"
#include "core/store/opening.h"
#include "core/store/server_address.h"
#include "tests/core/store/feeding_days.h"
#include "tests/core/store/larder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

/// A collection with something in every corner of it, in a file.
fs::path filled(const OwnFolder& folder) {
  const fs::path file = folder / "old.tarebowl";
  Collection collection = Collection::create(file, kKeeper);
  const Written kale = addFood(collection, plain("kale"), kKeeper);
  FoodRecord odd = pellet();
  odd.food.note = "a quote ', a line\nbreak, \\ a stroke, süß, 食\n\\.\n\\N\ta tab\r\n";
  odd.food.pricePerKg = 0.1 + 0.2;
  addFood(collection, odd, kKeeper);
  food::Sample sample = analysis("Field lab", "2026-10-01", 1.0 / 3.0);
  sample.values.at(0).sd = std::numeric_limits<double>::denorm_min();
  addSample(collection, FoodId{kale.id}, sample, kKeeper);
  return file;
}

std::vector<std::string> historyOf(const Collection& collection) {
  std::vector<std::string> lines;
  for (const Change& change : newestChanges(collection, 100))
    lines.push_back(change.author.at + ' ' + change.verb + ' ' + change.before.value_or("-") +
                    change.after.value_or("-"));
  return lines;
}

TEST(Move, EveryRowStandsThereAsItWasAndTheOldOneLiesAside) {
  const OwnFolder folder;
  const fs::path from = filled(folder);
  const auto history = historyOf(Collection::open(from, kNow));
  const StoredFood odd = findFood(Collection::open(from, kNow), "pellet-a").value();
  const fs::path to = folder.collection("new");
  const MoveReport report = moveCollection(from, to, kKeeper);
  EXPECT_FALSE(report.wasThere);
  EXPECT_FALSE(fs::exists(from));
  EXPECT_TRUE(fs::exists(report.aside)) << report.aside;
  const Collection moved = Collection::open(to, kNow);
  auto there = historyOf(moved);
  EXPECT_THAT(there.front(), HasSubstr("move collection"));
  there.erase(there.begin());
  EXPECT_EQ(there, history);
  EXPECT_EQ(findFood(moved, "pellet-a")->record, odd.record);
}

TEST(Move, BackAgainTheChecksumsAreThoseOfTheFirstWay) {
  const OwnFolder folder;
  const fs::path to = folder.collection("there");
  const MoveReport out = moveCollection(filled(folder), to, kKeeper);
  const MoveReport back = moveCollection(to, folder / "back.tarebowl", kKeeper);
  ASSERT_EQ(out.tables.size(), back.tables.size());
  for (std::size_t i = 0; i < out.tables.size(); ++i) {
    if (out.tables[i].name == "change_log") continue;  // it has the entry of the first move more
    EXPECT_EQ(out.tables[i].rows, back.tables[i].rows) << out.tables[i].name;
    EXPECT_EQ(out.tables[i].checksum, back.tables[i].checksum) << out.tables[i].name;
  }
  EXPECT_THAT(codeOf([&] { (void)Collection::open(to, kNow); }),
              testing::AnyOf(StoreErrorCode::NotFound, StoreErrorCode::NotACollection));
}

TEST(Move, WhatHasMovedTakesNoWritesFromThoseWhoStillHaveItOpen) {
  const OwnFolder folder;
  const fs::path from = folder.collection("shared");
  Collection desk = Collection::create(from, kKeeper);
  (void)moveCollection(from, folder / "elsewhere.tarebowl", kKeeper);
  EXPECT_EQ(codeOf([&] { addFood(desk, plain("late"), kKeeper); }), StoreErrorCode::Gone);
}

TEST(Move, AMoveThatWasInterruptedAfterTheCopyIsBroughtToItsEnd) {
  const OwnFolder folder;
  const fs::path from = filled(folder);
  const fs::path kept = folder / "kept.tarebowl";
  fs::copy_file(from, kept);
  const fs::path to = folder.collection("new");
  (void)moveCollection(from, to, kKeeper);
  fs::copy_file(kept, from);  // as it was when the machine stopped: complete there, and still here
  const MoveReport again = moveCollection(from, to, kKeeper);
  EXPECT_TRUE(again.wasThere);
  EXPECT_FALSE(fs::exists(from));
  EXPECT_EQ(countFoods(Collection::open(to, kNow)), 2U);
}

TEST(Move, AnotherCollectionIsNotOverwritten) {
  const OwnFolder folder;
  const fs::path from = filled(folder);
  const fs::path to = folder.collection("other");
  {
    Collection other = Collection::create(to, kKeeper);
    addFood(other, plain("endive"), kKeeper);
  }
  const auto error = errorOf([&] { (void)moveCollection(from, to, kKeeper); });
  ASSERT_TRUE(error);
  EXPECT_EQ(error->code(), StoreErrorCode::AlreadyThere);
  EXPECT_TRUE(fs::exists(from));
  EXPECT_TRUE(findFood(Collection::open(to, kNow), "endive"));
}

/// The copy begins, and the first table that is looked through stops it.
TEST(Move, WhatIsInterruptedWhileItIsCopiedLeavesNothingThere) {
  const OwnFolder folder;
  const fs::path from = filled(folder);
  const fs::path to = folder.collection("new");
  const auto stop = [](const MovedTable& table) {
    if (table.name == "sample") throw std::runtime_error("stopped");
  };
  EXPECT_THROW((void)moveCollection(from, to, kKeeper, {.progress = stop}), std::runtime_error);
  EXPECT_THAT(codeOf([&] { (void)Collection::open(to, kNow); }),
              testing::AnyOf(StoreErrorCode::NotFound, StoreErrorCode::NotACollection));
  EXPECT_EQ(countFoods(Collection::open(from, kNow)), 2U);
  (void)moveCollection(from, to, kKeeper);
  EXPECT_EQ(countFoods(Collection::open(to, kNow)), 2U);
}

}  // namespace
}  // namespace tarebowl::store
