// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What would settle a diet, in words, and as something that can be tried and taken back.
#include "ui/diets/suggestion.h"

#include "tests/ui/diets/example_diet.h"
#include "ui/diets/diet_desk.h"

#include <QSignalSpy>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using diet::BoundSide;
using diet::Remedy;
using quantity::Grams;
using ::testing::ElementsAre;

diet::DietFood foodCalled(const char* id, const char* name) {
  diet::DietFood food = exampleProblem().foods[kLimestone];
  food.id = id;
  food.name = name;
  return food;
}

std::vector<std::string> lines(const std::vector<Suggestion>& suggestions) {
  std::vector<std::string> texts;
  for (const Suggestion& suggestion : suggestions) {
    QString line = suggestion.words + QStringLiteral(": ") + suggestion.effect;
    texts.push_back(line.replace(QChar(0x00A0), QLatin1Char(' ')).toStdString());
  }
  return texts;
}

class SuggestionTest : public ::testing::Test {
 protected:
  SuggestionTest() {
    desk.open(exampleProblem());
    desk.setHolding(true);
    facts.shortfall = 0.5;
  }
  void suggest(Remedy::Kind kind, const diet::DietFood& food, double grams, double left, double known = 1.0) {
    Remedy remedy;
    remedy.kind = kind;
    remedy.grams = Grams(grams);
    remedy.shortfall = left;
    remedy.known = known;
    facts.remedies.push_back({remedy, food});
  }
  [[nodiscard]] std::vector<Suggestion> suggestions() const { return suggestionsFrom(desk.draft(), facts); }
  SuggestedFacts facts;
  DietDesk desk{&exampleSolve};
};

// What is left of a shortfall of 0.5: 0.1 is 20 % of it.
TEST_F(SuggestionTest, WhatClosesTheGapComesBeforeWhatOnlyNearsIt) {
  suggest(Remedy::Kind::Add, foodCalled("chalk", "Chalk"), 2.0, 0.1, 0.75);
  suggest(Remedy::Kind::Add, foodCalled("shell", "Shell"), 0.4, 0.0);
  facts.changes = {{"ca", BoundSide::Min, 10.0, 8.123456, true, true}};
  EXPECT_THAT(lines(suggestions()),
              ElementsAre("Add 0.4 g Shell, powder: closes the gap",
                          "Calcium at least 8.123 g/kg DM: every target would hold",
                          "Add 2.0 g Chalk, powder: leaves 20 % of the gap; its values are known for 75 % of "
                          "the rules"));
}

TEST_F(SuggestionTest, AFoodComesInPlaceOfAnotherAndUndoBringsThatBack) {
  suggest(Remedy::Kind::Replace, foodCalled("chalk", "Chalk"), 3.0, 0.0);
  facts.remedies.front().remedy.inPlaceOf = kLimestone;
  const auto found = suggestions();
  ASSERT_THAT(lines(found), ElementsAre("3.0 g Chalk, powder in place of Limestone powder: closes the gap"));
  desk.tryOut(found.front());
  ASSERT_EQ(desk.problem().foods.size(), 3U);
  EXPECT_EQ(desk.problem().foods.back().id, "chalk");
  EXPECT_EQ(desk.draft().grams.back(), Grams(3));
  EXPECT_EQ(desk.problem().reference->back(), Grams(0)) << "the diet as it is now has none of it";
  desk.undoStack().undo();
  EXPECT_EQ(desk.problem(), exampleProblem());
}

TEST_F(SuggestionTest, AFoodThatIsThereMeanwhileIsNotAddedTwice) {
  suggest(Remedy::Kind::Add, foodCalled("chalk", "Chalk"), 2.0, 0.0);
  const auto found = suggestions();
  desk.tryOut(found.front());
  desk.tryOut(found.front());
  EXPECT_EQ(desk.problem().foods.size(), 4U);
}

TEST_F(SuggestionTest, MoreThanAFoodsMaximumIsAllowed) {
  suggest(Remedy::Kind::Raise, exampleProblem().foods[kLimestone], 1.5, 0.0);
  const auto found = suggestions();
  ASSERT_THAT(lines(found), ElementsAre("Allow 1.5 g Limestone powder: closes the gap"));
  desk.tryOut(found.front());
  EXPECT_EQ(desk.problem().foods[kLimestone].max, Grams(1.5));
  desk.undoStack().undo();
  EXPECT_EQ(desk.problem().foods[kLimestone].max, Grams(1));
}

TEST_F(SuggestionTest, AFoodThatALockHoldsGetsMoreAndStaysLocked) {
  desk.setLocked(kLeaves, true);
  suggest(Remedy::Kind::Raise, desk.problem().foods[kLeaves], 40.0, 0.0);
  desk.tryOut(suggestions().front());
  EXPECT_EQ(desk.draft().grams[kLeaves], Grams(40));
  EXPECT_TRUE(desk.draft().locked[kLeaves]);
}

// 70 % of dry matter as it is; to let 73.21 % pass the maximum must be rounded up, never down.
TEST_F(SuggestionTest, ABoundGivesWayByAsMuchAsIsNeededAndNotLess) {
  facts.changes = {{"insects", BoundSide::Max, 0.7, 0.732101, true, false}};
  const auto found = suggestions();
  ASSERT_THAT(lines(found), ElementsAre("Insect at most 73.22 % of DM: every target would hold, in amounts "
                                        "between the scale's steps"));
  desk.tryOut(found.front());
  EXPECT_NEAR(desk.problem().shares[0].max.value(), 0.7322, 1e-12);
  desk.undoStack().undo();
  EXPECT_EQ(desk.problem(), exampleProblem());
}

TEST_F(SuggestionTest, AChoiceGivesWayWhereItIsTheDietsOwn) {
  desk.setChoices({{.group = "insect", .atLeast = 2, .atMost = {}, .minEach = Grams(1)}});
  facts.changes = {{"choice:insect", BoundSide::Min, 2.0, 1.0, true, true},
                   {"choice:leafy vegetable", BoundSide::Min, 2.0, 1.0, true, true}};
  const auto found = suggestions();
  ASSERT_THAT(lines(found), ElementsAre("Ask for at least 1 of the group insect: every target would hold"));
  desk.tryOut(found.front());
  EXPECT_EQ(desk.problem().choices.front().atLeast, 1);
}

TEST_F(SuggestionTest, NothingIsTriedOnARuleThatIsGone) {
  desk.tryOut({QStringLiteral("x"), {}, MovedBound{"no such rule", BoundSide::Min, 1.0}});
  EXPECT_EQ(desk.problem(), exampleProblem());
  EXPECT_FALSE(desk.undoStack().canUndo());
}

}  // namespace
}  // namespace tarebowl::ui
