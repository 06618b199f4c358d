// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/animals_room.h"

#include "tests/ui/animals/example_animals.h"
#include "tests/ui/shared/named_controls.h"
#include "ui/animals/animal_list.h"
#include "ui/animals/energy_card.h"
#include "ui/animals/energy_model.h"
#include "ui/animals/group_pane.h"
#include "ui/animals/history_card.h"
#include "ui/animals/mass_card.h"
#include "ui/animals/mass_chart.h"
#include "ui/animals/mass_entry.h"
#include "ui/animals/model_picker.h"
#include "ui/animals/model_start.h"
#include "ui/animals/targets_card.h"
#include "ui/animals/targets_ladder.h"
#include "ui/shared/plain_table.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;

class AnimalsRoomTest : public ::testing::Test {
 protected:
  AnimalsRoomTest() {
    room.resize(1290, 740);
    room.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&room));
  }
  void openTenrecs() {
    example.openOn(room.desk());
    settle(room.desk());
    showGroup(room.desk(), "tenrecs");
  }
  QAbstractButton* button(const char* text) {
    for (auto* candidate : room.findChildren<QAbstractButton*>())
      if (candidate->isVisible() && candidate->text() == QString::fromUtf8(text)) return candidate;
    return nullptr;
  }
  void press(const char* text) {
    QAbstractButton* found = button(text);
    ASSERT_NE(found, nullptr) << text;
    ASSERT_TRUE(found->isEnabled()) << text;
    QTest::mouseClick(found, Qt::LeftButton);
    settle(room.desk());
  }
  QLineEdit* field(const char* name) {
    for (auto* candidate : room.findChildren<QLineEdit*>())
      if (candidate->isVisible() && candidate->accessibleName() == QString::fromUtf8(name)) return candidate;
    ADD_FAILURE() << "no field is called " << name;
    return nullptr;
  }
  QComboBox* choice(const char* name) {
    for (auto* candidate : room.findChildren<QComboBox*>())
      if (candidate->isVisible() && candidate->accessibleName() == QString::fromUtf8(name)) return candidate;
    ADD_FAILURE() << "no choice is called " << name;
    return nullptr;
  }
  /// Types a mass of T-01 into the entry and presses Enter.
  void weigh(const char* mass, const char* unit) {
    choice("Who was weighed")->setCurrentText(QStringLiteral("T-01"));
    choice("Unit of the mass")->setCurrentText(QString::fromUtf8(unit));
    QLineEdit* entry = field("Body mass");
    entry->setFocus();
    entry->selectAll();
    QTest::keyClicks(entry, QString::fromUtf8(mass));
    QTest::keyClick(entry, Qt::Key_Return);
    settle(room.desk());
  }
  std::vector<double> masses() { return gramsOf(room.desk(), "T-01"); }
  bool says(const char* part) {
    for (const auto* label : room.findChildren<QLabel*>())
      if (label->isVisible() && label->text().contains(QString::fromUtf8(part))) return true;
    return false;
  }
  ExampleHerd example;
  OpenCollection collection;
  AnimalsRoom room{collection, &exampleToday};
};

TEST_F(AnimalsRoomTest, FindingAnAnimalByTypingShowsIt) {
  openTenrecs();
  QTest::keyClicks(&room.list().field(), QStringLiteral("T-02"));
  QTest::keyClick(&room.list().field(), Qt::Key_Return);
  settle(room.desk());
  ASSERT_TRUE(room.desk().page() && room.desk().page()->individual);
  EXPECT_EQ(room.desk().page()->individual->record.code, "T-02");
}

TEST_F(AnimalsRoomTest, AnOrdinaryMassIsWrittenDownAtOnce) {
  openTenrecs();
  weigh("185", "g");
  ASSERT_EQ(masses().size(), 6U);
  EXPECT_DOUBLE_EQ(masses().back(), 185.0);
}

TEST_F(AnimalsRoomTest, AHundredAndEightyKilogramsForATenrecAreQuestioned) {
  openTenrecs();
  weigh("180", "kg");
  EXPECT_EQ(masses().size(), 5U) << "nothing was written";
  EXPECT_TRUE(says("Were these grams, written as kilograms?"));
  ASSERT_NE(button("It was 180\u00a0g"), nullptr);
  QTest::keyClick(field("Body mass"), Qt::Key_Return);
  settle(room.desk());
  EXPECT_EQ(masses().size(), 5U) << "Enter once more is no second yes";
  press("It was 180\u00a0g");
  ASSERT_EQ(masses().size(), 6U);
  EXPECT_DOUBLE_EQ(masses().back(), 180.0);
}

TEST_F(AnimalsRoomTest, ADoubtfulMassIsKeptOnASecondYesAndMarkedInTheChart) {
  openTenrecs();
  weigh("180", "kg");
  press("It is 180\u00a0kg: write it down");
  ASSERT_EQ(masses().size(), 6U);
  const MassChartState& state = room.groupPane().mass().chart().state();
  EXPECT_EQ(state.unit.toStdString(), "g") << "a wild reading does not stretch the axis";
  bool marked = false;
  for (const MassLine& line : state.lines)
    for (const MassPoint& point : line.points) marked = marked || point.trust == ReadingTrust::Doubtful;
  EXPECT_TRUE(marked);
  EXPECT_THAT(state.spoken.toStdString(), HasSubstr("(doubtful)"));
}

TEST_F(AnimalsRoomTest, AScoreOffItsScaleIsNotWrittenDown) {
  openTenrecs();
  QLineEdit* score = field("Body condition score");
  score->setFocus();
  QTest::keyClicks(score, QStringLiteral("12"));
  QTest::keyClick(score, Qt::Key_Return);
  settle(room.desk());
  EXPECT_TRUE(says("has no score of 12"));
  EXPECT_FALSE(room.desk().undoStack().canUndo());
}

TEST_F(AnimalsRoomTest, AMassAndAScoreOfOneVisitAreWrittenTogether) {
  openTenrecs();
  QTest::keyClicks(field("Body condition score"), QStringLiteral("5"));
  weigh("184", "g");
  EXPECT_EQ(masses().size(), 6U);
  const MeasuredSeries* series = seriesOf(*room.desk().page(), "T-01");
  ASSERT_NE(series, nullptr);
  ASSERT_EQ(series->conditions.size(), 1U);
  EXPECT_EQ(series->conditions.front().record.reading.score, 5.0);
}

TEST_F(AnimalsRoomTest, TheNumberOfAColonyIsTypedIn) {
  openTenrecs();
  showGroup(room.desk(), "dragons");
  QLineEdit* count = field("Animals");
  count->setFocus();
  count->selectAll();
  QTest::keyClicks(count, QStringLiteral("4"));
  QTest::keyClick(count, Qt::Key_Return);
  settle(room.desk());
  EXPECT_EQ(headcountOf(*room.desk().page(), exampleToday()), 4);
}

TEST_F(AnimalsRoomTest, ABirthAfterADeathIsRefusedInWords) {
  openTenrecs();
  showIndividual(room.desk(), "T-01");
  QLineEdit* left = field("Left");
  left->setFocus();
  QTest::keyClicks(left, QStringLiteral("2020-01-01"));
  QTest::keyClick(left, Qt::Key_Return);
  settle(room.desk());
  EXPECT_TRUE(says("It cannot be born after it left or died."));
  EXPECT_FALSE(room.desk().page()->individual->record.left.has_value());
}

TEST_F(AnimalsRoomTest, AnEnergyNeedBeginsWithAPublishedChoiceAndUndoTakesItAway) {
  openTenrecs();
  press("energy need");
  QComboBox* choices = choice("Published energy at 1 kg of body mass");
  choices->setCurrentIndex(1);
  emit choices->activated(1);
  settle(room.desk());
  ASSERT_EQ(room.desk().page()->plans.size(), 1U);
  // The mean of 183 and 200 g; 70 x 0.1915^0.75 = 20.26 kcal.
  const EnergyModel& model = room.groupPane().energy().model();
  EXPECT_NEAR(model.derivation().low.value(), 20.26, 0.01);
  room.desk().undoStack().undo();
  settle(room.desk());
  EXPECT_TRUE(room.desk().page()->plans.empty());
}

TEST_F(AnimalsRoomTest, EditingATargetInForceShowsTheDraftThatItMade) {
  openTenrecs();
  press("targets");
  TargetsModel& targets = room.groupPane().targets().ladder().model();
  ASSERT_TRUE(
      targets.setData(targets.index(targets.rowOf("calcium"), TargetsModel::Min), QStringLiteral("9")));
  QTest::qWait(10);
  settle(room.desk());
  EXPECT_TRUE(choice("Version of the profile")->currentText().contains(QStringLiteral("draft")));
  EXPECT_EQ(targets.rowAt(targets.index(targets.rowOf("calcium"), 0))->min, 9.0);
  press("Put in force…");
  QTest::keyClicks(field("Reason"), QStringLiteral("agreed with the vet"));
  press("Put in force");
  EXPECT_TRUE(choice("Version of the profile")->currentText().contains(QStringLiteral("in force")));
}

TEST_F(AnimalsRoomTest, LiftingASafeUpperLimitNeedsAReasonThatIsKept) {
  openTenrecs();
  press("targets");
  TargetsLadder& ladder = room.groupPane().targets().ladder();
  ladder.table().setCurrentIndex(ladder.model().index(ladder.model().rowOf("iron"), 0));
  press("Only wish it");
  EXPECT_EQ(room.desk().page()->profiles.size(), 1U) << "nothing yet";
  QTest::keyClicks(field("Reason"), QStringLiteral("the vet wants a trial"));
  press("Lift the limit");
  ASSERT_EQ(room.desk().page()->profiles.size(), 2U);
  const auto& targets = room.desk().page()->profiles.back().stored.record.profile.targets;
  const auto iron = std::find_if(targets.begin(), targets.end(),
                                 [](const animal::ProfileTarget& rule) { return rule.target.id == "iron"; });
  ASSERT_NE(iron, targets.end());
  ASSERT_TRUE(iron->lifted.has_value());
  EXPECT_EQ(iron->lifted->reason, "the vet wants a trial");
  EXPECT_EQ(iron->lifted->on, "2026-11-25");
}

TEST_F(AnimalsRoomTest, TheFinderGoesToAGroup) {
  openTenrecs();
  showGroup(room.desk(), "dragons");
  const auto hits = room.find(QStringLiteral("trio"), 5);
  ASSERT_EQ(hits.size(), 1U);
  room.goTo(hits.front().id);
  settle(room.desk());
  EXPECT_EQ(room.desk().page()->group->record.code, "tenrecs");
}

TEST_F(AnimalsRoomTest, WhatChangedIsListedWithWhoDidIt) {
  openTenrecs();
  press("what changed");
  const QListWidget& list = room.groupPane().history().list();
  ASSERT_GT(list.count(), 0);
  EXPECT_THAT(list.item(0)->text().toStdString(), HasSubstr("test"));
}

TEST_F(AnimalsRoomTest, EveryControlHasANameForAScreenReader) {
  openTenrecs();
  for (const char* shown : {"tenrecs", "T-01"}) {
    if (std::string(shown) == "T-01") showIndividual(room.desk(), shown);
    expectNamedControls(room);
  }
}

TEST_F(AnimalsRoomTest, AGroupWithoutAProfileStartsFromAModelSpecies) {
  openTenrecs();
  showGroup(room.desk(), "dragons");
  room.groupPane().showSheet(GroupPane::Targets);
  ModelStart& start = room.groupPane().targets().modelStart();
  ASSERT_TRUE(start.isVisible());
  ASSERT_FALSE(button("Start from this model")->isEnabled()) << "which, and why?";
  start.picker().tick("reptile-omnivorous");
  QTest::keyClicks(field("Why the model stands in"), QStringLiteral("it eats leaves and insects"));
  press("Start from this model");
  settle(room.desk());
  const AnimalPage& page = room.desk().page().value();
  const ProfileInSight* profile = profileToShow(page);
  ASSERT_NE(profile, nullptr);
  EXPECT_EQ(profile->state, store::ProfileState::InForce);
  EXPECT_EQ(profile->stored.record.profile.code, page.group->record.profile);
  EXPECT_EQ(profile->stored.record.profile.parent->code, "reptile-omnivorous");
  EXPECT_EQ(profile->stored.record.profile.whyModel, "it eats leaves and insects");
  EXPECT_FALSE(start.isVisible());
  EXPECT_TRUE(room.groupPane().targets().ladder().isVisible());
  EXPECT_GT(room.groupPane().targets().ladder().model().rowCount(), 0);
  room.desk().undoStack().undo();
  settle(room.desk());
  EXPECT_TRUE(room.desk().page()->group->record.profile.empty()) << "one step takes all of it back";
  EXPECT_TRUE(start.isVisible());
}

TEST_F(AnimalsRoomTest, ADietIsDesignedForAGroupThatHasTargets) {
  QStringList wanted;
  QObject::connect(&room, &AnimalsRoom::dietWanted, [&](const QString& group) { wanted << group; });
  openTenrecs();
  press("Design a diet");
  EXPECT_EQ(wanted, QStringList{QStringLiteral("tenrecs")});
  showGroup(room.desk(), "dragons");
  EXPECT_FALSE(button("Design a diet")->isEnabled());
  EXPECT_TRUE(button("Design a diet")->toolTip().contains(QStringLiteral("no profile in force")));
}

}  // namespace
}  // namespace tarebowl::ui
