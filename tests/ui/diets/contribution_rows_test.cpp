// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/contribution_rows.h"

#include "tests/ui/diets/example_diet.h"

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using quantity::Grams;

TEST(Contributions, OfANutrientAreAmountAndShareTheGreatestFirst) {
  const ContributionChartState state =
      contributionRows(draftOf(exampleProblem()), {diet::TargetKind::Nutrient, kPhosphorus});
  ASSERT_EQ(state.rows.size(), 2U) << "limestone is not in the bowl";
  EXPECT_EQ(state.rows[0].food.toStdString(), "Insects");
  EXPECT_EQ(state.rows[0].label.toStdString(), "30.0 mg · 75\u00a0%");
  EXPECT_EQ(state.rows[1].label.toStdString(), "10.0 mg · 25\u00a0%");
  EXPECT_EQ(state.rows[0].source.toStdString(), "invented");
}

TEST(Contributions, OfAnUnmeasuredFoodAreNoValueAndNotNought) {
  const ContributionChartState state =
      contributionRows(draftOf(exampleProblem()), {diet::TargetKind::Nutrient, kVitaminE});
  ASSERT_EQ(state.rows.size(), 2U);
  EXPECT_EQ(state.rows[1].food.toStdString(), "Insects");
  EXPECT_FALSE(state.rows[1].amounts[0]);
  EXPECT_EQ(state.rows[1].label.toStdString(), "? no value");
}

TEST(Contributions, OfARatioShowBothNutrients) {
  const ContributionChartState state =
      contributionRows(draftOf(exampleProblem()), {diet::TargetKind::Ratio, 0});
  ASSERT_EQ(state.series.size(), 2);
  ASSERT_EQ(state.rows.size(), 2U);
  EXPECT_EQ(state.rows[0].food.toStdString(), "Insects") << "30 mg of phosphorus is the greatest amount";
  EXPECT_EQ(state.rows[0].label.toStdString(), "3.00 mg : 30.0 mg");
  EXPECT_EQ(state.rows[1].label.toStdString(), "20.0 mg : 10.0 mg");
}

TEST(Contributions, OfAShareAreItsFoodsParts) {
  const ContributionChartState state =
      contributionRows(draftOf(exampleProblem()), {diet::TargetKind::Share, 0});
  ASSERT_EQ(state.rows.size(), 1U);
  EXPECT_EQ(state.rows[0].label.toStdString(), "60\u00a0%");
}

TEST(Contributions, BeyondTheFirstFewAreOneLineThatKeepsTheSum) {
  diet::BalanceProblem problem = exampleProblem();
  problem.foods.resize(1);
  for (int i = 0; i < 11; ++i) {
    problem.foods.push_back(problem.foods[0]);
    problem.foods.back().id = "leaves-" + std::to_string(i);
  }
  problem.reference = diet::Diet(12, Grams(10));
  problem.shares.clear();
  const ContributionChartState state =
      contributionRows(draftOf(problem), {diet::TargetKind::Nutrient, kCalcium});
  ASSERT_EQ(state.rows.size(), 7U);
  EXPECT_EQ(state.rows.back().food.toStdString(), "the other 6");
  EXPECT_NEAR(state.rows.back().amounts[0].value(), 60.0, 1e-9) << "six times 10 mg";
}

}  // namespace
}  // namespace tarebowl::ui
