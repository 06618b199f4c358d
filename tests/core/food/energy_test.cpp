// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/energy.h"

#include "tests/core/food/food_builder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::food {
namespace {

using quantity::AsFedContent;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::UnorderedElementsAre;

double kcal(const EnergyEstimate& estimate) {
  return estimate.per100g.value().value();
}

TEST(Energy, MethodsAreReadAndWrittenByTheNamesOfTheProblemFormat) {
  for (const auto* name : {"given", "atwater", "modified-atwater", "dog-2006", "cat-2006", "poultry-amen"}) {
    const auto method = parseEnergyMethod(name);
    ASSERT_TRUE(method) << name;
    EXPECT_EQ(symbolOf(*method), name);
  }
  EXPECT_FALSE(parseEnergyMethod("Atwater"));
  EXPECT_FALSE(parseEnergyMethod(""));
}

TEST(Energy, GivenEnergyIsTheStatedOneAndNothingElse) {
  EXPECT_EQ(kcal(estimateEnergy(EnergyMethod::Given, foodOf({{"ENERC", 86.0}, {"FAT", 50.0}}))), 86.0);
  const auto unknown =
      estimateEnergy(EnergyMethod::Given, foodOf({{"PROCNT", 5.0}, {"FAT", 5.0}, {"CHOCDF", 5.0}}));
  EXPECT_FALSE(unknown.per100g);
  EXPECT_THAT(unknown.missing, ElementsAre(nutrients::energy()));
}

TEST(Energy, AtwaterIsFourNineFour) {
  // 4*10 + 9*5 + 4*20 = 165
  const auto estimate =
      estimateEnergy(EnergyMethod::Atwater, foodOf({{"PROCNT", 10}, {"FAT", 5}, {"CHOCDF", 20}}));
  EXPECT_DOUBLE_EQ(kcal(estimate), 165.0);
  EXPECT_FALSE(estimate.nitrogenFreeExtract);
}

TEST(Energy, FactorsOfTheFoodItselfAndAlcoholCountWhereGiven) {
  // 3*10 + 8*5 + 4*20 + 6.93*2 = 163.86
  const AtwaterFactors factors{.protein = 3.0, .fat = 8.0, .carbohydrate = 4.0, .alcohol = 6.93};
  const auto drink = foodOf({{"PROCNT", 10}, {"FAT", 5}, {"CHOCDF", 20}, {"ALC", 2}});
  EXPECT_DOUBLE_EQ(atwaterEnergy(drink, factors).value().value(), 163.86);
  EXPECT_FALSE(atwaterEnergy(foodOf({{"PROCNT", 10}, {"CHOCDF", 20}}), factors));
}

TEST(Energy, StatedCarbohydrateGoesBeforeTheDifference) {
  auto food = foodOf({{"WATER", 60}, {"PROCNT", 10}, {"FAT", 5}, {"ASH", 1}});
  EXPECT_DOUBLE_EQ(carbohydrateByDifference(food).value(), 24.0);
  food.set(nutrients::carbohydrateByDifference(), {.amount = AsFedContent(20.0)});
  EXPECT_DOUBLE_EQ(carbohydrateByDifference(food).value(), 20.0);
}

TEST(Energy, CrudeFibreIsTakenOffBeforeDietaryFibreAndNothingWhereBothAreUnknown) {
  auto food = foodOf({{"CHOCDF", 20}});
  EXPECT_DOUBLE_EQ(nitrogenFreeExtract(food).value(), 20.0);
  food.set(nutrients::totalDietaryFibre(), {.amount = AsFedContent(6.0)});
  EXPECT_DOUBLE_EQ(nitrogenFreeExtract(food).value(), 14.0);
  food.set(nutrients::crudeFibre(), {.amount = AsFedContent(2.0)});
  EXPECT_DOUBLE_EQ(nitrogenFreeExtract(food).value(), 18.0);
}

TEST(Energy, AnUnknownTermMakesTheEnergyUnknownAndIsNamed) {
  const auto noFat =
      estimateEnergy(EnergyMethod::ModifiedAtwater, foodOf({{"WATER", 60}, {"PROCNT", 10}, {"ASH", 1}}));
  EXPECT_FALSE(noFat.per100g);
  EXPECT_THAT(noFat.missing, ElementsAre(nutrients::fat()));
  const auto empty = estimateEnergy(EnergyMethod::Atwater, Composition{});
  EXPECT_FALSE(empty.per100g);
  EXPECT_THAT(empty.missing, UnorderedElementsAre(nutrients::water(), nutrients::protein(), nutrients::fat(),
                                                  nutrients::ash()));
  const auto noStarch =
      estimateEnergy(EnergyMethod::PoultryAmen, foodOf({{"PROCNT", 10}, {"FAT", 5}, {"SUGAR", 1}}));
  EXPECT_FALSE(noStarch.per100g);
  EXPECT_THAT(noStarch.missing, ElementsAre(nutrients::starch()));
}

TEST(Energy, DogAndCatNeedWaterEvenWhereCarbohydrateIsStated) {
  const auto food = foodOf({{"PROCNT", 10}, {"FAT", 5}, {"CHOCDF", 20}, {"FIBC", 1}});
  EXPECT_TRUE(estimateEnergy(EnergyMethod::ModifiedAtwater, food).per100g);
  const auto dog = estimateEnergy(EnergyMethod::Dog2006, food);
  EXPECT_FALSE(dog.per100g);
  EXPECT_THAT(dog.missing, ElementsAre(nutrients::water()));
}

TEST(Energy, FibreNobodyMeasuredCountsAsNoneAndIsSaid) {
  const auto food = foodOf({{"WATER", 60}, {"PROCNT", 20}, {"FAT", 10}, {"ASH", 5}});
  // NFE = 100-60-20-10-5 = 5; 3.5*20 + 8.5*10 + 3.5*5 = 172.5
  const auto estimate = estimateEnergy(EnergyMethod::ModifiedAtwater, food);
  EXPECT_DOUBLE_EQ(kcal(estimate), 172.5);
  EXPECT_TRUE(estimate.fibreTakenAsZero);
  // Dog: GE = 5.7*20 + 9.4*10 + 4.1*5 = 228.5; 91.2 % = 208.392; - 1.04*20 = 187.592
  EXPECT_NEAR(kcal(estimateEnergy(EnergyMethod::Dog2006, food)), 187.592, 1e-9);
}

TEST(Energy, ASlightlyNegativeExtractIsKeptAndMarked) {
  // NFE = 100-60-20-15-3 - 4 = -2; 3.5*20 + 8.5*15 - 7 = 190.5
  const auto food = foodOf({{"WATER", 60}, {"PROCNT", 20}, {"FAT", 15}, {"ASH", 3}, {"FIBC", 4}});
  const auto estimate = estimateEnergy(EnergyMethod::ModifiedAtwater, food);
  EXPECT_DOUBLE_EQ(kcal(estimate), 190.5);
  EXPECT_DOUBLE_EQ(estimate.nitrogenFreeExtract.value(), -2.0);
  EXPECT_TRUE(estimate.negativeCarbohydrate);
  EXPECT_FALSE(estimate.implausibleCarbohydrate);
}

TEST(Energy, ExtractIsRefusedBelowMinusTenAndNotAtMinusTen) {
  const auto withFibre = [](double fibre) {
    return estimateEnergy(EnergyMethod::ModifiedAtwater,
                          foodOf({{"PROCNT", 20}, {"FAT", 15}, {"CHOCDF", 2}, {"FIBC", fibre}}));
  };
  EXPECT_FALSE(withFibre(12.0).implausibleCarbohydrate);
  EXPECT_TRUE(withFibre(12.1).implausibleCarbohydrate);
}

TEST(Energy, ProximatesThatCloseExactlyAreNotCalledNegativeForARoundingError) {
  // In binary, 100 - 72.1 - 22.3 - 4.4 - 1.2 is not exactly 0.
  const auto estimate = estimateEnergy(
      EnergyMethod::Atwater, foodOf({{"WATER", 72.1}, {"PROCNT", 22.3}, {"FAT", 4.4}, {"ASH", 1.2}}));
  EXPECT_FALSE(estimate.negativeCarbohydrate);
  EXPECT_THAT(estimate.missing, IsEmpty());
}

TEST(Energy, AnUnknownTermIsNeverJudgedAsNegative) {
  // Without fat and ash the difference cannot be formed; nothing may be said about it.
  const auto estimate = estimateEnergy(EnergyMethod::Atwater, foodOf({{"WATER", 99}, {"PROCNT", 30}}));
  EXPECT_FALSE(estimate.negativeCarbohydrate);
  EXPECT_FALSE(estimate.implausibleCarbohydrate);
}

TEST(Energy, PureWaterHasNone) {
  const auto water = foodOf({{"WATER", 100}, {"PROCNT", 0}, {"FAT", 0}, {"ASH", 0}});
  EXPECT_EQ(kcal(estimateEnergy(EnergyMethod::ModifiedAtwater, water)), 0.0);
  EXPECT_EQ(kcal(estimateEnergy(EnergyMethod::Cat2006, water)), 0.0);
}

}  // namespace
}  // namespace tarebowl::food
