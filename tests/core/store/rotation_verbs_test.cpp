// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/rotation_verbs.h"

#include "core/store/change_log.h"
#include "core/store/opening.h"
#include "tests/core/store/diets.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

namespace tarebowl::store {
namespace {

using diet::KeptRotation;
using quantity::Grams;
using testing::HasSubstr;

/// A week with something in every field, signed as kKeeper signs.
KeptRotation week(const char* from = "2026-11-23", const char* until = "2026-11-29") {
  KeptRotation rotation;
  rotation.diet = "lemur-morning";
  rotation.version = 1;
  rotation.from = day(from);
  rotation.until = day(until);
  rotation.plannedFrom = day(from);
  rotation.rules = R"({"format": "tarebowl-rotation-rules/1"})";
  rotation.seed = 17;
  rotation.asEaten = true;
  rotation.period = {0.02, 0.01};
  rotation.daily = {0.3, 0.25};
  rotation.wishes = {1, 1};
  rotation.objective = {0.75, 0.5};
  rotation.who = kKeeper.who;
  rotation.at = kKeeper.at;
  rotation.note = "kale does not come on Thursday";
  rotation.cells = {
      {.day = 0, .food = "kale", .meal = "morning", .amount = Grams(120)},
      {.day = 3, .food = "kale", .meal = "morning", .amount = Grams(0), .locked = true},
      {.day = 6, .food = "pellet-a", .purpose = diet::Purpose::TrainingReward, .amount = Grams(30.5)}};
  return rotation;
}

class RotationVerbs : public testing::Test {
 protected:
  RotationVerbs() { addVersion(collection, "lemur-morning", fullVersion(), kKeeper); }
  FedHerd herd;
  Collection& collection = herd.collection;

  RotationId added(const KeptRotation& rotation = week()) {
    return RotationId{addRotation(collection, rotation, kKeeper).id};
  }
  [[nodiscard]] std::string refusalOf(const KeptRotation& rotation) {
    return refusal(collection, [&] { added(rotation); });
  }
};

TEST_F(RotationVerbs, ARotationIsReadWithEverythingItSays) {
  const RotationId id = added();
  EXPECT_EQ(findRotation(collection, id)->record, week());
  EXPECT_EQ(rotationsOfDiet(collection, "lemur-morning").at(0).record, week());
}

TEST_F(RotationVerbs, WhoMadeItIsTheAuthorWhateverItSays) {
  KeptRotation unsigned_ = week();
  unsigned_.who.clear();
  unsigned_.at.clear();
  EXPECT_EQ(findRotation(collection, added(unsigned_))->record, week());
}

TEST_F(RotationVerbs, NobodyNeedsToSayWhoTheyAre) {
  KeptRotation rotation = week();
  rotation.who.clear();
  const RotationId id{addRotation(collection, rotation, {"", kKeeper.at}).id};
  EXPECT_EQ(findRotation(collection, id)->record, rotation);
}

TEST_F(RotationVerbs, OneThatWasMadeElsewhereKeepsItsMaker) {
  KeptRotation theirs = week();
  theirs.who = "Nutritionist";
  const RotationId id{importRotation(collection, theirs, kKeeper).id};
  EXPECT_EQ(findRotation(collection, id)->record, theirs);
}

TEST_F(RotationVerbs, ADayHasTheRotationOfItsVersionThatHasTheDay) {
  added();
  added(week("2026-11-30", "2026-12-06"));
  for (const char* inside : {"2026-11-23", "2026-11-29"})
    EXPECT_EQ(rotationOn(collection, "lemur-morning", 1, day(inside))->record.from, day("2026-11-23"));
  EXPECT_EQ(rotationOn(collection, "lemur-morning", 1, day("2026-11-30"))->record.from, day("2026-11-30"));
  EXPECT_FALSE(rotationOn(collection, "lemur-morning", 1, day("2026-11-22")));
  EXPECT_FALSE(rotationOn(collection, "lemur-morning", 1, day("2026-12-07")));
  EXPECT_FALSE(rotationOn(collection, "lemur-morning", 2, day("2026-11-23")));
}

TEST_F(RotationVerbs, TwoRotationsOfAVersionShareNoDay) {
  const RotationId id = added();
  EXPECT_THAT(refusalOf(week("2026-11-29", "2026-12-05")),
              HasSubstr("lemur-morning has a rotation from 2026-11-23 to 2026-11-29"));
  addVersion(collection, "lemur-morning", fullVersion(), kKeeper);
  KeptRotation ofAnother = week();
  ofAnother.version = 2;
  added(ofAnother);  // another version may be planned for days of this one
  KeptRotation longer = week("2026-11-23", "2026-12-06");
  editRotation(collection, id, 1, longer, kKeeper);
  EXPECT_EQ(findRotation(collection, id)->record, longer);
}

TEST_F(RotationVerbs, AnUnsoundRotationIsRefusedInWords) {
  const auto changed = [](auto&& change) {
    KeptRotation rotation = week();
    change(rotation);
    return rotation;
  };
  const auto refused = [&](auto&& change) { return refusalOf(changed(change)); };
  EXPECT_THAT(refused([](auto& r) { r.until = day("2026-11-22"); }), HasSubstr("last day is before"));
  EXPECT_THAT(refused([](auto& r) { r.plannedFrom = day("2026-12-01"); }), HasSubstr("none of its days"));
  EXPECT_THAT(refused([](auto& r) { r.rules.clear(); }), HasSubstr("no rules"));
  EXPECT_THAT(refused([](auto& r) { r.cells[0].day = 7; }), HasSubstr("none of its days"));
  EXPECT_THAT(refused([](auto& r) { r.cells[0].food.clear(); }), HasSubstr("names no food"));
  EXPECT_THAT(refused([](auto& r) { r.cells[0].amount = Grams(-1); }), HasSubstr("0 or more"));
  EXPECT_THAT(refused([](auto& r) { r.cells[1].day = 0; }), HasSubstr("twice on one day"));
  EXPECT_THAT(refused([](auto& r) { r.objective.bound = std::numeric_limits<double>::infinity(); }),
              HasSubstr("must be numbers"));
  EXPECT_THAT(refused([](auto& r) { r.version = 9; }), HasSubstr("no version 9 of lemur-morning"));
  EXPECT_TRUE(rotationsOfDiet(collection, "lemur-morning").empty());
}

TEST_F(RotationVerbs, PlannedAgainOverSomebodyElsesPlanIsAConflict) {
  const RotationId id = added();
  KeptRotation again = week();
  again.cells.pop_back();
  editRotation(collection, id, 1, again, kKeeper);
  EXPECT_THROW(editRotation(collection, id, 1, week(), kKeeper), ConflictError);
  EXPECT_EQ(findRotation(collection, id)->record, again);
}

TEST_F(RotationVerbs, EveryStepCanBeTakenBack) {
  const RotationId id = added();
  KeptRotation again = week();
  again.cells[0].amount = Grams(90);
  editRotation(collection, id, 1, again, kKeeper);
  undo(collection, newestChanges(collection, 1).at(0).number, kKeeper);
  EXPECT_EQ(findRotation(collection, id)->record, week());
  removeRotation(collection, id, findRotation(collection, id)->revision, kKeeper);
  EXPECT_FALSE(findRotation(collection, id));
  undo(collection, newestChanges(collection, 1).at(0).number, kKeeper);
  EXPECT_EQ(findRotation(collection, id)->record, week());
}

TEST_F(RotationVerbs, ADraftWithARotationStays) {
  const RotationId id = added();
  const StoredVersion version = versionsOfDiet(collection, "lemur-morning").at(0);
  EXPECT_THAT(refusal(collection, [&] { removeVersion(collection, version.id, version.revision, kKeeper); }),
              HasSubstr("has the rotation of lemur-morning from 2026-11-23"));
  removeRotation(collection, id, 1, kKeeper);
  removeVersion(collection, version.id, version.revision, kKeeper);
}

TEST_F(RotationVerbs, ADietThatIsCalledOtherwiseKeepsItsRotations) {
  const RotationId id = added();
  const StoredDiet diet = findDiet(collection, "lemur-morning").value();
  diet::NamedDiet renamed = diet.record;
  renamed.code = "lemur-early";
  editDiet(collection, diet.id, diet.revision, renamed, kKeeper);
  EXPECT_EQ(findRotation(collection, id)->record.diet, "lemur-early");
}

TEST_F(RotationVerbs, TheFileItselfRefusesWhatTheRulesForbid) {
  added();
  for (const char* attempt :
       {"UPDATE rotation SET version = 4", "UPDATE rotation SET until_day = '2026-11-01'",
        "UPDATE rotation_cell SET grams = -1", "DELETE FROM diet_version",
        "UPDATE rotation_cell SET food = 'kale', purpose = 'bowl', meal = '', day = 0"}) {
    const auto error =
        errorOf([&] { guarded(collection.file(), [&] { collection.inner().sql() << attempt; }); });
    ASSERT_TRUE(error) << attempt;
    EXPECT_EQ(error->code(), StoreErrorCode::Refused) << attempt;
  }
}

}  // namespace
}  // namespace tarebowl::store
