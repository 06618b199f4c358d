// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/diet_verbs.h"

#include "core/store/change_log.h"
#include "tests/core/store/diets.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

namespace tarebowl::store {
namespace {

using diet::VersionState;
using quantity::Grams;
using testing::HasSubstr;

const Author kVet{"Vet", "2026-11-26T10:00:00Z"};

class DietVerbs : public testing::Test {
 protected:
  FedHerd herd;
  Collection& collection = herd.collection;

  VersionId drafted(const diet::DietVersion& version = fullVersion()) {
    return VersionId{addVersion(collection, "lemur-morning", version, kKeeper).id};
  }
  Written submit(VersionId id) { return submitVersion(collection, id, stored(id).revision, "", kKeeper); }
  Written approve(VersionId id, const char* from = "2026-12-01", int phaseInDays = 0) {
    return approveVersion(collection, id, stored(id).revision, decision(), {day(from), phaseInDays},
                          "balanced, tried for a week", kVet);
  }
  Written retire(VersionId id) {
    return retireVersion(collection, id, stored(id).revision, "another pellet", kVet);
  }
  VersionId approved(const char* from) {
    const VersionId id = drafted();
    submit(id);
    approve(id, from);
    return id;
  }
  /// Read with all diets of the day, or with those of its section, the same version is fed; 0: none.
  void expectFedAmongAll(const char* iso, int number) const {
    const std::string section = findGroup(collection, "family")->record.section;
    for (const auto& all :
         {everyDietFedOn(collection, day(iso)), everyDietFedOn(collection, day(iso), section)}) {
      const auto fed = all.find("lemur-morning");
      EXPECT_EQ(fed == all.end() ? 0 : fed->second.number, number) << iso;
    }
    EXPECT_TRUE(everyDietFedOn(collection, day(iso), "another section").empty());
  }
  [[nodiscard]] StoredVersion stored(VersionId id) const { return findVersion(collection, id).value(); }
  [[nodiscard]] diet::DietVersion version(VersionId id) const { return stored(id).record.version; }
};

TEST_F(DietVerbs, ADraftIsReadWithEverythingItSays) {
  const VersionId id = drafted();
  EXPECT_EQ(version(id), fullVersion());
  EXPECT_EQ(stored(id).record.diet, "lemur-morning");
  EXPECT_FALSE(stored(id).record.decided);
  EXPECT_EQ(findDiet(collection, "lemur-morning")->record, morningBowl());
}

TEST_F(DietVerbs, VersionsCountFromOneAndMoreThanOneDraftMayBeThere) {
  const VersionId first = drafted();
  diet::DietVersion next = fullVersion();
  next.madeFrom = 1;
  next.number = 17;
  next.state = VersionState::Approved;
  next.fedFrom = day("2026-01-01");
  const VersionId second = drafted(next);
  EXPECT_EQ(version(first).number, 1);
  EXPECT_EQ(version(second).number, 2);
  EXPECT_EQ(version(second).madeFrom, 1);
  EXPECT_EQ(version(second).state, VersionState::Draft);
  EXPECT_FALSE(version(second).fedFrom);
  next.madeFrom = 9;
  EXPECT_THAT(refusal(collection, [&] { drafted(next); }), HasSubstr("no version 9 of lemur-morning"));
}

TEST_F(DietVerbs, AVersionIsSubmittedSentBackApprovedAndRetiredByNameAndForAReason) {
  const VersionId id = drafted();
  submit(id);
  sendBackVersion(collection, id, 2, "too much fruit", kVet);
  submit(id);
  approve(id, "2026-12-01", 7);
  EXPECT_EQ(version(id).fedFrom, day("2026-12-01"));
  EXPECT_EQ(version(id).phaseInDays, 7);
  EXPECT_EQ(stored(id).record.decided, decision());
  retire(id);
  const std::vector<diet::VersionStep> steps{
      {VersionState::Submitted, "Keeper A", kKeeper.at, ""},
      {VersionState::Draft, "Vet", kVet.at, "too much fruit"},
      {VersionState::Submitted, "Keeper A", kKeeper.at, ""},
      {VersionState::Approved, "Vet", kVet.at, "balanced, tried for a week"},
      {VersionState::Retired, "Vet", kVet.at, "another pellet"}};
  EXPECT_EQ(version(id).steps, steps);
  EXPECT_EQ(version(id).state, VersionState::Retired);
  EXPECT_EQ(stored(id).record.decided, decision());
}

TEST_F(DietVerbs, NoStepIsLeftOut) {
  const VersionId id = drafted();
  EXPECT_THAT(refusal(collection, [&] { approve(id); }), HasSubstr("is draft: it cannot become approved"));
  EXPECT_THAT(refusal(collection, [&] { retire(id); }), HasSubstr("cannot become retired"));
  submit(id);
  EXPECT_THAT(refusal(collection, [&] { submit(id); }), HasSubstr("cannot become submitted"));
  approve(id);
  EXPECT_THAT(refusal(collection, [&] { sendBackVersion(collection, id, 3, "no", kVet); }),
              HasSubstr("is approved: it cannot become draft"));
}

TEST_F(DietVerbs, ADecisionNeedsAReasonAndWhatWasDecidedOn) {
  const VersionId id = drafted();
  submit(id);
  EXPECT_THAT(refusal(collection, [&] { sendBackVersion(collection, id, 2, "", kVet); }),
              HasSubstr("say why version 1 of lemur-morning becomes draft"));
  EXPECT_THAT(refusal(collection,
                      [&] { approveVersion(collection, id, 2, decision(), {day("2026-12-01")}, "", kVet); }),
              HasSubstr("say why"));
  EXPECT_THAT(
      refusal(collection, [&] { approveVersion(collection, id, 2, {}, {day("2026-12-01")}, "good", kVet); }),
      HasSubstr("needs what was decided on"));
  EXPECT_THAT(refusal(collection,
                      [&] {
                        approveVersion(collection, id, 2, decision(), {day("2026-12-01"), -1}, "good", kVet);
                      }),
              HasSubstr("0 days or more"));
}

TEST_F(DietVerbs, OnlyADraftIsEdited) {
  const VersionId id = drafted();
  diet::DietVersion changed = fullVersion();
  changed.lines[0].amount = Grams(90);
  changed.number = 5;  // not read
  editVersion(collection, id, 1, changed, kKeeper);
  changed.number = 1;
  EXPECT_EQ(version(id), changed);
  submit(id);
  EXPECT_THAT(refusal(collection, [&] { editVersion(collection, id, 3, fullVersion(), kKeeper); }),
              HasSubstr("waits for a decision"));
  EXPECT_THAT(refusal(collection, [&] { removeVersion(collection, id, 3, kKeeper); }),
              HasSubstr("waits for a decision"));
  approve(id);
  EXPECT_THAT(refusal(collection, [&] { editVersion(collection, id, 4, fullVersion(), kKeeper); }),
              HasSubstr("never changes"));
  EXPECT_THAT(refusal(collection, [&] { removeVersion(collection, id, 4, kKeeper); }),
              HasSubstr("never changes"));
}

TEST_F(DietVerbs, AnApprovalIsNotTakenBackButARetirementIs) {
  const VersionId id = drafted();
  submit(id);
  const Written approval = approve(id);
  EXPECT_THAT(refusal(collection, [&] { undo(collection, approval.change, kVet); }),
              HasSubstr("is approved and never changes"));
  const Written retirement = retire(id);
  undo(collection, retirement.change, kVet);
  EXPECT_EQ(version(id).state, VersionState::Approved);
  EXPECT_EQ(stored(id).record.decided, decision());
}

TEST_F(DietVerbs, WhatCannotBeJudgedStaysADraft) {
  diet::DietVersion unsound = fullVersion();
  unsound.lines[0].min = Grams(300);  // above its maximum of 200
  const VersionId id = drafted(unsound);
  EXPECT_THAT(refusal(collection, [&] { submit(id); }),
              HasSubstr("version 1 of lemur-morning: kale: its minimum is above its maximum"));
  diet::DietVersion empty = fullVersion();
  empty.lines.clear();
  empty.allowances.clear();
  const VersionId second = drafted(empty);
  EXPECT_THAT(refusal(collection, [&] { submit(second); }), HasSubstr("has nothing in it"));
  diet::DietVersion aimless = fullVersion();
  aimless.profile = {};
  const VersionId third = drafted(aimless);
  EXPECT_THAT(refusal(collection, [&] { submit(third); }), HasSubstr("names no targets"));
}

TEST_F(DietVerbs, ADraftToldWrongIsRefusedWithWhatIsWrong) {
  const auto refused = [&](auto change) {
    diet::DietVersion version = fullVersion();
    change(version);
    return refusal(collection, [&] { drafted(version); });
  };
  EXPECT_THAT(refused([](auto& v) {
                v.profile = {"nowhere", 2};
              }),
              HasSubstr("there is no target profile nowhere 2"));
  EXPECT_THAT(refused([](auto& v) { v.lines[0].amount = Grams(std::numeric_limits<double>::quiet_NaN()); }),
              HasSubstr("kale: its grams must be a number"));
  EXPECT_THAT(refused([](auto& v) { v.confidence = 0.5; }), HasSubstr("above 50 %"));
  EXPECT_THAT(refused([](auto& v) { v.shares[0].min = 30; }), HasSubstr("share from 0 to 1"));
  EXPECT_THAT(refused([](auto& v) { v.choices[0].atMost = 0; }), HasSubstr("leafy vegetable"));
  EXPECT_THAT(refusal(collection, [&] { addVersion(collection, "nowhere", fullVersion(), kKeeper); }),
              HasSubstr("there is no diet nowhere"));
}

TEST_F(DietVerbs, ApprovedIsOnlyWhatIsJudgedByTargetsThatCannotChange) {
  const Written profile = addProfile(collection, bareProfile("lemurs"), kKeeper);
  diet::DietVersion version = fullVersion();
  version.profile = {"lemurs", 1};
  const VersionId id = drafted(version);
  submit(id);
  EXPECT_THAT(refusal(collection, [&] { approve(id); }), HasSubstr("the targets lemurs 1 are a draft"));
  const Written put =
      putInForce(collection, ProfileId{profile.id}, 1, day("2026-01-01"), "approved", kKeeper);
  approve(id);
  EXPECT_THAT(refusal(collection, [&] { undo(collection, put.change, kKeeper); }),
              HasSubstr("an approved diet is judged by lemurs 1"));
}

TEST_F(DietVerbs, TwoEditorsOfOneDraftTheSecondIsRefusedWithBothVersions) {
  const VersionId id = drafted();
  diet::DietVersion theirs = fullVersion();
  theirs.lines[0].amount = Grams(90);
  editVersion(collection, id, 1, theirs, kKeeper);
  diet::DietVersion mine = fullVersion();
  mine.lines[0].amount = Grams(150);
  try {
    editVersion(collection, id, 1, mine, kVet);
    FAIL() << "nothing was refused";
  } catch (const ConflictError& error) {
    EXPECT_THAT(error.what(), HasSubstr("version 1 of lemur-morning"));
    EXPECT_THAT(error.mine(), HasSubstr(R"("grams":150.0)"));
    EXPECT_THAT(error.theirs(), HasSubstr(R"("grams":90.0)"));
  }
  EXPECT_EQ(version(id), theirs);
}

TEST_F(DietVerbs, AnEditThatComesAfterTheRemovalIsToldSo) {
  const VersionId id = drafted();
  removeVersion(collection, id, 1, kKeeper);
  EXPECT_EQ(codeOf([&] { editVersion(collection, id, 1, fullVersion(), kVet); }), StoreErrorCode::Conflict);
}

TEST_F(DietVerbs, EditsAndRemovalsAreTakenBackAndRedone) {
  const VersionId id = drafted();
  diet::DietVersion changed = fullVersion();
  changed.lines.pop_back();
  const Written edit = editVersion(collection, id, 1, changed, kKeeper);
  const Written undone = undo(collection, edit.change, kKeeper);
  EXPECT_EQ(version(id), fullVersion());
  const Written redone = undo(collection, undone.change, kKeeper);
  EXPECT_EQ(version(id), changed);
  const Written removal = removeVersion(collection, id, redone.revision, kKeeper);
  EXPECT_FALSE(findVersion(collection, id));
  undo(collection, removal.change, kKeeper);
  EXPECT_EQ(version(id), changed);
}

TEST_F(DietVerbs, ADietWithVersionsAndAGroupWithDietsStay) {
  const VersionId id = drafted();
  const StoredDiet diet = findDiet(collection, "lemur-morning").value();
  EXPECT_THAT(refusal(collection, [&] { removeDiet(collection, diet.id, 1, kKeeper); }),
              HasSubstr("lemur-morning has versions"));
  EXPECT_THAT(
      refusal(collection, [&] { removeGroup(collection, findGroup(collection, "family")->id, 1, kKeeper); }),
      HasSubstr("family has a diet"));
  removeVersion(collection, id, 1, kKeeper);
  removeDiet(collection, diet.id, 1, kKeeper);
  EXPECT_FALSE(findDiet(collection, "lemur-morning"));
  EXPECT_THAT(refusal(collection,
                      [&] { addDiet(collection, {.code = "x", .name = "X", .group = "nobody"}, kKeeper); }),
              HasSubstr("there is no group nobody"));
}

TEST_F(DietVerbs, RenamedGroupsAndDietsTakeWhatIsTheirsAlong) {
  const VersionId id = drafted();
  animal::Group group = findGroup(collection, "family")->record;
  group.code = "lemurs-main";
  editGroup(collection, findGroup(collection, "family")->id, 1, group, kKeeper);
  diet::NamedDiet diet = findDiet(collection, "lemur-morning")->record;
  EXPECT_EQ(diet.group, "lemurs-main");
  diet.code = "lemurs-early";
  editDiet(collection, findDiet(collection, "lemur-morning")->id, 1, diet, kKeeper);
  EXPECT_EQ(stored(id).record.diet, "lemurs-early");
  EXPECT_EQ(versionsOfDiet(collection, "lemurs-early").size(), 1U);
}

TEST_F(DietVerbs, TargetsThatADietIsJudgedByStay) {
  addProfile(collection, bareProfile("lemurs"), kKeeper);
  diet::DietVersion version = fullVersion();
  version.profile = {"lemurs", 1};
  drafted(version);
  const auto profile = findProfile(collection, animal::ProfileReference{"lemurs", 1});
  EXPECT_THAT(refusal(collection, [&] { removeProfile(collection, profile->id, 1, kKeeper); }),
              HasSubstr("a diet is judged by lemurs 1"));
}

TEST_F(DietVerbs, OnEachDayTheVersionIsFedThatBeganLast) {
  const auto fed = [&](const char* iso) {
    const auto found = fedOn(collection, "lemur-morning", day(iso));
    const int number = found ? found->record.version.number : 0;
    expectFedAmongAll(iso, number);
    return number;
  };
  EXPECT_EQ(fed("2026-12-01"), 0);
  approved("2026-11-01");
  const VersionId second = approved("2026-11-20");
  EXPECT_EQ(fed("2026-10-31"), 0);
  EXPECT_EQ(fed("2026-11-19"), 1);
  EXPECT_EQ(fed("2026-11-20"), 2);
  approved("2026-11-20");  // the newer of two that began on one day
  EXPECT_EQ(fed("2026-11-20"), 3);
  retire(second);
  EXPECT_EQ(fed("2026-11-25"), 3);
}

TEST_F(DietVerbs, WhatWasRetiredWasFedUntilThen) {
  const VersionId id = approved("2026-11-01");
  retire(id);  // on 2026-11-26
  EXPECT_TRUE(fedOn(collection, "lemur-morning", day("2026-11-25")));
  EXPECT_FALSE(fedOn(collection, "lemur-morning", day("2026-11-26")));
  expectFedAmongAll("2026-11-25", 1);
  expectFedAmongAll("2026-11-26", 0);
}

TEST_F(DietVerbs, AnOlderVersionIsFedAgainWhenTheOneAfterItIsRetired) {
  approved("2026-11-01");
  retire(approved("2026-11-20"));  // on 2026-11-26
  EXPECT_EQ(fedOn(collection, "lemur-morning", day("2026-11-27"))->record.version.number, 1);
  expectFedAmongAll("2026-11-27", 1);
}

TEST_F(DietVerbs, AVersionComesInWithTheLifeItHadElsewhere) {
  VersionRecord elsewhere{.diet = "lemur-morning", .version = fullVersion(), .decided = decision()};
  elsewhere.version.number = 4;
  elsewhere.version.state = VersionState::Approved;
  elsewhere.version.fedFrom = day("2026-11-01");
  elsewhere.version.steps = {{VersionState::Submitted, "Someone", "2026-10-20T08:00:00Z", ""},
                             {VersionState::Approved, "Vet", "2026-10-25T08:00:00Z", "balanced"}};
  const Written written = importVersion(collection, elsewhere, kKeeper);
  EXPECT_EQ(stored(VersionId{written.id}).record, elsewhere);
  EXPECT_EQ(findChange(collection, written.change)->author.who, "Keeper A");
  EXPECT_THAT(refusal(collection, [&] { importVersion(collection, elsewhere, kKeeper); }),
              HasSubstr("there is another version 4 of lemur-morning"));
  elsewhere.version.number = 5;
  elsewhere.version.steps.pop_back();
  EXPECT_THAT(refusal(collection, [&] { importVersion(collection, elsewhere, kKeeper); }),
              HasSubstr("is said to be approved, and its steps led to submitted"));
}

TEST_F(DietVerbs, TheListTellsStatesWithoutWhatIsInAVersion) {
  const VersionId first = approved("2026-11-01");
  const VersionId second = drafted();
  const auto lines = listVersions(collection);
  ASSERT_EQ(lines.size(), 2U);
  EXPECT_EQ(lines[0].id, first);
  EXPECT_EQ(lines[0].state, VersionState::Approved);
  EXPECT_EQ(lines[0].fedFrom, day("2026-11-01"));
  EXPECT_EQ(lines[1].id, second);
  EXPECT_EQ(lines[1].number, 2);
  EXPECT_FALSE(lines[1].fedFrom);
  EXPECT_EQ(lines[1].diet, "lemur-morning");
}

TEST_F(DietVerbs, DietsAreListedByGroupAndName) {
  addDiet(collection, {.code = "a", .name = "Zebra grass", .group = "family"}, kKeeper);
  addDiet(collection, {.code = "b", .name = "Treats", .group = "pair"}, kKeeper);
  std::vector<std::string> codes;
  for (const StoredDiet& diet : listDiets(collection)) codes.push_back(diet.record.code);
  EXPECT_THAT(codes, testing::ElementsAre("lemur-morning", "a", "b"));
}

}  // namespace
}  // namespace tarebowl::store
