// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/eaten_fraction.h"

#include "core/diet/balance.h"
#include "tests/core/diet/bowls.h"
#include "tests/core/intake/feeding.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

namespace tarebowl::intake {
namespace {

using namespace testing;

const EatenFraction& of(const std::vector<EatenFraction>& fractions, const std::string& food) {
  return *std::ranges::find(fractions, food, &EatenFraction::food);
}

TEST(EatenFraction, OfOneFoodIsWhatWasEatenOverWhatWasOffered) {
  const std::vector<EatenBowl> bowls = {eatenAsSeen(bowlOf({fed("kale", 100, weighed(20))})),
                                        eatenAsSeen(bowlOf({fed("kale", 50, weighed(25))})),
                                        eatenAsSeen(bowlOf({fed("kale", 50, NotWeighed{})}))};
  const auto fractions = learnFractions(bowls);
  const EatenFraction& kale = of(fractions, "kale");
  EXPECT_EQ(kale.from, FractionFrom::Own);
  EXPECT_EQ(kale.bowls, 2U);
  EXPECT_NEAR(kale.fraction, 105.0 / 150.0, 1e-12);
  // Fractions 0.8 and 0.5 about 0.7: s² = 0.01 + 0.04 over 1 degree of freedom; sd = sqrt(0.05 / 2).
  EXPECT_NEAR(kale.dayScatter, std::sqrt(0.05), 1e-12);
  EXPECT_NEAR(kale.sd, std::sqrt(0.025), 1e-12);
}

TEST(EatenFraction, AFoodWithNeitherBowlsNorAClassHasNone) {
  const std::vector<FoodOfClass> asked = {{"beetroot", "roots"}};
  EXPECT_TRUE(learnFractions({}, asked).empty());
}

/// Bowls of one class whose foods differ truly: kale 0.7, endive and cabbage 0.6, chard 0.5; few of sorrel.
std::vector<EatenBowl> greens(int days, int ofSorrel, std::mt19937& random, double scatter = 0.1) {
  std::normal_distribution<> normal;
  const auto left = [&](double fraction) {
    return weighed(100.0 * (1.0 - fraction - scatter * normal(random)));
  };
  std::vector<EatenBowl> bowls;
  for (int i = 0; i < days; ++i) {
    FedBowl bowl = bowlOf({fed("kale", 100, left(0.7)), fed("endive", 100, left(0.6)),
                           fed("chard", 100, left(0.5)), fed("cabbage", 100, left(0.6))},
                          dayAfter("2026-01-01", i));
    if (i < ofSorrel) bowl.items.push_back(fed("sorrel", 100, left(0.6)));
    bowls.push_back(eatenAsSeen(bowl, static_cast<std::uint32_t>(i)));
  }
  return bowls;
}

TEST(EatenFraction, FewBowlsAreDrawnToTheirClassAndManyStandAlone) {
  std::mt19937 random(4);
  const auto fractions = learnFractions(greens(200, 1, random));
  const EatenFraction& sorrel = of(fractions, "sorrel");
  const EatenFraction& kale = of(fractions, "kale");
  EXPECT_EQ(sorrel.from, FractionFrom::Shrunk);
  EXPECT_LT(sorrel.ownWeight, 0.8);
  EXPECT_GT(kale.ownWeight, 0.98);
  EXPECT_GT(sorrel.sd, 5.0 * kale.sd);
  EXPECT_NEAR(kale.fraction, 0.7, 0.03);
}

TEST(EatenFraction, AFoodNeverFedIsJudgedByItsClass) {
  std::mt19937 random(4);
  const std::vector<FoodOfClass> asked = {{"cress", "greens"}};
  const auto fractions = learnFractions(greens(200, 0, random), asked);
  const EatenFraction& cress = of(fractions, "cress");
  EXPECT_EQ(cress.from, FractionFrom::Class);
  EXPECT_EQ(cress.bowls, 0U);
  EXPECT_NEAR(cress.fraction, 0.6, 0.05);                     // the mean of 0.7, 0.6, 0.6 and 0.5
  EXPECT_NEAR(cress.sd, std::sqrt(0.02 / 3.0 * 1.25), 0.01);  // theirs about it, and the mean's own
}

TEST(EatenFraction, ShrinkingBringsFewBowlsNearerToTheTruth) {
  std::mt19937 random(9);
  std::normal_distribution<> normal;
  double ownError = 0.0;
  double shrunkError = 0.0;
  int inside = 0;
  constexpr int kTrials = 400;
  for (int trial = 0; trial < kTrials; ++trial) {
    std::vector<double> truth;
    for (int food = 0; food < 8; ++food) truth.push_back(0.6 + 0.08 * normal(random));
    std::vector<EatenBowl> bowls;
    for (int i = 0; i < 3; ++i) {
      FedBowl bowl = bowlOf({}, dayAfter("2026-01-01", i));
      for (int food = 0; food < 8; ++food) {
        const double fraction = truth[static_cast<std::size_t>(food)] + 0.15 * normal(random);
        bowl.items.push_back(fed("food " + std::to_string(food), 100, weighed(100.0 * (1.0 - fraction))));
      }
      bowls.push_back(eatenAsSeen(bowl, static_cast<std::uint32_t>(i)));
    }
    const auto fractions = learnFractions(bowls);
    const EatenFraction& first = of(fractions, "food 0");
    ownError += std::pow(first.own.value() - truth[0], 2);
    shrunkError += std::pow(first.fraction - truth[0], 2);
    inside += std::abs(first.fraction - truth[0]) <= 1.96 * first.sd ? 1 : 0;
  }
  EXPECT_LT(shrunkError, 0.8 * ownError);
  // 400 intervals: their share scatters by 0.011.
  EXPECT_NEAR(static_cast<double>(inside) / kTrials, 0.95, 0.035);
}

TEST(EatenFraction, EntersTheBalanceAsWhatReachesTheAnimalAndAsItsScatter) {
  // Greens: 200 mg Ca a 100 g. 100 g offered of which 0.8 ± 0.1 is eaten: 160 ± 20 mg.
  diet::BalanceProblem problem = diet::testing::greensAndInsects();
  problem.targets = {
      diet::testing::target("CA", {.min = 150.0}, quantity::Unit::Milligram, quantity::Basis::Day)};
  problem.ratios.clear();
  problem.shares.clear();
  problem.reference.reset();
  EatenFraction fraction;
  fraction.food = problem.foods[0].id;
  fraction.fraction = 0.8;
  fraction.sd = 0.1;
  const auto eaten = onWhatIsEaten(problem, std::vector{fraction});
  const auto line = diet::balance(eaten, diet::testing::grams({100, 0})).targets.at(0);
  EXPECT_NEAR(line.value.value(), 160.0, 1e-9);
  EXPECT_NEAR(line.sd, 20.0, 1e-9);
  EXPECT_NEAR(line.chance.value(), 0.691462, 5e-7);  // Phi(0.5)
}

TEST(EatenFraction, ScattersTogetherWithTheComposition) {
  diet::BalanceProblem problem;
  problem.foods = {foodOf("kale", 90, 200, 50, 30)};
  EatenFraction fraction;
  fraction.food = "kale";
  fraction.fraction = 0.8;
  fraction.sd = 0.1;
  const auto eaten = onWhatIsEaten(problem, std::vector{fraction});
  // 0.8² · 30² + 200² · 0.1² + 30² · 0.1² = 576 + 400 + 9 = 985, as sd of 0.8 · c: sqrt(985) / 0.8
  EXPECT_NEAR(eaten.foods[0].composition.sdPer100g(food::nutrients::calcium()).value(),
              std::sqrt(985.0) / 0.8, 1e-9);
  EXPECT_FALSE(eaten.foods[0].composition.sdPer100g(food::nutrients::water()));
}

}  // namespace
}  // namespace tarebowl::intake
