// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/section_reading.h"

#include "core/store/group_reading.h"
#include "tests/core/store/herd.h"

#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

/// Many groups are read at once, and each is what reading it by itself says.
class SectionReading : public testing::Test {
 protected:
  Herd herd;
  Collection& collection = herd.collection;
  const quantity::Date today = day("2026-11-25");

  void weigh(const char* animal, const char* on, double kilograms) {
    addMass(collection, weighed(animal, on, kilograms), Confirmed::Yes, kKeeper);
  }
  void join(const char* group, const char* animal) {
    addMembership(collection, {.group = group, .individual = animal, .from = day("2026-01-01")}, kKeeper);
  }
  void addGroupIn(const char* code, const char* section) {
    animal::Group group = lemurGroup(code);
    group.section = section;
    addGroup(collection, group, kKeeper);
  }
  void weighGroup(const char* group, const char* on, double kilograms) {
    MassRecord mass{.group = group};
    mass.reading = {.on = day(on), .mass = quantity::Kilograms(kilograms)};
    addMass(collection, mass, Confirmed::Yes, kKeeper);
  }
  /// As of all that was ever weighed, whichever of it counts.
  [[nodiscard]] std::optional<animal::GroupMass> massOfEverything(const KnownGroup& known) const {
    std::vector<std::optional<animal::CurrentMass>> members;
    for (const std::string& member : known.members)
      members.push_back(animal::massOn(readingsOf(massesOfIndividual(collection, member)), today));
    const auto whole = readingsOf(massesOfGroup(collection, known.group.record.code));
    return animal::groupMass(members, animal::massOn(whole, today));
  }
  void expectWhatEachGroupSays(const std::optional<std::string>& section) {
    const auto groups = groupsHousedOn(collection, today, section);
    const auto masses = bodyMassesOn(collection, groups, today, section);
    for (const HousedGroup& group : groups) {
      const std::string& code = group.group.record.code;
      const KnownGroup known = knowGroup(collection, code, today).value();
      EXPECT_EQ(group.group.record, known.group.record);
      EXPECT_EQ(group.species, known.species) << code;
      EXPECT_EQ(group.members, known.members) << code;
      EXPECT_EQ(group.headcount, known.headcount) << code;
      const auto mass = masses.find(code);
      EXPECT_EQ(mass == masses.end() ? std::nullopt : std::optional(mass->second), known.bodyMass) << code;
      const auto everything = massOfEverything(known);
      EXPECT_EQ(everything ? std::optional(everything->mass) : std::nullopt, known.bodyMass) << code;
      EXPECT_EQ(everything ? everything->weighed : 0, known.weighed) << code;
    }
  }
  [[nodiscard]] std::vector<std::string> codesIn(const std::optional<std::string>& section) const {
    std::vector<std::string> codes;
    for (const HousedGroup& group : groupsHousedOn(collection, today, section))
      codes.push_back(group.group.record.code);
    return codes;
  }
};

TEST_F(SectionReading, TheGroupsOfASectionAndNoOthers) {
  addGroupIn("night", "Night house");
  EXPECT_EQ(codesIn("Night house"), (std::vector<std::string>{"night"}));
  EXPECT_EQ(codesIn({}), (std::vector<std::string>{"family", "night", "pair"}));
  EXPECT_TRUE(codesIn("Nowhere").empty());
}

TEST_F(SectionReading, MassesOfTheLastDaysAndOfLongAgoCountAsForAGroupByItself) {
  addGroupIn("night", "Night house");
  addGroupIn("never", "Night house");
  join("family", "a");
  join("family", "b");
  weigh("a", "2026-11-24", 3.4);
  weigh("a", "2026-11-20", 3.6);
  weigh("a", "2026-10-01", 9.0);  // longer ago: does not count beside the others
  weigh("a", "2026-11-26", 9.0);  // tomorrow
  weigh("b", "2026-03-01", 3.1);  // its newest
  weigh("b", "2026-02-01", 2.5);
  weighGroup("night", "2026-06-01", 0.8);
  weighGroup("night", "2026-05-01", 0.7);
  expectWhatEachGroupSays({});
  expectWhatEachGroupSays("Night house");
  EXPECT_EQ(bodyMassesOn(collection, groupsHousedOn(collection, today), today).size(), 2U);
}

TEST_F(SectionReading, AReadingThatWasLeftOutCountsForNothing) {
  join("family", "a");
  weigh("a", "2026-11-01", 3.0);
  const Written slip = addMass(collection, weighed("a", "2026-11-24", 30.0), Confirmed::Yes, kKeeper);
  excludeMass(collection, MassId{slip.id}, 1, "a box was on the scale", kKeeper);
  expectWhatEachGroupSays({});
  EXPECT_EQ(bodyMassesOn(collection, groupsHousedOn(collection, today), today).at("family"),
            quantity::Kilograms(3.0));
}

}  // namespace
}  // namespace tarebowl::store
