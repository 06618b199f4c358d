// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// From what is due today to where it is done.
#include "core/store/feeding_verbs.h"
#include "core/store/swap_verbs.h"
#include "tests/ui/kitchen/example_kitchen.h"
#include "tests/ui/shared/named_controls.h"
#include "ui/animals/animals_room.h"
#include "ui/diets/diets_room.h"
#include "ui/foods/foods_room.h"
#include "ui/frame/main_window.h"
#include "ui/kitchen/kitchen_room.h"
#include "ui/shared/days.h"
#include "ui/shared/reason_bar.h"
#include "ui/today/today_room.h"

#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

class TodayInWindowTest : public ::testing::Test {
 protected:
  void openToday() {
    window.show();
    window.goToRoom(1);
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    window.open(example.file());  // where a person sees it
    settle();
    EXPECT_TRUE(QTest::qWaitFor([this] { return window.today().overview().has_value(); }, 20'000));
  }
  void settle() {
    EXPECT_TRUE(QTest::qWaitFor([this] { return window.collection().isIdle(); }, 20'000));
  }
  void follow(const QString& part) {
    for (QPushButton* row : window.today().rows())
      if (row->text().contains(part)) {
        QTest::mouseClick(row, Qt::LeftButton);
        settle();
        return;
      }
    ADD_FAILURE() << "no row says " << part.toStdString();
  }

  QTemporaryDir folder;
  ExampleKitchen example;
  MainWindow window{&diet::solve, Dialogs{}, Preferences(folder.filePath(QStringLiteral("seat.ini")))};
};

TEST_F(TodayInWindowTest, WhatIsDueTodayIsReadBeforeTheListsOfOtherRooms) {
  int lists = 0;
  const auto comesAfterToday = [&] {
    if (window.foods().desk().isReading() || window.animals().desk().isReading()) return;
    EXPECT_TRUE(window.today().overview());
    ++lists;
  };
  QObject::connect(&window.foods().desk(), &FoodDesk::listChanged, &window, comesAfterToday);
  QObject::connect(&window.animals().desk(), &AnimalDesk::listChanged, &window, comesAfterToday);
  openToday();
  EXPECT_GE(lists, 1);
}

TEST_F(TodayInWindowTest, ASectionLeadsToItsSheetInTheKitchen) {
  openToday();
  follow(QStringLiteral("bowls to prepare"));
  EXPECT_TRUE(window.kitchen().isVisible());
  ASSERT_TRUE(window.kitchen().desk().sheet());
  EXPECT_EQ(window.kitchen().desk().sheet()->sheet.section, "Small Mammals");
  EXPECT_EQ(window.kitchen().desk().day(), ui::today());
}

TEST_F(TodayInWindowTest, ASwapThatWaitsIsDecidedOnWhereItIsTold) {
  {
    store::Collection collection = store::Collection::open(example.file(), "2026-11-25T06:00:00Z");
    const store::Author keeper{"Keeper A", "2026-11-25T07:00:00Z"};
    const std::vector<intake::Bowl> bowls{{.key = {"mice", kitchenDay(), 1},
                                           .label = "mice",
                                           .items = {{.food = "kale", .planned = quantity::Grams(10)}}}};
    store::openSheet(collection, "Small Mammals", kitchenDay(), bowls, keeper);
    store::addSwap(collection,
                   {.instead = {{"mice", kitchenDay(), 1}, 1},
                    .given = {{"crickets", quantity::Grams(4)}},
                    .why = "not delivered",
                    .approval = intake::SwapApproval::Waiting},
                   keeper);
  }
  openToday();
  follow(QStringLiteral("in place of kale"));
  for (auto* button : window.today().reasonBar().findChildren<QPushButton*>())
    if (button->text() == QStringLiteral("Approve it")) QTest::mouseClick(button, Qt::LeftButton);
  settle();
  const store::Collection collection = store::Collection::open(example.file(), "2026-11-25T06:00:00Z");
  EXPECT_TRUE(store::swapsWaiting(collection).empty());
}

TEST_F(TodayInWindowTest, EveryControlHasAName) {
  openToday();
  expectNamedControls(window.today());
}

}  // namespace
}  // namespace tarebowl::ui
