// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The nutritionist's way through the window: from nothing to an approved diet, and from one version to the
// next.
#include "core/store/diet_reading.h"
#include "tests/ui/diets/example_diets.h"
#include "tests/ui/shared/named_controls.h"
#include "ui/diets/compare_pane.h"
#include "ui/diets/diets_room.h"
#include "ui/collection/food_picker.h"
#include "ui/diets/suggestions.h"
#include "ui/frame/main_window.h"

#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using diet::VersionState;
using quantity::Grams;
using ::testing::Contains;

class DietsInWindowTest : public ::testing::Test {
 protected:
  DietsInWindowTest() {
    window.open(example.file());
    window.show();
    window.goToRoom(4);
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    EXPECT_TRUE(QTest::qWaitFor([this] { return room.version().isOpen(); }, 20'000));
    settle();
  }
  void settle() {
    EXPECT_TRUE(QTest::qWaitFor(
        [this] {
          return window.collection().isIdle() && !room.desk().isSolving() && room.version().isSaved();
        },
        20'000));
  }
  void press(const QString& words) {
    for (auto* button : room.findChildren<QPushButton*>())
      if (button->isVisible() && button->text() == words) {
        QTest::mouseClick(button, Qt::LeftButton);
        return;
      }
    ADD_FAILURE() << "no button says " << words.toStdString();
  }
  void sayWhy(const QString& reason) {
    for (auto* field : room.findChildren<QLineEdit*>())
      if (field->isVisible() && field->accessibleName() == QStringLiteral("Reason")) {
        QTest::keyClicks(field, reason);
        QTest::keyClick(field, Qt::Key_Return);
        settle();
        return;
      }
    ADD_FAILURE() << "nothing asks why";
  }
  void addFood(const QString& partOfName) {
    auto* picker = room.findChild<FoodPicker*>();
    picker->setFocus();
    QTest::keyClicks(picker, partOfName);
    QTest::keyClick(picker, Qt::Key_Return);
    settle();
  }
  [[nodiscard]] const diet::DietVersion& shown() const {
    return room.version().shown()->version.record.version;
  }

  QTemporaryDir folder;
  ExampleDiets example;
  MainWindow window{&diet::solve, Dialogs{}, Preferences(folder.filePath(QStringLiteral("seat.ini")))};
  DietsRoom& room = window.diets();
};

TEST_F(DietsInWindowTest, TheFirstDietOfTheCollectionLiesOnTheDesk) {
  EXPECT_EQ(room.version().shown()->diet.record.code, "tenrec-evening");
  EXPECT_EQ(room.desk().draft().grams.front(), Grams(4));
}

TEST_F(DietsInWindowTest, ADietIsDesignedFromNothingToApproval) {
  room.designFor(QStringLiteral("tenrecs"));
  ASSERT_TRUE(QTest::qWaitFor([this] { return room.desk().isEmpty(); }, 20'000));
  settle();
  addFood(QStringLiteral("kale"));
  addFood(QStringLiteral("crick"));
  addFood(QStringLiteral("limes"));
  ASSERT_EQ(room.desk().problem().foods.size(), 3U);
  ASSERT_TRUE(room.desk().solution());
  EXPECT_EQ(room.desk().solution()->status, diet::DietStatus::Balanced);
  EXPECT_GT(room.desk().draft().grams[0], Grams(0));
  EXPECT_GT(room.desk().draft().grams[1], Grams(0)) << "no food is favoured because it was added first";
  press(QStringLiteral("Submit…"));
  sayWhy(QStringLiteral("balanced"));
  EXPECT_EQ(shown().state, VersionState::Submitted);
  press(QStringLiteral("Approve…"));
  sayWhy(QStringLiteral("as discussed"));
  EXPECT_EQ(shown().state, VersionState::Approved);
  EXPECT_FALSE(room.desk().problem().foods.empty());
  EXPECT_TRUE(room.version().shown()->version.record.decided);
}

/// Crickets alone fall short of calcium; limestone, kale and grubs are in the collection.
TEST_F(DietsInWindowTest, ADietShortOfCalciumIsRepairedByWhatIsSuggestedAndUndoTakesItBack) {
  const auto repaired = [this] {
    return room.desk().solution() && room.desk().solution()->status == diet::DietStatus::Balanced;
  };
  room.desk().removeFood(0);
  room.desk().setLimits(0, Grams(5), std::nullopt);  // an empty bowl would be short of nothing
  settle();
  ASSERT_TRUE(room.desk().solution());
  ASSERT_EQ(room.desk().solution()->status, diet::DietStatus::Compromise);
  ASSERT_TRUE(QTest::qWaitFor([this] { return !room.suggestions().found().empty(); }, 20'000));
  const diet::BalanceProblem before = room.desk().problem();
  const auto& found = room.suggestions().found();
  const auto limestone = std::ranges::find_if(found, [](const Suggestion& suggestion) {
    return suggestion.words.contains(QStringLiteral("Limestone"));
  });
  ASSERT_NE(limestone, found.end());
  EXPECT_EQ(limestone->effect.toStdString(), "closes the gap");
  QTest::qWait(0);
  press(limestone->words);
  ASSERT_TRUE(QTest::qWaitFor(repaired, 20'000));
  EXPECT_EQ(room.desk().problem().foods.back().id, "limestone");
  settle();
  EXPECT_TRUE(room.suggestions().found().empty()) << "nothing is left to settle";
  room.desk().undoStack().undo();
  settle();
  EXPECT_EQ(room.desk().problem().foods, before.foods);
}

TEST_F(DietsInWindowTest, ANewVersionIsComparedWithTheOneBefore) {
  press(QStringLiteral("Submit…"));
  sayWhy(QStringLiteral("ready"));
  press(QStringLiteral("Approve…"));
  sayWhy(QStringLiteral("eaten well"));
  press(QStringLiteral("New version"));
  ASSERT_TRUE(QTest::qWaitFor([this] { return shown().number == 2; }, 20'000));
  settle();
  room.desk().setHolding(true);
  room.desk().setGrams(0, Grams(9));
  settle();
  room.compareWith(1);
  settle();
  EXPECT_THAT(room.comparePane().comparison().sentences(), Contains(QStringLiteral("Kale: 4 g → 9 g")));
  room.desk().setGrams(0, Grams(7));
  EXPECT_THAT(room.comparePane().comparison().sentences(), Contains(QStringLiteral("Kale: 4 g → 7 g")))
      << "it follows the hand";
}

TEST_F(DietsInWindowTest, WhatWasJustTypedIsWrittenWhenTheWindowCloses) {
  {
    MainWindow other(&diet::solve, Dialogs{}, Preferences(folder.filePath(QStringLiteral("other.ini"))));
    other.open(example.file());
    other.show();
    ASSERT_TRUE(QTest::qWaitFor([&] { return other.diets().version().isOpen(); }, 20'000));
    other.diets().desk().setHolding(true);
    other.diets().desk().setGrams(0, Grams(9));
    EXPECT_TRUE(other.close());
  }
  EXPECT_EQ(example.stored(example.draft()).lines.front().amount, Grams(9));
}

TEST_F(DietsInWindowTest, WhatIsNotACollectionsFoodIsToldWhereItIsTyped) {
  addFood(QStringLiteral("unobtainium"));
  EXPECT_EQ(room.desk().problem().foods.size(), 2U);
}

TEST_F(DietsInWindowTest, TheFinderGoesToADiet) {
  const auto hits = room.find(QStringLiteral("evening"), 5);
  ASSERT_FALSE(hits.empty());
  EXPECT_EQ(hits.front().name.toStdString(), "Tenrecs, trio, Evening bowl");
}

TEST_F(DietsInWindowTest, EveryControlHasANameForAScreenReader) {
  expectNamedControls(window);
}

}  // namespace
}  // namespace tarebowl::ui
