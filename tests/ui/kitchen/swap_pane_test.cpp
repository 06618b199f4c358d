// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/swap_pane.h"

#include "tests/ui/kitchen/example_swap.h"
#include "ui/kitchen/swap_model.h"

#include <QAbstractItemModelTester>
#include <QListView>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using quantity::Grams;

/// The pane with the example sought to its end, and what the keeper takes from it.
class SwapPaneTest : public ::testing::Test {
 protected:
  SwapPaneTest() {
    QObject::connect(&pane, &SwapPane::used, &pane,
                     [this](const SwapOffers&, const diet::Swap& swap) { taken = swap; });
    pane.resize(1200, 700);
    pane.show();
    pane.seek(exampleSwap());
    EXPECT_TRUE(QTest::qWaitFor([this] { return pane.model().offers().isComplete; }));
  }
  void press(Qt::Key key) { QTest::keyClick(&pane.list(), key); }

  SwapPane pane;
  QAbstractItemModelTester tester{&pane.model(), QAbstractItemModelTester::FailureReportingMode::Fatal};
  std::optional<diet::Swap> taken;
};

TEST_F(SwapPaneTest, ListsTheNearestFirstAndLeavesOutWhatTheAnimalMayNotHave) {
  ASSERT_EQ(pane.model().rowCount(), 2);
  EXPECT_EQ(pane.model().index(0).data(SwapModel::FoodsRole).toString().toStdString(), "Kale");
  EXPECT_EQ(pane.model().index(0).data(SwapModel::GramsRole).toString().toStdString(), "300 g");
}

TEST_F(SwapPaneTest, EnterUsesTheFirst) {
  press(Qt::Key_Return);
  ASSERT_TRUE(taken);
  EXPECT_EQ(taken->parts.at(0), (diet::SwapPart{2, Grams(100)}));
}

TEST_F(SwapPaneTest, ANumberChoosesAndEnterUses) {
  press(Qt::Key_2);
  EXPECT_FALSE(taken);
  press(Qt::Key_Enter);
  ASSERT_TRUE(taken);
  EXPECT_EQ(taken->parts.at(0).candidate, 1U);
}

TEST_F(SwapPaneTest, ArrowsChoose) {
  press(Qt::Key_Down);
  EXPECT_EQ(pane.list().currentIndex().row(), 1);
  press(Qt::Key_9);  // there is no ninth
  EXPECT_EQ(pane.list().currentIndex().row(), 1);
}

TEST_F(SwapPaneTest, DTakesAsMuchDryMatterAndEAsMuchEnergy) {
  press(Qt::Key_2);
  press(Qt::Key_D);
  ASSERT_TRUE(taken);
  EXPECT_EQ(taken->parts.at(0), (diet::SwapPart{1, Grams(11)}));
  press(Qt::Key_E);
  EXPECT_EQ(taken->parts.at(0), (diet::SwapPart{1, Grams(13)}));
}

TEST_F(SwapPaneTest, EscapeGoesBackAndUsesNothing) {
  QSignalSpy dismissed(&pane, &SwapPane::dismissed);
  press(Qt::Key_Escape);
  EXPECT_EQ(dismissed.count(), 1);
  EXPECT_FALSE(taken);
}

TEST_F(SwapPaneTest, ANewerRequestReplacesAnOlderOne) {
  pane.seek(exampleSwap());
  diet::SwapRequest other = exampleSwap();
  other.candidates.resize(2);  // no kale
  pane.seek(std::move(other));
  ASSERT_TRUE(QTest::qWaitFor([this] { return pane.model().offers().isComplete; }));
  EXPECT_EQ(pane.model().rowCount(), 1);
}

TEST_F(SwapPaneTest, SaysWhyNothingIsSought) {
  pane.say("Open a collection first.");
  EXPECT_EQ(pane.model().rowCount(), 0);
  press(Qt::Key_Return);
  EXPECT_FALSE(taken);
}

TEST_F(SwapPaneTest, DrawsEveryRow) {
  EXPECT_FALSE(pane.grab().isNull());
  EXPECT_GT(pane.list().visualRect(pane.model().index(1)).top(),
            pane.list().visualRect(pane.model().index(0)).bottom());
}

}  // namespace
}  // namespace tarebowl::ui
