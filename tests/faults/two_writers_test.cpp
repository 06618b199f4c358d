// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/change_log.h"
#include "core/store/food_import.h"
#include "core/store/food_reading.h"
#include "core/store/verbs.h"
#include "tests/core/store/own_folder.h"
#include "tests/faults/child.h"

#include <gtest/gtest.h>

#include <chrono>
#include <thread>

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

/// A window has it open and the same program looks at the file once more, as a backup does; then another
/// program opens and closes it, which takes the log away where nobody else has it open.
TEST(TwoWriters, ASecondLookOfOneProgramDoesNotLetAnotherTakeTheLogAway) {
  const OwnFolder folder;
  const fs::path file = folder / "a.tarebowl";
  const fs::path go = folder / "go";
  (void)Collection::create(file, kKeeper);
  // Before anything is open here: a process inherits what the engine knows of its locks.
  Child other([&](const Child::Tell& /*tell*/) {
    while (!fs::exists(go)) std::this_thread::sleep_for(std::chrono::milliseconds(1));
    (void)Collection::open(file, kNow);
  });
  {
    Collection window = Collection::open(file, kNow);
    addFood(window, named("kale"), kKeeper);
    (void)Collection::open(file, kNow);
    write(go, "go");
    EXPECT_TRUE(other.endedWell());
    EXPECT_TRUE(fs::exists(file.string() + "-wal"));
    addFood(window, named("carrot"), kKeeper);
  }
  EXPECT_EQ(countFoods(Collection::open(file, kNow, {.check = OpenOptions::Check::Always})), 2U);
}

}  // namespace
}  // namespace tarebowl::faults
