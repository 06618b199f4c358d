// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"
#include "core/store/food_reading.h"
#include "core/store/opening.h"
#include "tests/core/store/diets.h"
#include "tests/core/store/larder.h"
#include "tests/core/store/old_collection.h"

#include <gtest/gtest.h>

#include <map>

namespace tarebowl::store {
namespace {

/// Something for the tables of every schema that is raised here.
void fill(Collection& collection) {
  addFood(collection, plain("kale"), kKeeper);
  addSpecies(collection, lemurSpecies(), kKeeper);
  addGroup(collection, lemurGroup("family"), kKeeper);
  const Written profile = addProfile(collection, primateProfile(), kKeeper);
  putInForce(collection, ProfileId{profile.id}, 1, day("2026-01-01"), "approved", kKeeper);
  addDiet(collection, morningBowl(), kKeeper);
  addVersion(collection, "lemur-morning", fullVersion(), kKeeper);
}

std::map<std::string, int> rowsByTable(const Collection& collection) {
  std::map<std::string, int> rows;
  for (const std::string& table : tablesOf(collection)) {
    int count = 0;
    collection.inner().sql() << "SELECT COUNT(*) FROM " + table, soci::into(count);
    rows[table] = count;
  }
  return rows;
}

/// Each schema that a program before this one could have left.
class RaisedCollection : public testing::TestWithParam<int> {
 protected:
  const OwnFolder folder;
  const std::filesystem::path file = folder / "old.tarebowl";
  void SetUp() override { makeOld(file, GetParam(), fill); }
};

TEST_P(RaisedCollection, HasTheTablesOfAFreshOne) {
  EXPECT_EQ(schemaOf(Collection::open(file, kNow)),
            schemaOf(Collection::create(folder / "new.tarebowl", kKeeper)));
}

TEST_P(RaisedCollection, KeepsEveryRowThatItHeld) {
  const auto before = rowsByTable(openWith(file, kNow, {}, upTo(GetParam())));
  Collection raised = Collection::open(file, kNow);
  raised.checkIntegrity();
  const auto after = rowsByTable(raised);
  for (const auto& [table, rows] : before) EXPECT_EQ(after.at(table), rows) << table;
  EXPECT_EQ(findFood(raised, "kale")->record, plain("kale"));
}

TEST_P(RaisedCollection, IsBackedUpOnceBefore) {
  (void)Collection::open(file, kNow);
  (void)Collection::open(file, kNow);
  EXPECT_EQ(listBackups(file).size(), 1U);
}

INSTANTIATE_TEST_SUITE_P(FromSchema, RaisedCollection, testing::Range(1, currentSchemaVersion()),
                         [](const auto& schema) { return std::to_string(schema.param); });

}  // namespace
}  // namespace tarebowl::store
