// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/member_reading.h"

#include "core/animal/condition_score.h"
#include "tests/core/store/herd.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using testing::ElementsAre;

template <class Stored>
auto recordsOf(const std::vector<Stored>& read) {
  std::vector<decltype(Stored::record)> records;
  for (const Stored& one : read) records.push_back(one.record);
  return records;
}

/// What is read of all in a group is what reading each of them by itself says.
class MemberReading : public testing::Test {
 protected:
  Herd herd;
  Collection& collection = herd.collection;
  const quantity::Date from = day("2026-11-01");
  const quantity::Date to = day("2026-11-20");

  void SetUp() override {
    stay("family", "a", {});
    stay("family", "b", day("2026-06-01"));  // it has moved since
    stay("pair", "b", {}, "2026-06-01");
  }
  void stay(const char* group, const char* animal, std::optional<quantity::Date> until,
            const char* since = "2026-01-01") {
    addMembership(collection, {.group = group, .individual = animal, .from = day(since), .until = until},
                  kKeeper);
  }
  void weigh(const char* animal, const char* on, double kilograms) {
    addMass(collection, weighed(animal, on, kilograms), Confirmed::Yes, kKeeper);
  }
  void score(const char* animal, const char* on) {
    const animal::ScoreScale& scale = animal::conditionScales().front();
    ConditionRecord condition{.individual = animal};
    condition.reading = {.on = day(on), .scale = std::string(scale.id), .score = scale.ideal};
    addCondition(collection, condition, kKeeper);
  }
  void see(const char* animal, const char* on, const char* at) {
    health::Observation seen{.individual = animal, .on = day(on), .time = at};
    seen.note = "quiet";
    addObservation(collection, seen, Confirmed::Yes, kKeeper);
  }
};

TEST_F(MemberReading, MassesOfBothDaysAndThoseBetweenAreRead) {
  for (const char* on : {"2026-10-31", "2026-11-01", "2026-11-20", "2026-11-21"}) weigh("a", on, 3.4);
  const auto masses = massesOfMembers(collection, "family", from, to);
  std::vector<quantity::Date> days;
  for (const StoredMass& mass : ofMember(masses, "a")) days.push_back(mass.record.reading.on);
  EXPECT_THAT(days, ElementsAre(from, to));
}

TEST_F(MemberReading, WhoeverWasInTheGroupIsInItAndNobodyElse) {
  weigh("a", "2026-11-10", 3.4);
  weigh("b", "2026-11-10", 3.6);
  EXPECT_EQ(ofMember(massesOfMembers(collection, "family", from, to), "b").size(), 1U);
  EXPECT_TRUE(ofMember(massesOfMembers(collection, "pair", from, to), "a").empty());
  EXPECT_TRUE(massesOfMembers(collection, "nobody", from, to).empty());
}

TEST_F(MemberReading, AMassOfTheGroupItselfIsNoMembers) {
  MassRecord whole{.group = "family"};
  whole.reading = {.on = day("2026-11-10"), .mass = quantity::Kilograms(3.5)};
  addMass(collection, whole, Confirmed::Yes, kKeeper);
  EXPECT_TRUE(massesOfMembers(collection, "family", from, to).empty());
}

TEST_F(MemberReading, ConditionsAreThoseOfEachAnimal) {
  score("a", "2026-11-05");
  score("a", "2026-10-05");
  const auto conditions = conditionsOfMembers(collection, "family", from, to);
  EXPECT_THAT(recordsOf(ofMember(conditions, "a")),
              ElementsAre(conditionsOfIndividual(collection, "a").at(1).record));
}

TEST_F(MemberReading, ObservationsStandInTheOrderOfTheirTimes) {
  see("a", "2026-11-05", "16:00");
  see("a", "2026-11-05", "08:00");
  see("b", "2026-11-05", "09:00");
  const auto seen = observationsOfMembers(collection, "family", from, to);
  EXPECT_EQ(recordsOf(ofMember(seen, "a")), recordsOf(observationsOfIndividual(collection, "a", from, to)));
  EXPECT_EQ(ofMember(seen, "a").front().record.time, "08:00");
  EXPECT_EQ(ofMember(seen, "b").size(), 1U);
}

}  // namespace
}  // namespace tarebowl::store
