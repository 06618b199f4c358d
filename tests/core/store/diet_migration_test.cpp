// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"
#include "core/store/opening.h"
#include "tests/core/store/diets.h"
#include "tests/core/store/old_collection.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;

/// A collection as the schema before diets left it: a group with targets in force.
void makeHerd(const fs::path& file) {
  makeOld(file, 2, [](Collection& collection) {
    addSpecies(collection, lemurSpecies(), kKeeper);
    addGroup(collection, lemurGroup("family"), kKeeper);
    const Written profile = addProfile(collection, primateProfile(), kKeeper);
    putInForce(collection, ProfileId{profile.id}, 1, day("2026-01-01"), "approved", kKeeper);
  });
}

TEST(DietMigration, ACollectionOfAnimalsIsRaisedAndTakesDiets) {
  const OwnFolder folder;
  makeHerd(folder / "a.tarebowl");
  Collection raised = Collection::open(folder / "a.tarebowl", kNow);
  EXPECT_EQ(raised.schemaVersion(), currentSchemaVersion());
  raised.checkIntegrity();
  EXPECT_EQ(findGroup(raised, "family")->record, lemurGroup("family"));
  EXPECT_EQ(listBackups(folder / "a.tarebowl").size(), 1U);
  addDiet(raised, morningBowl(), kKeeper);
  addVersion(raised, "lemur-morning", fullVersion(), kKeeper);
  EXPECT_EQ(versionsOfDiet(raised, "lemur-morning").at(0).record.version, fullVersion());
}

TEST(DietMigration, TheFileItselfRefusesWhatTheRulesForbid) {
  FedHerd herd;
  addVersion(herd.collection, "lemur-morning", fullVersion(), kKeeper);
  for (const char* attempt :
       {"UPDATE diet_version SET state = 'approved'", "UPDATE diet_version SET fed_from = '2026-12-01'",
        "UPDATE diet_version SET number = 0", "UPDATE diet SET group_code = 'nobody'", "DELETE FROM diet",
        "DELETE FROM animal_group", "UPDATE diet_version SET confidence = 0.5"}) {
    const auto error =
        errorOf([&] { guarded(herd.collection.file(), [&] { herd.collection.inner().sql() << attempt; }); });
    ASSERT_TRUE(error) << attempt;
    EXPECT_EQ(error->code(), StoreErrorCode::Refused) << attempt;
  }
}

}  // namespace
}  // namespace tarebowl::store
