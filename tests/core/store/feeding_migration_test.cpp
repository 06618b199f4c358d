// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"
#include "core/store/opening.h"
#include "tests/core/store/feeding_days.h"
#include "tests/core/store/larder.h"
#include "tests/core/store/old_collection.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;

/// A collection as the schema before feeding left it.
void makeFedHerd(const fs::path& file) {
  makeOld(file, 3, [](Collection& collection) {
    addSpecies(collection, lemurSpecies(), kKeeper);
    addGroup(collection, lemurGroup("family"), kKeeper);
    addFood(collection, plain("kale"), kKeeper);
  });
}

TEST(FeedingMigration, ACollectionOfDietsIsRaisedAndTakesFeedingDays) {
  const OwnFolder folder;
  makeFedHerd(folder / "a.tarebowl");
  Collection raised = Collection::open(folder / "a.tarebowl", kNow);
  EXPECT_EQ(raised.schemaVersion(), currentSchemaVersion());
  raised.checkIntegrity();
  EXPECT_EQ(findGroup(raised, "family")->record, lemurGroup("family"));
  EXPECT_EQ(listBackups(folder / "a.tarebowl").size(), 1U);
  const std::vector<intake::Bowl> bowls{{.key = {"family", day("2026-11-25"), 1},
                                         .label = "Family",
                                         .items = {{.food = "kale", .planned = quantity::Grams(5)}}}};
  openSheet(raised, "Small Mammals", day("2026-11-25"), bowls, kKeeper);
  EXPECT_EQ(bowlsOfDay(raised, day("2026-11-25")), bowls);
}

}  // namespace
}  // namespace tarebowl::store
