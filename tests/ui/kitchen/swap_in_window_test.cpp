// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// From a line of the diet on the desk to what to give instead, by keys alone.
#include "tests/ui/diets/example_diets.h"
#include "tests/ui/shared/named_controls.h"
#include "ui/diets/desk_pane.h"
#include "ui/diets/diets_room.h"
#include "ui/diets/ingredient_table.h"
#include "ui/frame/main_window.h"
#include "ui/kitchen/swap_model.h"
#include "ui/kitchen/swap_pane.h"

#include <QListView>
#include <QTemporaryDir>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;

class SwapInWindowTest : public ::testing::Test {
 protected:
  SwapInWindowTest() {
    window.open(example.file());
    window.show();
    window.goToRoom(4);
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    EXPECT_TRUE(QTest::qWaitFor([this] { return room.version().isOpen(); }, 20'000));
    EXPECT_TRUE(QTest::qWaitFor([this] { return !room.desk().isSolving(); }, 20'000));
  }
  void sayNotAvailable(int line) {
    room.deskPane().table().goToFood(line);
    QTest::keyClick(&room.deskPane().table(), Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
  }
  [[nodiscard]] bool isOffered() {
    return QTest::qWaitFor([this] { return room.swapPane().model().offers().isComplete; }, 20'000);
  }

  QTemporaryDir folder;
  ExampleDiets example;
  MainWindow window{&diet::solve, Dialogs{}, Preferences(folder.filePath(QStringLiteral("seat.ini")))};
  DietsRoom& room = window.diets();
};

TEST_F(SwapInWindowTest, ALineThatIsNotAvailableOffersTheFoodsOfTheCollection) {
  const diet::Diet before = room.desk().draft().grams;
  sayNotAvailable(0);  // kale
  ASSERT_TRUE(room.swapPane().isVisible());
  ASSERT_TRUE(isOffered());
  const SwapModel& offered = room.swapPane().model();
  ASSERT_GT(offered.rowCount(), 0);
  for (int row = 0; row < offered.rowCount(); ++row)
    EXPECT_NE(offered.index(row).data(SwapModel::FoodsRole).toString(), QStringLiteral("Kale, raw"));
  QTest::keyClick(&room.swapPane().list(), Qt::Key_Return);
  EXPECT_FALSE(room.swapPane().isVisible());
  EXPECT_THAT(room.state().note.toStdString(), HasSubstr("instead of"));
  EXPECT_EQ(room.desk().draft().grams, before);
}

TEST_F(SwapInWindowTest, EscapeGoesBackToTheLine) {
  sayNotAvailable(1);
  ASSERT_TRUE(isOffered());
  QTest::keyClick(&room.swapPane().list(), Qt::Key_Escape);
  EXPECT_FALSE(room.swapPane().isVisible());
  EXPECT_TRUE(room.deskPane().table().hasFocus());
  EXPECT_EQ(room.deskPane().table().currentIndex().row(), 1);
}

TEST_F(SwapInWindowTest, EveryControlHasAName) {
  sayNotAvailable(0);
  ASSERT_TRUE(isOffered());
  expectNamedControls(room.swapPane());
}

}  // namespace
}  // namespace tarebowl::ui
