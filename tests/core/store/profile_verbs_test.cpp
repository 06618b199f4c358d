// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/profile_verbs.h"

#include "core/store/change_log.h"
#include "core/store/profile_lineage.h"
#include "tests/core/store/herd.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using animal::ProfileReference;
using testing::HasSubstr;

std::optional<ProfileRecord> recordOf(const std::optional<StoredProfile>& stored) {
  return stored ? std::optional(stored->record) : std::nullopt;
}

class ProfileVerbs : public testing::Test {
 protected:
  Herd herd;
  Collection& collection = herd.collection;

  ProfileId added(const animal::TargetProfile& profile) {
    return ProfileId{addProfile(collection, profile, kKeeper).id};
  }
  ProfileId derived(const std::string& code, const ProfileReference& parent) {
    animal::TargetProfile profile = bareProfile(code);
    profile.parent = parent;
    return added(profile);
  }
  Written inForce(ProfileId id, const char* from) {
    return putInForce(collection, id, stored(id).revision, day(from), "approved", kKeeper);
  }
  [[nodiscard]] StoredProfile stored(ProfileId id) const { return findProfile(collection, id).value(); }
};

TEST_F(ProfileVerbs, AProfileIsReadWithEverythingItStates) {
  const ProfileId id = added(primateProfile());
  EXPECT_EQ(stored(id).record.profile, primateProfile());
  EXPECT_EQ(findProfile(collection, ProfileReference{"primates", 1})->id, id);
  animal::TargetProfile lemurs = bareProfile("lemurs");
  lemurs.parent = ProfileReference{"primates", 1};
  lemurs.dropped = {{"browse", "no browse in winter"}};
  EXPECT_EQ(stored(added(lemurs)).record.profile, lemurs);
  ASSERT_EQ(childrenOfProfile(collection, {"primates", 1}).size(), 1U);
  EXPECT_EQ(childrenOfProfile(collection, {"primates", 1})[0].record.profile.code, "lemurs");
  EXPECT_EQ(profileLookup(collection)({"lemurs", 1}), lemurs);
  EXPECT_FALSE(profileLookup(collection)({"lemurs", 2}));
}

TEST_F(ProfileVerbs, AVersionInForceNeverChangesAndTheNextOneIsMadeFromIt) {
  const ProfileId first = added(primateProfile());
  inForce(first, "2026-11-01");
  EXPECT_THAT(
      refusal(collection, [&] { editProfile(collection, first, 2, bareProfile("primates"), kKeeper); }),
      HasSubstr("never changes"));
  EXPECT_THAT(refusal(collection, [&] { removeProfile(collection, first, 2, kKeeper); }),
              HasSubstr("never changes"));
  const ProfileId second{draftNextVersion(collection, first, kKeeper).id};
  animal::TargetProfile next = primateProfile();
  next.version = 2;
  EXPECT_EQ(stored(second).record.profile, next);
  EXPECT_THAT(refusal(collection, [&] { draftNextVersion(collection, first, kKeeper); }),
              HasSubstr("version 2 of primates is still a draft"));
  next.targets.pop_back();
  editProfile(collection, second, 1, next, kKeeper);
  EXPECT_EQ(stored(second).record.profile, next);
  EXPECT_EQ(stored(first).record.profile, primateProfile());
}

TEST_F(ProfileVerbs, OnEachDayTheVersionHoldsThatWasInForceThen) {
  const ProfileId first = added(primateProfile());
  EXPECT_FALSE(profileInForce(collection, "primates", day("2026-11-25")));
  inForce(first, "2026-11-01");
  const ProfileId second{draftNextVersion(collection, first, kKeeper).id};
  inForce(second, "2026-12-01");
  const auto heldOn = [&](const char* iso) {
    const auto found = profileInForce(collection, "primates", day(iso));
    const auto inLineage =
        ProfileLineage(collection, "primates").inForce(day(iso));  // the same, read at once
    EXPECT_EQ(recordOf(found), recordOf(inLineage)) << iso;
    return found ? found->record.profile.version : 0;
  };
  EXPECT_EQ(heldOn("2026-10-31"), 0);
  EXPECT_EQ(heldOn("2026-11-01"), 1);
  EXPECT_EQ(heldOn("2026-11-30"), 1);
  EXPECT_EQ(heldOn("2026-12-01"), 2);
  retireProfile(collection, second, 2, day("2027-03-01"), "no primates any more", kKeeper);
  EXPECT_EQ(heldOn("2027-02-28"), 2);
  EXPECT_EQ(heldOn("2027-03-01"), 0);  // the one before it does not come back
  const auto versions = versionsOfProfile(collection, "primates");
  const auto state = [&](std::size_t i, const char* iso) {
    return stateOn(versions.at(i).record, versions, day(iso));
  };
  EXPECT_EQ(state(0, "2026-11-30"), ProfileState::InForce);
  EXPECT_EQ(state(1, "2026-11-30"), ProfileState::Planned);
  EXPECT_EQ(state(0, "2026-12-01"), ProfileState::Superseded);
  EXPECT_EQ(state(1, "2027-03-01"), ProfileState::Retired);
}

TEST_F(ProfileVerbs, WhoWhenAndWhyStayWithAVersion) {
  const ProfileId id = added(primateProfile());
  EXPECT_THAT(refusal(collection, [&] { putInForce(collection, id, 1, day("2026-11-01"), "", kKeeper); }),
              HasSubstr("say why primates 1"));
  const Written put = inForce(id, "2026-11-01");
  ASSERT_EQ(stored(id).record.steps.size(), 1U);
  EXPECT_EQ(stored(id).record.steps[0],
            (ProfileStep{ProfileStepKind::PutInForce, day("2026-11-01"), "Keeper A", kNow, "approved"}));
  EXPECT_EQ(findChange(collection, put.change)->verb, "put target profile in force");
  EXPECT_THAT(refusal(collection, [&] { inForce(id, "2026-11-02"); }), HasSubstr("put in force once"));
  EXPECT_THAT(
      refusal(collection, [&] { retireProfile(collection, id, 2, day("2026-10-01"), "old", kKeeper); }),
      HasSubstr("before it is in force"));
  undo(collection, put.change, kKeeper);
  EXPECT_TRUE(stored(id).record.steps.empty());
}

TEST_F(ProfileVerbs, AVersionNeverTakesThePlaceOfALaterOne) {
  const ProfileId first = added(primateProfile());
  inForce(first, "2026-11-01");
  const ProfileId second{draftNextVersion(collection, first, kKeeper).id};
  EXPECT_THAT(refusal(collection, [&] { inForce(second, "2026-10-01"); }),
              HasSubstr("version 1 is in force from 2026-11-01"));
}

TEST_F(ProfileVerbs, CircularParentsAreRefusedWithTheChain) {
  const ProfileId first = added(primateProfile());
  const ProfileId lemurs = derived("lemurs", {"primates", 1});
  derived("old-lemurs", {"lemurs", 1});
  animal::TargetProfile circular = primateProfile();
  circular.parent = ProfileReference{"old-lemurs", 1};
  EXPECT_THAT(refusal(collection, [&] { editProfile(collection, first, 1, circular, kKeeper); }),
              HasSubstr("primates 1 → old-lemurs 1 → lemurs 1 → primates 1"));
  animal::TargetProfile nowhere = bareProfile("lemurs");
  nowhere.parent = ProfileReference{"nowhere", 3};
  EXPECT_THAT(refusal(collection, [&] { editProfile(collection, lemurs, 1, nowhere, kKeeper); }),
              HasSubstr("there is no target profile nowhere 3"));
}

TEST_F(ProfileVerbs, WhatIsInForceRestsOnNothingThatCanChange) {
  const ProfileId parent = added(primateProfile());
  const ProfileId child = derived("lemurs", {"primates", 1});
  EXPECT_THAT(refusal(collection, [&] { inForce(child, "2026-11-01"); }),
              HasSubstr("primates 1, which it takes over from, is a draft"));
  const Written put = inForce(parent, "2026-11-01");
  inForce(child, "2026-11-01");
  EXPECT_THAT(refusal(collection, [&] { undo(collection, put.change, kKeeper); }),
              HasSubstr("lemurs 1 takes over from primates 1"));
}

TEST_F(ProfileVerbs, AProfileInUseIsNotRemoved) {
  const ProfileId parent = added(primateProfile());
  const ProfileId child = derived("lemurs", {"primates", 1});
  EXPECT_THAT(refusal(collection, [&] { removeProfile(collection, parent, 1, kKeeper); }),
              HasSubstr("another profile takes over from primates 1"));
  animal::Group group = lemurGroup("family");
  group.profile = "lemurs";
  editGroup(collection, findGroup(collection, "family")->id, 1, group, kKeeper);
  EXPECT_THAT(refusal(collection, [&] { removeProfile(collection, child, 1, kKeeper); }),
              HasSubstr("a group is fed by lemurs"));
}

TEST_F(ProfileVerbs, OfTwoPeopleWhoEditOneDraftTheSecondIsToldOfTheFirst) {
  const ProfileId id = added(primateProfile());
  Collection there = Collection::open(collection.file(), kNow);
  animal::TargetProfile theirs = primateProfile();
  theirs.targets[0].target.min = 6;
  editProfile(there, id, 1, theirs, {"Vet", kNow});
  animal::TargetProfile mine = primateProfile();
  mine.targets[0].target.min = 7;
  try {
    editProfile(collection, id, 1, mine, {"Nutritionist", kNow});
    FAIL() << "a lost update";
  } catch (const ConflictError& conflict) {
    EXPECT_THAT(conflict.what(), HasSubstr("the target profile primates 1 was changed elsewhere"));
    EXPECT_THAT(conflict.theirs(), HasSubstr("\"least\":6.0"));
    EXPECT_THAT(conflict.mine(), HasSubstr("\"least\":7.0"));
  }
  EXPECT_EQ(stored(id).record.profile, theirs);
}

TEST_F(ProfileVerbs, AStarterIsAdoptedOnceAndNeverEdited) {
  animal::TargetProfile starter = primateProfile();
  starter.starter = true;
  const Written adopted = adoptStarter(collection, starter, kKeeper);
  const Written again = adoptStarter(collection, starter, kKeeper);
  EXPECT_EQ(again.id, adopted.id);
  EXPECT_EQ(again.change, 0);
  EXPECT_EQ(listProfiles(collection).size(), 1U);
  const ProfileId id{adopted.id};
  EXPECT_THAT(refusal(collection, [&] { draftNextVersion(collection, id, kKeeper); }),
              HasSubstr("derive a profile of the house from it"));
  inForce(derived("lemurs", {"primates", 1}), "2026-11-25");
  starter.targets.pop_back();  // a later program states it otherwise
  EXPECT_EQ(findProfile(collection, ProfileId{adoptStarter(collection, starter, kKeeper).id})
                ->record.profile.version,
            2);
  EXPECT_EQ(stored(id).record.profile.targets, primateProfile().targets);
  EXPECT_THAT(refusal(collection, [&] { adoptStarter(collection, bareProfile("mine"), kKeeper); }),
              HasSubstr("is no starter"));
  starter.code = "others";
  EXPECT_THAT(refusal(collection, [&] { addProfile(collection, starter, kKeeper); }),
              HasSubstr("adopt it or derive from it"));
}

TEST_F(ProfileVerbs, WhatIsNoSoundProfileIsRefusedInWords) {
  const auto attempt = [&](const std::function<void(animal::TargetProfile&)>& spoil) {
    animal::TargetProfile profile = primateProfile();
    spoil(profile);
    return refusal(collection, [&] { addProfile(collection, profile, kKeeper); });
  };
  EXPECT_THAT(attempt([](auto& p) { p.name.clear(); }), HasSubstr("needs a name"));
  EXPECT_THAT(attempt([](auto& p) { p.targets[0].target.min = 13; }),
              HasSubstr("ca has a minimum above its maximum"));
  EXPECT_THAT(attempt([](auto& p) { p.targets[0].preferred = 13; }), HasSubstr("prefers a value outside"));
  EXPECT_THAT(attempt([](auto& p) { p.ratios[0].target.id = "ca"; }), HasSubstr("ca is stated twice"));
  EXPECT_THAT(attempt([](auto& p) { p.targets[1].lifted->reason.clear(); }), HasSubstr("needs a reason"));
  EXPECT_THAT(attempt([](auto& p) { p.shares[0].min = 1.5; }), HasSubstr("a share from 0 to 1"));
  EXPECT_THAT(attempt([](auto& p) { p.choices[0].atMost = 0; }), HasSubstr("must run from 0 or more foods"));
  EXPECT_THAT(attempt([](auto& p) { p.targets[0].target.weight = -1; }), HasSubstr("weight of 0 or more"));
  EXPECT_THAT(attempt([](auto& p) { p.kcalPerGramDryMatter = 0; }), HasSubstr("above 0 kcal"));
  EXPECT_THAT(attempt([](auto& p) { p.dryMatterFraction = 1.1; }), HasSubstr("at most 1"));
}

TEST_F(ProfileVerbs, TargetsThatCannotHoldTogetherAreNoReasonToRefuseThem) {
  animal::TargetProfile profile = primateProfile();
  profile.targets.push_back(profile.targets[0]);
  profile.targets.back().target.id = "ca-again";
  profile.targets.back().target.min = 20;  // above the other's max: the conflict finder says so
  profile.targets.back().target.max.reset();
  profile.targets.back().preferred.reset();
  EXPECT_EQ(stored(added(profile)).record.profile, profile);
}

class EnergyPlans : public ProfileVerbs {};

TEST_F(EnergyPlans, EachHoldsFromItsDayUntilTheNext) {
  EnergyPlanRecord plan{.group = "family", .from = day("2026-01-01"), .note = "indoors"};
  plan.plan.group = "placental mammals";
  plan.plan.factors = {{animal::EnergyFactor::Kind::Maintenance,
                        "maintenance",
                        1.5,
                        2.0,
                        animal::EnergyLevel::Resting,
                        {"common practice", animal::Provenance::FromMemory, ""}},
                       {animal::EnergyFactor::Kind::Season, "winter", 1.1, 1.1, {}, {}}};
  plan.plan.validity = "adults";
  plan.plan.lightest = quantity::Kilograms(2);
  plan.plan.heaviest = quantity::Kilograms(45);
  plan.plan.followsTemperature = true;
  const Written winter = addEnergyPlan(collection, plan, kKeeper);
  EnergyPlanRecord summer = plan;
  summer.from = day("2026-05-01");
  summer.plan.factors.pop_back();
  const Written second = addEnergyPlan(collection, summer, kKeeper);
  EXPECT_FALSE(energyPlanOn(collection, "family", day("2025-12-31")));
  EXPECT_EQ(energyPlanOn(collection, "family", day("2026-04-30"))->record, plan);
  EXPECT_EQ(energyPlanOn(collection, "family", day("2026-05-01"))->record, summer);
  EXPECT_THAT(refusal(collection, [&] { addEnergyPlan(collection, plan, kKeeper); }),
              HasSubstr("family has an energy plan from 2026-01-01 already"));
  plan.plan.exponent = 0.0;
  EXPECT_THAT(
      refusal(collection, [&] { editEnergyPlan(collection, EnergyPlanId{winter.id}, 1, plan, kKeeper); }),
      HasSubstr("above 0 and at most 1.5"));
  const Written removed = removeEnergyPlan(collection, EnergyPlanId{second.id}, 1, kKeeper);
  EXPECT_EQ(energyPlansOf(collection, "family").size(), 1U);
  undo(collection, removed.change, kKeeper);
  EXPECT_EQ(energyPlansOf(collection, "family").at(1).record, summer);
}

class HouseCautions : public ProfileVerbs {};

TEST_F(HouseCautions, AreReadAsTheyWereWrittenAndUndo) {
  const animal::FoodCaution caution{.id = "house-seed",
                                    .words = {"seed mix", "sunflower"},
                                    .groups = {"seed"},
                                    .forms = {"raw"},
                                    .taxa = {"lemur"},
                                    .severity = animal::CautionSeverity::Limit,
                                    .reason = "they pick the fat ones",
                                    .advice = "a few, by hand",
                                    .origin = {"the house", animal::Provenance::HouseRule, ""}};
  const Written written = addHouseCaution(collection, caution, kKeeper);
  EXPECT_EQ(listHouseCautions(collection).at(0).record, caution);
  animal::FoodCaution graver = caution;
  graver.severity = animal::CautionSeverity::Never;
  graver.forms.clear();
  const Written edited = editHouseCaution(collection, HouseCautionId{written.id}, 1, graver, kKeeper);
  EXPECT_EQ(listHouseCautions(collection).at(0).record, graver);
  undo(collection, edited.change, kKeeper);
  EXPECT_EQ(listHouseCautions(collection).at(0).record, caution);
  removeHouseCaution(collection, HouseCautionId{written.id}, 3, kKeeper);
  EXPECT_TRUE(listHouseCautions(collection).empty());
  animal::FoodCaution silent = caution;
  silent.reason.clear();
  EXPECT_THAT(refusal(collection, [&] { addHouseCaution(collection, silent, kKeeper); }),
              HasSubstr("needs a reason"));
}

}  // namespace
}  // namespace tarebowl::store
