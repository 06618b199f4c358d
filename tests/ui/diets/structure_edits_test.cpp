// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Foods and rules in and out of a diet, and the way back.
#include "tests/ui/diets/example_diet.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/ingredient_model.h"
#include "ui/diets/ladder_model.h"
#include "ui/diets/rules_pane.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using quantity::Grams;

diet::DietFood beetle() {
  diet::DietFood food = exampleProblem().foods[kInsects];
  food.id = "beetles";
  food.name = "Beetles (invented)";
  return food;
}

class StructureEdits : public ::testing::Test {
 protected:
  StructureEdits() {
    desk.open(exampleProblem());
    desk.setHolding(true);
  }
  DietDesk desk{&exampleSolve};
};

TEST_F(StructureEdits, AFoodThatIsAddedStandsLastWithNothingOfItInTheBowl) {
  desk.addFood(beetle());
  ASSERT_EQ(desk.problem().foods.size(), 4U);
  EXPECT_EQ(desk.draft().grams.back(), Grams(0));
  EXPECT_EQ(desk.problem().reference->back(), Grams(0)) << "the diet as it is now has none of it";
  EXPECT_EQ(desk.draft().places.back().food, "beetles");
  desk.undoStack().undo();
  EXPECT_EQ(desk.problem(), exampleProblem());
}

TEST_F(StructureEdits, AFoodIsNotAddedTwice) {
  const QSignalSpy refused(&desk, &DietDesk::refused);
  desk.addFood(exampleProblem().foods[kLeaves]);
  EXPECT_EQ(desk.problem().foods.size(), 3U);
  EXPECT_EQ(refused.count(), 1);
  EXPECT_FALSE(desk.undoStack().canUndo());
}

TEST_F(StructureEdits, AFoodThatIsTakenOutComesBackWithItsGramsAndLock) {
  desk.setGrams(kLeaves, Grams(25));
  desk.setLocked(kLeaves, true);
  desk.removeFood(kLeaves);
  EXPECT_EQ(desk.problem().foods.front().id, "insects");
  desk.undoStack().undo();
  EXPECT_EQ(desk.draft().grams[kLeaves], Grams(25));
  EXPECT_TRUE(desk.draft().locked[kLeaves]);
  desk.undoStack().redo();
  EXPECT_EQ(desk.problem().foods.size(), 2U);
}

TEST_F(StructureEdits, TheTablesFollow) {
  IngredientModel foods(desk);
  LadderModel ladder(desk);
  const QAbstractItemModelTester tester(&foods, QAbstractItemModelTester::FailureReportingMode::Fatal);
  const QAbstractItemModelTester ladderTester(&ladder, QAbstractItemModelTester::FailureReportingMode::Fatal);
  const int rungs = ladder.rowCount();
  desk.addFood(beetle());
  EXPECT_EQ(foods.rowCount(), 4);
  desk.setShares({});
  EXPECT_EQ(ladder.rowCount(), rungs - 1) << "the share of insects is a rung";
}

TEST_F(StructureEdits, TheLastFoodCanBeTakenOut) {
  for (int i = 0; i < 3; ++i) desk.removeFood(0);
  EXPECT_TRUE(desk.isEmpty());
  desk.addFood(beetle());
  EXPECT_EQ(desk.problem().foods.size(), 1U);
}

TEST_F(StructureEdits, AStructureRuleIsOneStepOfUndo) {
  desk.setChoices({{.group = "insect", .atLeast = 1, .atMost = 2, .minEach = Grams(3)}});
  ASSERT_EQ(desk.problem().choices.size(), 1U);
  desk.undoStack().undo();
  EXPECT_TRUE(desk.problem().choices.empty());
}

TEST_F(StructureEdits, PreparationIsKeptWithTheLine) {
  desk.setPreparation(kLeaves, QStringLiteral(" torn "));
  EXPECT_EQ(desk.problem().foods[kLeaves].preparation, "torn");
  desk.undoStack().undo();
  EXPECT_EQ(desk.problem().foods[kLeaves].preparation, "");
}

TEST(RuleSentences, SayWhatIsAskedFor) {
  EXPECT_EQ(choiceText({.group = "root", .atLeast = 2, .atMost = 2}).toStdString(), "2 of the group root");
  EXPECT_EQ(choiceText({.group = "root", .atLeast = 1, .atMost = 3, .minEach = Grams(5)}).toStdString(),
            "1 to 3 of the group root, at least 5 g of each");
  EXPECT_EQ(choiceText({.group = "root", .atLeast = 1, .atMost = {}}).toStdString(),
            "at least 1 of the group root");
  animal::ShareRule share;
  share.group = "fruit";
  share.max = 0.1;
  EXPECT_EQ(shareText(share).toStdString(), "at most 10\u00a0% of the dry matter from fruit");
}

}  // namespace
}  // namespace tarebowl::ui
