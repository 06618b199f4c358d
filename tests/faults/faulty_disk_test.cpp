// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/faulty_disk.h"

#include "tests/core/store/own_folder.h"
#include "tests/faults/how_often.h"
#include "tests/faults/kitchen_work.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::faults {
namespace {

namespace fs = std::filesystem;
using namespace tarebowl::store;
using testing::HasSubstr;

const OpenOptions kReadThrough{.check = OpenOptions::Check::Always};

void expectAllOf(const fs::path& file, int written) {
  const Collection collection = Collection::open(file, kNow, kReadThrough);
  for (int step = 0; step < written; ++step) ASSERT_EQ(findStep(collection, step), Found::Whole) << step;
  ASSERT_EQ(findStep(collection, written), Found::Nothing);
}

struct DiskCase {
  const char* name;
  Fault fault;
  StoreErrorCode code;
  const char* words;
};

class DiskFault : public testing::TestWithParam<DiskCase> {
 protected:
  /// Writes until something is refused, and sees that it is this fault in words.
  void writeUntilRefused(Collection& collection) {
    const auto error = errorOf([&] {
      for (int more = 0; more < 8; ++more, ++written) writeStep(collection, written);
    });
    if (!error) return;
    EXPECT_TRUE(disk.hasFailed()) << error->what();
    EXPECT_EQ(error->code(), GetParam().code) << error->what();
    EXPECT_THAT(error->what(), HasSubstr(GetParam().words));
  }

  const OwnFolder folder;
  const fs::path file = folder / "kitchen.tarebowl";
  FaultyDisk disk;
  int written = 0;
};

/// The fault begins at the first operation, at the second, and so on through eight writes of the kitchen.
TEST_P(DiskFault, IsSaidWhereverItComesAndTheSameWindowGoesOnWhenItIsGone) {
  makeKitchen(file);
  Collection collection = Collection::open(file, kNow);
  int failures = 0;
  for (int good = 0; good < howOften("TAREBOWL_DISK_FAULTS", 40); ++good) {
    disk.breakAfter(GetParam().fault, good);
    writeUntilRefused(collection);
    if (disk.hasFailed()) ++failures;
    disk.mend();
    ASSERT_NE(findStep(collection, written), Found::Half) << good;
    if (findStep(collection, written) == Found::Nothing) writeStep(collection, written);
    ++written;
  }
  EXPECT_GT(failures, 2);  // most of what is read is in memory already
  expectAllOf(file, written);
}

TEST_P(DiskFault, WhileItLastsWhatWasWrittenIsThereInAnotherWindow) {
  makeKitchen(file);
  for (int good = 0; good < howOften("TAREBOWL_DISK_FAULTS", 40); good += 4) {
    {
      Collection collection = Collection::open(file, kNow);
      disk.breakAfter(GetParam().fault, good);
      writeUntilRefused(collection);
    }  // closes on the broken disk
    disk.mend();
    if (findStep(Collection::open(file, kNow), written) == Found::Whole)
      ++written;  // refused, and yet on disk
    expectAllOf(file, written);
  }
}

INSTANTIATE_TEST_SUITE_P(
    Of, DiskFault,
    testing::Values(
        DiskCase{"NoRoom", Fault::NoRoom, StoreErrorCode::DiskFull, "the disk is full"},
        DiskCase{"ShortWrite", Fault::ShortWrite, StoreErrorCode::DiskError, "the disk reports an error"},
        DiskCase{"SyncFails", Fault::SyncFails, StoreErrorCode::DiskError, "the disk reports an error"},
        DiskCase{"ReadFails", Fault::ReadFails, StoreErrorCode::DiskError, "the disk reports an error"}),
    [](const auto& disk) { return std::string(disk.param.name); });

TEST(PowerCut, WhatWasReportedAsSavedIsThereAndWhatWasNotIsThereAsAWholeOrNotAtAll) {
  const OwnFolder folder;
  const fs::path file = folder / "kitchen.tarebowl";
  FaultyDisk disk;
  makeKitchen(file);
  std::mt19937 random(20261129);
  std::uniform_int_distribution<int> moment(0, 60);
  int written = 0;
  for (int cut = 0; cut < deaths(60); ++cut) {
    (void)errorOf([&] {
      Collection collection = Collection::open(file, kNow);
      disk.breakAfter(Fault::PowerOff, moment(random));
      for (;; ++written) writeStep(collection, written);
    });
    fs::remove(file.string() + "-shm");  // it stands in memory only
    disk.loseUnsynced(random);
    disk.mend();
    const Collection collection = Collection::open(file, kNow, kReadThrough);
    for (int step = std::max(0, written - 8); step < written; ++step)
      ASSERT_EQ(findStep(collection, step), Found::Whole) << step << " at cut " << cut;
    const Found diedOver = findStep(collection, written);
    ASSERT_NE(diedOver, Found::Half);
    if (diedOver == Found::Whole) ++written;
  }
  expectAllOf(file, written);
  EXPECT_GT(written, 20);
}

}  // namespace
}  // namespace tarebowl::faults
