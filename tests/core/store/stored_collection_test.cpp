// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Collections that were stored when their schema was the newest (collections/README.md).
#include "core/store/backup.h"
#include "core/store/food_reading.h"
#include "core/store/opening.h"
#include "tests/core/store/diets.h"
#include "tests/core/store/larder.h"
#include "tests/core/store/old_collection.h"
#include "tests/source_dir.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdlib>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;

fs::path storedIn(const fs::path& folder, int schema) {
  return folder / fmt::format("{:04}.tarebowl", schema);
}

const fs::path kStored = fs::path(TAREBOWL_SOURCE_DIR) / "tests/core/store/collections";

/// The family's approved diet of 120 g kale.
void fill(Collection& collection) {
  addFood(collection, plain("kale"), kKeeper);
  addSpecies(collection, lemurSpecies(), kKeeper);
  addGroup(collection, lemurGroup("family"), kKeeper);
  const Written profile = addProfile(collection, primateProfile(), kKeeper);
  putInForce(collection, ProfileId{profile.id}, 1, day("2026-01-01"), "approved", kKeeper);
  addDiet(collection, morningBowl(), kKeeper);
  addVersion(collection, "lemur-morning", fullVersion(), kKeeper);
}

/// Into the folder that TAREBOWL_STORE_COLLECTIONS names, those that it lacks; else into the test's own.
TEST(StoredCollections, OfAnySchemaCanBeMadeWithItsMigrations) {
  const OwnFolder own;
  const char* const named = std::getenv("TAREBOWL_STORE_COLLECTIONS");
  const fs::path folder = named != nullptr ? fs::path(named) : own / "collections";
  fs::create_directories(folder);
  for (int schema = 1; schema <= currentSchemaVersion(); ++schema) {
    const fs::path stored = storedIn(folder, schema);
    if (fs::exists(stored)) continue;
    const fs::path made = own / fmt::format("{}.tarebowl", schema);
    makeOld(made, schema, fill);
    const std::string name = stored.string();
    const Collection old = openWith(made, kNow, {}, upTo(schema));
    old.inner().sql() << "PRAGMA journal_mode = DELETE";
    old.inner().sql() << "PRAGMA page_size = 512";
    old.inner().sql() << "VACUUM INTO :name", soci::use(name);
    EXPECT_EQ(openWith(stored, kNow, {.access = OpenOptions::Access::ReadOnly}, upTo(schema)).schemaVersion(),
              schema);
  }
}

class StoredCollection : public testing::TestWithParam<int> {
 protected:
  void SetUp() override {
    ASSERT_TRUE(fs::exists(storedIn(kStored, GetParam()))) << "see collections/README.md";
    fs::copy_file(storedIn(kStored, GetParam()), file);
    fs::permissions(file, fs::perms::owner_write, fs::perm_options::add);
  }
  const OwnFolder folder;
  const fs::path file = folder / "stored.tarebowl";
};

TEST_P(StoredCollection, HasTheSchemaOfItsTime) {
  EXPECT_EQ(openWith(file, kNow, {}, upTo(GetParam())).schemaVersion(), GetParam());
}

TEST_P(StoredCollection, IsRaisedAndHoldsWhatItHeld) {
  Collection raised = Collection::open(file, kNow);
  raised.checkIntegrity();
  EXPECT_EQ(raised.schemaVersion(), currentSchemaVersion());
  EXPECT_EQ(schemaOf(raised), schemaOf(Collection::create(folder / "new.tarebowl", kKeeper)));
  EXPECT_EQ(findFood(raised, "kale")->record, plain("kale"));
  if (GetParam() >= 2) {
    EXPECT_EQ(listGroups(raised).at(0).record, lemurGroup("family"));
  }
  if (GetParam() >= 3) {
    EXPECT_EQ(versionsOfDiet(raised, "lemur-morning").at(0).record.version, fullVersion());
  }
  EXPECT_EQ(listBackups(file).size(), GetParam() < currentSchemaVersion() ? 1U : 0U);
}

class LaterCollection : public StoredCollection {};

TEST_P(LaterCollection, IsRefusedKindlyByAProgramOfTheSchemaBefore) {
  const std::string before = contentOf(file);
  const auto error = errorOf([&] { (void)openWith(file, kNow, {}, upTo(GetParam() - 1)); });
  ASSERT_TRUE(error);
  EXPECT_EQ(error->code(), StoreErrorCode::TooNew);
  EXPECT_THAT(error->what(), testing::HasSubstr("newer Tarebowl"));
  EXPECT_EQ(contentOf(file), before);
  EXPECT_TRUE(listBackups(file).empty());
}

INSTANTIATE_TEST_SUITE_P(OfSchema, StoredCollection, testing::Range(1, currentSchemaVersion() + 1),
                         [](const auto& schema) { return std::to_string(schema.param); });

INSTANTIATE_TEST_SUITE_P(OfSchema, LaterCollection, testing::Range(2, currentSchemaVersion() + 1),
                         [](const auto& schema) { return std::to_string(schema.param); });

}  // namespace
}  // namespace tarebowl::store
