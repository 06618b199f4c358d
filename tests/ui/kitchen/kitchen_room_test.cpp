// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The keeper's morning, with number keys and Enter.
#include "ui/kitchen/kitchen_room.h"

#include "core/store/feeding_reading.h"
#include "core/store/feeding_verbs.h"
#include "core/store/lot_verbs.h"
#include "tests/ui/kitchen/keeper_at_the_scale.h"
#include "tests/ui/shared/named_controls.h"
#include "ui/kitchen/bowl_list.h"
#include "ui/kitchen/bowl_model.h"
#include "ui/kitchen/bowl_pane.h"
#include "ui/kitchen/sheet_side.h"
#include "ui/kitchen/tolerance_bar.h"
#include "ui/kitchen/weigh_pane.h"
#include "ui/shared/plain_table.h"
#include "ui/shared/reason_bar.h"

#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using intake::entryThatCounts;
using quantity::Grams;
using ::testing::HasSubstr;

class KitchenRoomTest : public KeeperAtTheScale {};

TEST_F(KitchenRoomTest, TheFirstFoodOfTheFirstBowlIsOnTheScale) {
  EXPECT_EQ(onScale(), "mice kale");
  EXPECT_EQ(QApplication::focusWidget(), &field());
  EXPECT_EQ(room.bowlList().bowls().count(), 2);
  EXPECT_THAT(room.side().text().toStdString(), HasSubstr("30.0 g  kale, raw"));  // 2 * 5 g + 2 * 10 g
  EXPECT_THAT(room.side().text().toStdString(), HasSubstr("Gloves on"));
}

TEST_F(KitchenRoomTest, FitsBesideTheRailOnTheSmallestScreen) {
  constexpr int kScreen = 1366;
  constexpr int kRail = 76;
  EXPECT_LE(room.minimumSizeHint().width(), kScreen - kRail);
}

TEST_F(KitchenRoomTest, AKeeperWeighsTheWholeSheetInWithNumberKeysAndEnter) {
  type("10");
  EXPECT_EQ(onScale(), "tenrecs kale");
  type("20.1");
  EXPECT_EQ(onScale(), "tenrecs crickets");
  type("6");
  EXPECT_EQ(weighed("mice", 0), 10);
  EXPECT_EQ(weighed("tenrecs", 0), 20.1);
  EXPECT_EQ(weighed("tenrecs", 1), 6);
  EXPECT_EQ(example.bowl("tenrecs").items.at(1).weighings.at(0).by.who, "Keeper A");
  EXPECT_THAT(room.bowlList().bowls().item(1)->text().toStdString(), HasSubstr("all weighed"));
}

TEST_F(KitchenRoomTest, TheBarSaysInUnderOrOverAsIsTyped) {
  const auto& bar = room.weighPane().bar();
  EXPECT_EQ(bar.state(), std::nullopt);
  QTest::keyClicks(&field(), QStringLiteral("1"));
  EXPECT_EQ(bar.state(), intake::WeightState::Under);
  QTest::keyClicks(&field(), QStringLiteral("0"));
  EXPECT_EQ(bar.state(), intake::WeightState::In);
  QTest::keyClicks(&field(), QStringLiteral("0"));
  EXPECT_EQ(bar.state(), intake::WeightState::Over);
  EXPECT_EQ(bar.accessibleName(), QStringLiteral("Tolerance: over"));
}

TEST_F(KitchenRoomTest, AHundredTypedForTenIsAskedAboutAndKeptByEnterAgain) {
  type("100");
  EXPECT_EQ(onScale(), "mice kale");
  EXPECT_TRUE(asks());
  EXPECT_THAT(question(), HasSubstr("ten times the plan"));
  press(Qt::Key_Return);
  settle();
  EXPECT_EQ(weighed("mice", 0), 100);
  EXPECT_EQ(onScale(), "tenrecs kale");
}

TEST_F(KitchenRoomTest, AnotherWeightTypedInsteadIsJudgedAnew) {
  type("100");
  field().selectAll();
  type("10.1");
  EXPECT_EQ(weighed("mice", 0), 10.1);
}

TEST_F(KitchenRoomTest, ANegativeTareIsNeverKept) {
  type("-3");
  EXPECT_THAT(question(), HasSubstr("tare the empty bowl"));
  press(Qt::Key_Return);
  settle();
  EXPECT_EQ(onScale(), "mice kale");
  EXPECT_EQ(field().text(), QStringLiteral("-3"));  // what was typed is still there
}

TEST_F(KitchenRoomTest, WhatIsNoNumberIsToldAndStays) {
  type("1o");
  EXPECT_THAT(question(), HasSubstr("no weight"));
  EXPECT_EQ(field().text(), QStringLiteral("1o"));
}

TEST_F(KitchenRoomTest, TheBowlBeforeReadTwiceIsAskedAbout) {
  type("10");
  type("10");  // 20 g are planned, and 10 g is what the bowl before weighed a moment ago
  EXPECT_TRUE(asks());
  EXPECT_THAT(question(), HasSubstr("is this another bowl?"));
}

TEST_F(KitchenRoomTest, ACorrectionAsksWhyAndKeepsTheFirstWeight) {
  type("10");
  press(Qt::Key_Up);
  EXPECT_EQ(onScale(), "mice kale");
  type("10.1");
  QWidget* reason = QApplication::focusWidget();
  ASSERT_NE(reason, &field());
  QTest::keyClicks(reason, QStringLiteral("read wrongly"));
  QTest::keyClick(reason, Qt::Key_Return);
  settle();
  const auto weighings = example.bowl("mice").items.at(0).weighings;
  ASSERT_EQ(weighings.size(), 2U);
  EXPECT_EQ(weighings[0].actual, Grams(10));
  EXPECT_EQ(weighings[1].actual, Grams(10.1));
  EXPECT_EQ(weighings[1].correction, "read wrongly");
  EXPECT_EQ(QApplication::focusWidget(), &field());
}

TEST_F(KitchenRoomTest, EmptyEnterAndTheArrowKeysMoveWithoutWriting) {
  press(Qt::Key_Return);
  EXPECT_EQ(onScale(), "tenrecs kale");
  press(Qt::Key_Down);
  EXPECT_EQ(onScale(), "tenrecs crickets");
  press(Qt::Key_PageUp);
  EXPECT_EQ(onScale(), "mice kale");
  const store::Collection opened = store::Collection::open(example.file(), "2026-11-25T06:00:00Z");
  EXPECT_TRUE(store::bowlsOfDay(opened, kitchenDay()).empty());
}

TEST_F(KitchenRoomTest, WhatTheScaleReadsStandsInTheFieldUntilItIsConfirmed) {
  room.takeWeight(Grams(10.1));
  EXPECT_EQ(field().text(), QStringLiteral("10.1"));
  EXPECT_EQ(room.weighPane().bar().state(), intake::WeightState::In);
  press(Qt::Key_Return);
  settle();
  EXPECT_EQ(weighed("mice", 0), 10.1);
}

TEST_F(KitchenRoomTest, AnotherMachineThatWasFasterIsToldAndBothWeightsAreKept) {
  {
    store::Collection elsewhere = store::Collection::open(example.file(), "2026-11-25T06:00:00Z");
    const store::Author other{"Keeper B", "2026-11-25T07:00:00Z"};
    transfer::openDay(elsewhere, room.desk().sheet()->sheet, other);
    const store::WeightRead theirs{{{"mice", kitchenDay(), 1}, 1}, Grams(9.9)};
    store::weighIn(elsewhere, {&theirs, 1}, other);
  }
  room.desk().weigh(Grams(10));
  settle();
  EXPECT_TRUE(asks());
  EXPECT_THAT(question(), HasSubstr("both weights are kept"));
  EXPECT_EQ(example.bowl("mice").items.at(0).weighings.size(), 2U);
  EXPECT_EQ(weighed("mice", 0), 9.9);
}

TEST_F(KitchenRoomTest, ANewLotIsNamedAtTheScaleAndIsFedFromThisDayOn) {
  EXPECT_THAT(room.weighPane().lot().text().toStdString(), HasSubstr("lot ?"));
  press(Qt::Key_L);
  QLineEdit& lot = room.weighPane().lotField();
  ASSERT_EQ(QApplication::focusWidget(), &lot);
  QTest::keyClicks(&lot, QStringLiteral("K-7"));
  QTest::keyClick(&lot, Qt::Key_Return);
  settle();
  EXPECT_EQ(QApplication::focusWidget(), &field());
  EXPECT_THAT(room.weighPane().lot().text().toStdString(), HasSubstr("lot K-7"));
  press(Qt::Key_L);  // a slip: it is put right, not a second lot of the day
  QTest::keyClicks(&lot, QStringLiteral("K-9"));
  QTest::keyClick(&lot, Qt::Key_Return);
  settle();
  const auto lots = store::listLots(example.opener()());
  ASSERT_EQ(lots.size(), 1U);
  EXPECT_EQ(lots[0].record.lot, "K-9");
  EXPECT_EQ(lots[0].record.from, kitchenDay());
}

TEST_F(KitchenRoomTest, AnotherSectionSaysWhoHasNoBowl) {
  room.desk().showSection(QStringLiteral("Reptiles"));
  settle();
  EXPECT_EQ(room.bowlList().bowls().count(), 0);
  EXPECT_THAT(room.side().text().toStdString(), HasSubstr("dragon: no diet is in force"));
  EXPECT_FALSE(field().isEnabled());
}

TEST_F(KitchenRoomTest, LiveFoodOfTomorrowIsToBeFedToday) {
  EXPECT_THAT(room.side().text().toStdString(), HasSubstr("crickets, live"));
}

TEST_F(KitchenRoomTest, TheSheetAndItsLabelsArePrinted) {
  ASSERT_EQ(writeKitchenPage(*room.desk().sheet(), KitchenPage::Sheet, saved), std::nullopt);
  QFile file(QString::fromStdString(saved.string()));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_TRUE(file.readAll().startsWith("%PDF"));
  ASSERT_EQ(writeKitchenPage(*room.desk().sheet(), KitchenPage::Labels, saved), std::nullopt);
  EXPECT_TRUE(writeKitchenPage(*room.desk().sheet(), KitchenPage::Sheet, "sheet.xyz"));
}

TEST_F(KitchenRoomTest, AWeightTypedWhileTheSheetIsReadStandsWholeWhenItIsThere) {
  room.desk().showSection(QStringLiteral("Reptiles"));
  settle();
  room.desk().showSection(QStringLiteral("Small Mammals"));
  field().setFocus();
  ASSERT_EQ(QApplication::focusWidget(), &field());
  QTest::keyClicks(&field(), QStringLiteral("10.1"));
  EXPECT_EQ(room.desk().item(), nullptr) << "nothing is on the scale yet";
  settle();
  EXPECT_EQ(onScale(), "mice kale");
  EXPECT_EQ(field().text(), QStringLiteral("10.1"));
}

TEST_F(KitchenRoomTest, AWeightTypedWhileTheDayIsChangedIsNotCutInTwo) {
  room.desk().showDay(quantity::Date(std::chrono::sys_days(kitchenDay()) + std::chrono::days(1)));
  QTest::keyClicks(&field(), QStringLiteral("34"));
  settle();
  QTest::keyClicks(&field(), QStringLiteral("8"));
  EXPECT_EQ(field().text(), QStringLiteral("348"));
}

TEST_F(KitchenRoomTest, EnterKeepsNothingOfAFoodThatNobodyHasSeen) {
  room.desk().showSection(QStringLiteral("Reptiles"));
  settle();
  room.desk().showSection(QStringLiteral("Small Mammals"));
  field().setFocus();
  QTest::keyClicks(&field(), QStringLiteral("10"));
  press(Qt::Key_Return);
  settle();
  EXPECT_EQ(field().text(), QStringLiteral("10")) << "it stands beside the food, and waits for Enter";
  const store::Collection opened = store::Collection::open(example.file(), "2026-11-25T06:00:00Z");
  EXPECT_TRUE(store::bowlsOfDay(opened, kitchenDay()).empty());
}

TEST_F(KitchenRoomTest, AHandFasterThanTheDiskWeighsTheWholeSheetIn) {
  for (const char* weight : {"10", "20.1", "6"}) {
    QTest::keyClicks(&field(), QString::fromLatin1(weight));
    press(Qt::Key_Return);
  }
  settle();
  EXPECT_EQ(weighed("mice", 0), 10);
  EXPECT_EQ(weighed("tenrecs", 0), 20.1);
  EXPECT_EQ(weighed("tenrecs", 1), 6);
}

TEST_F(KitchenRoomTest, EnterTwiceIsOneWeight) {
  QTest::keyClicks(&field(), QStringLiteral("10"));
  press(Qt::Key_Return);
  press(Qt::Key_Return);
  settle();
  EXPECT_EQ(example.bowl("mice").items.at(0).weighings.size(), 1U);
}

TEST_F(KitchenRoomTest, EnterTypedAheadKeepsNoWeightThatIsAskedAbout) {
  QTest::keyClicks(&field(), QStringLiteral("10"));
  press(Qt::Key_Return);
  QTest::keyClicks(&field(), QStringLiteral("200"));  // 20 g are planned
  press(Qt::Key_Return);
  press(Qt::Key_Return);
  settle();
  EXPECT_EQ(onScale(), "tenrecs kale");
  EXPECT_TRUE(asks());
  EXPECT_TRUE(example.bowl("tenrecs").items.at(0).weighings.empty());
}

TEST_F(KitchenRoomTest, EveryControlHasAName) {
  expectNamedControls(room);
}

}  // namespace
}  // namespace tarebowl::ui
