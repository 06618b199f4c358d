// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/explore_pane.h"

#include "tests/ui/diets/example_diet.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/trace_chart.h"

#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using quantity::Grams;
using ::testing::HasSubstr;

class ExplorePaneTest : public ::testing::Test {
 protected:
  ExplorePaneTest() {
    desk.open(exampleProblem());
    settle();
    pane.show();
  }
  void settle() {
    ASSERT_TRUE(QTest::qWaitFor([this] { return !desk.isSolving() && !pane.isTracing(); }, 10'000));
  }
  DietDesk desk{[](const diet::BalanceProblem& problem, const diet::SolveOptions& options) {
    return diet::solve(problem, options);
  }};
  ExplorePane pane{desk};
};

TEST_F(ExplorePaneTest, TheBoundOfARungIsTracedWithTheBoundOfNowMarked) {
  pane.exploreRung({diet::TargetKind::Nutrient, kCalcium});
  settle();
  ASSERT_TRUE(pane.trace());
  EXPECT_EQ(pane.trace()->status, diet::Trace::Status::Traced);
  // Half to twice of 10 g/kg DM.
  EXPECT_NEAR(pane.trace()->points.front().at, 5.0, 1e-9);
  EXPECT_NEAR(pane.trace()->points.back().at, 20.0, 1e-9);
  EXPECT_EQ(pane.chart().reading(), 10.0) << "reading begins where the bound is";
  EXPECT_THAT(pane.chart().accessibleDescription().toStdString(), HasSubstr("Calcium, minimum from 5.00"));
}

TEST_F(ExplorePaneTest, WhatIsReadIsTriedAndUndoTakesItBack) {
  pane.exploreRung({diet::TargetKind::Nutrient, kCalcium});
  settle();
  pane.chart().setReading(7.4567);
  QTest::keyClick(&pane.chart(), Qt::Key_Return);
  EXPECT_NEAR(desk.problem().targets[kCalcium].min.value(), 7.46, 1e-9) << "three figures, as it is read";
  settle();
  EXPECT_NEAR(pane.trace()->points.front().at, 5.0, 1e-9) << "the range stays while the hand tries";
  desk.undoStack().undo();
  EXPECT_EQ(desk.problem(), exampleProblem());
}

TEST_F(ExplorePaneTest, TheMaximumOfAFoodIsTriedOnItsScale) {
  pane.exploreFood(kLimestone);
  settle();
  pane.chart().setReading(0.34);
  QTest::keyClick(&pane.chart(), Qt::Key_Return);
  EXPECT_NEAR(desk.problem().foods[kLimestone].max.value().value(), 0.3, 1e-12);
}

TEST_F(ExplorePaneTest, ArrowsReadItAndControlGoesToTheNextBreakpoint) {
  pane.exploreFood(kLimestone);
  settle();
  const auto& points = pane.trace()->points;
  const auto breakpoint = std::ranges::find_if(points, &diet::TracePoint::isBreakpoint);
  ASSERT_NE(breakpoint, points.end());
  pane.chart().setReading(points.front().at);
  QTest::keyClick(&pane.chart(), Qt::Key_Right, Qt::ControlModifier);
  EXPECT_NEAR(pane.chart().reading().value(), breakpoint->at, 1e-9);
  QTest::keyClick(&pane.chart(), Qt::Key_End);
  EXPECT_NEAR(pane.chart().reading().value(), points.back().at, 1e-9);
}

TEST_F(ExplorePaneTest, ABowlOfATradeIsTriedOnHold) {
  const auto subjects = traceSubjects(desk.problem());
  const auto trade = std::ranges::find_if(subjects, [](const TraceSubject& subject) {
    return subject.against && subject.against->kind == diet::Objective::Kind::Highest;
  });
  ASSERT_NE(trade, subjects.end());
  const diet::Trace trace = diet::tradeOff(desk.problem(), *trade->against);
  ASSERT_EQ(trace.status, diet::Trace::Status::Traced) << trace.reason;
  desk.setAllGrams(trace.points.back().grams);
  EXPECT_TRUE(desk.isHolding()) << "the solver would move it again";
  EXPECT_NEAR(desk.draft().grams[kLeaves].value(), trace.points.back().grams[kLeaves].value(), 0.5);
}

TEST(TraceText, AReadingNamesFoodsAndWhatIsMissed) {
  const diet::BalanceProblem problem = exampleProblem();
  diet::TracePoint point{10.0, {Grams(20), Grams(10), Grams(0)}, 0.54,
                         0.25, std::vector<double>(7, 0.0),      false};
  point.shortfalls[kCalcium] = 0.54;
  QString text = readingText(problem, {{}, std::nullopt}, point);
  EXPECT_EQ(
      text.replace(QChar(0x00A0), QLatin1Char(' ')).toStdString(),
      "At 10.0 g/kg DM: Leaves 20.0 g, Insects 10.0 g; distance from now 0.250; Calcium missed by 54 %.");
}

}  // namespace
}  // namespace tarebowl::ui
