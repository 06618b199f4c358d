// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/food_list_model.h"

#include "tests/ui/foods/example_foods.h"

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

class FoodListModelTest : public ::testing::Test {
 protected:
  FoodListModelTest() { example.openOn(desk); }
  std::string shown(int row, int column) {
    (void)model.index(row, column).data();  // asks for it
    settle(desk);
    return model.index(row, column).data().toString().toStdString();
  }
  ExampleCollection example;
  OpenCollection collection;
  FoodDesk desk{collection};
  FoodListModel model{desk};
};

using Column = FoodListModel::Column;

TEST_F(FoodListModelTest, ShowsFiguresOfTheRowsInSight) {
  // Crickets: own calcium (40 + 50) / 2 = 45 mg and 300 mg P in 30 g dry matter.
  EXPECT_EQ(shown(0, Column::Name), "Crickets");
  EXPECT_EQ(shown(0, Column::Water), "70.0");
  EXPECT_EQ(shown(0, Column::Calcium), "1.5") << "45 mg in 30 g DM, as g/kg";
  EXPECT_EQ(shown(0, Column::CalciumToPhosphorus), "0.15");
}

TEST_F(FoodListModelTest, WhatIsUnknownIsAQuestionMark) {
  EXPECT_EQ(shown(2, Column::Name), "Kale");
  EXPECT_EQ(shown(2, Column::Protein), "?");
  EXPECT_EQ(shown(2, Column::CalciumToPhosphorus), "?");
}

TEST_F(FoodListModelTest, SortsByAFigureWithTheUnknownLastEitherWay) {
  model.sort(Column::CalciumToPhosphorus, Qt::DescendingOrder);
  settle(desk);
  EXPECT_EQ(shown(0, Column::Name), "Grubs");
  EXPECT_EQ(shown(2, Column::Name), "Kale");
  model.sort(Column::CalciumToPhosphorus, Qt::AscendingOrder);
  EXPECT_EQ(shown(0, Column::Name), "Crickets");
  EXPECT_EQ(shown(2, Column::Name), "Kale");
}

TEST_F(FoodListModelTest, NarrowsAsOneTypes) {
  model.look(QStringLiteral("insect gru"));
  ASSERT_EQ(model.rowCount(), 1);
  EXPECT_EQ(shown(0, Column::Name), "Grubs");
}

TEST_F(FoodListModelTest, ReadsNoFiguresOfRowsThatNobodySees) {
  EXPECT_EQ(desk.knownFigures(model.idAt(1)), nullptr);
  (void)shown(1, Column::Water);
  EXPECT_NE(desk.knownFigures(model.idAt(1)), nullptr);
  EXPECT_EQ(desk.knownFigures(model.idAt(2)), nullptr);
}

TEST_F(FoodListModelTest, CapitalsAndAccentsDoNotMatter) {
  model.look(QStringLiteral("KÁLE"));
  EXPECT_EQ(model.rowCount(), 1);
}

}  // namespace
}  // namespace tarebowl::ui
