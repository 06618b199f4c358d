// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/folding_panes.h"

#include <QLabel>
#include <QScrollArea>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

constexpr int kNarrow = 300;
constexpr int kWide = 900;
constexpr int kHigh = 400;

class FoldingPanesTest : public ::testing::Test {
 protected:
  FoldingPanesTest() : panes(*new FoldingPanes), left(new QWidget), right(new QWidget) {
    for (QWidget* pane : {left, right}) {
      pane->setMinimumWidth(200);
      panes.addWidget(pane);
    }
    panes.setWidths({600, 300});
    room.setFrameShape(QFrame::NoFrame);
    room.setWidgetResizable(true);
    room.setWidget(&panes);
    makeRoom(kWide);
    room.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&room));
  }
  void makeRoom(int width) {
    room.resize(width, kHigh);
    QTest::qWait(10);
  }
  QScrollArea room;  // as the window's rooms stand in one
  FoldingPanes& panes;
  QWidget* left;
  QWidget* right;
};

TEST_F(FoldingPanesTest, StandBesideEachOtherWhereThereIsRoom) {
  EXPECT_FALSE(panes.isFolded());
  EXPECT_LT(left->x(), right->x());
  EXPECT_EQ(left->y(), right->y());
}

TEST_F(FoldingPanesTest, StandBelowEachOtherWhereThereIsNot) {
  makeRoom(kNarrow);
  EXPECT_TRUE(panes.isFolded());
  EXPECT_EQ(left->x(), right->x());
  EXPECT_GE(right->y(), left->height());
  EXPECT_EQ(right->width(), panes.width());
  EXPECT_LE(panes.width(), kNarrow);
}

TEST_F(FoldingPanesTest, AskForNoMoreWidthThanTheWidestOfThem) {
  EXPECT_EQ(panes.minimumSizeHint().width(), 200);
}

TEST_F(FoldingPanesTest, AreAsWideAsBeforeOnceThereIsRoomAgain) {
  const QList<int> before = panes.sizes();
  makeRoom(kNarrow);
  makeRoom(kWide);
  EXPECT_FALSE(panes.isFolded());
  EXPECT_EQ(panes.sizes(), before);
  EXPECT_EQ(left->minimumHeight(), 0);
}

TEST(FoldingPanesBeforeTheyAreShown, KeepTheWidthsThatTheyWereGiven) {
  QScrollArea room;
  room.setWidgetResizable(true);
  auto* panes = new FoldingPanes;
  for (int i = 0; i < 2; ++i) panes->addWidget(new QWidget);
  for (int i = 0; i < 2; ++i) panes->widget(i)->setMinimumWidth(200);
  panes->setWidths({600, 300});
  panes->resize(kNarrow, kHigh);
  panes->resize(kWide, kHigh);
  room.setWidget(panes);
  room.resize(kWide, kHigh);
  room.show();
  EXPECT_TRUE(QTest::qWaitForWindowExposed(&room));
  QTest::qWait(10);
  EXPECT_NEAR(panes->sizes().front(), 2 * panes->sizes().back(), 10);
}

TEST_F(FoldingPanesTest, AreHighEnoughForWordsThatWrap) {
  auto* words = new QLabel(QStringLiteral("A caution of several words, ").repeated(30));
  words->setWordWrap(true);
  (new QVBoxLayout(left))->addWidget(words);
  makeRoom(kNarrow);
  EXPECT_GE(words->height(), words->heightForWidth(words->width()));
}

TEST_F(FoldingPanesTest, APaneThatIsHiddenTakesNoRoom) {
  right->hide();
  makeRoom(kNarrow);
  EXPECT_FALSE(panes.isFolded());
  EXPECT_EQ(left->width(), panes.width());
}

}  // namespace
}  // namespace tarebowl::ui
