// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/own_folder.h"
#include "tests/faults/child.h"
#include "tests/faults/how_often.h"
#include "tests/faults/kitchen_work.h"

#include <gtest/gtest.h>

#include <chrono>
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

/// A kitchen whose writer is killed again and again.
class KilledKitchen : public testing::Test {
 protected:
  /// Also tells how long a writer lives here at most: it opens and writes a few steps, however slow the
  /// machine is now.
  microseconds begin(const fs::path& kitchen) {
    file = kitchen;
    makeKitchen(file);
    constexpr int kSteps = 4;
    const auto start = std::chrono::steady_clock::now();
    Collection collection = Collection::open(file, kNow);
    for (written = 0; written < kSteps; ++written) writeStep(collection, written);
    return std::chrono::duration_cast<microseconds>(std::chrono::steady_clock::now() - start);
  }
  void killWriter(microseconds after) {
    Child child([&](const Child::Tell& tell) { workOnAndOn(file, written, tell); });
    child.killAfter(after);
    const int before = written;
    written = child.told().back();
    const Collection collection = Collection::open(file, kNow, kReadThrough);
    for (int step = before; step < written; ++step)
      ASSERT_EQ(findStep(collection, step), Found::Whole) << step;
    const Found diedOver = findStep(collection, written);
    ASSERT_NE(diedOver, Found::Half) << written;
    ASSERT_EQ(findStep(collection, written + 1), Found::Nothing);
    if (diedOver == Found::Whole) ++written;  // on disk and not told yet
  }
  void expectAll() {
    const Collection collection = Collection::open(file, kNow);
    for (int step = 0; step < written; ++step) ASSERT_EQ(findStep(collection, step), Found::Whole) << step;
    all += written;
  }

  fs::path file;
  int written = 0;
  int all = 0;
};

TEST_F(KilledKitchen, WeightsLeftoversAndEditsAreThereAfterEveryDeathAndNoneByHalves) {
  const OwnFolder folder;
  std::mt19937 random(20261126);
  microseconds life{};
  constexpr int kDeathsOfOne = 20;  // a kitchen that has grown takes long to read through
  const int count = deaths(40);
  for (int death = 0; death < count && !HasFatalFailure(); ++death) {
    if (death % kDeathsOfOne == 0)
      life = begin(folder / (std::to_string(death / kDeathsOfOne) + ".tarebowl"));
    std::uniform_int_distribution<microseconds::rep> delay(0, 2 * life.count());
    killWriter(microseconds(delay(random)));
    if (death % kDeathsOfOne == kDeathsOfOne - 1 || death + 1 == count) expectAll();
  }
  EXPECT_GT(all, 20);  // the children did live to write
  RecordProperty("writes", all);
}

}  // namespace
}  // namespace tarebowl::faults
