// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What a desk writes down while its server is away is sent later: in order, once, and with a person's choice
// where the server has something else.
#include "core/store/station_outbox.h"

#include "core/store/opening.h"
#include "tests/core/store/cut_off_desk.h"
#include "tests/core/store/larder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using quantity::Grams;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

constexpr const char* kChosen = "weighed while the desk was cut off";

class StationOutbox : public testing::Test {
 protected:
  StationOutbox() {
    desk.takeCopyOf(shared);
    other.takeCopyOf(shared);
  }
  [[nodiscard]] const std::vector<intake::Weighing> weighings(const std::string& group, int item) const {
    return kitchen.bowl(group).items.at(static_cast<std::size_t>(item) - 1).weighings;
  }
  [[nodiscard]] double counts(const std::string& group, int item) const {
    return valueThatCounts(kitchen.bowl(group), item, Noted::Weight)->value.grams->value();
  }

  Kitchen kitchen;
  Collection& shared = kitchen.collection;
  CutOffDesk desk{kitchen.folder, "bench"};
  CutOffDesk other{kitchen.folder, "window"};
};

TEST_F(StationOutbox, AWeightIsOnTheDesksSheetAtOnceAndOnTheServerWhenItIsBack) {
  EXPECT_EQ(desk.weigh("family", 1, 119.5, 1), Kept::First);
  EXPECT_EQ(valueThatCounts(desk.bowl("family"), 1, Noted::Weight)->value.grams, Grams(119.5));
  EXPECT_THAT(weighings("family", 1), IsEmpty());
  EXPECT_EQ(countWaiting(desk.own), (WaitingCount{.waiting = 1}));
  const SendReport report = desk.send(shared);
  EXPECT_EQ(report.sent, 1U);
  EXPECT_EQ(report.conflicts, 0U);
  EXPECT_EQ(countWaiting(desk.own), WaitingCount{});
  ASSERT_THAT(weighings("family", 1), SizeIs(1));
  EXPECT_EQ(weighings("family", 1)[0].actual, Grams(119.5));
  EXPECT_EQ(weighings("family", 1)[0].by, (intake::Signed{"bench", "2026-11-25T07:30:01Z"}));
}

TEST_F(StationOutbox, WhatIsSentAgainDoesNothing) {
  desk.weigh("family", 1, 119.5, 1);
  const KitchenEntry entry = entriesOf(desk.own).at(0).entry.value();
  // The server has it, and the desk is killed before it hears of it.
  EXPECT_EQ(deliver(shared, entry, "bench").outcome, Delivered::Outcome::Written);
  desk.startAgain();
  EXPECT_EQ(countWaiting(desk.own).waiting, 1U);
  desk.send(shared);
  EXPECT_EQ(deliver(shared, entry, "bench").outcome, Delivered::Outcome::ThereBefore);
  EXPECT_THAT(weighings("family", 1), SizeIs(1));
  EXPECT_EQ(countWaiting(desk.own), WaitingCount{});
}

/// It was being written to the server when the connection went: nobody knows whether it was kept.
TEST_F(StationOutbox, WhatWasKeptByTheServerWithoutAWordIsNotDoubled) {
  const KitchenEntry entry = desk.entry("family", 1, 119.5, 1);
  EXPECT_EQ(writeDown(shared, entry), Kept::First);
  keepForLater(desk.own, entry);
  EXPECT_EQ(desk.send(shared).conflicts, 0U);
  EXPECT_THAT(weighings("family", 1), SizeIs(1));
}

TEST_F(StationOutbox, ACorrectionComesAfterWhatItCorrects) {
  desk.weigh("family", 1, 19, 1);
  desk.correct("family", 1, 119, 2);
  desk.weigh("pair", 1, 41, 3);
  desk.startAgain();
  EXPECT_EQ(desk.send(shared).sent, 3U);
  ASSERT_THAT(weighings("family", 1), SizeIs(2));
  EXPECT_EQ(weighings("family", 1)[1].correction, "misread");
  EXPECT_EQ(counts("family", 1), 119);
  EXPECT_EQ(counts("pair", 1), 41);
}

TEST_F(StationOutbox, LeftoversAndRemaindersAreSentToo) {
  KitchenEntry left = desk.entry("family", 1, 12, 1);
  left.noted = Noted::Leftover;
  left.value = {.kind = intake::LeftoverKind::Spilled, .grams = Grams(12), .lost = Grams(3.25)};
  keepForLater(desk.own, left);
  KitchenEntry rest = desk.entry("pair", 1, 7, 2);
  rest.noted = Noted::Remainder;
  rest.item = 0;
  keepForLater(desk.own, rest);
  EXPECT_EQ(desk.send(shared).sent, 2U);
  EXPECT_EQ(valueThatCounts(kitchen.bowl("family"), 1, Noted::Leftover)->value, left.value);
  EXPECT_EQ(valueThatCounts(kitchen.bowl("pair"), 0, Noted::Remainder)->value.grams, Grams(7));
}

TEST_F(StationOutbox, ASheetThatNobodyOpenedIsOpenedWithItsFirstWeight) {
  std::vector<intake::Bowl> tomorrow = kitchen.planned();
  for (intake::Bowl& bowl : tomorrow) bowl.key.day = day("2026-11-26");
  keepForLater(desk.own, {.id = 77,
                          .section = "Small Mammals",
                          .bowl = tomorrow[1],
                          .beside = {tomorrow[0]},
                          .item = 1,
                          .value = {.grams = Grams(40)},
                          .author = {"bench", "2026-11-26T07:00:00Z"}});
  EXPECT_THAT(bowlsOfDay(desk.own, day("2026-11-26")), SizeIs(2));
  EXPECT_EQ(desk.send(shared).sent, 1U);
  EXPECT_EQ(bowlsOfDay(shared, day("2026-11-26")), bowlsOfDay(desk.own, day("2026-11-26")));
}

TEST_F(StationOutbox, TwoDesksThatOpenTheSameSheetWriteOnOneSheet) {
  std::vector<intake::Bowl> tomorrow = kitchen.planned();
  for (intake::Bowl& bowl : tomorrow) bowl.key.day = day("2026-11-26");
  KitchenEntry first{.id = 77,
                     .section = "Small Mammals",
                     .bowl = tomorrow[0],
                     .beside = {tomorrow[1]},
                     .item = 1,
                     .value = {.grams = Grams(120)},
                     .author = {"bench", "2026-11-26T07:00:00Z"}};
  keepForLater(desk.own, first);
  first.id = 78;
  first.item = 2;
  first.value.grams = Grams(30);
  first.author.who = "window";
  keepForLater(other.own, first);
  EXPECT_EQ(desk.send(shared).conflicts + other.send(shared).conflicts, 0U);
  const auto bowls = bowlsOfDay(shared, day("2026-11-26"));
  ASSERT_THAT(bowls, SizeIs(2));
  EXPECT_EQ(bowls[0].items[0].weighings.at(0).by.who, "bench");
  EXPECT_EQ(bowls[0].items[1].weighings.at(0).by.who, "window");
}

TEST_F(StationOutbox, WhatAnotherDeskWeighedMeanwhileIsShownWithBothValues) {
  other.weigh("family", 1, 125, 5);
  other.send(shared);
  desk.weigh("family", 1, 119, 1);
  desk.weigh("family", 2, 30, 2);
  const SendReport report = desk.send(shared);
  EXPECT_EQ(report.sent, 1U) << "what does not depend on it goes on";
  EXPECT_EQ(report.conflicts, 1U);
  EXPECT_EQ(counts("family", 2), 30);
  const WaitingEntry conflict = entriesOf(desk.own).at(0);
  EXPECT_EQ(conflict.state, EntryState::Conflict);
  EXPECT_EQ(conflict.entry->value.grams, Grams(119));
  EXPECT_EQ(conflict.theirs->value.grams, Grams(125));
  EXPECT_EQ(conflict.theirs->by.who, "window");
  EXPECT_EQ(countWaiting(desk.own), (WaitingCount{.conflicts = 1}));
  EXPECT_EQ(desk.send(shared).conflicts, 0U) << "it waits for a person";
  EXPECT_THAT(weighings("family", 1), SizeIs(1));
}

TEST_F(StationOutbox, MineIsACorrectionThatNamesItsReason) {
  other.weigh("family", 1, 125, 5);
  other.send(shared);
  desk.weigh("family", 1, 119, 1);
  desk.send(shared);
  settle(desk.own, shared, "bench", 1, Choice::Mine, kChosen, kKeeper);
  EXPECT_EQ(counts("family", 1), 119);
  EXPECT_EQ(weighings("family", 1).at(1).correction, kChosen);
  EXPECT_EQ(countWaiting(desk.own), WaitingCount{});
}

TEST_F(StationOutbox, TheirsCountsAndMineIsKeptBesideIt) {
  other.weigh("family", 1, 125, 5);
  other.send(shared);
  desk.weigh("family", 1, 119, 1);
  desk.send(shared);
  settle(desk.own, shared, "bench", 1, Choice::Theirs, kChosen, kKeeper);
  EXPECT_EQ(counts("family", 1), 125);
  ASSERT_THAT(weighings("family", 1), SizeIs(2));
  EXPECT_TRUE(weighings("family", 1)[1].second);
  EXPECT_EQ(weighings("family", 1)[1].actual, Grams(119));
  EXPECT_EQ(countWaiting(desk.own), WaitingCount{});
}

TEST_F(StationOutbox, TwoWhoFoundTheSameDoNotDisagree) {
  other.weigh("family", 1, 119, 5);
  other.send(shared);
  desk.weigh("family", 1, 119, 1);
  EXPECT_EQ(desk.send(shared).conflicts, 0U);
  EXPECT_EQ(counts("family", 1), 119);
  EXPECT_THAT(weighings("family", 1), SizeIs(2));
}

TEST_F(StationOutbox, ACorrectionOfWhatIsOtherwiseByNowIsAConflictToo) {
  desk.weigh("family", 1, 119, 1);
  desk.send(shared);
  correctWeight(shared, {kitchen.item("family", 1), Grams(117)}, "put right", kKeeper);
  desk.correct("family", 1, 121, 9);
  EXPECT_EQ(desk.send(shared).conflicts, 1U);
  EXPECT_EQ(counts("family", 1), 117);
  EXPECT_EQ(entriesOf(desk.own).at(1).theirs->value.grams, Grams(117));
}

TEST_F(StationOutbox, AFoodThatWasSwappedElsewhereIsAConflict) {
  desk.weigh("family", 1, 119, 1);
  addSwap(shared,
          {.instead = kitchen.item("family", 1), .given = {{"endive", Grams(130)}}, .why = "not delivered"},
          kKeeper);
  EXPECT_EQ(desk.send(shared).conflicts, 1U);
  EXPECT_THAT(entriesOf(desk.own).at(0).why, HasSubstr("kale was swapped for another food"));
  EXPECT_EQ(codeOf([&] { settle(desk.own, shared, "bench", 1, Choice::Mine, kChosen, kKeeper); }),
            StoreErrorCode::Refused);
  EXPECT_EQ(countWaiting(desk.own).conflicts, 1U) << "it is still there to choose";
  settle(desk.own, shared, "bench", 1, Choice::Theirs, kChosen, kKeeper);
  EXPECT_EQ(entriesOf(desk.own).at(0).state, EntryState::SetAside);
  EXPECT_EQ(entriesOf(desk.own).at(0).entry->value.grams, Grams(119)) << "and nothing is forgotten";
}

TEST_F(StationOutbox, ABowlOfAnotherVersionOfItsDietIsAConflict) {
  std::vector<intake::Bowl> tomorrow = kitchen.planned();
  for (intake::Bowl& bowl : tomorrow) bowl.key.day = day("2026-11-26");
  keepForLater(desk.own, {.id = 77,
                          .section = "Small Mammals",
                          .bowl = tomorrow[0],
                          .item = 1,
                          .value = {.grams = Grams(119)},
                          .author = {"bench", "2026-11-26T07:00:00Z"}});
  const Written draft = addVersion(shared, "lemur-morning", fullVersion(), kKeeper);
  submitVersion(shared, VersionId{draft.id}, 1, "", kKeeper);
  approveVersion(shared, VersionId{draft.id}, 2, decision(), {day("2026-11-26"), 0}, "tried", kKeeper);
  tomorrow[0].version = 2;
  openSheet(shared, "Small Mammals", day("2026-11-26"), {&tomorrow[0], 1}, kKeeper);
  EXPECT_EQ(desk.send(shared).conflicts, 1U);
  EXPECT_THAT(entriesOf(desk.own).at(0).why, HasSubstr("version 2"));
  settle(desk.own, shared, "bench", 1, Choice::Mine, kChosen, kKeeper);
  const auto bowls = bowlsOfDay(shared, day("2026-11-26"));
  ASSERT_THAT(bowls, SizeIs(1));
  EXPECT_EQ(bowls[0].items[0].weighings.at(0).actual, Grams(119));
}

TEST_F(StationOutbox, AGroupThatIsGoneIsAConflictAndTheRestIsSent) {
  KitchenEntry gone = desk.entry("pair", 1, 40, 1);
  desk.weigh("family", 1, 119, 2);
  shared.inner().sql() << "UPDATE animal_group SET code = 'renamed' WHERE code = 'pair'";
  keepForLater(desk.own, gone);
  const SendReport report = desk.send(shared);
  EXPECT_EQ(report.sent, 1U);
  EXPECT_EQ(report.conflicts, 1U);
  EXPECT_THAT(entriesOf(desk.own).at(1).why, HasSubstr("no group pair"));
}

TEST_F(StationOutbox, WhatNoRuleAllowsIsRefusedAtOnceAndDoesNotWait) {
  EXPECT_EQ(codeOf([&] { desk.weigh("family", 1, -3, 1); }), StoreErrorCode::Refused);
  EXPECT_EQ(countWaiting(desk.own), WaitingCount{});
  EXPECT_FALSE(valueThatCounts(desk.bowl("family"), 1, Noted::Weight));
}

TEST_F(StationOutbox, AnEntryThatCannotBeReadAnyMoreStopsNothing) {
  desk.weigh("family", 1, 119, 1);
  desk.weigh("family", 2, 30, 2);
  desk.own.inner().sql() << "UPDATE station_entry SET body = '{\"noted\": 9' WHERE id = 1";
  const SendReport report = desk.send(shared);
  EXPECT_EQ(report.sent, 1U);
  EXPECT_EQ(report.conflicts, 1U);
  EXPECT_EQ(codeOf([&] { settle(desk.own, shared, "bench", 1, Choice::Mine, kChosen, kKeeper); }),
            StoreErrorCode::Refused);
  settle(desk.own, shared, "bench", 1, Choice::Theirs, kChosen, kKeeper);
  EXPECT_EQ(entriesOf(desk.own).at(0).state, EntryState::SetAside);
}

TEST_F(StationOutbox, TwoWindowsOfOneDeskSendEachEntryOnce) {
  for (int item = 1; item <= 2; ++item) desk.weigh("family", item, 20 + item, item);
  Collection again = openStation(desk.file, kKeeper);
  sendWaiting(again, shared, "bench");
  desk.send(shared);
  for (int item = 1; item <= 2; ++item) EXPECT_THAT(weighings("family", item), SizeIs(1));
}

}  // namespace
}  // namespace tarebowl::store
