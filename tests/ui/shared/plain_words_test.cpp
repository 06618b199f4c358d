// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/plain_words.h"

#include <QApplication>
#include <QLabel>
#include <QTest>
#include <QToolTip>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

const QString kHostile = QStringLiteral("<b>kale</b><img src=\"file:///etc/hostname\">");

class PlainWordsTest : public ::testing::Test {
 protected:
  PlainWordsTest() { qApp->installEventFilter(&plain); }
  ~PlainWordsTest() override { qApp->removeEventFilter(&plain); }
  PlainWords plain;
};

TEST_F(PlainWordsTest, ANameIsShownByItsLettersWhateverStandsInIt) {
  QLabel before(kHostile);
  before.show();
  EXPECT_EQ(before.textFormat(), Qt::PlainText);
  QLabel after;
  after.show();
  after.setText(kHostile);
  EXPECT_EQ(after.textFormat(), Qt::PlainText);
}

TEST_F(PlainWordsTest, WhatIsMadeRichOnPurposeStaysRich) {
  QLabel rich(QStringLiteral("<b>Calcium</b> is short"));
  rich.setTextFormat(Qt::RichText);
  rich.show();
  EXPECT_EQ(rich.textFormat(), Qt::RichText);
}

TEST_F(PlainWordsTest, ATipIsPlainToo) {
  QToolTip::showText(QPoint(20, 20), kHostile);
  const QLabel* tip = nullptr;
  for (const QWidget* widget : QApplication::topLevelWidgets())
    if (widget->inherits("QTipLabel")) tip = qobject_cast<const QLabel*>(widget);
  ASSERT_NE(tip, nullptr);
  EXPECT_EQ(tip->text(), kHostile);
  EXPECT_EQ(tip->textFormat(), Qt::PlainText);
  QToolTip::hideText();
}

}  // namespace
}  // namespace tarebowl::ui
