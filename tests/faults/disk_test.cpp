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

const OpenOptions kAsAllowed{.access = OpenOptions::Access::AsAllowed};

/// A collection of three foods, and nobody has it open.
fs::path threeFoods(const OwnFolder& folder) {
  const fs::path file = folder / "a.tarebowl";
  Collection collection = Collection::create(file, kKeeper);
  for (int number = 1; number <= 3; ++number) addFood(collection, numbered(number), kKeeper);
  return file;
}

/// What nobody is told of a collection that is opened as far as is allowed: whether it may be written, how
/// many foods it has, and why a food cannot be added.
std::vector<int> lookingAsNobody(const fs::path& file) {
  Child child([&](const Child::Tell& tell) {
    asNobody([&] {
      Collection collection = Collection::open(file, kNow, kAsAllowed);
      tell(collection.mayWrite() ? 1 : 0);
      tell(static_cast<int>(countFoods(collection)));
      const auto code = codeOf([&] { addFood(collection, numbered(4), kKeeper); });
      tell(code ? static_cast<int>(*code) : -1);
    });
  });
  return child.told();
}

const std::vector<int> kReadOnly{0, 3, static_cast<int>(StoreErrorCode::NoPermission)};

TEST(ReadOnly, AFolderThatCannotBeWrittenIsSaid) {
  const OwnFolder folder;
  const fs::path file = folder / "a.tarebowl";
  (void)Collection::create(file, kKeeper);
  chmod((folder / "").c_str(), 0555);
  EXPECT_EQ(openingAsNobody(file), static_cast<int>(StoreErrorCode::NoPermission));
  chmod((folder / "").c_str(), 0755);
  EXPECT_EQ(countFoods(Collection::open(file, kNow)), 0U);
}

TEST(ReadOnly, ACollectionInAFolderThatCannotBeWrittenIsReadAndRefusesWrites) {
  const OwnFolder folder;
  const fs::path file = threeFoods(folder);
  const std::string before = contentOf(file);
  chmod((folder / "").c_str(), 0555);
  EXPECT_EQ(lookingAsNobody(file), kReadOnly);
  chmod(file.c_str(), 0444);
  EXPECT_EQ(lookingAsNobody(file), kReadOnly);
  chmod((folder / "").c_str(), 0755);
  EXPECT_EQ(contentOf(file), before);
}

TEST(ReadOnly, ACollectionThatCannotBeWrittenItselfIsReadAndRefusesWrites) {
  const OwnFolder folder;
  const fs::path file = threeFoods(folder);
  chmod((folder / "").c_str(), 0777);
  chmod(file.c_str(), 0444);
  EXPECT_EQ(lookingAsNobody(file), kReadOnly);
}

TEST(ReadOnly, OneWhoMayWriteOpensForWriting) {
  const OwnFolder folder;
  Collection collection = Collection::open(threeFoods(folder), kNow, kAsAllowed);
  EXPECT_TRUE(collection.mayWrite());
  EXPECT_FALSE(codeOf([&] { addFood(collection, numbered(4), kKeeper); }));
}

TEST(ReadOnly, ACollectionThatIsOpenForReadingRefusesWritesInWords) {
  const OwnFolder folder;
  const fs::path file = threeFoods(folder);
  Collection collection = Collection::open(file, kNow, {.access = OpenOptions::Access::ReadOnly});
  const auto error = errorOf([&] { addFood(collection, numbered(4), kKeeper); });
  ASSERT_TRUE(error);
  EXPECT_EQ(error->detail(), "is open for reading only; nothing was written");
}

TEST(ReadOnly, WhatSomebodyWhoMayWriteWroteIsSeen) {
  const OwnFolder folder;
  const fs::path file = threeFoods(folder);
  fs::last_write_time(file, fs::last_write_time(file) - std::chrono::hours(1));
  chmod((folder / "").c_str(), 0555);
  Child child([&](const Child::Tell& tell) {
    // Whoever runs the test may write; the collection is opened as nobody and read on as nobody.
    if (geteuid() != 0) return;
    seteuid(kNobody);
    Collection collection = Collection::open(file, kNow, kAsAllowed);
    tell(collection.changedElsewhere() ? 1 : 0);
    seteuid(0);
    {
      Collection other = Collection::open(file, kNow);
      addFood(other, numbered(4), kKeeper);
    }
    seteuid(kNobody);
    tell(collection.changedElsewhere() ? 1 : 0);
    tell(static_cast<int>(countFoods(collection)));
  });
  const std::vector<int> told = child.told();
  chmod((folder / "").c_str(), 0755);
  if (told.empty()) GTEST_SKIP() << "only root can be somebody who may write and somebody who may not";
  EXPECT_EQ(told, (std::vector<int>{0, 1, 4}));
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
