// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/food_form.h"

#include "tests/ui/foods/example_foods.h"
#include "ui/collection/food_picker.h"
#include "ui/foods/cooking_card.h"
#include "ui/foods/food_text.h"
#include "ui/foods/nutrient_numbers_model.h"
#include "ui/foods/plan_card.h"
#include "ui/foods/recipe_card.h"
#include "ui/foods/recipe_parts_model.h"

#include <QComboBox>
#include <QLabel>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;

class FoodFormTest : public ::testing::Test {
 protected:
  FoodFormTest() {
    example.openOn(desk);
    showFood(desk, "Kale");
  }
  /// As a hand types: what stands in one cell is kept before the next is reached.
  void type(NutrientNumbersModel& model, int row, const char* nutrient, const char* number) {
    model.setData(model.index(row, NutrientNumbersModel::Nutrient), QString::fromUtf8(nutrient));
    settle(desk);
    model.setData(model.index(row, NutrientNumbersModel::Number), QString::fromUtf8(number));
  }
  NutrientNumbersModel& plan() { return form.findChild<PlanCard*>()->model(); }
  CookingCard& cooking() { return *form.findChild<CookingCard*>(); }
  void cookFrom(const char* code) {
    QComboBox& raw = cooking().raw();
    raw.setCurrentIndex(raw.findData(QString::fromUtf8(code)));
    emit raw.activated(raw.currentIndex());
    settle(desk);
  }

  RecipeCard& recipe() { return *form.findChild<RecipeCard*>(); }
  void mixIn(const char* code) { emit recipe().picker().picked(QString::fromUtf8(code)); }
  void grams(int row, const char* number) {
    recipe().parts().setData(recipe().parts().index(row, RecipePartsModel::Grams), QString::fromUtf8(number));
    settle(desk);
  }
  QString shownShare(int row) {
    return recipe().parts().index(row, RecipePartsModel::Share).data().toString();
  }

  ExampleCollection example;
  OpenCollection collection;
  FoodDesk desk{collection};
  FoodForm form{desk};
};

TEST_F(FoodFormTest, ASamplingPlanIsTypedInAndSaysWhatIsDue) {
  type(plan(), 0, "CA", "6");
  settle(desk);
  ASSERT_EQ(desk.page()->food.record.plan.size(), 1U);
  EXPECT_EQ(desk.page()->food.record.plan.front(), (food::PlannedAnalysis{nutrient("CA"), 6}));
  EXPECT_THAT(form.findChild<PlanCard*>()->dueText().toStdString(),
              HasSubstr("calcium (no own sample has it)"));
  desk.undoStack().undo();
  settle(desk);
  desk.undoStack().undo();
  settle(desk);
  EXPECT_TRUE(desk.page()->food.record.plan.empty());
}

TEST_F(FoodFormTest, AnEmptiedNutrientIsPlannedNoLonger) {
  type(plan(), 0, "CA", "6");
  settle(desk);
  plan().setData(plan().index(0, NutrientNumbersModel::Nutrient), QString());
  settle(desk);
  EXPECT_TRUE(desk.page()->food.record.plan.empty());
}

TEST_F(FoodFormTest, HalfAMonthIsNoPlan) {
  type(plan(), 0, "CA", "0.5");
  settle(desk);
  EXPECT_THAT(plan().complaint().toStdString(), HasSubstr("whole number of months"));
  for (const food::PlannedAnalysis& planned : desk.page()->food.record.plan)
    EXPECT_EQ(planned.everyMonths, 12);
}

TEST_F(FoodFormTest, ACookedFoodIsWorkedOutFromTheRawOne) {
  cookFrom("crickets");
  ASSERT_TRUE(desk.page()->food.record.cooking.has_value());
  EXPECT_DOUBLE_EQ(amountOf(desk, "CA").value_or(-1.0), 45.0) << "the mean of the raw food's own samples";
  type(cooking().retentions(), 0, "calcium", "0.8");
  settle(desk);
  EXPECT_DOUBLE_EQ(amountOf(desk, "CA").value_or(-1.0), 36.0) << "0.8 of 45";
  cookFrom("");
  EXPECT_FALSE(desk.page()->food.record.cooking.has_value());
}

TEST_F(FoodFormTest, AHouseMixIsWorkedOutFromItsPartsOnceAllGramsAreSaid) {
  mixIn("crickets");
  mixIn("grubs");
  grams(0, "10");
  EXPECT_FALSE(desk.page()->food.record.recipe.has_value()) << "nobody said how many grams of grubs";
  EXPECT_THAT(recipe().parts().complaint().toStdString(), HasSubstr("Grubs"));
  grams(1, "30");
  ASSERT_TRUE(desk.page()->food.record.recipe.has_value());
  EXPECT_DOUBLE_EQ(amountOf(desk, "CA").value_or(-1.0), (10.0 * 45.0 + 30.0 * 900.0) / 40.0);
  EXPECT_EQ(shownShare(1), QStringLiteral("75\u00A0%"));
  desk.undoStack().undo();
  settle(desk);
  EXPECT_FALSE(desk.page()->food.record.recipe.has_value());
}

TEST_F(FoodFormTest, ARecipeTakesThePlaceOfCookingAndSaysSoBefore) {
  cookFrom("crickets");
  EXPECT_THAT(recipe().standing().toStdString(), HasSubstr("cooked from Crickets"));
  mixIn("grubs");
  grams(0, "5");
  EXPECT_FALSE(desk.page()->food.record.cooking.has_value());
  EXPECT_DOUBLE_EQ(amountOf(desk, "CA").value_or(-1.0), 900.0);
}

TEST_F(FoodFormTest, AFoodIsNotMixedFromItself) {
  std::string complaint;
  QObject::connect(&recipe(), &RecipeCard::complained,
                   [&](const QString& what) { complaint = what.toStdString(); });
  mixIn("kale-raw");
  EXPECT_THAT(complaint, HasSubstr("from itself"));
  EXPECT_EQ(recipe().parts().rowCount(), 0);
}

TEST_F(FoodFormTest, TheLastPartTakenOutLeavesNoRecipe) {
  mixIn("grubs");
  grams(0, "5");
  recipe().parts().remove(0);
  settle(desk);
  EXPECT_FALSE(desk.page()->food.record.recipe.has_value());
}

TEST_F(FoodFormTest, AFoodWithSamplesIsNotRemovedAndTheWayBackStays) {
  food::Food renamed = desk.page()->food.record.food;
  renamed.name = "Curly kale";
  desk.changeFood(renamed);
  settle(desk);
  std::string why;
  QObject::connect(&collection, &OpenCollection::hindered,
                   [&](const Refusal& refusal) { why = refusal.why.toStdString(); });
  desk.removeFood();
  settle(desk);
  EXPECT_THAT(why, HasSubstr("has samples"));
  EXPECT_EQ(desk.foods().size(), 3U);
  EXPECT_TRUE(desk.undoStack().canUndo());
}

TEST_F(FoodFormTest, AFoodWithoutSamplesIsRemovedAndUndoBringsItBack) {
  desk.addFood({.code = "new", .name = "New food"});
  settle(desk);
  desk.removeFood();
  settle(desk);
  EXPECT_EQ(desk.foods().size(), 3U);
  EXPECT_TRUE(desk.page().has_value()) << "another food is shown";
  desk.undoStack().undo();
  settle(desk);
  EXPECT_EQ(desk.foods().size(), 4U);
}

TEST(EnergyUnits, AreShownAsThePersonReadsThem) {
  const food::BasisFacts facts{.dryMatter = {}, .energyPer100g = quantity::Kilocalories(50.0)};
  const auto shown = [&](std::string_view tagname, CompositionBasis basis, EnergyUnit energy) {
    return shownAmount(nutrient(tagname), basis, quantity::AsFedContent(100.0), facts, energy);
  };
  EXPECT_DOUBLE_EQ(shown("ENERC", CompositionBasis::AsFed100g, EnergyUnit::Kilojoule).value(), 418.4);
  EXPECT_DOUBLE_EQ(shown("ENERC", CompositionBasis::AsFed100g, EnergyUnit::Kilocalorie).value(), 100.0);
  EXPECT_DOUBLE_EQ(shown("CA", CompositionBasis::AsFed100g, EnergyUnit::Kilojoule).value(), 100.0);
  EXPECT_DOUBLE_EQ(shown("CA", CompositionBasis::Energy1000Kcal, EnergyUnit::Kilocalorie).value(), 2000.0);
  EXPECT_DOUBLE_EQ(shown("CA", CompositionBasis::Energy1000Kcal, EnergyUnit::Kilojoule).value(),
                   2000.0 / 4.184);
  EXPECT_EQ(shownUnit(nutrient("ENERC"), EnergyUnit::Kilojoule), QStringLiteral("kJ"));
  EXPECT_EQ(shownUnit(nutrient("CA"), EnergyUnit::Kilojoule), QStringLiteral("mg"));
}

}  // namespace
}  // namespace tarebowl::ui
