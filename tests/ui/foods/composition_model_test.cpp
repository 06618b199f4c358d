// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/composition_model.h"

#include "tests/ui/foods/example_foods.h"

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

class CompositionModelTest : public ::testing::Test {
 protected:
  CompositionModelTest() {
    example.openOn(desk);
    showFood(desk, "Crickets");
  }
  std::string shown(std::string_view tagname, int column) const {
    return model.indexOf(nutrient(tagname)).siblingAtColumn(column).data().toString().toStdString();
  }
  ExampleCollection example;
  OpenCollection collection;
  FoodDesk desk{collection};
  CompositionModel model{desk};
};

using Column = CompositionModel::Column;

TEST_F(CompositionModelTest, ShowsAValueWithItsScatterAndWhereItComesFrom) {
  EXPECT_EQ(shown("CA", Column::Value), "45.0\u00a0mg");
  EXPECT_EQ(shown("CA", Column::Scatter), "±\u00a07.07 (n 2)") << "√((5² + 5²) / 1)";
  EXPECT_EQ(shown("CA", Column::Origin), "own laboratory, 2 samples, newest 3 Oct 2026");
  EXPECT_EQ(shown("P", Column::Origin), "A book");
}

TEST_F(CompositionModelTest, AnotherBasisIsWorkedOutFromTheWater) {
  model.setBasis(CompositionBasis::DryMatterKg);
  EXPECT_EQ(shown("CA", Column::Value), "1500\u00a0mg") << "45 mg in 30 g dry matter, of a kg";
}

TEST_F(CompositionModelTest, ABasisThatTheFoodCannotBePutOnIsUnknown) {
  model.setBasis(CompositionBasis::Energy1000Kcal);
  EXPECT_EQ(shown("CA", Column::Value), "?") << "its energy is not known";
}

TEST_F(CompositionModelTest, WhatWasNeverMeasuredIsSaid) {
  EXPECT_EQ(shown("SE", Column::Value), "?");
  EXPECT_EQ(shown("SE", Column::Origin), "never measured");
}

TEST_F(CompositionModelTest, ANutrientsRowOpensToTheSamplesUnderIt) {
  const QModelIndex calcium = model.indexOf(nutrient("CA"));
  ASSERT_EQ(model.rowCount(calcium), 3);
  EXPECT_EQ(model.index(0, Column::Value, calcium).data().toString().toStdString(), "40.0\u00a0mg");
  EXPECT_EQ(model.index(0, Column::Origin, calcium).data().toString().toStdString(), "counted");
  EXPECT_EQ(model.index(2, Column::Origin, calcium).data().toString().toStdString(),
            "passed over: a more trusted origin goes first");
}

}  // namespace
}  // namespace tarebowl::ui
