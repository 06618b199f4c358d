// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"
#include "core/store/food_reading.h"
#include "core/store/verbs.h"
#include "tests/core/store/own_folder.h"
#include "tests/faults/child.h"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>

namespace tarebowl::faults {
namespace {

namespace fs = std::filesystem;
using namespace tarebowl::store;

constexpr int kFull = -1;
constexpr int kOther = -2;
constexpr uid_t kNobody = 65534;

FoodRecord numbered(int number) {
  FoodRecord record;
  record.food.code = "food-" + std::to_string(number);
  record.food.name = record.food.code;
  record.food.note = std::string(2000, 'x');
  return record;
}

void allowFilesOf(rlim_t bytes) {
  std::signal(SIGXFSZ, SIG_IGN);
  rlimit limit{};
  getrlimit(RLIMIT_FSIZE, &limit);
  limit.rlim_cur = std::min<rlim_t>(bytes, limit.rlim_max);
  setrlimit(RLIMIT_FSIZE, &limit);
}

int numberFor(StoreErrorCode code) {
  return code == StoreErrorCode::DiskFull || code == StoreErrorCode::DiskError ? kFull : kOther;
}

TEST(DiskFull, WhatWasSavedBeforeIsThereAndSavingGoesOnWhenThereIsRoomAgain) {
  const OwnFolder folder;
  const fs::path file = folder / "a.tarebowl";
  (void)Collection::create(file, kKeeper);
  Child child([&](const Child::Tell& tell) {
    Collection collection = Collection::open(file, kNow);
    allowFilesOf(400'000);
    int number = 0;
    try {
      for (number = 1; number < 10'000; ++number) {
        addFood(collection, numbered(number), kKeeper);
        tell(number);
      }
    } catch (const StoreError& error) {
      tell(numberFor(error.code()));
    }
    allowFilesOf(RLIM_INFINITY);
    addFood(collection, numbered(number), kKeeper);
    tell(number);
  });
  const std::vector<int> told = child.told();
  ASSERT_TRUE(child.endedWell());
  ASSERT_EQ(std::ranges::count(told, kFull), 1);
  ASSERT_EQ(std::ranges::count(told, kOther), 0);
  const Collection collection = Collection::open(file, kNow, {.check = OpenOptions::Check::Always});
  for (const int number : told)
    if (number > 0) {
      EXPECT_TRUE(findFood(collection, numbered(number).food.code)) << number;
    }
  EXPECT_EQ(countFoods(collection), told.size() - 1);
}

TEST(DiskFull, ABackupThatDoesNotFitLeavesNothingBehind) {
  const OwnFolder folder;
  const fs::path file = folder / "a.tarebowl";
  {
    Collection collection = Collection::create(file, kKeeper);
    for (int number = 1; number <= 60; ++number) addFood(collection, numbered(number), kKeeper);
  }
  Child child([&](const Child::Tell& tell) {
    allowFilesOf(50'000);
    try {
      (void)makeBackup(file, kNow, "daily");
    } catch (const StoreError& error) {
      tell(numberFor(error.code()));
    }
  });
  EXPECT_EQ(child.told(), std::vector<int>{kFull});
  EXPECT_TRUE(fs::is_empty(backupFolder(file)));
  EXPECT_EQ(countFoods(Collection::open(file, kNow)), 60U);
}

/// Runs the work as somebody who may not write everywhere.
void asNobody(const std::function<void()>& work) {
  if (geteuid() == 0 && seteuid(kNobody) != 0) throw std::runtime_error("cannot become nobody");
  work();
}

int openingAsNobody(const fs::path& file) {
  Child child([&](const Child::Tell& tell) {
    asNobody([&] {
      const auto code = codeOf([&] { (void)Collection::open(file, kNow); });
      tell(code ? static_cast<int>(*code) : -1);
    });
  });
  const std::vector<int> told = child.told();
  return told.empty() ? -2 : told.front();
}

TEST(ReadOnly, AFolderThatCannotBeWrittenIsSaid) {
  const OwnFolder folder;
  const fs::path file = folder / "a.tarebowl";
  (void)Collection::create(file, kKeeper);
  chmod((folder / "").c_str(), 0555);
  EXPECT_EQ(openingAsNobody(file), static_cast<int>(StoreErrorCode::NoPermission));
  chmod((folder / "").c_str(), 0755);
  EXPECT_EQ(countFoods(Collection::open(file, kNow)), 0U);
}

TEST(ReadOnly, AFileThatCannotBeWrittenOrReadIsSaid) {
  const OwnFolder folder;
  const fs::path file = folder / "a.tarebowl";
  (void)Collection::create(file, kKeeper);
  chmod((folder / "").c_str(), 0777);
  chmod(file.c_str(), 0444);
  EXPECT_EQ(openingAsNobody(file), static_cast<int>(StoreErrorCode::NoPermission));
  chmod(file.c_str(), 0000);
  EXPECT_EQ(openingAsNobody(file), static_cast<int>(StoreErrorCode::NoPermission));
}

TEST(ReadOnly, ACollectionCannotBeMadeWhereNothingCanBeWritten) {
  const OwnFolder folder;
  chmod((folder / "").c_str(), 0555);
  Child child([&](const Child::Tell& tell) {
    asNobody([&] {
      const auto code = codeOf([&] { (void)Collection::create(folder / "a.tarebowl", kKeeper); });
      tell(code ? static_cast<int>(*code) : -1);
    });
  });
  EXPECT_EQ(child.told(), std::vector<int>{static_cast<int>(StoreErrorCode::NoPermission)});
  chmod((folder / "").c_str(), 0755);
}

}  // namespace
}  // namespace tarebowl::faults
