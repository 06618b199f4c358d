// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What is given unweighed: added, changed and removed on the desk, and kept in the collection.
#include "core/store/food_reading.h"
#include "tests/ui/diets/example_diets.h"

#include <QTest>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using quantity::Grams;

class AllowanceTest : public ::testing::Test {
 protected:
  AllowanceTest() {
    alone.desk.setHolding(true);
    alone.open(example.draft());
    alone.desk.setHolding(true);
  }
  void allowGrubs(double low, double high) {
    diet::Allowance allowance;
    allowance.food = "grubs";
    allowance.low = Grams(low);
    allowance.high = Grams(high);
    alone.desk.allow(*store::dietFood(example.elsewhere(), "grubs"), allowance);
    alone.settle();
  }
  [[nodiscard]] std::vector<diet::Allowance> kept() const {
    return example.stored(example.draft()).allowances;
  }
  ExampleDiets example;
  DietAlone alone{example, &diet::solve};
};

// Any amount from 1 to 3 g is as likely as any other: 2 g, give or take 2 / sqrt(12).
TEST_F(AllowanceTest, ATreatCountsWithTheMiddleOfItsRangeAndItsRangeAsUncertainty) {
  allowGrubs(1, 3);
  ASSERT_EQ(alone.desk.problem().foods.size(), 3U);
  EXPECT_TRUE(alone.desk.draft().places.back().allowance.has_value());
  EXPECT_EQ(alone.desk.draft().grams.back(), Grams(2));
  double scatter = 0.0;
  for (const diet::TargetBalance& target : alone.desk.balance().targets) scatter += target.sd;
  EXPECT_GT(scatter, 0.0);
  ASSERT_EQ(kept().size(), 1U);
  EXPECT_EQ(kept().front().high, Grams(3));
}

TEST_F(AllowanceTest, ItsRangeIsChangedAndNotAddedASecondTime) {
  allowGrubs(1, 3);
  allowGrubs(0, 6);
  ASSERT_EQ(kept().size(), 1U);
  EXPECT_EQ(kept().front().high, Grams(6));
  EXPECT_EQ(alone.desk.draft().grams.back(), Grams(3));
}

TEST_F(AllowanceTest, ItIsRemovedAndUndoBringsItBack) {
  allowGrubs(1, 3);
  alone.desk.removeFood(2);
  alone.settle();
  EXPECT_TRUE(kept().empty());
  alone.desk.undoStack().undo();
  alone.settle();
  EXPECT_EQ(kept().size(), 1U);
}

}  // namespace
}  // namespace tarebowl::ui
