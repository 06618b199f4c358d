// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/change_log.h"
#include "core/store/food_import.h"
#include "core/store/food_reading.h"
#include "core/store/verbs.h"
#include "tests/core/store/own_folder.h"
#include "tests/faults/child.h"

#include <gtest/gtest.h>

namespace tarebowl::faults {
namespace {

namespace fs = std::filesystem;
using namespace tarebowl::store;

FoodRecord named(const std::string& code) {
  FoodRecord record;
  record.food.code = code;
  record.food.name = code;
  return record;
}

TEST(TwoWriters, EachWaitsForTheOtherAndNothingIsLost) {
  const OwnFolder folder;
  const fs::path file = folder / "a.tarebowl";
  (void)Collection::create(file, kKeeper);
  constexpr int kEach = 60;
  const auto writer = [&](const std::string& who) {
    return [&file, who](const Child::Tell& tell) {
      Collection collection = Collection::open(file, kNow);
      for (int number = 1; number <= kEach; ++number) {
        addFood(collection, named(who + std::to_string(number)), {who, kNow});
        tell(number);
      }
    };
  };
  Child one(writer("one-"));
  Child two(writer("two-"));
  EXPECT_TRUE(one.endedWell());
  EXPECT_TRUE(two.endedWell());
  const Collection collection = Collection::open(file, kNow, {.check = OpenOptions::Check::Always});
  EXPECT_EQ(countFoods(collection), 2U * kEach);
  const auto changes = newestChanges(collection, 1000);
  ASSERT_EQ(changes.size(), 2U * kEach + 1);
  EXPECT_EQ(changes.front().number, 2 * kEach + 1);
}

TEST(TwoWriters, OfTwoEditsOfOneVersionTheSecondIsRefused) {
  const OwnFolder folder;
  const fs::path file = folder / "a.tarebowl";
  Collection here = Collection::create(file, kKeeper);
  const FoodId kale{addFood(here, named("kale"), kKeeper).id};
  Collection there = Collection::open(file, kNow);
  (void)here.changedElsewhere();
  FoodRecord theirs = named("kale");
  theirs.food.note = "theirs";
  editFood(there, kale, 1, theirs, kKeeper);
  EXPECT_TRUE(here.changedElsewhere());
  EXPECT_FALSE(here.changedElsewhere());
  FoodRecord mine = named("kale");
  mine.food.note = "mine";
  EXPECT_EQ(codeOf([&] { editFood(here, kale, 1, mine, kKeeper); }), StoreErrorCode::Conflict);
  EXPECT_EQ(findFood(here, kale)->record, theirs);
  editFood(here, kale, 2, mine, kKeeper);
  EXPECT_FALSE(here.changedElsewhere());  // its own write is no news
}

TEST(TwoWriters, ReadingDoesNotWaitForALongImportAndWritingSaysBusyWhenPatienceEnds) {
  const OwnFolder folder;
  const fs::path file = folder / "a.tarebowl";
  Collection here = Collection::create(file, kKeeper);
  addFood(here, named("kale"), kKeeper);
  FoodImport import(here, {.name = "table"}, kKeeper);
  ImportedFood endive{.food = named("endive").food};
  endive.sample.sourceCode = "1";
  (void)import.sample(endive);
  Collection there = Collection::open(file, kNow, {.patience = std::chrono::milliseconds(50)});
  EXPECT_EQ(countFoods(there), 1U);
  EXPECT_EQ(codeOf([&] { addFood(there, named("carrot"), kKeeper); }), StoreErrorCode::Busy);
  import.commit();
  EXPECT_EQ(countFoods(there), 2U);
  addFood(there, named("carrot"), kKeeper);
  EXPECT_EQ(countFoods(here), 3U);
}

}  // namespace
}  // namespace tarebowl::faults
