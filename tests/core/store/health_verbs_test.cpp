// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/health_verbs.h"

#include "core/store/change_log.h"
#include "tests/core/store/herd.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using health::Analyte;
using health::BloodUnit;
using health::Observation;
using health::SignKind;
using testing::HasSubstr;

Observation seen(SignKind kind, const char* iso) {
  Observation observation;
  observation.individual = "a";
  observation.on = day(iso);
  observation.kind = kind;
  return observation;
}

Observation bled(health::BloodValue value) {
  Observation observation = seen(SignKind::Blood, "2026-11-20");
  observation.blood.push_back(value);
  return observation;
}

class HealthVerbs : public testing::Test {
 protected:
  Herd herd;
  Collection& collection = herd.collection;

  Written added(const Observation& observation, Confirmed confirmed = Confirmed::No) {
    return addObservation(collection, observation, confirmed, kKeeper);
  }
  std::string refused(const Observation& observation) {
    return refusal(collection, [&] { added(observation, Confirmed::Yes); });
  }
  [[nodiscard]] std::vector<StoredObservation> ofA() const {
    return observationsOfIndividual(collection, "a", day("2026-01-01"), day("2026-12-31"));
  }
};

TEST_F(HealthVerbs, AnObservationIsReadAsItWasWritten) {
  Observation faeces = seen(SignKind::Faeces, "2026-11-20");
  faeces.time = "08:07";
  faeces.faeces = health::scoreOn(*health::findFaecalScale("faeces-5-liquid-first"), 2);
  faeces.note = "soft";
  faeces.attachments = {{"pictures/2026-11-20.jpg", "stool"}};
  faeces.who = "Keeper A";
  Observation blood = bled({Analyte::TotalCalcium, 9.6, BloodUnit::MilligramPerDecilitre, 8.8, 11.0});
  blood.blood.push_back({Analyte::VitaminD25, 30.0, BloodUnit::NanogramPerMillilitre, {}, {}});
  Observation appetite = seen(SignKind::Appetite, "2026-11-21");
  appetite.appetite = health::Appetite::Poor;
  for (const Observation& observation : {faeces, blood, appetite}) added(observation);
  ASSERT_EQ(ofA().size(), 3U);
  EXPECT_EQ(ofA()[0].record, blood);  // of the same day, without a time
  EXPECT_EQ(ofA()[1].record, faeces);
  EXPECT_EQ(ofA()[2].record, appetite);
}

TEST_F(HealthVerbs, AnEditKeepsWhatWasThereInTheLogAndIsTakenBack) {
  Observation limp = seen(SignKind::Limping, "2026-11-20");
  const Written first = added(limp);
  limp.note = "left hind";
  limp.attachments = {{"gait.mp4", ""}};
  const Written edited =
      editObservation(collection, ObservationId{first.id}, 1, limp, Confirmed::No, kKeeper);
  EXPECT_EQ(ofA()[0].record, limp);
  undo(collection, edited.change, kKeeper);
  EXPECT_EQ(ofA()[0].record, seen(SignKind::Limping, "2026-11-20"));
  const Written removed = removeObservation(collection, ObservationId{first.id}, 3, kKeeper);
  EXPECT_TRUE(ofA().empty());
  undo(collection, removed.change, kKeeper);
  EXPECT_EQ(ofA().size(), 1U);
}

TEST_F(HealthVerbs, ASecondEditOfTheSameIsAConflict) {
  const Written first = added(seen(SignKind::Limping, "2026-11-20"));
  (void)editObservation(collection, ObservationId{first.id}, 1, seen(SignKind::Vomiting, "2026-11-20"),
                        Confirmed::No, kKeeper);
  EXPECT_THROW((void)editObservation(collection, ObservationId{first.id}, 1,
                                     seen(SignKind::Fracture, "2026-11-20"), Confirmed::No, kKeeper),
               ConflictError);
}

TEST_F(HealthVerbs, AScoreWithoutItsScaleIsRefused) {
  Observation faeces = seen(SignKind::Faeces, "2026-11-20");
  faeces.faeces = health::FaecalScore{.scale = "", .score = 2, .lowest = 1, .highest = 5, .ideal = 3};
  EXPECT_THAT(refused(faeces), HasSubstr("a faecal score needs its scale"));
  faeces.faeces->scale = "ours";
  faeces.faeces->score = 6;
  EXPECT_THAT(refused(faeces), HasSubstr("not on its scale"));
}

TEST_F(HealthVerbs, ASignBeforeTheAnimalArrivedIsRefused) {
  animal::Individual late = lemur("late");
  late.born.reset();
  late.stages.clear();
  late.arrived = day("2026-06-01");
  addIndividual(collection, late, kKeeper);
  Observation limp = seen(SignKind::Limping, "2026-05-31");
  limp.individual = "late";
  EXPECT_THAT(refused(limp), HasSubstr("late arrived on 2026-06-01: it was not here on 2026-05-31"));
  limp.on = day("2026-06-01");
  added(limp);
  EXPECT_THAT(refused(seen(SignKind::Limping, "2001-01-01")), HasSubstr("a "));
}

TEST_F(HealthVerbs, AGroupThatWasEmptyShowsNoSign) {
  animal::Group fresh = lemurGroup("fresh");
  fresh.counts.clear();
  addGroup(collection, fresh, kKeeper);
  addMembership(collection, {.group = "fresh", .individual = "a", .from = day("2026-03-01"), .until = {}},
                kKeeper);
  Observation soft = seen(SignKind::Vomiting, "2026-02-01");
  soft.individual.reset();
  soft.group = "fresh";
  EXPECT_THAT(refused(soft), HasSubstr("nobody was in the group fresh on 2026-02-01"));
  soft.on = day("2026-03-02");
  added(soft);
  EXPECT_EQ(observationsOfGroup(collection, "fresh", day("2026-03-02"), day("2026-03-02")).size(), 1U);
}

TEST_F(HealthVerbs, CalciumInTheOtherUnitIsAskedAboutAndKeptWhereItIsConfirmed) {
  const Observation slip = bled({Analyte::TotalCalcium, 9.6, BloodUnit::MillimolePerLitre, {}, {}});
  try {
    added(slip);
    FAIL() << "it was not asked about";
  } catch (const DoubtfulObservation& doubt) {
    EXPECT_THAT(doubt.what(), HasSubstr("calcium of 9.6 mmol/l would be ordinary in mg/dl"));
  }
  EXPECT_TRUE(ofA().empty());
  added(slip, Confirmed::Yes);
  EXPECT_EQ(ofA().size(), 1U);
}

TEST_F(HealthVerbs, ADayToComeIsAskedAbout) {
  EXPECT_THROW(added(seen(SignKind::Limping, "2026-12-24")), DoubtfulObservation);
}

TEST_F(HealthVerbs, AFileThatLeadsOutOfTheCollectionsFolderIsRefused) {
  Observation limp = seen(SignKind::Limping, "2026-11-20");
  limp.attachments = {{"../../secret.pdf", ""}};
  EXPECT_THAT(refused(limp), HasSubstr("does not lie in the collection's folder"));
}

TEST_F(HealthVerbs, WhatWasSeenKeepsItsAnimal) {
  animal::Individual other = lemur("seen");
  const Written there = addIndividual(collection, other, kKeeper);
  Observation limp = seen(SignKind::Limping, "2026-11-20");
  limp.individual = "seen";
  added(limp);
  EXPECT_THAT(refusal(collection, [&] { removeIndividual(collection, IndividualId{there.id}, 1, kKeeper); }),
              HasSubstr("what was observed is kept"));
}

TEST_F(HealthVerbs, ManyAreWrittenTogetherOrNotAtAll) {
  const std::vector<Observation> all{seen(SignKind::Limping, "2026-11-20"),
                                     seen(SignKind::Other, "2026-11-21")};
  EXPECT_THAT(refusal(collection, [&] { (void)addObservations(collection, all, kKeeper); }),
              HasSubstr("it says nothing"));
  EXPECT_TRUE(ofA().empty());
}

}  // namespace
}  // namespace tarebowl::store
