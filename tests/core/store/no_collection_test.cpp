// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"
#include "core/store/collection.h"
#include "core/store/opening.h"
#include "core/store/sqlite_connection.h"
#include "tests/core/store/own_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

std::optional<StoreError> openingOf(const fs::path& file, OpenOptions options = {}) {
  return errorOf([&] { (void)Collection::open(file, kNow, options); });
}

void expectRefused(const fs::path& file, StoreErrorCode code, const std::string& words) {
  const std::string before = fs::is_regular_file(file) ? contentOf(file) : "";
  const auto error = openingOf(file);
  ASSERT_TRUE(error) << file;
  EXPECT_EQ(error->code(), code) << error->what();
  EXPECT_THAT(error->what(), HasSubstr(words));
  EXPECT_EQ(fs::is_regular_file(file) ? contentOf(file) : "", before);
  EXPECT_FALSE(fs::exists(file.string() + "-wal"));
}

TEST(NoCollection, AFileThatIsNotThereIsNotMade) {
  const OwnFolder folder;
  expectRefused(folder / "gone.tarebowl", StoreErrorCode::NotFound, "there is no such file");
  EXPECT_FALSE(fs::exists(folder / "gone.tarebowl"));
}

TEST(NoCollection, AFolderIsNoCollection) {
  const OwnFolder folder;
  fs::create_directory(folder / "dir.tarebowl");
  expectRefused(folder / "dir.tarebowl", StoreErrorCode::NotAFile, "is a folder");
}

TEST(NoCollection, AnEmptyFileOrATextIsNoCollection) {
  const OwnFolder folder;
  write(folder / "empty.tarebowl", "");
  expectRefused(folder / "empty.tarebowl", StoreErrorCode::NotACollection, "is empty");
  write(folder / "text.tarebowl", "kale;254\n");
  expectRefused(folder / "text.tarebowl", StoreErrorCode::NotACollection, "is no collection");
  write(folder / "text2.tarebowl", std::string(5000, 'x'));
  expectRefused(folder / "text2.tarebowl", StoreErrorCode::NotACollection, "is no collection");
}

TEST(NoCollection, ADatabaseOfAnotherProgramIsNotTouched) {
  const OwnFolder folder;
  {
    SqliteConnection other(folder / "other.db", SqliteConnection::Access::ReadWrite,
                           std::chrono::milliseconds(100));
    other.sql() << "CREATE TABLE note (text TEXT)";
  }
  expectRefused(folder / "other.db", StoreErrorCode::NotACollection, "another program");
}

TEST(NoCollection, AFolderThatIsMissingIsSaid) {
  const OwnFolder folder;
  const fs::path file = folder / "nowhere";
  EXPECT_EQ(codeOf([&] { (void)Collection::create(file / "a.tarebowl", kKeeper); }),
            StoreErrorCode::NoPermission);
}

/// A collection with enough in it that it has many pages.
fs::path filled(const fs::path& file) {
  const Collection made = Collection::create(file, kKeeper);
  soci::session& sql = made.inner().sql();
  sql << "BEGIN";
  for (int id = 1; id <= 3000; ++id) {
    const std::string text = "food-" + std::to_string(id);
    sql << "INSERT INTO food VALUES (:id, 1, :code, :name, 'raw', 'greens', NULL, 1, 1, NULL, 1, '', 1)",
        soci::use(id), soci::use(text), soci::use(text);
  }
  sql << "COMMIT";
  return file;
}

TEST(Damage, ATruncatedCollectionIsRefused) {
  const OwnFolder folder;
  const fs::path file = filled(folder / "a.tarebowl");
  fs::resize_file(file, fs::file_size(file) / 2);
  expectRefused(file, StoreErrorCode::Damaged, "is damaged");
  fs::resize_file(file, 60);
  expectRefused(file, StoreErrorCode::Damaged, "ends in its header");
}

TEST(Damage, AnOverwrittenPageIsFoundByTheCheckAndTheNewestBackupNamed) {
  const OwnFolder folder;
  const fs::path file = filled(folder / "a.tarebowl");
  const fs::path backup = makeBackup(file, kNow, "daily");
  std::string content = contentOf(file);
  content.replace(4096U * 20U, 4096, std::string(4096, '\xff'));
  write(file, content);
  const auto error = openingOf(file, {.check = OpenOptions::Check::Always});
  ASSERT_TRUE(error);
  EXPECT_EQ(error->code(), StoreErrorCode::Damaged);
  EXPECT_EQ(error->backup(), backup);
}

TEST(Damage, AfterAnUncleanEndTheFileIsReadThroughBeforeItIsTrusted) {
  const OwnFolder folder;
  const fs::path file = filled(folder / "a.tarebowl");
  std::string content = contentOf(file);
  content.replace(4096U * 20U, 4096, std::string(4096, '\xff'));
  write(file, content);
  write(file.string() + "-wal", "left by a program that was killed");
  const auto error = openingOf(file);
  ASSERT_TRUE(error);
  EXPECT_EQ(error->code(), StoreErrorCode::Damaged);
}

TEST(Damage, AHeaderWithoutItsTablesIsRefused) {
  const OwnFolder folder;
  const fs::path file = filled(folder / "a.tarebowl");
  std::string content = contentOf(file);
  content.replace(100, 500, std::string(500, '\x7e'));
  write(file, content);
  EXPECT_EQ(openingOf(file).value().code(), StoreErrorCode::Damaged);
}

}  // namespace
}  // namespace tarebowl::store
