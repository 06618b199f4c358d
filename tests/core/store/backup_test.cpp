// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"

#include "core/store/change_log.h"
#include "core/store/opening.h"
#include "tests/core/store/own_folder.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;

/// Stands for any change: an entry in the log.
void note(const Collection& collection, const std::string& what) {
  WriteTransaction transaction(collection.inner().connection);
  record(collection.inner(), {.author = kKeeper, .verb = what, .subject = "collection"});
  transaction.commit();
}

std::string lastNote(const fs::path& file) {
  return newestChanges(Collection::open(file, kNow), 1).at(0).verb;
}

TEST(Backup, IsACompleteCollectionOfItsOwn) {
  const OwnFolder folder;
  const Collection made = Collection::create(folder / "a.tarebowl", kKeeper);
  note(made, "written before");
  const fs::path backup = makeBackup(folder / "a.tarebowl", "2026-11-25T07:30:00Z", "daily");
  note(made, "written after");
  EXPECT_EQ(backup.filename(), "a-20261125T073000Z-daily.tarebowl");
  EXPECT_EQ(lastNote(backup), "written before");
}

TEST(Backup, TheDailyOneIsMadeOnceADay) {
  const OwnFolder folder;
  (void)Collection::create(folder / "a.tarebowl", kKeeper);
  EXPECT_TRUE(makeDailyBackup(folder / "a.tarebowl", "2026-11-25T07:30:00Z"));
  EXPECT_FALSE(makeDailyBackup(folder / "a.tarebowl", "2026-11-25T23:59:59Z"));
  EXPECT_TRUE(makeDailyBackup(folder / "a.tarebowl", "2026-11-26T00:00:00Z"));
}

TEST(Backup, FourteenOfAKindAreKeptTheNewest) {
  const OwnFolder folder;
  const fs::path file = folder / "a.tarebowl";
  (void)Collection::create(file, kKeeper);
  const fs::path upgrade = makeBackup(file, "2026-01-01T00:00:00Z", "before-upgrade");
  for (int day = 1; day <= 20; ++day)
    (void)makeDailyBackup(file, fmt::format("2026-11-{:02}T07:00:00Z", day));
  const auto backups = listBackups(file);
  ASSERT_EQ(backups.size(), 15U);
  EXPECT_EQ(backups.front().at, "20261120T070000Z");
  EXPECT_EQ(backups[13].at, "20261107T070000Z");
  EXPECT_EQ(backups.back().file, upgrade);
}

TEST(Backup, TwoInOneSecondDoNotOverwriteEachOther) {
  const OwnFolder folder;
  (void)Collection::create(folder / "a.tarebowl", kKeeper);
  EXPECT_NE(makeBackup(folder / "a.tarebowl", kNow, "daily"),
            makeBackup(folder / "a.tarebowl", kNow, "daily"));
  EXPECT_EQ(listBackups(folder / "a.tarebowl").size(), 2U);
}

TEST(Restore, PutsTheBackupBackAndKeepsWhatWasThere) {
  const OwnFolder folder;
  const fs::path file = folder / "a.tarebowl";
  Collection open = Collection::create(file, kKeeper);
  note(open, "good");
  const fs::path backup = makeBackup(file, kNow, "daily");
  note(open, "regretted");
  (void)open.changedElsewhere();
  const fs::path former = restore(file, backup, kKeeper);
  EXPECT_TRUE(open.changedElsewhere());  // the window that has it open sees it
  const auto changes = newestChanges(open, 2);
  EXPECT_EQ(changes.at(0).verb, "restore backup");
  EXPECT_EQ(changes.at(1).verb, "good");
  EXPECT_EQ(lastNote(former), "regretted");
  EXPECT_TRUE(fs::exists(backup));
}

TEST(Restore, ADamagedCollectionIsMovedAsideAndNotDeleted) {
  const OwnFolder folder;
  const fs::path file = folder / "a.tarebowl";
  note(Collection::create(file, kKeeper), "good");
  const fs::path backup = makeBackup(file, kNow, "daily");
  const std::string broken = contentOf(file).substr(0, 5000);
  write(file, broken);
  const fs::path former = restore(file, backup, kKeeper);
  EXPECT_EQ(contentOf(former), broken);
  EXPECT_EQ(lastNote(file), "restore backup");
}

TEST(Restore, ADamagedBackupChangesNothing) {
  const OwnFolder folder;
  const fs::path file = folder / "a.tarebowl";
  note(Collection::create(file, kKeeper), "good");
  const fs::path backup = makeBackup(file, kNow, "daily");
  write(backup, contentOf(backup).substr(0, 5000));
  EXPECT_EQ(codeOf([&] { (void)restore(file, backup, kKeeper); }), StoreErrorCode::Damaged);
  EXPECT_EQ(lastNote(file), "good");
  write(folder / "text", "not a backup");
  EXPECT_EQ(codeOf([&] { (void)restore(file, folder / "text", kKeeper); }), StoreErrorCode::NotACollection);
  EXPECT_EQ(lastNote(file), "good");
}

}  // namespace
}  // namespace tarebowl::store
