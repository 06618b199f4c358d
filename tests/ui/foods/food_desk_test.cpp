// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/food_desk.h"

#include "tests/ui/foods/example_foods.h"
#include "ui/collection/collection_state.h"

#include <QTest>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

class FoodDeskTest : public ::testing::Test {
 protected:
  FoodDeskTest() {
    example.openOn(desk);
    showFood(desk, "Crickets");
    QObject::connect(&collection, &OpenCollection::hindered,
                     [this](const Refusal& refusal) { refused = refusal.why; });
  }
  ExampleCollection example;
  OpenCollection collection;
  FoodDesk desk{collection};
  QString refused;
};

TEST_F(FoodDeskTest, SettingASampleAsideMovesTheMeanAndUndoTakesItBack) {
  EXPECT_EQ(amountOf(desk, "CA"), 45.0);
  desk.setAside(sampleOf(desk, "Report 1"), QStringLiteral("dusted by mistake"));
  settle(desk);
  EXPECT_EQ(amountOf(desk, "CA"), 50.0) << "the other report alone";
  desk.undoStack().undo();
  settle(desk);
  EXPECT_EQ(amountOf(desk, "CA"), 45.0);
  desk.undoStack().redo();
  settle(desk);
  EXPECT_EQ(amountOf(desk, "CA"), 50.0);
}

TEST_F(FoodDeskTest, NothingIsSetAsideWithoutAReason) {
  desk.setAside(sampleOf(desk, "Report 1"), QStringLiteral("  "));
  settle(desk);
  EXPECT_EQ(amountOf(desk, "CA"), 45.0);
  EXPECT_FALSE(desk.undoStack().canUndo());
}

TEST_F(FoodDeskTest, ANewSampleCountsAtOnce) {
  desk.addSample(report(food::SampleOrigin::OwnLab, "Report 3", "2026-11-01", {valueOf("CA", 60)}));
  settle(desk);
  EXPECT_EQ(amountOf(desk, "CA"), 50.0) << "(40 + 50 + 60) / 3";
  desk.undoStack().undo();
  settle(desk);
  EXPECT_EQ(desk.page()->samples.size(), 3U);
}

TEST_F(FoodDeskTest, AValueSetByHandIsTakenAwayAgainByUndo) {
  desk.setByHand({.nutrient = nutrient("CA"), .amount = quantity::AsFedContent(47.0), .reason = "repeated"});
  settle(desk);
  EXPECT_EQ(amountOf(desk, "CA"), 47.0);
  desk.undoStack().undo();
  settle(desk);
  EXPECT_EQ(amountOf(desk, "CA"), 45.0);
}

TEST_F(FoodDeskTest, AFoodThatWasAddedIsShownAndUndoTakesItAway) {
  desk.addFood({.code = "new", .name = "New"});
  settle(desk);
  EXPECT_EQ(desk.page()->food.record.food.name, "New");
  desk.undoStack().undo();
  settle(desk);
  EXPECT_EQ(desk.foods().size(), 3U);
}

TEST_F(FoodDeskTest, AFoodWithSamplesIsNotRemovedAndTheRoomSaysWhy) {
  desk.removeFood();
  settle(desk);
  EXPECT_EQ(desk.foods().size(), 3U);
  EXPECT_FALSE(refused.isEmpty());
}

TEST_F(FoodDeskTest, AChangedFoodIsListedAnew) {
  food::Food food = desk.page()->food.record.food;
  food.name = "House crickets";
  desk.changeFood(food);
  settle(desk);
  EXPECT_EQ(idOf(desk, "House crickets"), desk.page()->food.id);
}

TEST(FoodDeskOfTwoWindows, AnEditOfWhatWasChangedElsewhereIsRefusedWithBothVersions) {
  const ExampleCollection example;
  DeskAlone myWindow;
  DeskAlone theirWindow;
  FoodDesk& mine = myWindow.desk;
  FoodDesk& theirs = theirWindow.desk;
  Refusal refused;
  QObject::connect(&myWindow.collection, &OpenCollection::refused,
                   [&](const Refusal& refusal) { refused = refusal; });
  for (FoodDesk* desk : {&mine, &theirs}) {
    example.openOn(*desk);
    showFood(*desk, "Crickets");
  }
  const SampleId sample = sampleOf(mine, "Report 1");
  theirs.setAside(sample, QStringLiteral("spilt"));
  settle(theirs);
  mine.setAside(sample, QStringLiteral("dusted"));
  settle(mine);
  EXPECT_FALSE(refused.why.isEmpty());
  EXPECT_NE(refused.theirs.toStdString().find("spilt"), std::string::npos) << refused.theirs.toStdString();
  ASSERT_NE(mine.sample(sample), nullptr);
  EXPECT_EQ(mine.sample(sample)->sample.excluded, "spilt") << "what is there now is shown";
  EXPECT_FALSE(mine.undoStack().canUndo());
}

TEST(FoodDeskOfTwoWindows, AChangeMadeElsewhereComesIntoSight) {
  const ExampleCollection example;
  DeskAlone myWindow;
  DeskAlone theirWindow;
  FoodDesk& mine = myWindow.desk;
  FoodDesk& theirs = theirWindow.desk;
  for (FoodDesk* desk : {&mine, &theirs}) {
    example.openOn(*desk);
    showFood(*desk, "Crickets");
  }
  theirs.setAside(sampleOf(theirs, "Report 1"), QStringLiteral("spilt"));
  settle(theirs);
  EXPECT_TRUE(QTest::qWaitFor([&] { return amountOf(mine, "CA") == 50.0; }, 20'000));
}

TEST(FoodDeskOfACollectionForReading, ShowsItAndRefusesToChangeIt) {
  const ExampleCollection example;
  DeskAlone window;
  Refusal refused;
  QObject::connect(&window.collection, &OpenCollection::refused,
                   [&](const Refusal& refusal) { refused = refusal; });
  window.collection.open({.name = QStringLiteral("shown"), .file = example.file()}, [&] {
    return store::Collection::open(example.file(), "2026-11-25T07:30:00Z",
                                   {.access = store::OpenOptions::Access::ReadOnly});
  });
  settle(window.desk);
  EXPECT_TRUE(window.collection.isReadOnly());
  EXPECT_EQ(stateOf(window.collection).savedText, QStringLiteral("for reading only"));
  showFood(window.desk, "Kale");
  food::Food kale = window.desk.page()->food.record.food;
  kale.name = "Curly kale";
  window.desk.changeFood(kale);
  settle(window.desk);
  EXPECT_TRUE(refused.why.endsWith(QStringLiteral("is open for reading only; nothing was written")))
      << refused.why.toStdString();
  EXPECT_EQ(window.desk.page()->food.record.food.name, "Kale");
  EXPECT_FALSE(window.desk.undoStack().canUndo());
  EXPECT_TRUE(window.collection.file().has_value()) << "it stays open";
}

TEST(FoodDeskWithoutACollection, SaysThatAFileIsNone) {
  DeskAlone window;
  FoodDesk& desk = window.desk;
  Refusal refused;
  QObject::connect(&window.collection, &OpenCollection::refused,
                   [&](const Refusal& refusal) { refused = refusal; });
  window.collection.open({.name = QStringLiteral("none"), .file = "none"}, [] {
    return store::Collection::open("/no/such/file.tarebowl", "2026-11-25T07:30:00Z");
  });
  settle(desk);
  EXPECT_TRUE(refused.cannotOpen);
  EXPECT_FALSE(window.collection.file().has_value());
}

}  // namespace
}  // namespace tarebowl::ui
