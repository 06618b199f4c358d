// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/sample_import.h"

#include "core/diet/rotation_check.h"
#include "core/exchange/problem_json.h"
#include "core/store/verbs.h"
#include "core/transfer/desk_diet.h"
#include "core/transfer/rotation_desk.h"
#include "tests/core/transfer/brackenmere.h"
#include "tests/source_dir.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>

namespace tarebowl::transfer {
namespace {

using namespace tarebowl::store;
using diet::VersionState;
using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;

/// The whole sample, read in once for all tests of a process.
class SampleDiets : public testing::Test {
 protected:
  static const Collection& collection() {
    static const OwnSample sample;
    return sample.collection;
  }
  static std::vector<std::string> groupsWith(VersionState state) {
    std::vector<std::string> groups;
    for (const VersionLine& line : listVersions(collection()))
      if (line.state == state) groups.push_back(findDiet(collection(), line.diet)->record.group);
    return groups;
  }
};

TEST_F(SampleDiets, EveryGroupHasADietButTheOneThatIsStillToBeDesigned) {
  std::vector<std::string> fed;
  for (const StoredDiet& diet : listDiets(collection())) {
    fed.push_back(diet.record.group);
    EXPECT_TRUE(diet.record.invented) << diet.record.code;
  }
  for (const StoredGroup& group : listGroups(collection()))
    EXPECT_EQ(std::ranges::count(fed, group.record.code), group.record.code == "streaked-tenrecs" ? 0 : 1)
        << group.record.code;
}

TEST_F(SampleDiets, AllStatesOfAVersionAreThere) {
  EXPECT_THAT(groupsWith(VersionState::Approved),
              testing::IsSupersetOf({"tenrecs", "bats", "lemurs", "squirrel-monkeys", "dragons", "fennecs"}));
  EXPECT_THAT(groupsWith(VersionState::Draft), testing::IsSupersetOf({"tenrecs", "fennecs"}));
  EXPECT_THAT(groupsWith(VersionState::Submitted), Contains("lemurs"));
  EXPECT_THAT(groupsWith(VersionState::Retired), Contains("fennecs"));
}

TEST_F(SampleDiets, TheVersionFedOnADayIsThatOfItsTime) {
  const auto fed = [&](const char* iso) {
    return fedOn(collection(), "fennec-evening", quantity::parseDate(iso).value())->record.version.number;
  };
  EXPECT_EQ(fed("2026-09-30"), 1);
  EXPECT_EQ(fed("2026-10-05"), 2);
}

TEST_F(SampleDiets, NothingOfWhatWasDecidedHasChangedSince) {
  for (const VersionLine& line : listVersions(collection())) {
    const DeskDiet desk = readDesk(collection(), line.id, kSampleDay).value();
    EXPECT_THAT(desk.made.missingFoods, IsEmpty()) << desk.context.title;
    EXPECT_THAT(desk.made.boundsOfNoRule, IsEmpty()) << desk.context.title;
    EXPECT_THAT(desk.foodsChanged, IsEmpty()) << desk.context.title;
    EXPECT_FALSE(desk.newerProfile) << desk.context.title;
    EXPECT_FALSE(desk.decisionUnreadable) << desk.context.title;
    EXPECT_TRUE(desk.made.problem.invented);
  }
}

/// What was fed before it was looked at may miss what it likes; what is fed now gives the solver's own grams.
TEST_F(SampleDiets, WhatIsApprovedIsWhatTheSolverFindsOfWhatWasDecidedOn) {
  for (const VersionLine& line : listVersions(collection())) {
    if (line.state != VersionState::Approved) continue;
    const StoredVersion stored = findVersion(collection(), line.id).value();
    const diet::BalanceProblem problem = exchange::parseProblem(stored.record.decided->problem, "decided");
    diet::DietSolution solution = diet::solve(problem);
    solution.solveTime = {};
    EXPECT_EQ(exchange::writeResult(problem, solution), stored.record.decided->result) << line.diet;
    EXPECT_TRUE(solution.status == diet::DietStatus::Balanced || line.diet == "dragon-daily" ||
                line.diet == "fennec-evening")
        << line.diet;
  }
}

TEST_F(SampleDiets, AFortnightOfTheMonkeysIsPlannedAndKeepsItsRules) {
  OwnSample own;
  const auto listed = rotationsOfDiet(own.collection, "monkey-daily");
  ASSERT_EQ(listed.size(), 1U);
  const RotationOnDesk rotation = readRotation(own.collection, listed[0].id, kSampleDay).value();
  const diet::RotationPlan plan = planOf(rotation);
  EXPECT_EQ(plan.days.size(), 14U);
  EXPECT_EQ(diet::brokenRotationRule(rotation.desk.problem, plan), std::nullopt);
  EXPECT_TRUE(rotation.desk.problem.base.invented);
  EXPECT_NEAR(plan.periodBalance.shortfall, listed[0].record.period.value, 1e-9);
  EXPECT_TRUE(listed[0].record.isBalanced());
}

TEST_F(SampleDiets, WhatHappenedSinceIsTold) {
  OwnSample own;
  const StoredVersion lemurs = fedOn(own.collection, "lemur-daily", kSampleDay).value();
  const StoredFood pellet = findFood(own.collection, "leaf-eater-pellet").value();
  for (const StoredSample& sample : samplesOf(own.collection, pellet.id))
    if (sample.sample.sourceCode == "B-2026-041")
      excludeSample(own.collection, sample.id, sample.revision, "another batch", kKeeper);
  const StoredProfile profile =
      findProfile(own.collection, animal::ProfileReference{"brackenmere-ruffed-lemur", 1}).value();
  const ProfileId next{draftNextVersion(own.collection, profile.id, kKeeper).id};
  putInForce(own.collection, next, 1, quantity::parseDate("2026-11-24").value(), "reviewed", kKeeper);
  const DeskDiet desk = readDesk(own.collection, lemurs.id, kSampleDay).value();
  EXPECT_THAT(desk.foodsChanged, testing::ElementsAre(HasSubstr("Low-iron pellet")));
  EXPECT_EQ(desk.newerProfile, (animal::ProfileReference{"brackenmere-ruffed-lemur", 2}));
  EXPECT_EQ(desk.context.profile.profile.version, 1);
  EXPECT_EQ(desk.version.record.decided, lemurs.record.decided);
  EXPECT_EQ(desk.context.title, "Red ruffed lemurs (family of five), daily total, version 1");
  EXPECT_FALSE(readDesk(own.collection, VersionId{999}, kSampleDay));
}

/// Whoever opens the sample on a disk that breaks off must not be left with half a zoo.
TEST(SampleImport, WhereOneFileIsWrongNothingIsTakenIn) {
  const OwnFolder folder;
  const auto copy = folder / "sample-data";
  std::filesystem::copy(TAREBOWL_SOURCE_DIR "/sample-data", copy, std::filesystem::copy_options::recursive);
  const auto lastRead = *std::filesystem::directory_iterator(copy / "rotations");
  std::ofstream(lastRead.path()) << "no rotation";
  Collection collection = Collection::create(folder / "brackenmere.tarebowl", kKeeper);
  EXPECT_THROW(importSample(collection, copy, kKeeper, FeedingDays::LeftOut), exchange::FormatError);
  EXPECT_THAT(listFoods(collection), IsEmpty());
  EXPECT_THAT(listGroups(collection), IsEmpty());
  EXPECT_THAT(listDiets(collection), IsEmpty());
}

}  // namespace
}  // namespace tarebowl::transfer
