// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/group_reading.h"

#include "tests/core/store/herd.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tarebowl::store {
namespace {

using OptionalMasses = std::vector<std::optional<quantity::Kilograms>>;

class GroupReading : public testing::Test {
 protected:
  Herd herd;
  Collection& collection = herd.collection;

  [[nodiscard]] KnownGroup family() const {
    return knowGroup(collection, "family", day("2026-11-25")).value();
  }
  void weigh(const char* animal, double kilograms) {
    addMass(collection, weighed(animal, "2026-11-20", kilograms), Confirmed::Yes, kKeeper);
  }
  void joinFamily(const char* animal) {
    addMembership(collection, {.group = "family", .individual = animal, .from = day("2026-01-01")}, kKeeper);
  }
};

TEST_F(GroupReading, WhatIsNotKnownIsNotMadeUp) {
  EXPECT_FALSE(knowGroup(collection, "nobody", day("2026-11-25")));
  const KnownGroup known = family();
  EXPECT_EQ(known.headcount, 5);  // counted from 2026-06-01
  EXPECT_FALSE(known.bodyMass);
  EXPECT_FALSE(known.profile);
  EXPECT_FALSE(known.energy);
  EXPECT_EQ(known.species.scientificName, "Varecia rubra");
}

TEST_F(GroupReading, TheMassIsTheMeanOfTheMembersThatWereWeighed) {
  joinFamily("a");
  joinFamily("b");
  weigh("a", 3.4);
  EXPECT_EQ(family().bodyMass, quantity::Kilograms(3.4));
  EXPECT_EQ(family().memberMasses, (OptionalMasses{quantity::Kilograms(3.4), std::nullopt}));
  weigh("b", 3.8);
  const KnownGroup known = family();
  EXPECT_DOUBLE_EQ(known.bodyMass->value(), 3.6);  // (3.4 + 3.8) / 2
  EXPECT_EQ(known.weighed, 2U);
  EXPECT_EQ(known.headcount, 2);
  EXPECT_EQ(known.members, (std::vector<std::string>{"a", "b"}));
}

TEST_F(GroupReading, TargetsComeFromTheVersionInForceWithAllItTakesOver) {
  const Written parent = addProfile(collection, primateProfile(), kKeeper);
  putInForce(collection, ProfileId{parent.id}, 1, day("2026-01-01"), "approved", kKeeper);
  animal::TargetProfile lemurs = bareProfile("lemurs");
  lemurs.parent = animal::ProfileReference{"primates", 1};
  const Written child = addProfile(collection, lemurs, kKeeper);
  animal::Group group = lemurGroup("family");
  group.profile = "lemurs";
  editGroup(collection, findGroup(collection, "family")->id, 1, group, kKeeper);
  EXPECT_FALSE(family().profile);  // a draft feeds nobody
  putInForce(collection, ProfileId{child.id}, 1, day("2026-11-25"), "approved", kKeeper);
  const KnownGroup known = family();
  ASSERT_TRUE(known.profile);
  EXPECT_EQ(known.profile->profile.code, "lemurs");
  ASSERT_EQ(known.profile->targets.size(), 2U);
  EXPECT_EQ(known.profile->targets[0].descent.statedIn, (animal::ProfileReference{"primates", 1}));
  EXPECT_FALSE(knowGroup(collection, "family", day("2026-11-24"))->profile);
}

TEST_F(GroupReading, TheEnergyNeedFollowsThePlanTheMassAndTheHeadcount) {
  joinFamily("a");
  joinFamily("b");
  weigh("a", 4.0);
  weigh("b", 4.0);
  EnergyPlanRecord plan{.group = "family", .from = day("2026-01-01")};
  plan.plan.factors = {{.kind = animal::EnergyFactor::Kind::Maintenance, .low = 1.5, .high = 2.0}};
  addEnergyPlan(collection, plan, kKeeper);
  const KnownGroup known = family();
  ASSERT_TRUE(known.energy);
  // 70 * 4^0.75 = 197.98990 kcal (Small Animal Clinical Nutrition, 5th ed., p. 61), times 1.5 and 2.
  EXPECT_NEAR(known.energy->low.value(), 1.5 * 197.98990, 1e-4);
  EXPECT_NEAR(known.energy->high.value(), 2.0 * 197.98990, 1e-4);
}

}  // namespace
}  // namespace tarebowl::store
