// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A collection on a server is backed up into a file, and put back from it.
#include "core/store/server_backup.h"

#include "core/store/change_log.h"
#include "core/store/former_collection.h"
#include "core/store/move.h"
#include "core/store/server_setup.h"
#include "tests/core/store/larder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdlib>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;
using testing::Not;
using testing::UnorderedElementsAre;

class ServerBackup : public testing::Test {
 protected:
  ServerBackup() {
    Collection made = Collection::create(address, kKeeper);
    (void)addFood(made, plain("kale"), kKeeper);
  }
  [[nodiscard]] std::vector<std::string> foods() const {
    std::vector<std::string> codes;
    for (const food::FoodLine& food : listFoods(Collection::open(address, kNow))) codes.push_back(food.code);
    return codes;
  }
  void addFennel() const {
    Collection open = Collection::open(address, kNow);
    (void)addFood(open, plain("fennel"), kKeeper);
  }
  /// A program of this name that is found first, and says that it is of this version.
  void putFirst(const std::string& program, const std::string& version) const {
    fs::create_directories(folder / "bin");
    write(folder / "bin" / program, "#!/bin/sh\necho '" + program + " (PostgreSQL) " + version + "'\n");
    fs::permissions(folder / "bin" / program, fs::perms::owner_all);
    const std::string path = (folder / "bin").string() + ":" + std::getenv("PATH");
    ::setenv("PATH", path.c_str(), 1);
  }

  OwnFolder folder;
  fs::path address = folder.collection("a");
  fs::path dump = folder / "a.dump";
};

TEST_F(ServerBackup, IsAsTheCollectionWasAndComesBackAsThat) {
  dumpServer(address, {}, dump);
  addFennel();
  EXPECT_THAT(foods(), UnorderedElementsAre("fennel", "kale"));
  const std::string former = restoreServer(address, {}, dump, kKeeper);
  EXPECT_THAT(foods(), UnorderedElementsAre("kale"));
  EXPECT_EQ(former, "tarebowl_before_restore_20261125t073000z");
  const Collection restored = Collection::open(address, kNow);
  EXPECT_EQ(newestChanges(restored, 1).at(0).verb, "restore backup");
  // What was there lies aside, whole.
  EXPECT_EQ(
      refusedTo(address, "", "SELECT 1 / (COUNT(*) - 1) FROM " + former + ".food WHERE code = 'fennel'"),
      "ERROR:  division by zero\n");
}

TEST_F(ServerBackup, ComesIntoAnEmptyDatabaseWithItsRoles) {
  dumpServer(address, {}, dump);
  const fs::path other = folder.collection("other");
  EXPECT_EQ(restoreServer(other, {}, dump, kKeeper), "");
  const std::string person = "keeper_of_a_restored_one";
  (void)refusedTo(address, "", "DROP ROLE IF EXISTS " + person);
  letIn(other, {}, person, "keeper", "typed");
  std::string theirs = other.string();
  theirs.replace(theirs.find("owner"), 5, person);
  EXPECT_EQ(refusedTo(theirs, "typed", "SELECT * FROM tarebowl.food"), "");
  EXPECT_THAT(refusedTo(theirs, "typed", "DELETE FROM tarebowl.food"), HasSubstr("permission denied"));
  (void)refusedTo(address, "", "DROP ROLE " + person);
}

TEST_F(ServerBackup, WhoMustTypeAPasswordTypesItAndNobodySeesIt) {
  const std::string person = "makes_backups";
  (void)refusedTo(address, "", "DROP ROLE IF EXISTS " + person);
  (void)refusedTo(address, "", "CREATE ROLE " + person + " SUPERUSER LOGIN PASSWORD 'typed-by-hand'");
  std::string theirs = address.string();
  theirs.replace(theirs.find("owner"), 5, person);
  dumpServer(theirs,
             {.password = [](const fs::path&) { return std::optional<std::string>("typed-by-hand"); }}, dump);
  EXPECT_NO_THROW(refuseUnsoundDump(dump));
  (void)refusedTo(address, "", "DROP ROLE " + person);
}

TEST_F(ServerBackup, OverwritesNoFile) {
  write(dump, "another");
  EXPECT_EQ(codeOf([&] { dumpServer(address, {}, dump); }), StoreErrorCode::AlreadyThere);
  EXPECT_EQ(contentOf(dump), "another");
}

TEST_F(ServerBackup, ThatIsCutOffOrNoneChangesNothing) {
  dumpServer(address, {}, dump);
  const std::string whole = contentOf(dump);
  addFennel();
  for (const std::string& content :
       {whole.substr(0, whole.size() / 2), whole.substr(0, 100), std::string("no dump")}) {
    write(dump, content);
    EXPECT_TRUE(errorOf([&] { (void)restoreServer(address, {}, dump, kKeeper); }));
    EXPECT_THAT(foods(), UnorderedElementsAre("fennel", "kale"));
  }
  EXPECT_EQ(codeOf([&] { (void)restoreServer(address, {}, folder / "none", kKeeper); }),
            StoreErrorCode::NotFound);
}

TEST_F(ServerBackup, ARestoreThatBroughtBackTheWrongDayIsUndoneAndRedone) {
  dumpServer(address, {}, dump);
  addFennel();
  const std::string former = restoreServer(address, {}, dump, kKeeper);
  EXPECT_THAT(foods(), UnorderedElementsAre("kale"));
  const Author later{"Keeper A", "2026-11-25T07:31:00Z"};
  const UndoneRestore undone = undoRestore(address, {}, later);
  EXPECT_EQ(undone.former, former);
  EXPECT_EQ(undone.aside, "tarebowl_before_restore_20261125t073100z");
  EXPECT_THAT(foods(), UnorderedElementsAre("fennel", "kale"));
  EXPECT_EQ(newestChanges(Collection::open(address, kNow), 1).at(0).verb, "undo restore");
  EXPECT_EQ(undoRestore(address, {}, {"Keeper A", "2026-11-25T07:32:00Z"}).former, undone.aside);
  EXPECT_THAT(foods(), UnorderedElementsAre("kale"));
}

/// As a program leaves it that dies, or loses the server, between the two.
TEST_F(ServerBackup, ARestoreThatDiedOnItsWayIsToldAndUndone) {
  addFennel();
  ASSERT_EQ(
      refusedTo(address, "", "ALTER SCHEMA tarebowl RENAME TO tarebowl_before_restore_20261125t070000z"), "");
  const auto error = errorOf([&] { (void)Collection::open(address, kNow); });
  ASSERT_TRUE(error);
  EXPECT_EQ(error->code(), StoreErrorCode::Gone);
  EXPECT_THAT(error->what(), HasSubstr("tarebowl_before_restore_20261125t070000z"));
  EXPECT_THAT(error->what(), HasSubstr("tarebowl server undo-restore"));
  EXPECT_EQ(codeOf([&] { (void)Collection::create(address, kKeeper); }), StoreErrorCode::Gone);
  const UndoneRestore undone = undoRestore(address, {}, kKeeper);
  EXPECT_EQ(undone.aside, "");
  EXPECT_THAT(foods(), UnorderedElementsAre("fennel", "kale"));
}

/// What a restore set aside stays for as long as somebody wants it: no sign that one died.
TEST_F(ServerBackup, WhatWasMovedAwayAfterARestoreIsNotTakenForOneThatDied) {
  dumpServer(address, {}, dump);
  (void)restoreServer(address, {}, dump, kKeeper);
  const fs::path file = folder / "elsewhere.tarebowl";
  (void)moveCollection(address, file, {"Keeper A", "2026-11-25T08:00:00Z"});
  EXPECT_EQ(codeOf([&] { (void)Collection::open(address, kNow); }), StoreErrorCode::NotACollection);
  (void)moveCollection(file, address, {"Keeper A", "2026-11-25T09:00:00Z"});
  EXPECT_THAT(foods(), UnorderedElementsAre("kale"));
}

TEST_F(ServerBackup, WhereNothingWasSetAsideThereIsNothingToUndo) {
  EXPECT_EQ(codeOf([&] { (void)undoRestore(address, {}, kKeeper); }), StoreErrorCode::NotFound);
  EXPECT_THAT(foods(), UnorderedElementsAre("kale"));
}

TEST_F(ServerBackup, LeavesNoHalfFileWhereThePersonMayNotReadAll) {
  const std::string person = "reads_only_here";
  (void)refusedTo(address, "", "DROP ROLE IF EXISTS " + person);
  letIn(address, {}, person, "reader", "typed");
  std::string theirs = address.string();
  theirs.replace(theirs.find("owner"), 5, person);
  const auto error = errorOf([&] {
    dumpServer(theirs, {.password = [](const fs::path&) { return std::optional<std::string>("typed"); }},
               dump);
  });
  ASSERT_TRUE(error);
  EXPECT_THAT(error->what(), HasSubstr("pg_dump says why"));
  EXPECT_THAT(error->what(), Not(HasSubstr("typed")));
  EXPECT_FALSE(fs::exists(dump));
  EXPECT_FALSE(fs::exists(dump.string() + ".part"));
  (void)refusedTo(address, "", "DROP ROLE " + person);
}

TEST_F(ServerBackup, OfAnOlderProgramIsNotMade) {
  putFirst("pg_dump", "9.6.24");
  const auto error = errorOf([&] { dumpServer(address, {}, dump); });
  ASSERT_TRUE(error);
  EXPECT_THAT(error->what(), HasSubstr("pg_dump here is of 9; install postgresql-client-"));
}

TEST_F(ServerBackup, AProgramThatIsNotThereIsNamed) {
  ::setenv("PATH", (folder / "bin").c_str(), 1);
  const auto error = errorOf([&] { dumpServer(address, {}, dump); });
  ASSERT_TRUE(error);
  EXPECT_THAT(error->what(), HasSubstr("Debian: postgresql-client"));
}

}  // namespace
}  // namespace tarebowl::store
