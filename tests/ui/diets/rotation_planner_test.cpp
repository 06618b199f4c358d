// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_planner.h"

#include "core/store/rotation_verbs.h"
#include "tests/ui/diets/example_rotation.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using quantity::Grams;
using ::testing::HasSubstr;

constexpr std::size_t kKale = 0;
constexpr std::size_t kCrickets = 1;

quantity::Date on(const char* iso) {
  return quantity::parseDate(iso).value();
}

class RotationPlannerTest : public ::testing::Test {
 protected:
  const ExampleDiets example;
  PlannerAlone alone{example};
  RotationPlanner& planner = alone.planner;

  [[nodiscard]] std::vector<store::StoredRotation> stored() const {
    return store::rotationsOfDiet(example.elsewhere(), "tenrec-evening");
  }
  [[nodiscard]] Grams shown(int day, std::size_t food) const { return planner.view()->gramsOn(day, food); }
};

TEST_F(RotationPlannerTest, ThereIsNothingToShowUntilDaysArePlanned) {
  EXPECT_EQ(planner.view(), nullptr);
  EXPECT_TRUE(planner.list().empty());
  alone.plan(on("2026-11-30"));
  EXPECT_EQ(planner.view()->days(), 7);
  EXPECT_EQ(shown(6, kCrickets), Grams(12));
  ASSERT_EQ(stored().size(), 1U);
  EXPECT_EQ(stored()[0].record.who, "Keeper A");
  EXPECT_EQ(stored()[0].record.cells.size(), 14U);
}

TEST_F(RotationPlannerTest, AFoodThatIsMovedStaysWhereAHandPutIt) {
  alone.plan(on("2026-11-30"));
  planner.setGrams(kCrickets, 1, Grams(0));
  EXPECT_EQ(shown(1, kCrickets), Grams(0)) << "shown at once, before the rest has followed";
  alone.settle();
  planner.moveFood(kCrickets, 0, 1);
  EXPECT_EQ(shown(1, kCrickets), Grams(12));
  alone.settle();
  EXPECT_EQ(shown(0, kCrickets), Grams(0));
  EXPECT_TRUE(planner.view()->isLocked(0, kCrickets) && planner.view()->isLocked(1, kCrickets));
  EXPECT_EQ(stored()[0].record.cells.front().food, "kale-raw");
  planner.undoStack().undo();
  alone.settle();
  EXPECT_EQ(shown(0, kCrickets), Grams(12));
  EXPECT_FALSE(planner.view()->isLocked(0, kCrickets));
  planner.undoStack().redo();
  alone.settle();
  EXPECT_EQ(shown(1, kCrickets), Grams(12));
}

TEST_F(RotationPlannerTest, TheRestAdaptsFromThePlanThatWasThere) {
  alone.plan(on("2026-11-30"));
  EXPECT_TRUE(alone.begunFrom.empty()) << "days that were not planned yet";
  planner.setGrams(kKale, 2, Grams(9));
  alone.settle();
  ASSERT_EQ(alone.begunFrom.size(), 7U);
  EXPECT_EQ(alone.begunFrom[2][kKale], Grams(4)) << "as it was before the hand";
  planner.planAgain(false);
  alone.settle();
  EXPECT_TRUE(alone.begunFrom.empty()) << "planning again looks for the best plan";
}

TEST_F(RotationPlannerTest, ASecondHandNeedNotWaitForTheFirst) {
  alone.plan(on("2026-11-30"));
  planner.setGrams(kKale, 0, Grams(5));
  planner.setGrams(kKale, 1, Grams(6));
  planner.setGrams(kKale, 2, Grams(7));
  alone.settle();
  EXPECT_EQ(shown(0, kKale), Grams(5));
  EXPECT_EQ(shown(1, kKale), Grams(6));
  EXPECT_EQ(shown(2, kKale), Grams(7));
}

TEST_F(RotationPlannerTest, ALockIsKeptAndPlansNothingAnew) {
  alone.plan(on("2026-11-30"));
  planner.turnLock(kKale, 3);
  alone.settle();
  EXPECT_TRUE(planner.view()->isLocked(3, kKale));
  planner.turnLock(kKale, 3);
  alone.settle();
  EXPECT_FALSE(planner.view()->isLocked(3, kKale));
  planner.undoStack().undo();
  alone.settle();
  EXPECT_TRUE(planner.view()->isLocked(3, kKale));
}

TEST_F(RotationPlannerTest, WhereThereIsNoPlanNothingIsChangedAndTheReasonTold) {
  alone.plan(on("2026-11-30"));
  planner.setGrams(kCrickets, 0, Grams(95));
  alone.settle();
  EXPECT_THAT(alone.told.toStdString(), HasSubstr("No plan keeps all hard rules at once"));
  EXPECT_EQ(shown(0, kCrickets), Grams(12));
  EXPECT_EQ(stored()[0].revision, 1);
}

TEST_F(RotationPlannerTest, RulesThatCannotBeReadAreTold) {
  planner.plan(R"({"format": "tarebowl-rotation-rules/1", "off": [{"foods": ["figs"], "days": [1]}]})",
               on("2026-11-30"));
  alone.settle();
  EXPECT_THAT(alone.told.toStdString(), HasSubstr("figs"));
  EXPECT_EQ(planner.view(), nullptr);
}

TEST_F(RotationPlannerTest, DaysThatArePlannedAlreadyAreNotPlannedTwice) {
  alone.plan(on("2026-11-30"));
  planner.plan(R"({"format": "tarebowl-rotation-rules/1"})", on("2026-12-03"));
  alone.settle();
  EXPECT_THAT(alone.told.toStdString(), HasSubstr("has a rotation from 2026-11-30 to 2026-12-06"));
  EXPECT_EQ(stored().size(), 1U);
  ASSERT_NE(planner.view(), nullptr) << "what is there is shown again";
  EXPECT_EQ(planner.view()->kept().from, on("2026-11-30"));
}

TEST_F(RotationPlannerTest, FromTodayOnDaysArePlannedAnewAndTheOthersStay) {
  alone.plan(on("2026-11-23"));  // today is the 25th
  planner.setGrams(kKale, 0, Grams(9));
  alone.settle();
  planner.planAgain(true);
  alone.settle();
  EXPECT_TRUE(planner.view()->isOver(0) && planner.view()->isOver(1));
  EXPECT_FALSE(planner.view()->isOver(2));
  EXPECT_EQ(shown(0, kKale), Grams(9)) << "nobody wrote down otherwise: it was fed as planned";
  EXPECT_EQ(stored()[0].record.plannedFrom, on("2026-11-25"));
  EXPECT_TRUE(stored()[0].record.asEaten);
  planner.setGrams(kKale, 1, Grams(1));
  alone.settle();
  EXPECT_EQ(shown(1, kKale), Grams(4));
}

TEST_F(RotationPlannerTest, ARotationThatIsOverIsNotPlannedAgain) {
  alone.plan(on("2026-11-01"));
  planner.planAgain(false);
  alone.settle();
  EXPECT_THAT(alone.told.toStdString(), HasSubstr("All days of this rotation are over"));
}

TEST_F(RotationPlannerTest, OneThatIsRemovedComesBack) {
  alone.plan(on("2026-11-30"));
  planner.remove();
  alone.settle();
  EXPECT_EQ(planner.view(), nullptr);
  EXPECT_TRUE(stored().empty());
  planner.undoStack().undo();
  alone.settle();
  ASSERT_NE(planner.view(), nullptr);
  EXPECT_EQ(planner.view()->days(), 7);
}

TEST_F(RotationPlannerTest, TheRotationOfTodayIsShownFirst) {
  alone.plan(on("2026-11-30"));
  alone.plan(on("2026-11-23"));
  alone.plan(on("2026-12-07"));
  planner.open("tenrec-evening", example.draft(), 1);
  alone.settle();
  ASSERT_EQ(planner.list().size(), 3U);
  EXPECT_EQ(planner.view()->kept().from, on("2026-11-23"));
  planner.show(planner.list().back().id);
  alone.settle();
  EXPECT_EQ(planner.view()->kept().from, on("2026-12-07"));
}

}  // namespace
}  // namespace tarebowl::ui
