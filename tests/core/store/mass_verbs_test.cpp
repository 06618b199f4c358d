// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/mass_verbs.h"

#include "tests/core/store/herd.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using testing::HasSubstr;

class MassVerbs : public testing::Test {
 protected:
  Herd herd;
  Collection& collection = herd.collection;

  Written added(const MassRecord& mass, Confirmed confirmed = Confirmed::No) {
    return addMass(collection, mass, confirmed, kKeeper);
  }
  [[nodiscard]] StoredMass first() const { return massesOfIndividual(collection, "a").at(0); }
  std::optional<animal::MassDoubt> doubtOf(const MassRecord& mass) {
    try {
      added(mass);
    } catch (const DoubtfulMass& doubtful) {
      return doubtful.doubt();
    }
    return std::nullopt;
  }
};

TEST_F(MassVerbs, AWeighingIsReadAsItWasWritten) {
  added(weighed("a", "2026-11-20", 3.52));
  EXPECT_EQ(first().record, weighed("a", "2026-11-20", 3.52));
  MassRecord mean = weighed("a", "2026-11-21", 3.4);
  mean.individual.reset();
  mean.group = "family";
  added(mean);
  EXPECT_EQ(massesOfGroup(collection, "family").at(0).record, mean);
  EXPECT_EQ(massesOfIndividual(collection, "a").size(), 1U);
}

TEST_F(MassVerbs, GramsTypedAsKilogramsAreAskedAboutAndNotRefused) {
  added(weighed("b", "2026-11-18", 3.4));
  added(weighed("b", "2026-11-19", 3.6));
  EXPECT_EQ(expectedMass(collection, "red-ruffed-lemur")->value(), 3.5);  // between 3.4 and 3.6
  EXPECT_EQ(doubtOf(weighed("a", "2026-11-20", 3500)), animal::MassDoubt::GramsAsKilograms);
  EXPECT_TRUE(massesOfIndividual(collection, "a").empty());
  added(weighed("a", "2026-11-20", 3500), Confirmed::Yes);
  EXPECT_EQ(first().record.reading.mass, quantity::Kilograms(3500));
}

TEST_F(MassVerbs, AWeighingOfADayToComeIsAskedAbout) {
  EXPECT_EQ(doubtOf(weighed("a", "2026-11-26", 3.5)), animal::MassDoubt::InTheFuture);  // the day is the 25th
}

TEST_F(MassVerbs, ACorrectionKeepsWhatWasWrittenFirst) {
  const Written written = added(weighed("a", "2026-11-20", 5.3));
  animal::MassReading right = weighed("a", "2026-11-20", 3.5).reading;
  const Written corrected =
      correctMass(collection, MassId{written.id}, 1, right, "digits swapped", Confirmed::Yes, kKeeper);
  right.on = day("2026-11-19");
  correctMass(collection, MassId{written.id}, 2, right, "a day early", Confirmed::Yes, kKeeper);
  EXPECT_EQ(first().record.reading, right);
  EXPECT_THAT(first().record.former,
              testing::ElementsAre(FormerEntry{day("2026-11-20"), quantity::Kilograms(5.3), "digits swapped"},
                                   FormerEntry{day("2026-11-20"), quantity::Kilograms(3.5), "a day early"}));
  EXPECT_EQ(codeOf([&] { undo(collection, corrected.change, kKeeper); }), StoreErrorCode::Conflict);
}

TEST_F(MassVerbs, CorrectingAndLeavingOutNeedAReasonAndUndo) {
  const Written written = added(weighed("a", "2026-11-20", 3.5));
  const MassId id{written.id};
  const animal::MassReading reading = weighed("a", "2026-11-20", 3.4).reading;
  EXPECT_THAT(
      refusal(collection, [&] { correctMass(collection, id, 1, reading, "", Confirmed::Yes, kKeeper); }),
      HasSubstr("needs a reason"));
  EXPECT_THAT(refusal(collection, [&] { excludeMass(collection, id, 1, "", kKeeper); }),
              HasSubstr("needs a reason"));
  const Written excluded = excludeMass(collection, id, 1, "wet", kKeeper);
  EXPECT_EQ(first().record.reading.excluded, "wet");
  EXPECT_FALSE(expectedMass(collection, "red-ruffed-lemur"));
  undo(collection, excluded.change, kKeeper);
  EXPECT_EQ(first().record, weighed("a", "2026-11-20", 3.5));
  excludeMass(collection, id, 3, "wet", kKeeper);
  includeMass(collection, id, 4, kKeeper);
  EXPECT_FALSE(first().record.reading.excluded);
  EXPECT_EQ(codeOf([&] { includeMass(collection, id, 1, kKeeper); }), StoreErrorCode::Conflict);
}

TEST_F(MassVerbs, WhatIsNoMassIsRefusedEvenWhenConfirmed) {
  const auto attempt = [&](const MassRecord& mass) {
    return refusal(collection, [&] { added(mass, Confirmed::Yes); });
  };
  EXPECT_THAT(attempt(weighed("a", "2026-11-20", 0.0)), HasSubstr("above 0 kg"));
  EXPECT_THAT(attempt(weighed("a", "2026-11-20", std::nan(""))), HasSubstr("above 0 kg"));
  EXPECT_THAT(attempt(weighed("nobody", "2026-11-20", 1.0)), HasSubstr("no animal nobody"));
  EXPECT_THAT(attempt(weighed("a", "2019-04-30", 1.0)), HasSubstr("a was not born before 2019-05-01"));
  MassRecord both = weighed("a", "2026-11-20", 1.0);
  both.group = "family";
  EXPECT_THAT(attempt(both), HasSubstr("of one animal or of one group"));
}

TEST_F(MassVerbs, AConditionScoreStandsOnItsScale) {
  const animal::ScoreScale& scale = animal::conditionScales().front();
  ConditionRecord record{.individual = "a"};
  record.reading = {.on = day("2026-11-20"),
                    .scale = std::string(scale.id),
                    .score = scale.ideal,
                    .note = "ribs felt, not seen"};
  const Written written = addCondition(collection, record, kKeeper);
  EXPECT_EQ(conditionsOfIndividual(collection, "a").at(0).record, record);
  record.reading.score = scale.highest + scale.step;
  EXPECT_THAT(
      refusal(collection, [&] { editCondition(collection, ConditionId{written.id}, 1, record, kKeeper); }),
      HasSubstr("does not reach so far"));
  const Written removed = removeCondition(collection, ConditionId{written.id}, 1, kKeeper);
  EXPECT_TRUE(conditionsOfIndividual(collection, "a").empty());
  undo(collection, removed.change, kKeeper);
  EXPECT_EQ(conditionsOfIndividual(collection, "a").at(0).record.reading.score, scale.ideal);
}

}  // namespace
}  // namespace tarebowl::store
