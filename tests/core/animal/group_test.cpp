// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/group.h"

#include "tests/core/animal/days.h"

#include <gmock/gmock.h>

namespace tarebowl::animal {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::Pair;

const std::vector<Membership> kStays{
    {"lemurs", "L1", day("2026-01-01"), day("2026-02-01")},
    {"lemurs", "L2", day("2026-01-15"), std::nullopt},
    {"quarantine", "L1", day("2026-02-01"), std::nullopt},
};

Group lemurs() {
  Group group;
  group.code = "lemurs";
  return group;
}

TEST(Group, AMemberIsInItUntilNotIncludingTheLastDay) {
  EXPECT_THAT(membersOn(kStays, "lemurs", day("2026-01-31")), ElementsAre("L1", "L2"));
  EXPECT_THAT(membersOn(kStays, "lemurs", day("2026-02-01")), ElementsAre("L2"));
  EXPECT_THAT(membersOn(kStays, "lemurs", day("2025-12-31")), IsEmpty());
}

TEST(Group, WhoIsEnteredTwiceEatsOnce) {
  const std::vector<Membership> twice{kStays[1], kStays[1]};
  EXPECT_THAT(membersOn(twice, "lemurs", day("2026-03-01")), ElementsAre("L2"));
}

TEST(Group, ItsHeadcountIsThatOfItsMembers) {
  Group group = lemurs();
  group.counts = {{day("2025-01-01"), 9}};
  EXPECT_EQ(headcountOn(group, kStays, day("2026-01-20")), 2);
}

TEST(Group, WithoutMembersTheCountInForceHolds) {
  Group group = lemurs();
  group.counts = {{day("2025-06-01"), 12}, {day("2025-01-01"), 9}};  // in any order
  EXPECT_EQ(headcountOn(group, {}, day("2025-05-31")), 9);
  EXPECT_EQ(headcountOn(group, {}, day("2025-06-01")), 12);
  EXPECT_EQ(headcountOn(group, kStays, day("2025-12-31")), 12) << "its members come later";
}

TEST(Group, OfWhichNothingIsKnownItIsNotSaidThatNobodyEats) {
  EXPECT_EQ(headcountOn(lemurs(), {}, day("2026-01-20")), std::nullopt);
  Group group = lemurs();
  group.counts = {{day("2026-02-01"), 3}};
  EXPECT_EQ(headcountOn(group, {}, day("2026-01-20")), std::nullopt);
}

TEST(Membership, MovingOnTheDayOfLeavingIsNoOverlap) {
  EXPECT_THAT(overlaps(kStays), IsEmpty());
}

TEST(Membership, AnAnimalThatEatsFromTwoBowlsIsFound) {
  std::vector<Membership> stays = kStays;
  stays.front().until = day("2026-02-02");
  EXPECT_THAT(overlaps(stays), ElementsAre(Pair(0, 2)));
  stays.front().until.reset();
  EXPECT_THAT(overlaps(stays), ElementsAre(Pair(0, 2)));
}

TEST(Membership, AStayOfNoDaysOverlapsNothing) {
  std::vector<Membership> stays = kStays;
  stays.push_back({"elsewhere", "L2", day("2026-03-01"), day("2026-03-01")});
  EXPECT_THAT(overlaps(stays), IsEmpty());
}

}  // namespace
}  // namespace tarebowl::animal
