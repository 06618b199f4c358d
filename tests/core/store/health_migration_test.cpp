// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"
#include "core/store/health_verbs.h"
#include "core/store/opening.h"
#include "tests/core/store/herd.h"
#include "tests/core/store/larder.h"
#include "tests/core/store/old_collection.h"

#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

/// A collection as the schema before health left it.
void makeHerdOf(const std::filesystem::path& file) {
  makeOld(file, 4, [](Collection& collection) {
    addSpecies(collection, lemurSpecies(), kKeeper);
    addGroup(collection, lemurGroup("family"), kKeeper);
  });
}

TEST(HealthMigration, ACollectionOfFeedingIsRaisedAndTakesObservations) {
  const OwnFolder folder;
  makeHerdOf(folder / "a.tarebowl");
  Collection raised = Collection::open(folder / "a.tarebowl", kNow);
  EXPECT_EQ(raised.schemaVersion(), currentSchemaVersion());
  raised.checkIntegrity();
  EXPECT_EQ(listBackups(folder / "a.tarebowl").size(), 1U);
  health::Observation seen;
  seen.group = "family";
  seen.on = day("2026-11-20");
  seen.kind = health::SignKind::Vomiting;
  (void)addObservation(raised, seen, Confirmed::No, kKeeper);
  EXPECT_EQ(observationsOfGroup(raised, "family", seen.on, seen.on).at(0).record, seen);
}

}  // namespace
}  // namespace tarebowl::store
