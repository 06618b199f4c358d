// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/foods/example_foods.h"
#include "ui/collection/collection_files.h"
#include "ui/foods/collection_doubts.h"
#include "ui/foods/doubt_list.h"
#include "ui/foods/food_list.h"
#include "ui/foods/foods_room.h"

#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;

/// A group of twelve invented leaves with calcium around 100 mg, and one with a thousand times that.
class DoubtsTest : public ::testing::Test {
 protected:
  DoubtsTest() {
    const std::filesystem::path file(folder.filePath(QStringLiteral("leaves.tarebowl")).toStdString());
    {
      auto made = store::Collection::create(file, author);
      for (int i = 0; i < 12; ++i) addLeaf(made, "Leaf " + std::to_string(i), 90.0 + 2.0 * i);
      addLeaf(made, "Slipped leaf", 0.1);
    }
    room.resize(1280, 720);
    room.show();
    files.open(file);
    settle(room.desk());
    waitForDoubts();
  }
  void addLeaf(store::Collection& made, const std::string& name, double calcium) const {
    const FoodId id{store::addFood(made, {.food = {.code = name, .name = name, .group = "leaf"}}, author).id};
    store::addSample(made, id,
                     report(food::SampleOrigin::OwnLab, "R " + name, "2026-06-01",
                            {valueOf("WATER", 90), valueOf("CA", calcium)}),
                     author);
  }
  void waitForDoubts() {
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return room.doubts().doubts().has_value() && !room.doubts().isWorking(); }, 20'000));
  }
  QPushButton* checksButton() {
    for (auto* button : room.findChildren<QPushButton*>())
      if (button->isVisible() && button->text().startsWith(QStringLiteral("Checks"))) return button;
    return nullptr;
  }
  bool cardSays(const char* part) {
    for (const auto* label : room.findChildren<QLabel*>())
      if (label->isVisible() && label->text().contains(QString::fromUtf8(part))) return true;
    return false;
  }

  store::Author author{.who = "test", .at = "2026-11-25T07:30:00Z"};
  QTemporaryDir folder;
  OpenCollection collection;
  CollectionFiles files{collection, Dialogs{}, nullptr};
  FoodsRoom room{collection, files};
};

TEST_F(DoubtsTest, AreCountedOnTheButtonAndListedInThePlaceOfTheFoods) {
  ASSERT_NE(checksButton(), nullptr);
  EXPECT_EQ(checksButton()->text(), QStringLiteral("Checks 1"));
  QTest::mouseClick(checksButton(), Qt::LeftButton);
  EXPECT_TRUE(room.doubtList().isVisible());
  ASSERT_EQ(room.doubtList().model().rowCount(), 1);
  const QModelIndex first = room.doubtList().model().index(0);
  EXPECT_EQ(first.data().toString(), QStringLiteral("Slipped leaf"));
  EXPECT_THAT(first.data(DoubtListModel::SentenceRole).toString().toStdString(), HasSubstr("thousand times"));
}

TEST_F(DoubtsTest, ALineGoesToItsFoodWhoseCardSaysTheSame) {
  EXPECT_FALSE(cardSays("thousand times"));
  QTest::mouseClick(checksButton(), Qt::LeftButton);
  room.doubtList().list().setCurrentIndex(room.doubtList().model().index(0));
  settle(room.desk());
  EXPECT_EQ(room.desk().page()->food.record.food.name, "Slipped leaf");
  EXPECT_TRUE(cardSays("thousand times"));
  EXPECT_TRUE(room.doubtList().isVisible()) << "the next doubt is one key away";
}

TEST_F(DoubtsTest, AreLookedForAgainOnceTheValueIsPutRight) {
  showFood(room.desk(), "Slipped leaf");
  food::Sample right = room.desk().page()->samples.front().sample;
  right.values = {valueOf("WATER", 90), valueOf("CA", 100)};
  room.desk().changeSample(room.desk().page()->samples.front().id, right);
  settle(room.desk());
  ASSERT_TRUE(QTest::qWaitFor([&] { return room.doubts().doubts()->empty(); }, 20'000));
  EXPECT_EQ(checksButton()->text(), QStringLiteral("Checks 0"));
  EXPECT_FALSE(cardSays("thousand times"));
}

TEST_F(DoubtsTest, ThatCouldNotBeLookedForSayWhy) {
  QTest::mouseClick(checksButton(), Qt::LeftButton);
  // The list is still read by the window that has it open; who opens it anew finds nothing there.
  std::filesystem::remove(folder.filePath(QStringLiteral("leaves.tarebowl")).toStdString());
  room.desk().refresh();
  ASSERT_TRUE(QTest::qWaitFor([&] { return !room.doubts().complaint().isEmpty(); }, 20'000));
  EXPECT_TRUE(cardSays("The foods could not be looked through"));
  EXPECT_TRUE(cardSays("there is no such file"));
  EXPECT_FALSE(cardSays("looking through"));
}

TEST_F(DoubtsTest, AreNarrowedByTheTypedWords) {
  QTest::mouseClick(checksButton(), Qt::LeftButton);
  QTest::keyClicks(&room.doubtList().field(), QStringLiteral("slipped"));
  EXPECT_EQ(room.doubtList().model().rowCount(), 1);
  QTest::keyClicks(&room.doubtList().field(), QStringLiteral(" nowhere"));
  EXPECT_EQ(room.doubtList().model().rowCount(), 0);
}

}  // namespace
}  // namespace tarebowl::ui
