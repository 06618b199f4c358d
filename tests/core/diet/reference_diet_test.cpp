// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/solve.h"
#include "tests/core/diet/bowls.h"

#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using namespace testing;
using quantity::Basis;
using quantity::Unit;

/// Two foods without a reference: 40 and 200 kcal in 100 g, so that equal grams give 1.2 kcal each.
BalanceProblem withoutReference() {
  BalanceProblem problem = greensAndInsects();
  problem.reference.reset();
  return problem;
}

void expectEqualGrams(const BalanceProblem& problem, double each) {
  for (const quantity::Grams& amount : referenceDiet(problem)) EXPECT_NEAR(amount.value(), each, 1e-9);
}

TEST(ReferenceDiet, IsTheGivenOneAsItStands) {
  EXPECT_EQ(referenceDiet(greensAndInsects()), grams({200, 0}));
}

TEST(ReferenceDiet, IsAHundredGramsInEqualPartsWhenNothingIsKnown) {
  expectEqualGrams(withoutReference(), 50);
}

TEST(ReferenceDiet, MeetsTheMiddleOfTheDailyEnergy) {
  BalanceProblem problem = withoutReference();
  problem.targets = {target("CA", {.min = 1}, Unit::Gram, Basis::Day),
                     target("ENERC", {.min = 999}, Unit::Kilocalorie, Basis::DryMatter),
                     target("ENERC", {.min = 200, .max = 280}, Unit::Kilocalorie, Basis::Day),
                     target("ENERC", {.min = 999}, Unit::Kilocalorie, Basis::Day)};  // the first one counts
  expectEqualGrams(problem, 100);                                                    // 240 kcal / 1.2
}

TEST(ReferenceDiet, TakesTheOnlyBoundWhereThereIsOneAndReadsKilojoules) {
  BalanceProblem problem = withoutReference();
  problem.targets = {target("ENERC", {.min = 120}, Unit::Kilocalorie, Basis::Day)};
  expectEqualGrams(problem, 50);
  problem.targets = {target("ENERC", {.max = 120}, Unit::Kilocalorie, Basis::Day)};
  expectEqualGrams(problem, 50);
  problem.targets = {target("ENERC", {.min = 120 * 4.184}, Unit::Kilojoule, Basis::Day)};
  expectEqualGrams(problem, 50);
}

TEST(ReferenceDiet, CountsTheEnergyThatIsEaten) {
  BalanceProblem problem = withoutReference();
  problem.targets = {target("ENERC", {.min = 140}, Unit::Kilocalorie, Basis::Day)};
  problem.foods[1].eatenFraction = 0.5;  // 0.4 and 1.0 kcal per gram offered: 140 / 1.4
  expectEqualGrams(problem, 100);
}

TEST(ReferenceDiet, CountsAnUnknownEnergyAsNone) {
  BalanceProblem problem = withoutReference();
  problem.targets = {target("ENERC", {.min = 80}, Unit::Kilocalorie, Basis::Day)};
  problem.foods[1].composition.erase(nutrient("ENERC"));
  expectEqualGrams(problem, 200);  // greens alone: 80 / 0.4
}

TEST(ReferenceDiet, IsAHundredGramsWhereTheFoodsGiveNoEnergy) {
  BalanceProblem problem = withoutReference();
  problem.targets = {target("ENERC", {.min = 80}, Unit::Kilocalorie, Basis::Day)};
  for (DietFood& food : problem.foods) food.composition.erase(nutrient("ENERC"));
  expectEqualGrams(problem, 50);
}

TEST(ReferenceDiet, OfNothingAtAllCountsAsNotGiven) {
  BalanceProblem problem = greensAndInsects();
  problem.reference = grams({0, 0});
  expectEqualGrams(problem, 50);
  problem.foods.clear();
  problem.reference.reset();
  EXPECT_TRUE(referenceDiet(problem).empty());
}

}  // namespace
}  // namespace tarebowl::diet
