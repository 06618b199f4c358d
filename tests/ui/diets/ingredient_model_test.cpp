// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/ingredient_model.h"

#include "tests/ui/diets/example_diet.h"
#include "ui/diets/diet_desk.h"

#include <QAbstractItemModelTester>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using quantity::Grams;
using Column = IngredientModel::Column;

/// The example on hold, as the bowl is now: 20 g leaves, 10 g insects, no limestone, for three animals.
class IngredientTest : public ::testing::Test {
 protected:
  IngredientTest() {
    desk.setHolding(true);
    desk.open(exampleProblem());
  }
  [[nodiscard]] std::string text(int row, int column) const {
    return model.index(row, column).data().toString().toStdString();
  }
  bool set(int row, int column, const QVariant& value, int role = Qt::EditRole) {
    return model.setData(model.index(row, column), value, role);
  }

  DietDesk desk{&exampleSolve};
  IngredientModel model{desk};
  QAbstractItemModelTester tester{&model, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

TEST_F(IngredientTest, HasARowForEachFood) {
  EXPECT_EQ(model.rowCount(), 3);
  EXPECT_EQ(text(0, Column::Food), "Leaves, raw");
  EXPECT_EQ(text(0, Column::GramsADay), "20");
  EXPECT_EQ(text(0, Column::Min), "0");
  EXPECT_EQ(text(0, Column::Max), "–");
  EXPECT_EQ(text(2, Column::Max), "1.0");
}

// 2 g and 3 g of 5 g dry matter.
TEST_F(IngredientTest, SharesAreOfTheDryMatter) {
  EXPECT_EQ(text(0, Column::Share), "40\u00a0%");
  EXPECT_EQ(text(1, Column::Share), "60\u00a0%");
}

TEST_F(IngredientTest, AFoodWithUnknownWaterHasNoShareAndNotNought) {
  diet::BalanceProblem problem = exampleProblem();
  problem.foods[kInsects].composition.erase(food::nutrients::water());
  desk.open(problem);
  EXPECT_EQ(text(1, Column::Share), "?");
}

TEST_F(IngredientTest, GramsThatAreTypedReachTheDiet) {
  EXPECT_TRUE(set(0, Column::GramsADay, 25));
  EXPECT_EQ(desk.draft().grams[kLeaves], Grams(25));
  EXPECT_FALSE(set(0, Column::GramsADay, QStringLiteral("plenty")));
  EXPECT_FALSE(set(0, Column::Food, QStringLiteral("other")));
}

TEST_F(IngredientTest, PerGroupGramsAreThoseOfAllAnimals) {
  model.setPerGroup(true);
  EXPECT_EQ(text(0, Column::GramsADay), "60");
  EXPECT_EQ(model.index(0, Column::GramsADay).data(IngredientModel::StepRole).toDouble(), 3.0);
  EXPECT_TRUE(set(0, Column::GramsADay, 75));
  EXPECT_EQ(desk.draft().grams[kLeaves], Grams(25));
  EXPECT_EQ(text(0, Column::Share), "45\u00a0%") << "2.5 of 5.5 g, whoever eats it";
}

TEST_F(IngredientTest, ALockIsTurnedByItsCheckState) {
  EXPECT_TRUE(set(1, Column::Lock, Qt::Checked, Qt::CheckStateRole));
  EXPECT_TRUE(desk.draft().locked[kInsects]);
  EXPECT_EQ(text(1, Column::Lock), "locked");
  EXPECT_TRUE(set(1, Column::Lock, Qt::Unchecked, Qt::CheckStateRole));
  EXPECT_FALSE(desk.draft().locked[kInsects]);
}

TEST_F(IngredientTest, AnEmptyMaximumMeansNoLimit) {
  EXPECT_TRUE(set(2, Column::Max, QVariant()));
  EXPECT_FALSE(desk.problem().foods[kLimestone].max);
  EXPECT_TRUE(set(2, Column::Max, 0.5));
  EXPECT_EQ(desk.problem().foods[kLimestone].max, Grams(0.5));
  EXPECT_TRUE(set(2, Column::Min, 0.2));
  EXPECT_FALSE(set(2, Column::Min, 0.7)) << "above the maximum";
  EXPECT_EQ(desk.problem().foods[kLimestone].min, Grams(0.2));
}

TEST_F(IngredientTest, CostStandsOnlyWhereThereIsAPrice) {
  EXPECT_FALSE(model.hasCosts());
  diet::BalanceProblem problem = exampleProblem();
  problem.foods[kLeaves].costPerKg = 3.0;
  desk.open(problem);
  EXPECT_TRUE(model.hasCosts());
  EXPECT_EQ(text(0, Column::Cost), "0.060") << "20 g at 3 a kg";
  EXPECT_EQ(text(1, Column::Cost), "?");
}

TEST_F(IngredientTest, EveryCellCanBeReadAloud) {
  for (int row = 0; row < model.rowCount(); ++row)
    for (int column = 0; column < Column::ColumnCount; ++column) {
      const QString spoken = model.index(row, column).data(Qt::AccessibleTextRole).toString();
      EXPECT_TRUE(spoken.contains(model.index(row, Column::Food).data().toString())) << row << ' ' << column;
    }
}

}  // namespace
}  // namespace tarebowl::ui
