// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A collection from a stranger runs nothing, and what the program makes is not for everybody to read.
#include "core/store/backup.h"
#include "core/store/opening.h"
#include "core/store/salvage.h"
#include "tests/core/store/larder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sqlite3.h>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

/// What a stranger does to the file with tools of their own.
void tamper(const fs::path& file, const std::string& sql) {
  sqlite3* database = nullptr;
  ASSERT_EQ(sqlite3_open(file.c_str(), &database), SQLITE_OK);
  char* why = nullptr;
  EXPECT_EQ(sqlite3_exec(database, sql.c_str(), nullptr, nullptr, &why), SQLITE_OK) << why;
  sqlite3_free(why);
  sqlite3_close(database);
}

class Stranger : public testing::TestWithParam<std::string> {
 protected:
  static fs::path made(const fs::path& file) {
    Collection collection = Collection::create(file, kKeeper);
    addFood(collection, plain("kale"), kKeeper);
    return file;
  }
  const OwnFolder folder;
  const fs::path file = made(folder / "a.tarebowl");
};

TEST_P(Stranger, IsRefusedAndItsRowsCanStillBeCopiedOut) {
  tamper(file, GetParam());
  const std::string before = contentOf(file);
  const auto error = errorOf([&] { (void)Collection::open(file, kNow); });
  ASSERT_TRUE(error);
  EXPECT_EQ(error->code(), StoreErrorCode::Untrusted) << error->what();
  EXPECT_THAT(error->what(), HasSubstr("Tarebowl did not make"));
  EXPECT_EQ(contentOf(file), before);
  (void)salvage(file, folder / "fresh.tarebowl", kKeeper);
  EXPECT_EQ(countFoods(Collection::open(folder / "fresh.tarebowl", kNow)), 1U);
}

TEST_P(Stranger, IsNotRestoredFromABackup) {
  const fs::path backup = makeBackup(file, kNow, "daily");
  tamper(backup, GetParam());
  EXPECT_EQ(codeOf([&] { (void)restore(file, backup, kKeeper); }), StoreErrorCode::Untrusted);
  EXPECT_EQ(countFoods(Collection::open(file, kNow)), 1U);
}

INSTANTIATE_TEST_SUITE_P(
    With, Stranger,
    testing::Values(
        "CREATE TRIGGER spy AFTER INSERT ON food BEGIN UPDATE food SET note = 'seen'; END",
        "CREATE VIEW every_food AS SELECT * FROM food", "CREATE VIRTUAL TABLE search USING fts5(name)",
        "DROP TRIGGER change_log_keeps_on_DELETE; CREATE TRIGGER change_log_keeps_on_DELETE BEFORE "
        "DELETE ON change_log BEGIN SELECT 1; END",
        // Written into the schema by hand: a name that looks like the engine's own, another case, the name of
        // an index of ours.
        "PRAGMA writable_schema = ON; INSERT INTO sqlite_master (type, name, tbl_name, rootpage, sql) VALUES "
        "('trigger', 'sqlite_spy', 'food', 0, 'CREATE TRIGGER sqlite_spy AFTER INSERT ON food BEGIN UPDATE "
        "food SET note = ''seen''; END')",
        "PRAGMA writable_schema = ON; INSERT INTO sqlite_master (type, name, tbl_name, rootpage, sql) VALUES "
        "('TRIGGER', 'spy', 'food', 0, 'CREATE TRIGGER spy AFTER INSERT ON food BEGIN UPDATE food SET note = "
        "''seen''; END')",
        "PRAGMA writable_schema = ON; UPDATE sqlite_master SET rowid = 2000 WHERE name = 'sample_of_food'; "
        "INSERT INTO sqlite_master (rowid, type, name, tbl_name, rootpage, sql) VALUES (1000, 'trigger', "
        "'sample_of_food', 'food', 0, 'CREATE TRIGGER sample_of_food AFTER INSERT ON food BEGIN UPDATE food "
        "SET note = ''seen''; END')",
        "PRAGMA writable_schema = ON; UPDATE sqlite_master SET sql = replace(sql, 'edible_fraction > "
        "0', 'edible_fraction > abs(0)') WHERE name = 'food'"));

class House : public Stranger {};

TEST_F(House, TablesAndIndexesThatRunNothingDoNotKeepItFromOpening) {
  tamper(file, "CREATE TABLE shopping (what TEXT); CREATE INDEX food_of_group ON food (food_group); ANALYZE");
  EXPECT_EQ(countFoods(Collection::open(file, kNow)), 1U);
}

TEST_F(House, AMissingTableOrGuardIsDamage) {
  tamper(file, "DROP TRIGGER change_log_keeps_on_UPDATE");
  const auto error = errorOf([&] { (void)Collection::open(file, kNow); });
  EXPECT_EQ(error.value().code(), StoreErrorCode::Damaged);
  EXPECT_THAT(error->what(), HasSubstr("change_log_keeps_on_UPDATE is missing"));
}

TEST_F(House, TheEngineLoadsNothingTrustsNoSchemaAndKeepsItsOwnBooks) {
  const Collection collection = Collection::open(file, kNow);
  soci::session& sql = collection.inner().sql();
  std::string answer;
  EXPECT_THROW((sql << "SELECT load_extension('spy')", soci::into(answer)), soci::soci_error);
  sql << "PRAGMA trusted_schema", soci::into(answer);
  EXPECT_EQ(answer, "0");
  sql << "PRAGMA writable_schema = ON";
  EXPECT_THROW(sql << "UPDATE sqlite_master SET name = 'x'", soci::soci_error);
  EXPECT_THROW((sql << "SELECT length(zeroblob(200000000))", soci::into(answer)), soci::soci_error);
}

TEST_F(House, ANameIsANameWhateverStandsInIt) {
  Collection collection = Collection::open(file, kNow);
  for (const std::string name :
       {"'); DROP TABLE food; --", "\" OR 1 = 1", ":name", "%", "x'00'", "Robert\\'"}) {
    FoodRecord record = plain(name);
    record.food.name = name;
    record.food.note = name;
    const FoodId id{addFood(collection, record, kKeeper).id};
    EXPECT_EQ(findFood(collection, id)->record, record);
    EXPECT_EQ(findFood(collection, name)->record, record);
  }
  EXPECT_EQ(countFoods(collection), 7U);
}

TEST_F(House, OnlyTheOwnerAndTheirGroupMayReadWhatIsMade) {
  Collection collection = Collection::open(file, kNow);
  addFood(collection, plain("endive"), kKeeper);
  const fs::path backup = makeBackup(file, kNow, "daily");
  (void)salvage(file, folder / "fresh.tarebowl", kKeeper);
  for (const fs::path& made : {file, fs::path(file.string() + "-wal"), fs::path(file.string() + "-shm"),
                               backup, backupFolder(file), folder / "fresh.tarebowl"})
    EXPECT_EQ(fs::status(made).permissions() & fs::perms::others_all, fs::perms::none) << made;
}

}  // namespace
}  // namespace tarebowl::store
