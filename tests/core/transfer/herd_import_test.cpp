// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/herd_import.h"

#include "core/exchange/problem_json.h"
#include "core/store/group_reading.h"
#include "tests/core/store/own_folder.h"
#include "tests/source_dir.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace tarebowl::transfer {
namespace {

using namespace tarebowl::store;
using testing::HasSubstr;

const std::filesystem::path kSample = std::filesystem::path(TAREBOWL_SOURCE_DIR) / "sample-data";

/// The invented collection's animals, read in once for all tests of a process.
class Brackenmere : public testing::Test {
 protected:
  OwnFolder folder;
  Collection collection = Collection::create(folder / "brackenmere.tarebowl", kKeeper);
  quantity::Date day = quantity::parseDate("2026-11-25").value();

  void SetUp() override { importHerd(collection, kSample / "herd", kKeeper); }
  [[nodiscard]] KnownGroup known(const std::string& group) const {
    return knowGroup(collection, group, day).value();
  }
};

TEST_F(Brackenmere, EveryGroupIsInventedHasAMassAndAnEnergyNeed) {
  const auto groups = listGroups(collection);
  EXPECT_EQ(groups.size(), 8U);
  for (const StoredGroup& group : groups) {
    const KnownGroup one = known(group.record.code);
    EXPECT_TRUE(group.record.invented) << group.record.code;
    EXPECT_TRUE(one.headcount) << group.record.code;
    EXPECT_TRUE(one.bodyMass) << group.record.code;
    EXPECT_TRUE(one.energy) << group.record.code;
  }
}

TEST_F(Brackenmere, TheSpeciesThatIsNewHasADraftAndNothingInForce) {
  EXPECT_FALSE(known("streaked-tenrecs").profile);
  EXPECT_EQ(versionsOfProfile(collection, "brackenmere-streaked-tenrec").size(), 1U);
  for (const StoredGroup& group : listGroups(collection)) {
    if (group.record.code == "streaked-tenrecs") continue;
    EXPECT_TRUE(known(group.record.code).profile) << group.record.code;
  }
}

TEST_F(Brackenmere, LemursAreFedByThePrimateTableWithIronTurnedIntoACeiling) {
  const KnownGroup lemurs = known("lemurs");
  ASSERT_TRUE(lemurs.profile);
  EXPECT_EQ(lemurs.profile->ancestors.at(0).code, "primate-nrc2003");
  const auto iron = std::ranges::find_if(lemurs.profile->targets,
                                         [](const auto& entry) { return entry.rule.target.id == "iron"; });
  ASSERT_NE(iron, lemurs.profile->targets.end());
  EXPECT_FALSE(iron->rule.target.min);
  EXPECT_EQ(iron->rule.target.max, 100.0);
  EXPECT_TRUE(animal::maxIsHard(iron->rule));
  EXPECT_EQ(iron->descent.inPlaceOf.at(0).code, "primate-nrc2003");
  EXPECT_EQ(lemurs.profile->exclusions.at(0).rule.group, "fruit");
}

TEST_F(Brackenmere, BatsSayThatNoTableHasBeenPublishedOfThem) {
  EXPECT_THAT(known("bats").profile->profile.whyModel,
              HasSubstr("No table of requirements of fruit bats has been published"));
}

TEST_F(Brackenmere, GramsTypedAsKilogramsAreSetAsideWithTheReason) {
  const auto masses = massesOfIndividual(collection, "Tenrec 2");
  const auto slip = std::ranges::find_if(
      masses, [](const StoredMass& mass) { return mass.record.reading.excluded.has_value(); });
  ASSERT_NE(slip, masses.end());
  EXPECT_EQ(slip->record.reading.excluded, "grams typed as kilograms");
  EXPECT_GT(slip->record.reading.mass.value(), 100.0);
  EXPECT_LT(known("tenrecs").bodyMass->value(), 0.2);
}

struct Agreement {
  const char* group;
  const char* problem;
};

TEST_F(Brackenmere, TheAnimalsOfTheProblemFilesAreTheseAnimals) {
  for (const Agreement& pair : {Agreement{"tenrecs", "tenrec-hedgehog.json"},
                                {"streaked-tenrecs", "tenrec-streaked.json"},
                                {"fennecs", "fox-fennec.json"},
                                {"lemurs", "lemur-no-fruit.json"},
                                {"squirrel-monkeys", "squirrel-monkeys.json"},
                                {"dragons", "dragon-calcium.json"}}) {
    const KnownGroup group = known(pair.group);
    const diet::Eater eater = exchange::readProblem(kSample / pair.problem).eater;
    EXPECT_EQ(group.group.record.name, eater.name);
    EXPECT_EQ(group.headcount, eater.count) << pair.group;
    EXPECT_NEAR(group.bodyMass->value(), eater.bodyMass->value(), 0.03 * eater.bodyMass->value())
        << pair.group;
  }
}

TEST(HerdImport, AFolderWithoutAnimalsIsRefusedInWords) {
  const OwnFolder folder;
  Collection collection = Collection::create(folder / "a.tarebowl", kKeeper);
  EXPECT_THROW(importHerd(collection, kSample / "larder", kKeeper), exchange::FormatError);
  EXPECT_TRUE(listSpecies(collection).empty());
}

}  // namespace
}  // namespace tarebowl::transfer
