// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/starter_profiles.h"
#include "tests/ui/animals/example_animals.h"
#include "ui/animals/model_picker.h"
#include "ui/animals/new_species_page.h"
#include "ui/animals/targets_ladder.h"
#include "ui/shared/reason_bar.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

Starters starters() {
  Starters starters{.lookup = animal::shippedProfiles()};
  for (const animal::StarterProfile& starter : animal::starterProfiles())
    starters.profiles.push_back(starter.profile);
  return starters;
}

class NewSpeciesTest : public ::testing::Test {
 protected:
  NewSpeciesTest() {
    example.openOn(desk);
    page.resize(1000, 700);
    page.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
    QObject::connect(&collection, &OpenCollection::refused,
                     [this](const Refusal& refusal) { refused = refusal.why.toStdString(); });
  }
  void type(const char* field, const char* text) {
    for (auto* candidate : page.findChildren<QLineEdit*>())
      if (candidate->accessibleName() == QString::fromUtf8(field)) {
        candidate->clear();
        QTest::keyClicks(candidate, QString::fromUtf8(text));
        return;
      }
    ADD_FAILURE() << "no field is called " << field;
  }
  void choose(const char* name, int place) {
    for (auto* box : page.findChildren<QComboBox*>())
      if (box->accessibleName() == QString::fromUtf8(name)) return box->setCurrentIndex(place);
    ADD_FAILURE() << "no choice is called " << name;
  }
  QPushButton* lastButton() { return page.findChild<QPushButton*>(QStringLiteral("primary")); }
  void tellAll() {
    type("Name of the species", "Lowland streaked tenrec");
    type("Scientific name", "Hemicentetes semispinosus");
    type("Belongs to", "mammal, tenrec");
    page.picker().tick("cat-adult-aafco2014");
    type("Why the model stands in", "an animal eater of small size");
    type("Name of the group", "Streaked tenrecs, pair");
    type("Animals", "2");
    type("Mass of one animal", "130");
    choose("Energy at 1 kg of body mass", 1);
  }
  ExampleHerd example;
  OpenCollection collection;
  AnimalDesk desk{collection, &exampleToday};
  ReasonBar reason;
  NewSpeciesPage page{desk, reason, starters()};
  std::string refused;
};

TEST_F(NewSpeciesTest, NothingCanBeMadeBeforeAllIsTold) {
  EXPECT_FALSE(lastButton()->isEnabled());
  tellAll();
  EXPECT_TRUE(lastButton()->isEnabled());
  type("Why the model stands in", " ");
  EXPECT_FALSE(lastButton()->isEnabled()) << "why it stands in must be said";
}

TEST_F(NewSpeciesTest, ASpeciesNewToTheCollectionGetsAProfileFromAModelSpecies) {
  tellAll();
  QTest::mouseClick(lastButton(), Qt::LeftButton);
  settle(desk);
  settle(desk);  // the group is shown once it is in the list
  EXPECT_EQ(refused, "");
  ASSERT_TRUE(desk.page() && desk.page()->group) << "its group is in sight";
  EXPECT_EQ(desk.page()->group->record.name, "Streaked tenrecs, pair");
  EXPECT_EQ(headcountOf(*desk.page(), desk.today()), 2);
  EXPECT_NEAR(massOf(*desk.page(), desk.today())->mass.value(), 0.130, 1e-12);
  ASSERT_EQ(desk.page()->plans.size(), 1U);
  const ProfileInSight* profile = profileToShow(*desk.page());
  ASSERT_NE(profile, nullptr);
  EXPECT_EQ(profile->state, store::ProfileState::InForce) << "a usable profile";
  const auto* resolved = std::get_if<animal::ResolvedProfile>(&profile->resolved);
  ASSERT_NE(resolved, nullptr);
  const animal::StarterProfile* cat = animal::findStarterProfile("cat-adult-aafco2014");
  ASSERT_NE(cat, nullptr);
  EXPECT_EQ(resolved->targets.size(), cat->profile.targets.size());
  EXPECT_EQ(profile->stored.record.profile.whyModel, "an animal eater of small size");
}

TEST_F(NewSpeciesTest, ADietIsWantedOnceTheSpeciesIsInTheCollection) {
  QStringList wanted;
  QObject::connect(&page, &NewSpeciesPage::dietWanted, [&](const QString& group) {
    wanted << group;
    EXPECT_EQ(desk.undoStack().count(), 1) << "it is written";
  });
  tellAll();
  for (auto* button : page.findChildren<QPushButton*>())
    if (button->text() == QStringLiteral("… and design a diet")) QTest::mouseClick(button, Qt::LeftButton);
  settle(desk);
  settle(desk);
  EXPECT_EQ(wanted, QStringList{QStringLiteral("streaked-tenrecs-pair")});
  EXPECT_NE(desk.herd().groupOf("streaked-tenrecs-pair"), nullptr);
}

TEST_F(NewSpeciesTest, OneUndoTakesAllOfItBack) {
  tellAll();
  QTest::mouseClick(lastButton(), Qt::LeftButton);
  settle(desk);
  settle(desk);
  ASSERT_EQ(desk.herd().species.size(), 3U);
  ASSERT_EQ(desk.undoStack().count(), 1);
  desk.undoStack().undo();
  settle(desk);
  settle(desk);
  EXPECT_EQ(refused, "");
  EXPECT_EQ(desk.herd().species.size(), 2U);
  EXPECT_EQ(desk.herd().groups.size(), 2U);
}

TEST_F(NewSpeciesTest, ALimitSetOnThePageIsInTheProfile) {
  tellAll();
  TargetsModel& targets = page.ladder().model();
  int calcium = -1;
  for (int row = 0; row < targets.rowCount(); ++row) {
    const TargetRow& shown = *targets.rowAt(targets.index(row, 0));
    if (shown.name == QStringLiteral("Calcium") && shown.min) calcium = row;
  }
  ASSERT_GE(calcium, 0);
  const double before = targets.rowAt(targets.index(calcium, 0))->min.value();
  ASSERT_TRUE(targets.setData(targets.index(calcium, TargetsModel::Min), QString::number(before * 1.1)));
  QTest::qWait(0);
  EXPECT_EQ(page.told().profile.targets.size(), 1U);
}

TEST_F(NewSpeciesTest, AnotherModelBringsItsOwnTargets) {
  tellAll();
  const int ofCat = page.ladder().model().rowCount();
  page.picker().tick("primate-nrc2003");
  page.picker().choose("primate-nrc2003");
  EXPECT_NE(page.ladder().model().rowCount(), ofCat);
  EXPECT_EQ(page.told().profile.parent->code, "primate-nrc2003");
  EXPECT_EQ(page.picker().candidates().columnCount(), CandidatesModel::FirstCandidate + 2) << "side by side";
}

}  // namespace
}  // namespace tarebowl::ui
