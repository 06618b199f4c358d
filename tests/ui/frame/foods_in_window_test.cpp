// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/diets/example_diet.h"
#include "tests/ui/foods/example_foods.h"
#include "ui/foods/foods_room.h"
#include "ui/foods/import_desk.h"
#include "ui/frame/main_window.h"
#include "ui/shared/paths.h"

#include <QAbstractButton>
#include <QApplication>
#include <QDropEvent>
#include <QFile>
#include <QMimeData>
#include <QTemporaryDir>
#include <QTest>
#include <QUrl>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

class FoodsInWindowTest : public ::testing::Test {
 protected:
  FoodsInWindowTest() {
    window.open(example.file());
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    window.goToRoom(2);
    settle(window.foods().desk());
  }
  /// A hand lets go of a file over the window.
  void drop(const QString& file) {
    QMimeData held;
    held.setUrls({QUrl::fromLocalFile(file)});
    QDragEnterEvent enter({10, 10}, Qt::CopyAction, &held, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent event({10, 10}, Qt::CopyAction, &held, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &event);
    QApplication::processEvents();
  }
  QString seat() const { return folder.filePath(QStringLiteral("seat.ini")); }

  QTemporaryDir folder;
  ExampleCollection example;
  MainWindow window{&exampleSolve, Dialogs{}, Preferences(seat())};
};

TEST_F(FoodsInWindowTest, ATableThatIsDroppedIsShownAsItWouldBeImported) {
  QFile table(folder.filePath(QStringLiteral("greens.csv")));
  ASSERT_TRUE(table.open(QIODevice::WriteOnly));
  table.write("Food,CA (mg)\nEndive,52\n");
  table.close();
  window.goToRoom(4);
  drop(table.fileName());
  EXPECT_TRUE(window.foods().isVisible());
  const ImportDesk& desk = window.foods().importDesk();
  ASSERT_TRUE(QTest::qWaitFor([&] { return desk.stage() == ImportDesk::Stage::Planned; }, 20'000));
  EXPECT_EQ(desk.planned()->valuesNew, 1U);
  EXPECT_EQ(window.foods().desk().foods().size(), 3U) << "nothing is written yet";
}

TEST_F(FoodsInWindowTest, EnergyIsReadInTheUnitThatWasChosenAndTheNextTimeToo) {
  EXPECT_EQ(window.foods().desk().energy(), EnergyUnit::Kilocalorie);
  for (auto* button : window.findChildren<QAbstractButton*>())
    if (button->isVisible() && button->text() == QStringLiteral("kJ"))
      QTest::mouseClick(button, Qt::LeftButton);
  EXPECT_EQ(window.foods().desk().energy(), EnergyUnit::Kilojoule);
  EXPECT_EQ(Preferences(seat()).energy(), EnergyUnit::Kilojoule);
  const MainWindow next(&exampleSolve, Dialogs{}, Preferences(seat()));
  EXPECT_EQ(next.foods().desk().energy(), EnergyUnit::Kilojoule);
}

}  // namespace
}  // namespace tarebowl::ui
