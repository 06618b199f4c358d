// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The next morning: what came back of the bowls, with number keys and letters.
#include "tests/ui/kitchen/keeper_at_the_scale.h"
#include "ui/kitchen/leftover_pane.h"

#include <QApplication>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using intake::entryThatCounts;
using quantity::Grams;

/// The next morning: the sheet is weighed in, and its bowls come back.
class LeftoversTest : public KeeperAtTheScale {
 protected:
  LeftoversTest() {
    type("10");
    type("20");
    type("6");
    room.desk().setTask(KitchenDesk::Task::Leftovers);
    left().setFocus();
  }
  QLineEdit& left() { return room.leftoverPane().field(); }
  void typeLeft(const char* keys, Qt::Key key) {
    QTest::keyClicks(&left(), QString::fromUtf8(keys));
    QTest::keyClick(&left(), key);
    settle();
  }
  [[nodiscard]] std::vector<intake::Leftover> leftovers(const char* group, std::size_t item) const {
    return example.bowl(group).items.at(item).leftovers;
  }
};

TEST_F(LeftoversTest, GramsAndEnterOrOneLetterSayWhatWasLeftOfEachFood) {
  EXPECT_EQ(onScale(), "mice kale");
  typeLeft("2.5", Qt::Key_Return);
  EXPECT_EQ(onScale(), "tenrecs kale");
  typeLeft("", Qt::Key_A);
  EXPECT_EQ(onScale(), "tenrecs crickets");
  typeLeft("1", Qt::Key_T);
  EXPECT_EQ(leftovers("mice", 0).at(0).left, Grams(2.5));
  EXPECT_EQ(leftovers("tenrecs", 0).at(0).kind, intake::LeftoverKind::AllEaten);
  EXPECT_EQ(leftovers("tenrecs", 1).at(0).kind, intake::LeftoverKind::Stolen);
  EXPECT_EQ(leftovers("tenrecs", 1).at(0).left, Grams(1));
}

TEST_F(LeftoversTest, WhatWasLostIsTypedBehindAPlus) {
  typeLeft("3+4.5", Qt::Key_S);
  EXPECT_EQ(leftovers("mice", 0).at(0).kind, intake::LeftoverKind::Spilled);
  EXPECT_EQ(leftovers("mice", 0).at(0).left, Grams(3));
  EXPECT_EQ(leftovers("mice", 0).at(0).lost, Grams(4.5));
  typeLeft("+2", Qt::Key_T);  // nobody weighed what was left
  EXPECT_EQ(leftovers("tenrecs", 0).at(0).left, std::nullopt);
  EXPECT_EQ(leftovers("tenrecs", 0).at(0).lost, Grams(2));
  typeLeft("2+x", Qt::Key_S);
  EXPECT_TRUE(room.leftoverPane().message().isVisible());
  EXPECT_TRUE(leftovers("tenrecs", 1).empty());
}

TEST_F(LeftoversTest, ARemainderOfAllTogetherIsPutRightWithAReason) {
  QTest::keyClick(&left(), Qt::Key_PageDown);
  typeLeft("40", Qt::Key_M);
  QTest::keyClick(&left(), Qt::Key_PageDown);
  typeLeft("4", Qt::Key_M);
  QWidget* reason = QApplication::focusWidget();
  QTest::keyClicks(reason, QStringLiteral("typed 40 for 4"));
  QTest::keyClick(reason, Qt::Key_Return);
  settle();
  const auto remainders = example.bowl("tenrecs").remainders;
  ASSERT_EQ(remainders.size(), 2U);
  EXPECT_EQ(entryThatCounts(remainders)->left, Grams(4));
}

TEST_F(LeftoversTest, WhatCannotBeToldApartIsWeighedTogether) {
  QTest::keyClick(&left(), Qt::Key_PageDown);
  EXPECT_EQ(onScale(), "tenrecs kale");
  typeLeft("4", Qt::Key_M);
  EXPECT_EQ(example.bowl("tenrecs").remainders.at(0).left, Grams(4));
  EXPECT_EQ(onScale(), "mice kale");  // of that bowl nothing is left to say
}

TEST_F(LeftoversTest, ACorrectionAsksWhyAndKeepsTheFirstEntry) {
  typeLeft("2.5", Qt::Key_Return);
  QTest::keyClick(&left(), Qt::Key_Up);
  typeLeft("", Qt::Key_A);
  QWidget* reason = QApplication::focusWidget();
  QTest::keyClicks(reason, QStringLiteral("the bowl was on the scale"));
  QTest::keyClick(reason, Qt::Key_Return);
  settle();
  ASSERT_EQ(leftovers("mice", 0).size(), 2U);
  EXPECT_EQ(entryThatCounts(leftovers("mice", 0))->kind, intake::LeftoverKind::AllEaten);
}

TEST_F(LeftoversTest, WhatIsNoWeightIsToldAndStays) {
  typeLeft("-2", Qt::Key_Return);
  EXPECT_TRUE(room.leftoverPane().message().isVisible());
  EXPECT_EQ(left().text(), QStringLiteral("-2"));
  EXPECT_TRUE(leftovers("mice", 0).empty());
}

TEST_F(LeftoversTest, LettersFasterThanTheDiskSayWhatWasLeftOfOneFoodEach) {
  for (const Qt::Key letter : {Qt::Key_A, Qt::Key_N}) QTest::keyClick(&left(), letter);
  QTest::keyClicks(&left(), QStringLiteral("1.5"));
  settle();
  EXPECT_EQ(leftovers("mice", 0).at(0).kind, intake::LeftoverKind::AllEaten);
  EXPECT_EQ(leftovers("mice", 0).size(), 1U);
  EXPECT_EQ(leftovers("tenrecs", 0).at(0).kind, intake::LeftoverKind::NotWeighed);
  EXPECT_EQ(left().text(), QStringLiteral("1.5"));
}

class HalfWeighedBowlTest : public KeeperAtTheScale {};

TEST_F(HalfWeighedBowlTest, EEstimatesAPartOfWhatIsLeftTogetherByEye) {
  room.desk().goTo({1, 0});  // the tenrecs' kale, 20 g, and crickets, 6 g
  type("20");
  type("6");
  room.desk().setTask(KitchenDesk::Task::Leftovers);
  room.desk().goTo({1, 0});
  QLineEdit& left = room.leftoverPane().field();
  ASSERT_EQ(room.desk().bowl()->bowl.key.group, "tenrecs");
  QTest::keyClick(&left, Qt::Key_E);
  EXPECT_TRUE(example.bowl("tenrecs").items.at(0).leftovers.empty()) << "nothing was typed";
  QTest::keyClicks(&left, QStringLiteral("5"));
  QTest::keyClick(&left, Qt::Key_E);
  settle();
  const auto kale = entryThatCounts(example.bowl("tenrecs").items.at(0).leftovers).value();
  EXPECT_EQ(kale.kind, intake::LeftoverKind::Estimated);
  EXPECT_EQ(kale.left, Grams(5));
  EXPECT_EQ(onScale(), "tenrecs crickets") << "the next food of the bowl";
}

}  // namespace
}  // namespace tarebowl::ui
