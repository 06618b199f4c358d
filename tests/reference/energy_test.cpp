// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// One feed, every method: crude protein 26, fat 15, crude fibre 3, moisture 8, ash 7 % as fed, so NFE = 41 %.
#include "core/food/energy.h"

#include "core/quantity/content.h"
#include "tests/core/food/food_builder.h"

#include <gtest/gtest.h>

namespace tarebowl::reference {
namespace {

using namespace food;
using quantity::Kilocalories;

Composition feed() {
  return foodOf({{"WATER", 8}, {"PROCNT", 26}, {"FAT", 15}, {"ASH", 7}, {"FIBC", 3}});
}

double kcalPerKg(EnergyMethod method, const Composition& composition) {
  return estimateEnergy(method, composition).per100g.value().value() * 10.0;
}

// NFE = 100 - (moisture + CP + fat + fibre + ash): feed regulations, e.g. Code of Maryland
// Regulations 15.18.09.11.
TEST(Energy, TheFeedHas41PercentNitrogenFreeExtract) {
  EXPECT_NEAR(nitrogenFreeExtract(feed()).value(), 41.0, 1e-12);
  EXPECT_NEAR(carbohydrateByDifference(feed()).value(), 44.0, 1e-12);
}

// Form: Code of Maryland Regulations 15.18.09.11 and 2 Miss. Code R. 1-3-02-114.09; coefficients: AAFCO.
// 10 * (3.5*26 + 8.5*15 + 3.5*41) = 10 * (91 + 127.5 + 143.5).
TEST(Energy, ModifiedAtwaterOfTheFeedIs3620KcalPerKg) {
  const double kcal = kcalPerKg(EnergyMethod::ModifiedAtwater, feed());
  EXPECT_NEAR(kcal, 3620.0, 1e-9);
  EXPECT_NEAR(quantity::toKilojoules(Kilocalories(kcal)).value(), 15146.08, 1e-6);
  EXPECT_NEAR(kcal / 1000.0 / feed().dryMatter().value().value(), 3.93478, 5e-6);  // kcal per g DM
  const auto protein = quantity::toPer1000Kcal(quantity::AsFedContent(26.0), Kilocalories(kcal / 10.0));
  EXPECT_NEAR(protein.value(), 71.8232, 5e-5);  // g per 1000 kcal
}

// Atwater's general factors on NFE, from memory; on natural foods for dogs: European pet food industry's
// nutritional guidelines, page 119. 10 * (4*26 + 9*15 + 4*41) = 4030. The method of the same name counts all
// carbohydrate: 4*44.
TEST(Energy, AtwaterOfTheFeedIs4030KcalPerKgOnExtractAnd4150OnCarbohydrate) {
  EXPECT_NEAR(kcalPerKg(EnergyMethod::Atwater, feed()), 4150.0, 1e-9);
  auto withoutFibre = feed();
  withoutFibre.set(nutrients::carbohydrateByDifference(), {.amount = quantity::AsFedContent(41.0)});
  EXPECT_NEAR(kcalPerKg(EnergyMethod::Atwater, withoutFibre), 4030.0, 1e-9);
}

// The same page for cats on natural foods: 4/8.5/4. 10 * (104 + 127.5 + 164).
TEST(Energy, FourEightAndAHalfFourOfTheFeedIs3955KcalPerKg) {
  auto withoutFibre = feed();
  withoutFibre.set(nutrients::carbohydrateByDifference(), {.amount = quantity::AsFedContent(41.0)});
  const auto energy = atwaterEnergy(withoutFibre, {.protein = 4.0, .fat = 8.5, .carbohydrate = 4.0});
  EXPECT_NEAR(energy.value().value() * 10.0, 3955.0, 1e-9);
}

struct FourSteps {
  double perFibre;
  double intercept;
  double perProtein;
  double digestibility;
  double digestible;
  double metabolizable;
};
// National Research Council 2006, as printed in the European pet food industry's nutritional guidelines, page
// 118.
constexpr FourSteps kDog{1.43, 91.2, 1.04, 86.536957, 406.377548, 379.337548};
constexpr FourSteps kCat{0.88, 87.9, 0.77, 85.030435, 399.302922, 379.282922};

void followSteps(EnergyMethod method, const FourSteps& steps) {
  const double gross = 5.7 * 26.0 + 9.4 * 15.0 + 4.1 * (41.0 + 3.0);
  EXPECT_NEAR(gross, 469.6, 1e-9);
  const double fibreInDryMatter = 3.0 / 0.92;
  EXPECT_NEAR(fibreInDryMatter, 3.260870, 5e-7);
  const double digestibility = steps.intercept - steps.perFibre * fibreInDryMatter;
  EXPECT_NEAR(digestibility, steps.digestibility, 5e-7);
  const double digestible = gross * digestibility / 100.0;
  EXPECT_NEAR(digestible, steps.digestible, 5e-7);
  EXPECT_NEAR(digestible - steps.perProtein * 26.0, steps.metabolizable, 5e-7);
  EXPECT_NEAR(kcalPerKg(method, feed()) / 10.0, steps.metabolizable, 5e-7);
}

TEST(Energy, NrcDogStepByStepIs379Point337548KcalPer100g) {
  followSteps(EnergyMethod::Dog2006, kDog);
}
TEST(Energy, NrcCatStepByStepIs379Point282922KcalPer100g) {
  followSteps(EnergyMethod::Cat2006, kCat);
}

// WPSA/EU equation as written by an agricultural advisory service (ltz.de): 0.1551*17 + 0.3431*4 + 0.1669*40
// + 0.1301*4 = 11.2055 MJ/kg = 2678.179 kcal/kg.
TEST(Energy, PoultryFeedHas11Point2055MegajoulesPerKg) {
  const auto poultryFeed = foodOf({{"PROCNT", 17}, {"FAT", 4}, {"STARCH", 40}, {"SUGAR", 4}});
  const double kcal = kcalPerKg(EnergyMethod::PoultryAmen, poultryFeed);
  EXPECT_NEAR(kcal, 2678.179, 5e-4);
  EXPECT_NEAR(quantity::toKilojoules(Kilocalories(kcal)).value() / 1000.0, 11.2055, 1e-9);
}

}  // namespace
}  // namespace tarebowl::reference
