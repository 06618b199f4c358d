// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Two windows and a command that write to one collection as fast as they can, for as many seconds as
// TAREBOWL_HAMMER_SECONDS says.
#include "core/store/diet_reading.h"
#include "core/store/diet_verbs.h"
#include "core/store/verbs.h"
#include "tests/core/store/own_folder.h"
#include "tests/faults/child.h"
#include "tests/faults/how_often.h"
#include "tests/faults/kitchen_work.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

namespace tarebowl::faults {
namespace {

namespace fs = std::filesystem;
using namespace tarebowl::store;
using Clock = std::chrono::steady_clock;

constexpr int kEdited = 1;
constexpr int kConflict = 0;

StoredVersion draftIn(const Collection& collection) {
  return versionsOfDiet(collection, "lemur-morning").at(0);
}

int countIn(const StoredVersion& draft) {
  return draft.record.version.phaseInDays;
}

/// One more, on what was read; somebody else may have been faster.
void addOne(Collection& collection, const Author& author) {
  const StoredVersion draft = draftIn(collection);
  diet::DietVersion version = draft.record.version;
  ++version.phaseInDays;
  editVersion(collection, draft.id, draft.revision, version, author);
}

/// A window keeps the collection open; a command opens it anew for each edit. Tells each edit, each conflict,
/// and of anything else its code, negative.
void hammer(const fs::path& file, const std::string& who, bool isCommand, std::chrono::seconds how,
            const Child::Tell& tell) {
  const auto end = Clock::now() + how;
  const auto forGood = end + std::chrono::minutes(2);  // a busy machine may keep one waiting for a while
  Collection window = Collection::open(file, kNow);
  bool hasEdited = false;
  while (Clock::now() < end || (!hasEdited && Clock::now() < forGood)) {
    std::optional<Collection> command;
    const auto code = codeOf([&] {
      if (isCommand) command.emplace(Collection::open(file, kNow));
      addOne(isCommand ? *command : window, {who, kNow});
      (void)window.changedElsewhere();
    });
    hasEdited = hasEdited || !code;
    tell(!code ? kEdited : (*code == StoreErrorCode::Conflict ? kConflict : -1 - static_cast<int>(*code)));
  }
}

TEST(ManyWriters, NoEditIsLostNoneWaitsForEverAndAConflictIsAllThatAnybodyIsTold) {
  const OwnFolder folder;
  const fs::path file = folder / "kitchen.tarebowl";
  makeKitchen(file);
  const int before = countIn(draftIn(Collection::open(file, kNow)));
  const std::chrono::seconds how(howOften("TAREBOWL_HAMMER_SECONDS", 2));
  std::vector<std::unique_ptr<Child>> writers;
  for (const char* who : {"window one", "window two", "command"})
    writers.push_back(std::make_unique<Child>([&, who = std::string(who)](const Child::Tell& tell) {
      hammer(file, who, who == "command", how, tell);
    }));
  int edits = 0;
  for (const auto& writer : writers) {
    const std::vector<int> told = writer->told();
    EXPECT_TRUE(writer->endedWell());
    EXPECT_EQ(std::ranges::count_if(told, [](int n) { return n < 0; }), 0) << *std::ranges::min_element(told);
    edits += std::accumulate(told.begin(), told.end(), 0);
    EXPECT_GT(std::ranges::count(told, kEdited), 0) << "nobody is kept out for good";
  }
  const Collection collection = Collection::open(file, kNow, {.check = OpenOptions::Check::Always});
  EXPECT_EQ(countIn(draftIn(collection)) - before, edits);
  RecordProperty("edits", edits);
}

}  // namespace
}  // namespace tarebowl::faults
