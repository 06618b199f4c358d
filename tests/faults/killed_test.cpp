// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"
#include "core/store/change_log.h"
#include "core/store/food_import.h"
#include "core/store/food_reading.h"
#include "core/store/verbs.h"
#include "tests/core/store/own_folder.h"
#include "tests/faults/child.h"
#include "tests/faults/how_often.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace tarebowl::faults {
namespace {

namespace fs = std::filesystem;
using namespace tarebowl::store;
using std::chrono::microseconds;

const OpenOptions kReadThrough{.check = OpenOptions::Check::Always};

FoodRecord numbered(int number) {
  FoodRecord record;
  record.food.code = "food-" + std::to_string(number);
  record.food.name = record.food.code;
  record.food.cautions = {"invented"};
  return record;
}

/// Adds foods without end and tells each number when the verb has returned.
void addOnAndOn(const fs::path& file, int first, const Child::Tell& tell) {
  Collection collection = Collection::open(file, kNow);
  tell(0);
  for (int number = first;; ++number) {
    addFood(collection, numbered(number), kKeeper);
    tell(number);
  }
}

TEST(Killed, WhatWasReportedAsSavedIsThereAfterEveryDeath) {
  const OwnFolder folder;
  const fs::path file = folder / "a.tarebowl";
  (void)Collection::create(file, kKeeper);
  std::mt19937 random(20261125);
  std::uniform_int_distribution<int> delay(0, 60'000);
  int next = 1;
  std::size_t saved = 0;
  for (int death = 0; death < deaths(60); ++death) {
    Child child([&](const Child::Tell& tell) { addOnAndOn(file, next, tell); });
    child.killAfter(microseconds(delay(random)));
    const std::vector<int> told = child.told();
    const Collection collection = Collection::open(file, kNow, kReadThrough);
    for (const int number : told)
      if (number > 0) {
        ASSERT_TRUE(findFood(collection, numbered(number).food.code)) << number << " at death " << death;
      }
    const std::size_t foods = countFoods(collection);
    const auto reported = static_cast<std::size_t>(std::ranges::count_if(told, [](int n) { return n > 0; }));
    ASSERT_GE(foods, saved + reported);
    ASSERT_LE(foods, saved + reported + 1);  // the one that was on disk and not told yet
    ASSERT_EQ(newestChanges(collection, 1'000'000).size(),
              foods + 1);  // each with its entry, and the creation's
    saved = foods;
    next = static_cast<int>(foods) + 1;
  }
  EXPECT_GT(saved, 60U);  // the children did live long enough to write
}

TEST(Killed, AnImportIsThereAsAWholeOrNotAtAll) {
  const OwnFolder folder;
  std::mt19937 random(20261126);
  std::uniform_int_distribution<int> delay(0, 30'000);
  constexpr int kFoods = 300;
  for (int death = 0; death < deaths(20); ++death) {
    const fs::path file = folder / (std::to_string(death / 10) + ".tarebowl");  // ten imports each
    if (death % 10 == 0) (void)Collection::create(file, kKeeper);
    Child child([&](const Child::Tell& tell) {
      Collection collection = Collection::open(file, kNow);
      tell(0);
      FoodImport import(collection, {.name = "table " + std::to_string(death)}, kKeeper);
      const ComponentId calcium = import.component(food::findByTagname("CA").value());
      for (int number = 0; number < kFoods; ++number) {
        ImportedFood food{.food = numbered(death * kFoods + number).food};
        food.sample.sourceCode = std::to_string(number);
        import.add(import.sample(food), {.component = calcium, .amount = quantity::AsFedContent(number)});
      }
      import.commit();
      tell(1);
    });
    child.killAfter(microseconds(delay(random)));
    const bool reported = std::ranges::count(child.told(), 1) == 1;
    const Collection collection = Collection::open(file, kNow, kReadThrough);
    const std::size_t foods = countFoods(collection);
    ASSERT_EQ(foods % kFoods, 0U);
    const bool isThere = findFood(collection, numbered(death * kFoods).food.code).has_value();
    if (reported) {
      ASSERT_TRUE(isThere);
    }
  }
}

TEST(Killed, ACollectionThatIsBeingMadeIsWholeOrNotThere) {
  const OwnFolder folder;
  std::mt19937 random(20261127);
  std::uniform_int_distribution<int> delay(0, 60'000);
  for (int death = 0; death < deaths(20); ++death) {
    const fs::path file = folder / (std::to_string(death) + ".tarebowl");
    Child child([&](const Child::Tell& tell) {
      tell(0);
      (void)Collection::create(file, kKeeper);
      tell(1);
    });
    child.killAfter(microseconds(delay(random)));
    const bool reported = std::ranges::count(child.told(), 1) == 1;
    if (reported) {
      ASSERT_TRUE(fs::exists(file));
    }
    if (!fs::exists(file))
      (void)Collection::create(file, kKeeper);  // what was left does not stand in the way
    EXPECT_EQ(Collection::open(file, kNow, kReadThrough).schemaVersion(), currentSchemaVersion());
  }
}

TEST(Killed, AHalfWrittenBackupIsNeverTakenForOne) {
  const OwnFolder folder;
  const fs::path file = folder / "a.tarebowl";
  {
    Collection collection = Collection::create(file, kKeeper);
    for (int number = 1; number <= 50; ++number) addFood(collection, numbered(number), kKeeper);
  }
  std::mt19937 random(20261128);
  std::uniform_int_distribution<int> delay(0, 30'000);
  for (int death = 0; death < deaths(20); ++death) {
    Child child([&](const Child::Tell& tell) {
      tell(0);
      (void)makeBackup(file, kNow, "daily");
    });
    child.killAfter(microseconds(delay(random)));
    (void)child.told();
    for (const Backup& backup : listBackups(file))
      ASSERT_EQ(countFoods(Collection::open(backup.file, kNow, kReadThrough)), 50U);
  }
}

}  // namespace
}  // namespace tarebowl::faults
