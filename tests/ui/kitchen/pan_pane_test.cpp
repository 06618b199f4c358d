// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Control pans and the rule of weighing, in the room and by keys.
#include "ui/kitchen/pan_pane.h"

#include "core/store/feeding_reading.h"
#include "core/store/feeding_verbs.h"
#include "core/store/swap_verbs.h"
#include "tests/ui/kitchen/kitchen_at_work.h"
#include "tests/ui/shared/named_controls.h"
#include "ui/kitchen/leftover_pane.h"
#include "ui/kitchen/tolerance_form.h"
#include "ui/kitchen/weigh_pane.h"
#include "ui/shared/number_field.h"

#include <QApplication>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using quantity::Grams;
using ::testing::HasSubstr;

class PanPaneTest : public KitchenAtWork {
 protected:
  void openPans() {
    room.desk().setTask(KitchenDesk::Task::Leftovers);
    QTest::keyClick(&room.leftoverPane().field(), Qt::Key_P);
  }
  PanPane& pans() { return room.panPane(); }
  void choose(const QString& food) {
    const int place = pans().food().findText(food);
    ASSERT_GE(place, 0) << food.toStdString();
    pans().food().setCurrentIndex(place);
  }
  /// From the food on, by keys.
  void weigh(const char* start, const char* end) {
    QTest::keyClick(&pans().food(), Qt::Key_Return);
    ASSERT_EQ(QApplication::focusWidget(), &pans().start());
    QTest::keyClicks(&pans().start(), QString::fromUtf8(start));
    QTest::keyClick(&pans().start(), Qt::Key_Return);
    ASSERT_EQ(QApplication::focusWidget(), &pans().end());
    QTest::keyClicks(&pans().end(), QString::fromUtf8(end));
    enter();
  }
  void enter() {
    QTest::keyClick(&pans().end(), Qt::Key_Return);
    settle();
  }
  [[nodiscard]] std::vector<store::StoredControlPan> kept() const {
    return store::controlPansBetween(example.opener()(), kitchenDay(), kitchenDay());
  }
};

TEST_F(PanPaneTest, APanOfAFoodIsKeptForTheSectionAndTheDay) {
  openPans();
  ASSERT_TRUE(pans().isVisible());
  choose(QStringLiteral("kale, raw"));
  weigh("100", "88");
  ASSERT_EQ(kept().size(), 1U);
  const intake::ControlPan pan = kept()[0].record;
  EXPECT_EQ(pan.place, "Small Mammals");
  EXPECT_EQ(pan.day, kitchenDay());
  EXPECT_EQ(pan.food, "kale");
  EXPECT_EQ(pan.start, Grams(100));
  EXPECT_EQ(pan.end, Grams(88));
  EXPECT_EQ(pan.who, "Keeper A");
  ASSERT_EQ(pans().pans().count(), 1);
  EXPECT_THAT(pans().pans().item(0)->text().toStdString(), HasSubstr("lost 12"));  // 1 - 88/100
}

TEST_F(PanPaneTest, WhatNoNightDoesIsAskedAboutAndKeptOnlyWhenConfirmed) {
  openPans();
  choose(QStringLiteral("kale, raw"));
  weigh("88", "100");  // the wrong way round
  EXPECT_TRUE(kept().empty());
  EXPECT_TRUE(pans().message().isVisible());
  enter();
  EXPECT_EQ(kept().size(), 1U);
}

TEST_F(PanPaneTest, APanThatWasPutOutEmptyIsNeverKept) {
  openPans();
  choose(QStringLiteral("kale, raw"));
  weigh("0", "10");
  enter();
  EXPECT_TRUE(kept().empty());
  EXPECT_EQ(pans().start().text(), QStringLiteral("0")) << "what was typed stays, to be put right";
}

TEST_F(PanPaneTest, APanIsPutRightOrTakenOutFromTheList) {
  openPans();
  choose(QStringLiteral("kale, raw"));
  weigh("100", "88");
  pans().pans().setCurrentRow(0);
  emit pans().pans().itemActivated(pans().pans().item(0));
  pans().end().setText(QStringLiteral("90"));
  enter();
  ASSERT_EQ(kept().size(), 1U);
  EXPECT_EQ(kept()[0].record.end, Grams(90));
  pans().pans().setCurrentRow(0);
  QTest::keyClick(&pans().pans(), Qt::Key_Delete);
  settle();
  EXPECT_TRUE(kept().empty());
}

TEST_F(PanPaneTest, APanIsPutOutWithItsFirstWeightWhileBowlsAreWeighedIn) {
  QTest::keyClick(&room.weighPane().field(), Qt::Key_P);
  ASSERT_TRUE(pans().isVisible());
  choose(QStringLiteral("kale, raw"));
  weigh("100", "");
  ASSERT_EQ(kept().size(), 1U);
  EXPECT_EQ(kept()[0].record.start, Grams(100));
  EXPECT_EQ(kept()[0].record.end, std::nullopt);
  EXPECT_FALSE(kept()[0].record.startAt.empty());
  EXPECT_THAT(pans().pans().item(0)->text().toStdString(), HasSubstr("still stands"));
  EXPECT_EQ(QApplication::focusWidget(), &pans().food()) << "for the next pan";
  QTest::keyClick(&pans().food(), Qt::Key_Escape);
  EXPECT_EQ(QApplication::focusWidget(), &room.weighPane().field());
}

TEST_F(PanPaneTest, WhatCameBackIsAskedForFirstWhereBowlsComeBack) {
  openPans();
  for (const char* food : {"kale, raw", "crickets, live"}) {
    choose(QString::fromUtf8(food));
    weigh("100", "");
  }
  ASSERT_EQ(kept().size(), 2U);
  room.showPans(QStringLiteral("Small Mammals"), kitchenDay());
  settle();
  ASSERT_TRUE(pans().isVisible());
  EXPECT_EQ(pans().start().text(), QStringLiteral("100"));
  EXPECT_EQ(QApplication::focusWidget(), &pans().end());
  QTest::keyClicks(&pans().end(), QStringLiteral("88"));
  enter();
  EXPECT_EQ(QApplication::focusWidget(), &pans().end()) << "of the second pan";
  EXPECT_EQ(pans().pans().currentRow(), 1);
  QTest::keyClicks(&pans().end(), QStringLiteral("95"));
  enter();
  EXPECT_TRUE(store::controlPansThatStand(example.opener()()).empty());
  EXPECT_EQ(kept()[0].record.end, Grams(88));
  EXPECT_EQ(kept()[1].record.end, Grams(95));
  EXPECT_EQ(kept().size(), 2U);
}

TEST_F(PanPaneTest, WhatIsNoWeightIsNamed) {
  openPans();
  choose(QStringLiteral("kale, raw"));
  weigh("", "");
  EXPECT_THAT(pans().message().text().toStdString(), HasSubstr("when it was put out"));
  pans().start().setText(QStringLiteral("100"));
  pans().end().setText(QStringLiteral("-"));
  enter();
  EXPECT_THAT(pans().message().text().toStdString(), HasSubstr("or nothing while it still stands"));
  EXPECT_TRUE(kept().empty());
}

TEST_F(PanPaneTest, EscapeLeadsBackToTheLeftovers) {
  room.desk().weigh(Grams(10));  // only what went in can have been left
  settle();
  openPans();
  QTest::keyClick(&pans().food(), Qt::Key_Escape);
  EXPECT_FALSE(pans().isVisible());
  EXPECT_EQ(QApplication::focusWidget(), &room.leftoverPane().field());
}

TEST_F(PanPaneTest, TheRuleOfWeighingIsTheHousesOwnAndSaysWhatItComesTo) {
  ToleranceForm& form = room.toleranceForm();
  room.desk().goTo({1, 0});  // 20 g of kale in a bowl of 26 g, on a scale of 0.1 g
  form.open();
  EXPECT_EQ(form.rule(), intake::ToleranceRule{});
  form.field(0).setValue(3);
  EXPECT_THAT(form.example().text().toStdString(),
              HasSubstr("± 0.3 g"));  // 3 · 0.1 g, more than the two steps
  QTest::keyClick(&form.field(0), Qt::Key_Return);
  settle();
  EXPECT_FALSE(form.isVisible());
  EXPECT_EQ(store::toleranceRule(example.opener()()).ofStep, 3);
  EXPECT_DOUBLE_EQ(room.desk().tolerance().value(), 0.3);
}

TEST_F(PanPaneTest, EscapeLeavesTheRuleAsItWas) {
  room.toleranceForm().open();
  room.toleranceForm().field(0).setValue(9);
  QTest::keyClick(&room.toleranceForm().field(0), Qt::Key_Escape);
  settle();
  EXPECT_EQ(store::toleranceRule(example.opener()()), intake::ToleranceRule{});
}

TEST_F(PanPaneTest, EveryControlHasAName) {
  openPans();
  room.toleranceForm().open();
  expectNamedControls(room);
}

}  // namespace
}  // namespace tarebowl::ui
