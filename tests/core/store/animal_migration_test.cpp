// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"
#include "core/store/change_log.h"
#include "core/store/food_reading.h"
#include "core/store/opening.h"
#include "tests/core/store/herd.h"
#include "tests/core/store/larder.h"
#include "tests/core/store/old_collection.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <vector>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

/// A collection as the schema before animals left it, with a food and a sample.
void makeLarder(const fs::path& file) {
  makeOld(file, 1, [](Collection& collection) {
    const Written food = addFood(collection, pellet(), kKeeper);
    addSample(collection, FoodId{food.id}, analysis("report 1", "2026-01-01", 254), kKeeper);
  });
}

TEST(AnimalMigration, ACollectionOfFoodsIsRaisedAndKeepsWhatItHolds) {
  const OwnFolder folder;
  makeLarder(folder / "a.tarebowl");
  Collection raised = Collection::open(folder / "a.tarebowl", kNow);
  EXPECT_EQ(raised.schemaVersion(), currentSchemaVersion());
  raised.checkIntegrity();
  const StoredFood food = findFood(raised, "pellet-a").value();
  EXPECT_EQ(food.record, pellet());
  EXPECT_EQ(samplesOf(raised, food.id).size(), 1U);
  const auto changes = newestChanges(raised, 10);
  ASSERT_EQ(changes.size(), 3U);
  EXPECT_EQ(changes[1].verb, "add food");
  undo(raised, changes[0].number, kKeeper);  // what was logged before can still be taken back
  EXPECT_TRUE(samplesOf(raised, food.id).empty());
  addSpecies(raised, lemurSpecies(), kKeeper);
  EXPECT_EQ(listSpecies(raised).size(), 1U);
  EXPECT_EQ(listBackups(folder / "a.tarebowl").size(), 1U);
}

TEST(AnimalMigration, ThatFailsHalfWayLeavesTheCollectionOfFoodsAsItWas) {
  const OwnFolder folder;
  makeLarder(folder / "a.tarebowl");
  const std::string broken = std::string(migrations()[1].sql) + "\nINSERT INTO nowhere VALUES (1);\n";
  const std::vector<Migration> steps{migrations()[0], {2, "0002_half", broken}};
  const auto error = errorOf([&] { (void)openWith(folder / "a.tarebowl", kNow, {}, steps); });
  ASSERT_TRUE(error);
  EXPECT_EQ(error->code(), StoreErrorCode::MigrationFailed);
  EXPECT_TRUE(error->backup());
  const Collection asItWas = openWith(folder / "a.tarebowl", kNow, {}, upTo(1));
  EXPECT_EQ(asItWas.schemaVersion(), 1);
  EXPECT_EQ(listFoods(asItWas).at(0).code, "pellet-a");
  int tables = 0;
  asItWas.inner().sql() << "SELECT COUNT(*) FROM sqlite_master WHERE name = 'species'", soci::into(tables);
  EXPECT_EQ(tables, 0);
}

TEST(AnimalMigration, TheFileItselfRefusesWhatTheRulesForbid) {
  Herd herd;
  for (const char* attempt :
       {"INSERT INTO mass_reading (id, revision, individual, on_day, mass_kg, method, note) "
        "VALUES (1, 1, 'a', '2026-01-01', 0.0, 'scale', '')",
        "INSERT INTO membership (id, revision, group_code, individual, from_day, until_day) "
        "VALUES (1, 1, 'family', 'a', '2026-01-02', '2026-01-01')",
        "INSERT INTO membership (id, revision, group_code, individual, from_day) "
        "VALUES (1, 1, 'family', 'nobody', '2026-01-02')",
        "DELETE FROM species", "UPDATE individual SET born = '2026-01-01', left_on = '2025-01-01'"}) {
    const auto error =
        errorOf([&] { guarded(herd.collection.file(), [&] { herd.collection.inner().sql() << attempt; }); });
    ASSERT_TRUE(error) << attempt;
    EXPECT_EQ(error->code(), StoreErrorCode::Refused) << attempt;
  }
}

}  // namespace
}  // namespace tarebowl::store
