// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/opening.h"

#include "core/store/backup.h"
#include "core/store/change_log.h"
#include "core/store/collection.h"
#include "tests/core/store/own_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

constexpr std::string_view kFirst =
    "CREATE TABLE change_log (id INTEGER PRIMARY KEY, at TEXT, who TEXT, verb TEXT,"
    " subject TEXT, subject_id INTEGER, state_before TEXT, state_after TEXT);\n";
constexpr std::array kOld{Migration{1, "0001_first", kFirst}};
constexpr std::array kNew{Migration{1, "0001_first", kFirst},
                          Migration{2, "0002_bowls", "CREATE TABLE bowl (id INTEGER PRIMARY KEY);\n"},
                          Migration{3, "0003_pans", "CREATE TABLE pan (id INTEGER PRIMARY KEY);\n"}};
constexpr std::array kBroken{
    Migration{1, "0001_first", kFirst},
    Migration{2, "0002_half",
              "CREATE TABLE bowl (id INTEGER PRIMARY KEY);\nINSERT INTO nowhere VALUES (1);\n"}};

void make(const fs::path& file, std::span<const Migration> steps) {
  (void)createWith(file, kKeeper, {}, steps);
}

bool hasTable(const Collection& collection, const std::string& table) {
  int count = 0;
  collection.inner().sql() << "SELECT COUNT(*) FROM sqlite_master WHERE name = :name", soci::use(table),
      soci::into(count);
  return count == 1;
}

TEST(Opening, AFreshCollectionHasTheSchemaOfThisProgram) {
  const OwnFolder folder;
  const Collection made = Collection::create(folder / "new.tarebowl", kKeeper);
  EXPECT_EQ(made.schemaVersion(), currentSchemaVersion());
  const auto changes = newestChanges(made, 10);
  ASSERT_EQ(changes.size(), 1U);
  EXPECT_EQ(changes[0].verb, "create collection");
  EXPECT_EQ(changes[0].author.who, "Keeper A");
  EXPECT_FALSE(fs::exists(folder / "new.tarebowl-new"));
}

TEST(Opening, ACurrentCollectionOpensWithoutABackup) {
  const OwnFolder folder;
  make(folder / "a.tarebowl", migrations());
  EXPECT_EQ(Collection::open(folder / "a.tarebowl", kNow).schemaVersion(), currentSchemaVersion());
  EXPECT_TRUE(listBackups(folder / "a.tarebowl").empty());
}

TEST(Opening, EveryCommitIsSyncedAndForeignKeysHold) {
  const OwnFolder folder;
  const Collection made = Collection::create(folder / "a.tarebowl", kKeeper);
  const auto pragma = [&](const std::string& name) {
    std::string value;
    made.inner().sql() << "PRAGMA " + name, soci::into(value);
    return value;
  };
  EXPECT_EQ(pragma("journal_mode"), "wal");
  EXPECT_EQ(pragma("synchronous"), "2");  // FULL
  EXPECT_EQ(pragma("foreign_keys"), "1");
  EXPECT_EQ(pragma("application_id"), std::to_string(0x54415245));
}

TEST(Opening, EveryTableIsStrict) {
  const OwnFolder folder;
  const Collection made = Collection::create(folder / "a.tarebowl", kKeeper);
  int loose = -1;
  made.inner().sql() << "SELECT COUNT(*) FROM pragma_table_list WHERE schema = 'main' AND type = 'table' "
                        "AND name NOT LIKE 'sqlite_%' AND strict = 0",
      soci::into(loose);
  EXPECT_EQ(loose, 0);
}

TEST(Opening, AnOlderCollectionIsRaisedAfterABackupOfWhatItWas) {
  const OwnFolder folder;
  make(folder / "a.tarebowl", kOld);
  const Collection raised = openWith(folder / "a.tarebowl", kNow, {}, kNew);
  EXPECT_EQ(raised.schemaVersion(), 3);
  EXPECT_TRUE(hasTable(raised, "pan"));
  const auto backups = listBackups(folder / "a.tarebowl");
  ASSERT_EQ(backups.size(), 1U);
  EXPECT_EQ(backups[0].reason, "before-upgrade");
  const Collection before = openWith(backups[0].file, kNow, {}, kOld);
  EXPECT_EQ(before.schemaVersion(), 1);
}

TEST(Opening, AnOlderCollectionIsNotRaisedForReading) {
  const OwnFolder folder;
  make(folder / "a.tarebowl", kOld);
  const OpenOptions reading{.access = OpenOptions::Access::ReadOnly};
  EXPECT_EQ(codeOf([&] { (void)openWith(folder / "a.tarebowl", kNow, reading, kNew); }),
            StoreErrorCode::NeedsUpgrade);
}

TEST(Opening, ANewerCollectionIsRefusedAndNotTouched) {
  const OwnFolder folder;
  make(folder / "a.tarebowl", kNew);
  const std::string before = contentOf(folder / "a.tarebowl");
  const auto error = errorOf([&] { (void)openWith(folder / "a.tarebowl", kNow, {}, kOld); });
  ASSERT_TRUE(error);
  EXPECT_EQ(error->code(), StoreErrorCode::TooNew);
  EXPECT_THAT(error->what(), HasSubstr("newer Tarebowl (schema 3, this program knows 1)"));
  EXPECT_EQ(contentOf(folder / "a.tarebowl"), before);
}

TEST(Opening, AStepThatFailsHalfWayIsRolledBackAndTheBackupNamed) {
  const OwnFolder folder;
  make(folder / "a.tarebowl", kOld);
  const auto error = errorOf([&] { (void)openWith(folder / "a.tarebowl", kNow, {}, kBroken); });
  ASSERT_TRUE(error);
  EXPECT_EQ(error->code(), StoreErrorCode::MigrationFailed);
  ASSERT_TRUE(error->backup());
  EXPECT_TRUE(fs::exists(*error->backup()));
  EXPECT_THAT(error->what(), HasSubstr("0002_half"));
  const Collection asItWas = openWith(folder / "a.tarebowl", kNow, {}, kOld);
  EXPECT_EQ(asItWas.schemaVersion(), 1);
  EXPECT_FALSE(hasTable(asItWas, "bowl"));
}

TEST(Opening, ACollectionIsNeverMadeOverAFile) {
  const OwnFolder folder;
  write(folder / "a.tarebowl", "a list of chores");
  EXPECT_EQ(codeOf([&] { (void)Collection::create(folder / "a.tarebowl", kKeeper); }),
            StoreErrorCode::AlreadyThere);
  EXPECT_EQ(contentOf(folder / "a.tarebowl"), "a list of chores");
}

TEST(Opening, ANameWithOddCharactersIsAName) {
  const OwnFolder folder;
  for (const char* name : {"a = b.tarebowl", "two  spaces.tarebowl", "a \"quoted\" name.tarebowl",
                           "dbname=x.tarebowl", "Füchse 100%.tarebowl", "it's; fine?.tarebowl"}) {
    const auto error = errorOf([&] {
      (void)Collection::create(folder / name, kKeeper);
      (void)makeBackup(folder / name, kNow, "daily");
      (void)Collection::open(folder / name, kNow);
    });
    EXPECT_FALSE(error) << name << ": " << error->what();
    EXPECT_TRUE(fs::is_regular_file(folder / name)) << name;
  }
}

}  // namespace
}  // namespace tarebowl::store
