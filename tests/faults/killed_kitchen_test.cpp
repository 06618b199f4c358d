// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/own_folder.h"
#include "tests/faults/child.h"
#include "tests/faults/how_often.h"
#include "tests/faults/kitchen_work.h"

#include <gtest/gtest.h>

#include <random>

namespace tarebowl::faults {
namespace {

namespace fs = std::filesystem;
using namespace tarebowl::store;
using std::chrono::microseconds;

const OpenOptions kReadThrough{.check = OpenOptions::Check::Always};

/// Opens the collection and writes step after step without end; tells how many are written when each verb has
/// returned. It may die while it opens, too.
void workOnAndOn(const fs::path& file, int first, const Child::Tell& tell) {
  tell(first);
  Collection collection = Collection::open(file, kNow);
  for (int step = first;; ++step) {
    writeStep(collection, step);
    tell(step + 1);
  }
}

TEST(KilledKitchen, WeightsLeftoversAndEditsAreThereAfterEveryDeathAndNoneByHalves) {
  const OwnFolder folder;
  const fs::path file = folder / "kitchen.tarebowl";
  makeKitchen(file);
  std::mt19937 random(20261126);
  std::uniform_int_distribution<int> delay(0, 60'000);
  int written = 0;
  for (int death = 0; death < deaths(40); ++death) {
    Child child([&](const Child::Tell& tell) { workOnAndOn(file, written, tell); });
    child.killAfter(microseconds(delay(random)));
    const int before = written;
    written = child.told().back();
    const Collection collection = Collection::open(file, kNow, kReadThrough);
    for (int step = before; step < written; ++step)
      ASSERT_EQ(findStep(collection, step), Found::Whole) << step << " at death " << death;
    const Found diedOver = findStep(collection, written);
    ASSERT_NE(diedOver, Found::Half) << written << " at death " << death;
    ASSERT_EQ(findStep(collection, written + 1), Found::Nothing);
    if (diedOver == Found::Whole) ++written;  // on disk and not told yet
  }
  const Collection collection = Collection::open(file, kNow);
  for (int step = 0; step < written; ++step) ASSERT_EQ(findStep(collection, step), Found::Whole) << step;
  EXPECT_GT(written, 20);  // the children did live to write
  RecordProperty("writes", written);
}

}  // namespace
}  // namespace tarebowl::faults
