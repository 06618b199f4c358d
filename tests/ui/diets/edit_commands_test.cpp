// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/edit_commands.h"

#include "tests/ui/diets/example_diet.h"

#include <QUndoStack>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using quantity::Grams;

/// A draft with no solver behind it.
class EditTest : public ::testing::Test, public DraftHost {
 protected:
  DietDraft& editableDraft() override { return draft; }
  void draftEdited() override { ++edits; }
  void push(std::optional<DraftChange> change, int gesture = 0) {
    if (change) stack.push(new DraftCommand(*this, std::move(*change), gesture));
  }

  DietDraft draft = draftOf(exampleProblem());
  int edits = 0;
  QUndoStack stack;
};

TEST_F(EditTest, GramsCanBeTypedTakenBackAndDoneAgain) {
  push(changeGrams(draft, kLeaves, Grams(25), false));
  EXPECT_EQ(draft.grams[kLeaves], Grams(25));
  stack.undo();
  EXPECT_EQ(draft.grams[kLeaves], Grams(20));
  stack.redo();
  EXPECT_EQ(draft.grams[kLeaves], Grams(25));
  EXPECT_EQ(edits, 3);
}

TEST_F(EditTest, NothingIsPushedWhereNothingChanges) {
  EXPECT_FALSE(changeGrams(draft, kLeaves, Grams(20), false));
  EXPECT_FALSE(changeLock(draft, kLeaves, false));
  EXPECT_FALSE(changeLimits(draft, kLimestone, Grams(0), Grams(1)));
  EXPECT_FALSE(changeBounds(draft, {diet::TargetKind::Nutrient, kPhosphorus}, {5.0, 9.0}, {}));
  EXPECT_FALSE(changeObjective(draft, {}));
  EXPECT_FALSE(changeConfidence(draft, std::nullopt));
}

TEST_F(EditTest, UndoBringsBackTheGramsThatTheSolverMovedSince) {
  push(changeLimits(draft, kLeaves, Grams(5), std::nullopt));
  draft.grams = {Grams(33), Grams(7), Grams(0.2)};  // the solver's answer
  stack.undo();
  EXPECT_EQ(draft.grams, (diet::Diet{Grams(20), Grams(10), Grams(0)}));
  EXPECT_EQ(draft.problem.foods[kLeaves].min, Grams(0));
}

TEST_F(EditTest, TypingAGramWhileSolvingAlsoLocksAndUndoUnlocks) {
  push(changeGrams(draft, kInsects, Grams(12), true));
  EXPECT_TRUE(draft.locked[kInsects]);
  stack.undo();
  EXPECT_FALSE(draft.locked[kInsects]);
}

TEST_F(EditTest, ANumberThatIsTypedIsOneStepOfUndo) {
  push(changeGrams(draft, kLeaves, Grams(1), false), 7);
  push(changeGrams(draft, kLeaves, Grams(12), false), 7);
  EXPECT_EQ(stack.count(), 1);
  stack.undo();
  EXPECT_EQ(draft.grams[kLeaves], Grams(20));
}

TEST_F(EditTest, AnotherCellOrAnotherMovementOfTheHandIsAnotherStep) {
  push(changeGrams(draft, kLeaves, Grams(1), false), 7);
  push(changeGrams(draft, kInsects, Grams(2), false), 7);
  push(changeGrams(draft, kInsects, Grams(3), false), 8);
  push(changeGrams(draft, kInsects, Grams(4), false));
  push(changeGrams(draft, kInsects, Grams(5), false));
  EXPECT_EQ(stack.count(), 5);
}

TEST_F(EditTest, EveryOtherVerbCanBeTakenBack) {
  const DietDraft before = draft;
  push(changeLock(draft, kLeaves, true));
  push(changeLimits(draft, kLimestone, Grams(0.1), Grams(0.5)));
  push(changeBounds(draft, {diet::TargetKind::Nutrient, kCalcium}, {8.0, 12.0}, QStringLiteral("Calcium")));
  push(changeObjective(draft, {diet::Objective::Kind::LowestCost, {}}));
  push(changeConfidence(draft, 0.95));
  EXPECT_EQ(draft.problem.confidence, 0.95);
  EXPECT_EQ(draft.problem.targets[kCalcium].max, 12.0);
  while (stack.canUndo()) stack.undo();
  EXPECT_EQ(draft.problem, before.problem);
  EXPECT_EQ(draft.locked, before.locked);
}

TEST_F(EditTest, TheUndoButtonSaysWhatItTakesBack) {
  push(changeGrams(draft, kLeaves, Grams(25), false));
  EXPECT_EQ(stack.undoText().toStdString(), "Leaves, raw to 25 g");
}

}  // namespace
}  // namespace tarebowl::ui
