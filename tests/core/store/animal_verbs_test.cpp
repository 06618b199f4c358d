// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/animal_verbs.h"

#include "core/store/change_log.h"
#include "tests/core/store/herd.h"
#include "tests/core/store/other_desk.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using testing::HasSubstr;

class AnimalVerbs : public testing::Test {
 protected:
  Herd herd;
  Collection& collection = herd.collection;

  [[nodiscard]] StoredGroup family() const { return findGroup(collection, "family").value(); }
  Written stay(const std::string& group, const std::string& individual, const char* from,
               const char* until = nullptr) {
    animal::Membership membership{.group = group, .individual = individual, .from = day(from)};
    if (until != nullptr) membership.until = day(until);
    return addMembership(collection, membership, kKeeper);
  }
};

TEST_F(AnimalVerbs, WhatWasWrittenIsReadWithEverythingItSays) {
  EXPECT_EQ(findSpecies(collection, "red-ruffed-lemur")->record, lemurSpecies());
  EXPECT_EQ(findIndividual(collection, "a")->record, lemur("a"));
  EXPECT_EQ(family().record, lemurGroup("family"));
  stay("family", "a", "2026-01-01", "2026-03-01");
  stay("family", "b", "2026-02-01");
  const auto stays = membershipsOfGroup(collection, "family");
  ASSERT_EQ(stays.size(), 2U);
  EXPECT_EQ(stays[0].record, (animal::Membership{"family", "a", day("2026-01-01"), day("2026-03-01")}));
  EXPECT_FALSE(stays[1].record.until);
  EXPECT_EQ(membershipsOfIndividual(collection, "b").size(), 1U);
  EXPECT_EQ(listIndividuals(collection).size(), 2U);
  EXPECT_EQ(findGroup(collection, family().id)->record.code, "family");
  EXPECT_FALSE(findGroup(collection, "herd"));
}

TEST_F(AnimalVerbs, AnEditReplacesListsTooAndIsLogged) {
  animal::Group changed = lemurGroup("family");
  changed.counts.pop_back();
  changed.section = "Outdoors";
  const Written edited = editGroup(collection, family().id, 1, changed, kKeeper);
  EXPECT_EQ(family().record, changed);
  EXPECT_EQ(edited.revision, 2);
  const Change change = findChange(collection, edited.change).value();
  EXPECT_EQ(change.verb, "edit group");
  EXPECT_EQ(change.subject, "group");
  EXPECT_THAT(change.before.value(), HasSubstr("Small Mammals"));
  EXPECT_THAT(change.after.value(), HasSubstr("Outdoors"));
}

TEST_F(AnimalVerbs, OfTwoEditsOfOneVersionTheSecondIsRefusedWithBoth) {
  Collection there = Collection::open(collection.file(), kNow);
  animal::Group theirs = lemurGroup("family");
  theirs.note = "theirs";
  editGroup(there, family().id, 1, theirs, kKeeper);
  animal::Group mine = lemurGroup("family");
  mine.note = "mine";
  try {
    editGroup(collection, family().id, 1, mine, kKeeper);
    FAIL() << "a lost update";
  } catch (const ConflictError& conflict) {
    EXPECT_THAT(conflict.what(), HasSubstr("the group family was changed elsewhere"));
    EXPECT_THAT(conflict.mine(), HasSubstr("\"mine\""));
    EXPECT_THAT(conflict.theirs(), HasSubstr("\"theirs\""));
  }
  EXPECT_EQ(family().record, theirs);
  EXPECT_TRUE(hearsOfWrite(collection));
}

TEST_F(AnimalVerbs, AnEditOfWhatWasRemovedElsewhereSaysSo) {
  const GroupId id = family().id;
  removeGroup(collection, id, 1, kKeeper);
  const auto error = errorOf([&] { editGroup(collection, id, 1, lemurGroup("family"), kKeeper); });
  ASSERT_TRUE(error);
  EXPECT_EQ(error->code(), StoreErrorCode::Conflict);
  EXPECT_THAT(error->what(), HasSubstr("the group was removed elsewhere"));
}

TEST_F(AnimalVerbs, AnAnimalIsInOneGroupAtATime) {
  stay("family", "a", "2026-01-01", "2026-03-01");
  EXPECT_THAT(refusal(collection, [&] { stay("pair", "a", "2026-02-28"); }),
              HasSubstr("a is in the group family from 2026-01-01 until 2026-03-01"));
  EXPECT_THAT(refusal(collection, [&] { stay("pair", "a", "2025-12-01", "2026-01-02"); }),
              HasSubstr("one bowl at a time"));
  stay("pair", "a", "2026-03-01");  // the day it left the other
  EXPECT_THAT(refusal(collection, [&] { stay("family", "a", "2027-01-01"); }),
              HasSubstr("in the group pair from 2026-03-01 on"));
  stay("family", "a", "2025-01-01", "2026-01-01");
}

TEST_F(AnimalVerbs, AStayLiesWithinTheAnimalsLife) {
  EXPECT_THAT(refusal(collection, [&] { stay("family", "a", "2019-04-30"); }),
              HasSubstr("before its birth on 2019-05-01"));
  animal::Individual gone = lemur("a");
  gone.left = day("2026-05-01");
  gone.died = true;
  editIndividual(collection, findIndividual(collection, "a")->id, 1, gone, kKeeper);
  EXPECT_THAT(refusal(collection, [&] { stay("family", "a", "2026-04-01", "2026-05-02"); }),
              HasSubstr("beyond 2026-05-01, when it died"));
  EXPECT_THAT(refusal(collection, [&] { stay("family", "a", "2026-05-01"); }), HasSubstr("when it died"));
  stay("family", "a", "2026-04-01", "2026-05-01");
  EXPECT_THAT(refusal(collection, [&] { stay("family", "b", "2026-04-01", "2026-04-01"); }),
              HasSubstr("end after the day it begins"));
}

TEST_F(AnimalVerbs, AGroupTakesAnimalsOfItsSpeciesOnly) {
  animal::Species fox{.code = "fennec-fox", .name = "Fennec fox"};
  addSpecies(collection, fox, kKeeper);
  animal::Group foxes = lemurGroup("foxes");
  foxes.species = "fennec-fox";
  addGroup(collection, foxes, kKeeper);
  EXPECT_THAT(refusal(collection, [&] { stay("foxes", "a", "2026-01-01"); }),
              HasSubstr("a is a red-ruffed-lemur, and the group foxes is of fennec-fox"));
}

TEST_F(AnimalVerbs, WhatCannotBeIsRefusedInWords) {
  const auto added = [&](const animal::Individual& individual) {
    return refusal(collection, [&] { addIndividual(collection, individual, kKeeper); });
  };
  animal::Individual ghost = lemur("c");
  ghost.left = day("2019-01-01");
  EXPECT_THAT(added(ghost), HasSubstr("c: it cannot be born after it left or died"));
  ghost = lemur("c");
  ghost.died = true;
  EXPECT_THAT(added(ghost), HasSubstr("its death needs a day"));
  ghost = lemur("c");
  ghost.species = "unicorn";
  EXPECT_THAT(added(ghost), HasSubstr("there is no species unicorn"));
  EXPECT_THAT(added(lemur("a")), HasSubstr("another animal with the code a"));
  animal::Group group = lemurGroup("");
  EXPECT_THAT(refusal(collection, [&] { addGroup(collection, group, kKeeper); }),
              HasSubstr("a group needs a code"));
  group = lemurGroup("third");
  group.counts = {{day("2026-01-02"), 3}, {day("2026-01-02"), 4}};
  EXPECT_THAT(refusal(collection, [&] { addGroup(collection, group, kKeeper); }),
              HasSubstr("must follow each other by day"));
  group = lemurGroup("third");
  group.profile = "nobody's";
  EXPECT_THAT(refusal(collection, [&] { addGroup(collection, group, kKeeper); }),
              HasSubstr("there is no target profile nobody's"));
  EXPECT_THAT(refusal(collection, [&] { stay("family", "nobody", "2026-01-01"); }),
              HasSubstr("there is no animal nobody"));
  EXPECT_THAT(refusal(collection, [&] { stay("nowhere", "a", "2026-01-01"); }),
              HasSubstr("there is no group nowhere"));
}

TEST_F(AnimalVerbs, WhatOthersRestOnIsNotRemoved) {
  const SpeciesId species = findSpecies(collection, "red-ruffed-lemur")->id;
  EXPECT_THAT(refusal(collection, [&] { removeSpecies(collection, species, 1, kKeeper); }),
              HasSubstr("there are animals of the species"));
  stay("family", "a", "2026-01-01");
  EXPECT_THAT(refusal(collection,
                      [&] { removeIndividual(collection, findIndividual(collection, "a")->id, 1, kKeeper); }),
              HasSubstr("a is or was in a group"));
  EXPECT_THAT(refusal(collection, [&] { removeGroup(collection, family().id, 1, kKeeper); }),
              HasSubstr("family has or had members"));
  addMass(collection, weighed("b", "2026-11-20", 3.5), Confirmed::No, kKeeper);
  EXPECT_THAT(refusal(collection,
                      [&] { removeIndividual(collection, findIndividual(collection, "b")->id, 1, kKeeper); }),
              HasSubstr("b was weighed"));
}

TEST_F(AnimalVerbs, ARenamedSpeciesKeepsItsAnimals) {
  animal::Species renamed = lemurSpecies();
  renamed.code = "ruffed-lemur";
  editSpecies(collection, findSpecies(collection, "red-ruffed-lemur")->id, 1, renamed, kKeeper);
  EXPECT_EQ(findIndividual(collection, "a")->record.species, "ruffed-lemur");
  EXPECT_EQ(family().record.species, "ruffed-lemur");
}

TEST_F(AnimalVerbs, EverythingUndoesAndRedoesInTurn) {
  const Written add = stay("family", "a", "2026-01-01", "2026-03-01");
  const MembershipId id{add.id};
  const animal::Membership longer{"family", "a", day("2026-01-01"), day("2026-06-01")};
  const Written edit = editMembership(collection, id, 1, longer, kKeeper);
  const Written remove = removeMembership(collection, id, 2, kKeeper);
  EXPECT_TRUE(listMemberships(collection).empty());
  undo(collection, remove.change, kKeeper);
  EXPECT_EQ(listMemberships(collection)[0].record, longer);
  const Written undone = undo(collection, edit.change, kKeeper);
  EXPECT_EQ(listMemberships(collection)[0].record.until, day("2026-03-01"));
  undo(collection, undone.change, kKeeper);
  EXPECT_EQ(listMemberships(collection)[0].record, longer);

  const Written edited = editSpecies(collection, findSpecies(collection, "red-ruffed-lemur")->id, 1,
                                     {.code = "red-ruffed-lemur", .name = "Lemur"}, kKeeper);
  undo(collection, edited.change, kKeeper);
  EXPECT_EQ(findSpecies(collection, "red-ruffed-lemur")->record, lemurSpecies());
  const Written changed = editIndividual(collection, findIndividual(collection, "b")->id, 1,
                                         {.code = "b", .species = "red-ruffed-lemur"}, kKeeper);
  undo(collection, changed.change, kKeeper);
  EXPECT_EQ(findIndividual(collection, "b")->record, lemur("b"));
  const Written gone = removeGroup(collection, findGroup(collection, "pair")->id, 1, kKeeper);
  undo(collection, gone.change, kKeeper);
  EXPECT_EQ(findGroup(collection, "pair")->record, lemurGroup("pair"));
}

TEST_F(AnimalVerbs, AnUndoKeepsTheRulesToo) {
  const Written stayed = stay("family", "a", "2026-01-01", "2026-03-01");
  const Written removed = removeMembership(collection, MembershipId{stayed.id}, 1, kKeeper);
  stay("pair", "a", "2026-02-01");
  EXPECT_THAT(refusal(collection, [&] { undo(collection, removed.change, kKeeper); }),
              HasSubstr("a is in the group pair"));
  const Written group = addGroup(collection, lemurGroup("third"), kKeeper);
  stay("third", "b", "2026-01-01");
  EXPECT_THAT(refusal(collection, [&] { undo(collection, group.change, kKeeper); }),
              HasSubstr("third has or had members"));
}

}  // namespace
}  // namespace tarebowl::store
