// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/animal_desk.h"

#include "tests/ui/animals/example_animals.h"
#include "ui/animals/animal_list_model.h"
#include "ui/animals/change_story.h"

#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using ::testing::DoubleEq;
using ::testing::ElementsAre;

class AnimalDeskTest : public ::testing::Test {
 protected:
  AnimalDeskTest() {
    example.openOn(desk);
    showGroup(desk, "tenrecs");
    QObject::connect(&collection, &OpenCollection::hindered,
                     [this](const Refusal& refusal) { refused = refusal.why; });
  }
  store::MassRecord weighing(double grams) const {
    return {.individual = "T-02",
            .reading = {.on = desk.today(), .mass = quantity::toKilograms(quantity::Grams(grams))}};
  }
  int headcount() const { return headcountOf(*desk.page(), desk.today()).value_or(-1); }
  ExampleHerd example;
  OpenCollection collection;
  AnimalDesk desk{collection, &exampleToday};
  QString refused;
};

TEST_F(AnimalDeskTest, AGroupShowsItsMembersTheirMassesAndItsProfile) {
  ASSERT_TRUE(desk.page() && desk.page()->group);
  EXPECT_EQ(headcount(), 3);
  EXPECT_THAT(gramsOf(desk, "T-01"),
              ElementsAre(DoubleEq(180), DoubleEq(182), DoubleEq(184), DoubleEq(181), DoubleEq(183)));
  ASSERT_NE(profileToShow(*desk.page()), nullptr);
  EXPECT_EQ(profileToShow(*desk.page())->state, store::ProfileState::InForce);
}

TEST_F(AnimalDeskTest, TheMassOfAGroupIsTheMeanOfItsWeighedAnimals) {
  const auto mass = massOf(*desk.page(), desk.today());
  ASSERT_TRUE(mass.has_value());
  EXPECT_EQ(mass->animals, 2) << "T-03 was never weighed";
  EXPECT_NEAR(mass->mass.value(), (0.183 + 0.200) / 2, 1e-12);
}

TEST_F(AnimalDeskTest, AMassIsWrittenDownAndUndoTakesItBack) {
  desk.addMass(weighing(202), store::Confirmed::No);
  settle(desk);
  EXPECT_THAT(gramsOf(desk, "T-02"), ElementsAre(DoubleEq(200), DoubleEq(202)));
  desk.undoStack().undo();
  settle(desk);
  EXPECT_THAT(gramsOf(desk, "T-02"), ElementsAre(DoubleEq(200)));
}

TEST_F(AnimalDeskTest, AnAnimalThatLeavesTheGroupIsNotCountedFromThatDayOn) {
  desk.endStay(desk.page()->stays.front().id);
  settle(desk);
  EXPECT_EQ(headcount(), 2);
  desk.undoStack().undo();
  settle(desk);
  EXPECT_EQ(headcount(), 3);
}

TEST_F(AnimalDeskTest, ANewAnimalAndItsStayAreTakenBackAsOne) {
  desk.addIndividual({.code = "T-04", .species = "tenrec"}, "tenrecs");
  settle(desk);
  EXPECT_EQ(headcount(), 4);
  EXPECT_EQ(desk.undoStack().count(), 1);
  desk.undoStack().undo();
  settle(desk);
  EXPECT_EQ(headcount(), 3);
  EXPECT_EQ(desk.herd().individualOf("T-04"), nullptr);
  desk.undoStack().redo();
  settle(desk);
  EXPECT_EQ(headcount(), 4);
}

TEST_F(AnimalDeskTest, WhereTheSecondOfTwoStepsIsRefusedTheFirstIsNotWrittenEither) {
  desk.addIndividual({.code = "T-05", .species = "tenrec"}, "no-such-group");
  settle(desk);
  EXPECT_FALSE(refused.isEmpty());
  desk.refresh();
  settle(desk);
  EXPECT_EQ(desk.herd().individualOf("T-05"), nullptr);
}

TEST_F(AnimalDeskTest, WhatChangedWhenIsToldInWords) {
  animal::Group group = desk.page()->group->record;
  group.section = "Night house";
  desk.changeGroup(group);
  settle(desk);
  ASSERT_FALSE(desk.history().empty());
  const std::string story = storyOf(desk.history().front()).toStdString();
  EXPECT_NE(story.find("section: Night house instead of Small Mammals"), std::string::npos) << story;
}

TEST_F(AnimalDeskTest, TheHistoryOfAGroupIsItsOwnAndThatOfItsAnimals) {
  for (const store::Change& change : desk.history())
    EXPECT_EQ(storyOf(change).toStdString().find("Dragons"), std::string::npos);
  EXPECT_GE(desk.history().size(), 6U) << "six masses at least";
}

TEST_F(AnimalDeskTest, AnEditOfAProfileInForceDraftsTheNextVersion) {
  const ProfileInSight shown = *profileToShow(*desk.page());
  animal::TargetProfile after = shown.stored.record.profile;
  after.targets.front().target.min = 10.0;
  desk.changeProfile(shown, after, QStringLiteral("change calcium"));
  settle(desk);
  ASSERT_EQ(desk.page()->profiles.size(), 2U);
  const ProfileInSight& draft = desk.page()->profiles.back();
  EXPECT_EQ(draft.state, store::ProfileState::Draft);
  EXPECT_EQ(draft.stored.record.profile.version, 2);
  EXPECT_EQ(draft.stored.record.profile.targets.front().target.min, 10.0);
  EXPECT_EQ(desk.page()->profiles.front().stored.record.profile.targets.front().target.min, 8.0);
  desk.undoStack().undo();
  settle(desk);
  EXPECT_EQ(desk.page()->profiles.size(), 1U);
}

TEST_F(AnimalDeskTest, ADraftIsPutInForceForAReason) {
  const ProfileInSight shown = *profileToShow(*desk.page());
  animal::TargetProfile after = shown.stored.record.profile;
  after.note = "reviewed";
  desk.changeProfile(shown, after, QStringLiteral("note"));
  settle(desk);
  desk.putInForce(desk.page()->profiles.back(), QStringLiteral(" "));
  settle(desk);
  EXPECT_EQ(desk.page()->profiles.back().state, store::ProfileState::Draft) << "no reason, nothing done";
  desk.putInForce(desk.page()->profiles.back(), QStringLiteral("agreed with the vet"));
  settle(desk);
  EXPECT_EQ(desk.page()->profiles.back().state, store::ProfileState::InForce);
  EXPECT_EQ(desk.page()->profiles.front().state, store::ProfileState::Superseded);
}

TEST_F(AnimalDeskTest, AChangeMadeElsewhereComesIntoSight) {
  HerdAlone other;
  example.openOn(other.desk);
  showGroup(other.desk, "tenrecs");
  other.desk.addMass(weighing(203), store::Confirmed::No);
  settle(other.desk);
  EXPECT_TRUE(QTest::qWaitFor([&] { return gramsOf(desk, "T-02").size() == 2; }, 20'000));
}

class AnimalListModelTest : public AnimalDeskTest {
 protected:
  std::string at(int row, const QModelIndex& parent = {}) {
    return model.index(row, 0, parent).data().toString().toStdString();
  }
  AnimalListModel model{desk};
};

TEST_F(AnimalListModelTest, GroupsStandUnderTheirSpeciesAndAnimalsUnderTheirGroup) {
  model.look({});
  ASSERT_EQ(model.rowCount(), 2);
  EXPECT_EQ(at(0), "Bearded dragon");
  const QModelIndex tenrec = model.index(1, 0);
  EXPECT_EQ(at(0, tenrec), "Tenrecs, trio");
  EXPECT_EQ(model.index(0, 0, tenrec).data(AnimalListModel::RemarkRole).toString().toStdString(),
            "3 · Small Mammals");
  EXPECT_EQ(model.rowCount(model.index(0, 0, tenrec)), 3);
}

TEST_F(AnimalListModelTest, NarrowsByScientificNameSectionOrAnimal) {
  model.look(QStringLiteral("echin"));
  EXPECT_EQ(model.rowCount(), 1);
  model.look(QStringLiteral("reptiles"));
  ASSERT_EQ(model.rowCount(), 1);
  EXPECT_EQ(at(0), "Bearded dragon");
  model.look(QStringLiteral("T-02"));
  ASSERT_EQ(model.rowCount(), 1);
  const QModelIndex group = model.index(0, 0, model.index(0, 0));
  ASSERT_EQ(model.rowCount(group), 1);
  EXPECT_EQ(at(0, group), "T-02");
}

}  // namespace
}  // namespace tarebowl::ui
