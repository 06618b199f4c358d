// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diet_desk.h"

#include "tests/ui/diets/example_diet.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include <atomic>

namespace tarebowl::ui {
namespace {

using quantity::Grams;

class DeskTest : public ::testing::Test {
 protected:
  DeskTest() {
    desk.open(exampleProblem());
    settle();
  }
  void settle() {
    ASSERT_TRUE(QTest::qWaitFor([this] { return !desk.isSolving(); }));
  }
  [[nodiscard]] Grams gramsOf(std::size_t food) const { return desk.draft().grams[food]; }

  std::atomic<int> solves = 0;
  DietDesk desk{[this](const auto& problem, const auto& options) {
    ++solves;
    return exampleSolve(problem, options);
  }};
};

TEST_F(DeskTest, AnOpenedProblemIsSolved) {
  EXPECT_EQ(solves, 1);
  EXPECT_EQ(gramsOf(kLeaves), Grams(30));
  ASSERT_TRUE(desk.solution());
  EXPECT_TRUE(desk.undoStack().isClean());
}

TEST_F(DeskTest, TypingAGramHoldsThatFoodReSolvesAndUndoTakesItBack) {
  desk.setGrams(kInsects, Grams(12));
  EXPECT_EQ(gramsOf(kInsects), Grams(12));
  EXPECT_TRUE(desk.draft().locked[kInsects]);
  settle();
  EXPECT_EQ(solves, 2);
  EXPECT_EQ(gramsOf(kInsects), Grams(12)) << "held, though the solver would have said 8 g";
  desk.undoStack().undo();
  settle();
  EXPECT_EQ(gramsOf(kInsects), Grams(8));
  EXPECT_FALSE(desk.draft().locked[kInsects]);
}

TEST_F(DeskTest, ALockSurvivesOtherEditsAndTheirSolves) {
  desk.setLocked(kLeaves, true);
  settle();
  desk.setLimits(kInsects, Grams(9), std::nullopt);
  settle();
  EXPECT_TRUE(desk.draft().locked[kLeaves]);
  EXPECT_EQ(gramsOf(kLeaves), Grams(30));
  EXPECT_EQ(gramsOf(kInsects), Grams(9));
}

TEST_F(DeskTest, OnHoldOnlyTheBalanceIsRecomputed) {
  desk.setHolding(true);
  desk.setGrams(kLeaves, Grams(20));
  desk.setGrams(kInsects, Grams(10));
  desk.setGrams(kLimestone, Grams(0));
  EXPECT_EQ(solves, 1);
  EXPECT_FALSE(desk.isSolving());
  EXPECT_FALSE(desk.solution());
  EXPECT_FALSE(desk.draft().locked[kLeaves]) << "nothing moves, so nothing needs a lock";
  // 23 mg Ca in 5 g of dry matter.
  EXPECT_NEAR(desk.balance().targets[kCalcium].value.value(), 4.6, 1e-9);
}

TEST_F(DeskTest, LeavingHoldSolvesAgain) {
  desk.setHolding(true);
  desk.setGrams(kLeaves, Grams(5));
  desk.setHolding(false);
  settle();
  EXPECT_EQ(gramsOf(kLeaves), Grams(30));
}

TEST_F(DeskTest, GramsAreTypedInStepsOfTheScale) {
  desk.setGrams(kLeaves, Grams(12.4));
  EXPECT_EQ(gramsOf(kLeaves), Grams(12));
  desk.setGrams(kLeaves, Grams(-3));
  EXPECT_EQ(gramsOf(kLeaves), Grams(0));
}

TEST_F(DeskTest, ANumberTypedDigitByDigitIsOneStepOfUndo) {
  desk.beginGesture();
  desk.setGrams(kInsects, Grams(1));
  desk.setGrams(kInsects, Grams(15));
  desk.endGesture();
  settle();
  desk.undoStack().undo();
  settle();
  EXPECT_EQ(gramsOf(kInsects), Grams(8));
  EXPECT_FALSE(desk.undoStack().canUndo());
}

TEST_F(DeskTest, EscapeTakesBackWhatWasTypedAndNothingElse) {
  desk.setGrams(kLeaves, Grams(25));
  desk.beginGesture();
  desk.setGrams(kInsects, Grams(1));
  desk.cancelGesture();
  settle();
  EXPECT_EQ(gramsOf(kLeaves), Grams(25));
  EXPECT_EQ(gramsOf(kInsects), Grams(8));
  desk.beginGesture();
  desk.cancelGesture();
  EXPECT_EQ(gramsOf(kLeaves), Grams(25)) << "a gesture without an edit has nothing to take back";
}

TEST_F(DeskTest, AMaximumBelowTheMinimumIsRefusedAndSaidSo) {
  QSignalSpy refused(&desk, &DietDesk::refused);
  EXPECT_FALSE(desk.setLimits(kLeaves, Grams(10), Grams(5)));
  EXPECT_FALSE(desk.setBounds({diet::TargetKind::Nutrient, kPhosphorus}, {9.0, 5.0}));
  EXPECT_FALSE(desk.setBounds({diet::TargetKind::Nutrient, kPhosphorus}, {std::nullopt, std::nullopt}));
  EXPECT_EQ(refused.count(), 3);
  EXPECT_FALSE(desk.undoStack().canUndo());
}

TEST_F(DeskTest, AnotherTargetBoundReSolves) {
  desk.setBounds({diet::TargetKind::Nutrient, kCalcium}, {12.0, 20.0});
  settle();
  EXPECT_EQ(solves, 2);
  EXPECT_EQ(desk.balance().targets[kCalcium].min, 12.0);
}

TEST_F(DeskTest, AnImpossibleAnswerLeavesTheGramsAlone) {
  DietDesk stuck([](const auto&, const auto&) {
    diet::DietSolution solution;
    solution.status = diet::DietStatus::Impossible;
    return solution;
  });
  stuck.open(exampleProblem());
  ASSERT_TRUE(QTest::qWaitFor([&] { return !stuck.isSolving(); }));
  EXPECT_EQ(stuck.draft().grams[kLeaves], Grams(20));
  ASSERT_TRUE(stuck.solution());
}

TEST_F(DeskTest, AnotherProblemForgetsWhatCouldBeUndone) {
  desk.setGrams(kLeaves, Grams(25));
  desk.open(exampleProblem());
  settle();
  EXPECT_FALSE(desk.undoStack().canUndo());
  EXPECT_FALSE(desk.draft().locked[kLeaves]);
}

}  // namespace
}  // namespace tarebowl::ui
