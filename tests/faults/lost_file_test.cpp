// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/own_folder.h"
#include "tests/faults/child.h"
#include "tests/faults/kitchen_work.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#ifdef __linux__
#include <sched.h>
#include <sys/mount.h>
#endif

namespace tarebowl::faults {
namespace {

namespace fs = std::filesystem;
using namespace tarebowl::store;
using testing::HasSubstr;

const OpenOptions kReadThrough{.check = OpenOptions::Check::Always};

/// A kitchen that is open in a window, with one step written.
class LostFile : public testing::Test {
 protected:
  static fs::path made(const fs::path& home) {
    fs::create_directories(home);
    makeKitchen(home / "kitchen.tarebowl");
    return home / "kitchen.tarebowl";
  }
  void expectRefused(int step) {
    const auto error = errorOf([&] { writeStep(window, step); });
    ASSERT_TRUE(error);
    EXPECT_EQ(error->code(), StoreErrorCode::Gone) << error->what();
    EXPECT_THAT(error->what(), HasSubstr("nothing was written"));
  }
  void moveAll(const fs::path& from, const fs::path& to) {
    for (const char* tail : {"", "-wal", "-shm"})
      if (fs::exists(from.string() + tail)) fs::rename(from.string() + tail, to.string() + tail);
  }

  const OwnFolder folder;
  const fs::path home = folder / "home";
  const fs::path file = made(home);
  Collection window = Collection::open(file, kNow);
  void SetUp() override { writeStep(window, 0); }
};

TEST_F(LostFile, AFolderThatVanishesRefusesWritesUntilItIsBack) {
  fs::rename(home, folder / "elsewhere");
  expectRefused(1);
  EXPECT_FALSE(window.changedElsewhere());
  EXPECT_EQ(findStep(window, 0), Found::Whole);  // what was read before can still be read
  fs::rename(folder / "elsewhere", home);
  writeStep(window, 1);
  EXPECT_EQ(findStep(Collection::open(file, kNow, kReadThrough), 1), Found::Whole);
}

TEST_F(LostFile, AFileThatIsDeletedIsSaidBeforeAnythingIsWritten) {
  for (const char* tail : {"", "-wal", "-shm"}) fs::remove(file.string() + tail);
  expectRefused(1);
  EXPECT_FALSE(fs::exists(file));
}

TEST_F(LostFile, WritesGoToTheFileThatWasPutInItsPlaceAndBothAreSound) {
  const fs::path other = folder / "other.tarebowl";
  makeKitchen(other);
  moveAll(file, folder / "former.tarebowl");
  fs::rename(other, file);
  expectRefused(1);
  EXPECT_TRUE(window.changedElsewhere());
  EXPECT_FALSE(window.changedElsewhere());
  EXPECT_EQ(findStep(window, 0), Found::Nothing);
  writeStep(window, 0);
  writeStep(window, 1);
  EXPECT_EQ(findStep(Collection::open(file, kNow, kReadThrough), 1), Found::Whole);
  const Collection former = Collection::open(folder / "former.tarebowl", kNow, kReadThrough);
  EXPECT_EQ(findStep(former, 0), Found::Whole);
  EXPECT_EQ(findStep(former, 1), Found::Nothing);
}

TEST_F(LostFile, WhatWasPutInItsPlaceIsNotTakenForACollectionWhereItIsNone) {
  moveAll(file, folder / "former.tarebowl");
  write(file, "a list of chores");
  EXPECT_FALSE(window.changedElsewhere());
  expectRefused(1);
  EXPECT_EQ(contentOf(file), "a list of chores");
}

#ifdef __linux__
constexpr int kCannotMount = -1;
constexpr int kFull = -2;
constexpr int kOther = -3;

/// A disk of half a megabyte for this process alone; false where the system does not allow it.
bool mountSmall(const fs::path& at) {
  return ::unshare(CLONE_NEWNS) == 0 && ::mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0 &&
         ::mount("tmpfs", at.c_str(), "tmpfs", 0, "size=4m") == 0;
}

TEST(SmallDisk, FullItRefusesInWordsAndGoesOnWhenSomethingWasDeleted) {
  const OwnFolder folder;
  const fs::path disk = folder / "disk";
  fs::create_directory(disk);
  Child child([&](const Child::Tell& tell) {
    if (!mountSmall(disk)) return tell(kCannotMount);
    write(disk / "photographs", std::string(1'500'000, 'x'));
    const fs::path file = disk / "kitchen.tarebowl";
    makeKitchen(file);
    Collection collection = Collection::open(file, kNow);
    int step = 0;
    const auto error = errorOf([&] {
      for (;; ++step) writeStep(collection, step);
    });
    tell(error->code() == StoreErrorCode::DiskFull ? kFull : kOther);
    fs::remove(disk / "photographs");
    writeStep(collection, step);
    const Collection again = Collection::open(file, kNow, kReadThrough);
    for (int written = 0; written <= step; ++written)
      tell(findStep(again, written) == Found::Whole ? written : kOther);
  });
  const std::vector<int> told = child.told();
  ASSERT_TRUE(child.endedWell());
  if (told == std::vector<int>{kCannotMount}) GTEST_SKIP() << "no file system may be mounted here";
  EXPECT_EQ(std::ranges::count(told, kFull), 1);
  EXPECT_EQ(std::ranges::count(told, kOther), 0);
  EXPECT_GT(told.size(), 4U);
}
#endif

}  // namespace
}  // namespace tarebowl::faults
