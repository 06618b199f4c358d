// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the groups of the invented sample really ate, looked at over days and years, and yesterday's bowls.
#include "ui/intake/intake_room.h"

#include "tests/ui/shared/named_controls.h"
#include "tests/ui/shared/sample_in_room.h"
#include "ui/intake/faeces_card.h"
#include "ui/intake/food_bands_chart.h"
#include "ui/intake/group_choice.h"
#include "ui/intake/study_page.h"
#include "ui/intake/study_text.h"
#include "ui/intake/value_chart.h"
#include "ui/intake/yesterday_page.h"
#include "ui/kitchen/leftover_pane.h"
#include "ui/shared/paths.h"
#include "ui/shared/plain_table.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QTabWidget>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;

class IntakeRoomTest : public SampleInRoom<IntakeRoom> {
 protected:
  IntakeRoomTest() : SampleInRoom(QStringLiteral("Keeper")) {}
  void show(const char* group) {
    room->desk().show(group);
    settle();
  }
  [[nodiscard]] const transfer::IntakeTrend& trend() const { return room->desk().trend().value(); }
};

TEST_F(IntakeRoomTest, ShowsTheLastSixtyDaysOfTheFirstGroupThatIsFed) {
  EXPECT_EQ(room->desk().span().days(), 60);
  EXPECT_EQ(room->desk().span().until, QDate(2026, 11, 24));
  EXPECT_THAT(said(), HasSubstr("Invented sample"));
  EXPECT_THAT(said(), HasSubstr("missing, not zero"));
  EXPECT_GT(room->table().model()->rowCount(), 3);
}

// Second planted story: ten days in August on which the dragons leave their greens.
TEST_F(IntakeRoomTest, TellsThatCalciumFellWhenTheDragonsLeftTheirGreens) {
  show("dragons");
  press("All");
  EXPECT_EQ(room->desk().span().days(), 120);
  EXPECT_THAT(said(), HasSubstr("fell"));
  EXPECT_THAT(said(), HasSubstr("median of"));
  EXPECT_THAT(said(), HasSubstr("house rule"));
}

TEST_F(IntakeRoomTest, IsMovedAndLookedAtCloserByKeys) {
  show("lemurs");
  press("All");
  room->foods().setFocus();
  QTest::keyClick(&room->foods(), Qt::Key_Plus);
  settle();
  EXPECT_EQ(room->desk().span().days(), 60);
  const QDate from = room->desk().span().from;
  QTest::keyClick(&room->foods(), Qt::Key_Left);
  settle();
  EXPECT_EQ(room->desk().span().from, from.addDays(-15));
  EXPECT_EQ(room->value().span(), room->desk().span()) << "all charts move together";
  QTest::keyClick(&room->foods(), Qt::Key_0);
  settle();
  EXPECT_EQ(room->desk().span().days(), 120);
}

TEST_F(IntakeRoomTest, FollowsWhateverIsChosen) {
  show("lemurs");
  room->desk().follow(food::nutrients::protein());
  settle();
  ASSERT_FALSE(trend().followed.targets.empty());
  EXPECT_EQ(trend().followed.targets.front().nutrient, food::nutrients::protein());
  const ValueLine line = valueLineOf(trend(), transfer::kSubjectLine);
  EXPECT_EQ(line.points.size(), line.eaten.size());
}

TEST_F(IntakeRoomTest, CopiesAndWritesWhatIsShown) {
  show("fennecs");
  press("Copy");
  const QStringList lines = QApplication::clipboard()->text().trimmed().split(QLatin1Char('\n'));
  EXPECT_EQ(lines.size(), 61) << "titles and a row a day";
  sample.page = sample.at("intake.csv");
  press("CSV…");
  QFile csv(toText(sample.page));
  ASSERT_TRUE(csv.open(QIODevice::ReadOnly));
  EXPECT_EQ(csv.readAll().count('\n'), 61);
  sample.page = sample.at("intake.pdf");
  press("PDF…");
  QFile pdf(toText(sample.page));
  ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
  EXPECT_TRUE(pdf.readAll().startsWith("%PDF"));
  sample.page = sample.at("intake.png");
  press("PNG…");
  EXPECT_GT(QImage(toText(sample.page)).height(), 400);
}

TEST_F(IntakeRoomTest, WritesTheDaysInSightAsAStudy) {
  show("fennecs");
  for (const char* name : {"study.pdf", "study.xlsx"}) {
    sample.page = sample.at(name);
    press("Study…");
    QFile written(toText(sample.page));
    ASSERT_TRUE(written.open(QIODevice::ReadOnly)) << name;
    EXPECT_GT(written.size(), 1000) << name;
  }
}

TEST_F(IntakeRoomTest, AFileOfAnotherKindIsToldInTheRoom) {
  sample.page = sample.at("intake.doc");
  press("CSV…");
  EXPECT_THAT(said(), HasSubstr(".png, .pdf or .csv"));
}

TEST_F(IntakeRoomTest, AGroupIsChosenWithinItsSection) {
  auto* groups = room->findChild<GroupChoice*>();
  const int all = groups->groups().count();
  groups->sections().setCurrentIndex(1);
  emit groups->sections().activated(1);
  EXPECT_LT(groups->groups().count(), all);
  EXPECT_GT(groups->groups().count(), 0);
}

TEST_F(IntakeRoomTest, YesterdaysBowlsAreFilledInByKeysInTheOrderOfTheSheet) {
  room->findChild<QTabWidget*>()->setCurrentIndex(1);
  settle();
  KitchenDesk& desk = room->yesterday().desk();
  ASSERT_TRUE(QTest::qWaitFor([&] { return desk.sheet().has_value() && collection.isIdle(); }));
  EXPECT_EQ(desk.day(), quantity::parseDate("2026-11-24").value());
  EXPECT_EQ(desk.task(), KitchenDesk::Task::Leftovers);
  EXPECT_TRUE(room->yesterday().pane().field().hasFocus());
}

TEST_F(IntakeRoomTest, AStudyIsPlannedForThePrecisionThatIsWanted) {
  show("fennecs");
  StudyPage& study = room->study();
  room->findChild<QTabWidget*>()->setCurrentWidget(&study);
  settle();
  ASSERT_NE(study.desk().plan(), nullptr);
  const int coarse = study.desk().plan()->plan.days;
  EXPECT_EQ(study.days().text(), planHeading(*study.desk().plan()));
  EXPECT_THAT(said(), HasSubstr("A control pan each day in Small Mammals"));
  study.precision().setValue(2.0);
  settle();
  ASSERT_NE(study.desk().plan(), nullptr);
  EXPECT_GT(study.desk().plan()->plan.days, coarse);
  sample.page = sample.at("plan.pdf");
  press("Plan…");
  QFile written(toText(sample.page));
  ASSERT_TRUE(written.open(QIODevice::ReadOnly));
  EXPECT_TRUE(written.readAll().startsWith("%PDF"));
}

TEST_F(IntakeRoomTest, FaecesAreKeptAndTakenOut) {
  show("fennecs");
  room->findChild<QTabWidget*>()->setCurrentWidget(&room->study());
  settle();
  FaecesCard& faeces = room->study().faeces();
  faeces.fresh().setText(QStringLiteral("412"));
  QTest::keyClick(&faeces.fresh(), Qt::Key_Return);
  EXPECT_THAT(faeces.message().text().toStdString(), HasSubstr("dry matter"));
  faeces.dryMatter().setText(QStringLiteral("24.3"));
  faeces.values().setText(QStringLiteral("CA 1850 ± 90; unobtainium 3"));
  QTest::keyClick(&faeces.values(), Qt::Key_Return);
  EXPECT_THAT(faeces.message().text().toStdString(), HasSubstr("unobtainium"));
  faeces.values().setText(QStringLiteral("CA 1850 ± 90; P 1200"));
  QTest::keyClick(&faeces.values(), Qt::Key_Return);
  settle();
  ASSERT_EQ(faeces.list().count(), 1);
  EXPECT_TRUE(faeces.fresh().text().isEmpty());
  EXPECT_EQ(room->study().desk().faeces().at(0).record.values.at(0).sd, 90.0);
  faeces.list().setCurrentRow(0);
  QTest::keyClick(&faeces.list(), Qt::Key_Delete);
  settle();
  EXPECT_EQ(faeces.list().count(), 0);
}

TEST_F(IntakeRoomTest, EveryControlOfAStudyHasAName) {
  room->findChild<QTabWidget*>()->setCurrentWidget(&room->study());
  settle();
  expectNamedControls(*room);
}

TEST_F(IntakeRoomTest, EveryControlHasAName) {
  expectNamedControls(*room);
}

}  // namespace
}  // namespace tarebowl::ui
