// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/balance.h"

#include "tests/core/diet/bowls.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::diet {
namespace {

using namespace testing;
using quantity::Basis;
using quantity::Unit;
using ::testing::DoubleNear;
using ::testing::Optional;

constexpr double kTiny = 1e-12;

TargetBalance judged(BalanceProblem problem, const animal::Target& rule, const Diet& diet = usualBowl()) {
  problem.targets = {rule};
  return balance(problem, diet).targets.at(0);
}
TargetBalance judged(BalanceProblem problem, const animal::RatioTarget& rule,
                     const Diet& diet = usualBowl()) {
  problem.ratios = {rule};
  return balance(problem, diet).targets.at(0);
}
TargetBalance judged(BalanceProblem problem, const ShareRule& rule, const Diet& diet = usualBowl()) {
  problem.shares = {rule};
  return balance(problem, diet).targets.at(0);
}
TargetBalance calcium(Zone zone, Unit unit, Basis basis) {
  BalanceProblem problem = greensAndInsects();
  problem.eater.bodyMass = quantity::Kilograms(16);
  return judged(problem, target("CA", zone, unit, basis));
}

// The usual bowl holds 220 mg Ca in 150 g as fed, 30 g dry matter and 140 kcal.
TEST(BalanceValue, IsCountedAgainstTheTargetsOwnBasis) {
  const Zone any{.min = 1};
  EXPECT_THAT(calcium(any, Unit::Milligram, Basis::AsFed).value, Optional(DoubleNear(220 / 0.150, 1e-9)));
  EXPECT_THAT(calcium(any, Unit::Milligram, Basis::DryMatter).value, Optional(DoubleNear(220 / 0.030, 1e-9)));
  EXPECT_THAT(calcium(any, Unit::Milligram, Basis::Energy).value, Optional(DoubleNear(220 / 0.140, 1e-9)));
  EXPECT_THAT(calcium(any, Unit::Milligram, Basis::Day).value, Optional(DoubleNear(220, kTiny)));
  EXPECT_THAT(calcium(any, Unit::Milligram, Basis::BodyMass).value, Optional(DoubleNear(220 / 16.0, kTiny)));
  EXPECT_THAT(calcium(any, Unit::Milligram, Basis::MetabolicMass).value,
              Optional(DoubleNear(220 / 8.0, kTiny)));  // 16^0.75 = 8
}

TEST(BalanceValue, IsStatedInTheTargetsOwnUnit) {
  EXPECT_THAT(calcium({.min = 1}, Unit::Gram, Basis::Day).value, Optional(DoubleNear(0.220, kTiny)));
  EXPECT_THAT(calcium({.min = 1}, Unit::Microgram, Basis::Day).value, Optional(DoubleNear(220'000, 1e-9)));
  const TargetBalance energy =
      judged(greensAndInsects(), target("ENERC", {.min = 1}, Unit::Kilojoule, Basis::Day));
  EXPECT_THAT(energy.value, Optional(DoubleNear(140 * 4.184, 1e-9)));
}

// 1 IU of vitamin D is 0.025 ug: 40 IU weigh 1 ug.
TEST(BalanceValue, ReadsInternationalUnitsOfVitaminD) {
  BalanceProblem problem = greensAndInsects();
  problem.foods = {makeFood("oil", "supplement", {{"WATER", 0}, {"VITD", 25}})};
  problem.reference.reset();
  EXPECT_THAT(
      judged(problem, target("VITD", {.min = 1}, Unit::InternationalUnit, Basis::Day), grams({2})).value,
      Optional(DoubleNear(20, kTiny)));  // 0.5 ug
}

TEST(BalanceValue, OfARatioIsOneAmountForOneOfTheOther) {
  EXPECT_THAT(judged(greensAndInsects(), ratio("CA", "P", {.min = 1})).value,
              Optional(DoubleNear(1.1, kTiny)));
}

TEST(BalanceValue, OfAShareIsTheGroupsPartOfTheWhole) {
  const auto greens = [](Basis basis) {
    return judged(greensAndInsects(), share("leafy vegetable", {.max = 1}, basis)).value;
  };
  EXPECT_THAT(greens(Basis::AsFed), Optional(DoubleNear(100 / 150.0, kTiny)));
  EXPECT_THAT(greens(Basis::DryMatter), Optional(DoubleNear(10 / 30.0, kTiny)));
  EXPECT_THAT(greens(Basis::Energy), Optional(DoubleNear(40 / 140.0, kTiny)));
}

TEST(BalanceValue, CountsWhatIsEatenAndNotWhatIsOffered) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].eatenFraction = 0.5;  // 50 g greens eaten: 100 + 20 mg Ca, 5 + 20 g dry matter
  EXPECT_THAT(judged(problem, target("CA", {.min = 1}, Unit::Milligram, Basis::DryMatter)).value,
              Optional(DoubleNear(120 / 0.025, 1e-9)));
  EXPECT_THAT(judged(problem, share("leafy vegetable", {.max = 1}, Basis::AsFed)).value,
              Optional(DoubleNear(50 / 100.0, kTiny)));
}

TEST(BalanceValue, TakesEnergyFromTheProblemsMethodAndNotFromTheTable) {
  BalanceProblem problem = greensAndInsects();
  problem.energyMethod = food::EnergyMethod::Atwater;
  problem.foods = {
      makeFood("pellet", "pellet", {{"PROCNT", 20}, {"FAT", 10}, {"CHOCDF", 50}, {"ENERC", 999}})};
  problem.reference.reset();
  // 4·20 + 9·10 + 4·50 = 370 kcal in 100 g
  EXPECT_THAT(judged(problem, target("ENERC", {.min = 1}, Unit::Kilocalorie, Basis::Day), grams({10})).value,
              Optional(DoubleNear(37, kTiny)));
}

// The reference is 200 g greens: 0.02 kg dry matter. The bowl holds 0.22 g Ca in 0.03 kg.
TEST(BalanceShortfall, IsRelativeToTheBoundAndToTheBasisOfTheReferenceDiet) {
  // (10 · 0.03 - 0.22) / (10 · 0.02)
  const TargetBalance low = calcium({.min = 10}, Unit::Gram, Basis::DryMatter);
  EXPECT_NEAR(low.shortfall, 0.4, kTiny);
  EXPECT_EQ(low.state, TargetState::Short);
  // (0.22 - 5 · 0.03) / (5 · 0.02)
  const TargetBalance high = calcium({.max = 5}, Unit::Gram, Basis::DryMatter);
  EXPECT_NEAR(high.shortfall, 0.7, kTiny);
  EXPECT_EQ(high.state, TargetState::Over);
}

TEST(BalanceShortfall, PerDayIsTheMissingPartOfTheBound) {
  EXPECT_NEAR(calcium({.min = 275}, Unit::Milligram, Basis::Day).shortfall, 0.2, kTiny);   // 55 of 275
  EXPECT_NEAR(calcium({.max = 176}, Unit::Milligram, Basis::Day).shortfall, 0.25, kTiny);  // 44 of 176
  EXPECT_NEAR(calcium({.min = 17.1875}, Unit::Milligram, Basis::BodyMass).shortfall, 0.2, kTiny);
}

TEST(BalanceShortfall, OfABoundOfZeroIsCountedInTheTargetsUnit) {
  EXPECT_NEAR(calcium({.max = 0}, Unit::Gram, Basis::DryMatter).shortfall, 0.22 / 0.02, 1e-9);
  EXPECT_NEAR(calcium({.max = 0}, Unit::Milligram, Basis::DryMatter).shortfall, 220 / 0.02, 1e-6);
  EXPECT_NEAR(calcium({.max = 0}, Unit::Milligram, Basis::Day).shortfall, 220, kTiny);
}

TEST(BalanceShortfall, OfARatioIsRelativeToTheReferencesAmountOfTheOther) {
  // Bowl 220 mg Ca, 200 mg P; reference 100 mg P. (2 · 200 - 220) / (2 · 100) and (220 - 1 · 200) / (1 · 100)
  EXPECT_NEAR(judged(greensAndInsects(), ratio("CA", "P", {.min = 2})).shortfall, 0.9, kTiny);
  EXPECT_NEAR(judged(greensAndInsects(), ratio("CA", "P", {.max = 1})).shortfall, 0.2, kTiny);
  EXPECT_NEAR(judged(greensAndInsects(), ratio("CA", "P", {.max = 0})).shortfall, 2.2,
              kTiny);  // 220 / (1 · 100)
}

TEST(BalanceShortfall, OfAShareIsInSharePointsTimesTheSizeOfTheBowl) {
  // Greens are 1/3 of 0.03 kg dry matter; the reference has 0.02 kg.
  const auto greens = [](Zone zone) {
    return judged(greensAndInsects(), share("leafy vegetable", zone, Basis::DryMatter)).shortfall;
  };
  EXPECT_NEAR(greens({.max = 0.25}), (1.0 / 3 - 0.25) * 1.5, kTiny);
  EXPECT_NEAR(greens({.min = 0.5}), (0.5 - 1.0 / 3) * 1.5, kTiny);
  EXPECT_NEAR(greens({.max = 0}), (1.0 / 3) * 1.5, kTiny);
}

TEST(BalanceShortfall, WhereTheReferenceGivesNoneOfTheBasisCountsItAsOneUnit) {
  BalanceProblem problem = greensAndInsects();
  problem.foods.push_back(
      makeFood("stone", "mineral", {{"WATER", 0}, {"CA", 38'000}, {"P", 0}, {"ENERC", 0}}));
  problem.reference = grams({0, 0, 10});  // no energy, no P
  // 220 mg in 0.14 thousand kcal: (2000 · 0.14 - 220) / (2000 · 1)
  EXPECT_NEAR(
      judged(problem, target("CA", {.min = 2000}, Unit::Milligram, Basis::Energy), grams({100, 50, 0}))
          .shortfall,
      0.03, kTiny);
  // (2 · 200 - 220) / (2 · 1 mg)
  EXPECT_NEAR(judged(problem, ratio("CA", "P", {.min = 2}), grams({100, 50, 0})).shortfall, 90, kTiny);
}

TEST(BalanceShortfall, OfTheWholeBowlWeighsEachSoftMissByItsWeightAndLeavesHardOnesOut) {
  BalanceProblem problem = greensAndInsects();
  problem.targets = {target("CA", {.min = 275}, Unit::Milligram, Basis::Day),   // 0.2 short
                     target("P", {.max = 160}, Unit::Milligram, Basis::Day),    // 0.25 over
                     target("CA", {.min = 440}, Unit::Milligram, Basis::Day)};  // 0.5 short, hard
  problem.targets[0].weight = 3;
  problem.targets[2].hard = true;
  const Balance result = balance(problem, usualBowl());
  EXPECT_NEAR(result.shortfall, 3 * 0.2 + 0.25, kTiny);
  EXPECT_NEAR(result.targets[2].shortfall, 0.5, kTiny);
}

TEST(BalanceState, SaysAtTheBoundWithinAMillionth) {
  EXPECT_EQ(calcium({.min = 200}, Unit::Milligram, Basis::Day).state, TargetState::Met);
  EXPECT_EQ(calcium({.min = 220}, Unit::Milligram, Basis::Day).state, TargetState::AtMin);
  EXPECT_EQ(calcium({.max = 220}, Unit::Milligram, Basis::Day).state, TargetState::AtMax);
  EXPECT_EQ(calcium({.min = 220 * (1 - 2e-6)}, Unit::Milligram, Basis::Day).state, TargetState::Met);
  EXPECT_EQ(calcium({.min = 220 * (1 + 5e-7)}, Unit::Milligram, Basis::Day).state, TargetState::AtMin);
  EXPECT_EQ(calcium({.min = 220 * (1 + 2e-6)}, Unit::Milligram, Basis::Day).state, TargetState::Short);
  EXPECT_EQ(calcium({.max = 220 * (1 - 2e-6)}, Unit::Milligram, Basis::Day).state, TargetState::Over);
}

TEST(BalanceState, OfATargetWithBothBoundsReportsTheOneThatIsMissed) {
  const TargetBalance line = calcium({.min = 100, .max = 176}, Unit::Milligram, Basis::Day);
  EXPECT_EQ(line.state, TargetState::Over);
  EXPECT_NEAR(line.shortfall, 0.25, kTiny);
  EXPECT_THAT(line.min, Optional(100));
  EXPECT_THAT(line.max, Optional(176));
}

TEST(BalanceState, OfAnEmptyBowlHoldsPerDryMatterAndFallsShortPerDay) {
  BalanceProblem problem = greensAndInsects();
  const Diet empty = grams({0, 0});
  const TargetBalance perKg = judged(problem, target("CA", {.min = 10}, Unit::Gram, Basis::DryMatter), empty);
  EXPECT_EQ(perKg.value, std::nullopt);
  EXPECT_EQ(perKg.state, TargetState::Met);
  EXPECT_EQ(perKg.shortfall, 0.0);
  EXPECT_EQ(perKg.coverage, 1.0);
  EXPECT_FALSE(perKg.atLeast);
  const TargetBalance perDay = judged(problem, target("CA", {.min = 10}, Unit::Gram, Basis::Day), empty);
  EXPECT_THAT(perDay.value, Optional(0.0));
  EXPECT_EQ(perDay.state, TargetState::Short);
  EXPECT_EQ(perDay.shortfall, 1.0);
  EXPECT_EQ(judged(problem, ratio("CA", "P", {.min = 1}), empty).value, std::nullopt);
  EXPECT_EQ(judged(problem, share("insect", {.min = 0.5}, Basis::AsFed), empty).state, TargetState::Met);
}

// Insects bring 20 of 30 g dry matter.
TEST(BalanceCoverage, IsTheDryMatterThatComesFromFoodsWithAKnownValue) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].composition.erase(nutrient("CA"));
  const TargetBalance line = judged(problem, target("CA", {.min = 10}, Unit::Milligram, Basis::Day));
  EXPECT_NEAR(line.coverage, 20 / 30.0, kTiny);
  EXPECT_TRUE(line.atLeast);
  EXPECT_THAT(line.value, Optional(DoubleNear(20, kTiny)));  // insects alone: at least 20 mg
  EXPECT_EQ(line.state, TargetState::Met);
}

TEST(BalanceCoverage, OfNothingKnownIsUnknownAndNotZero) {
  BalanceProblem problem = greensAndInsects();
  for (DietFood& food : problem.foods) food.composition.erase(nutrient("CA"));
  const TargetBalance line = judged(problem, target("CA", {.max = 10}, Unit::Milligram, Basis::Day));
  EXPECT_EQ(line.coverage, 0.0);
  EXPECT_EQ(line.state, TargetState::Unknown);
  EXPECT_EQ(line.chance, std::nullopt);
  EXPECT_TRUE(line.atLeast);
}

TEST(BalanceCoverage, DoesNotMindAFoodThatIsNotInTheBowl) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0].composition.erase(nutrient("CA"));
  const TargetBalance line =
      judged(problem, target("CA", {.min = 10}, Unit::Milligram, Basis::Day), grams({0, 50}));
  EXPECT_EQ(line.coverage, 1.0);
  EXPECT_FALSE(line.atLeast);
}

TEST(BalanceCoverage, OfARatioIsTheLowerOfBothNutrients) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[1].composition.erase(nutrient("P"));
  const TargetBalance line = judged(problem, ratio("CA", "P", {.min = 1}));
  EXPECT_NEAR(line.coverage, 10 / 30.0, kTiny);
  EXPECT_THAT(line.value, Optional(DoubleNear(220 / 50.0, kTiny)));
  EXPECT_TRUE(line.atLeast);
}

TEST(BalanceCoverage, OfAShareOfEnergyIsTheDryMatterOfFoodsWithKnownEnergy) {
  BalanceProblem problem = greensAndInsects();
  problem.foods[1].composition.erase(nutrient("ENERC"));
  const TargetBalance line = judged(problem, share("leafy vegetable", {.max = 0.5}, Basis::Energy));
  EXPECT_NEAR(line.coverage, 10 / 30.0, kTiny);
  EXPECT_THAT(line.value, Optional(DoubleNear(1.0, kTiny)));
}

TEST(BalanceCoverage, OfEnergyEndsWhereAProximateIsMissing) {
  BalanceProblem problem = greensAndInsects();
  problem.energyMethod = food::EnergyMethod::Atwater;
  problem.foods = {makeFood("known", "a", {{"WATER", 50}, {"PROCNT", 10}, {"FAT", 10}, {"CHOCDF", 10}}),
                   makeFood("no fat stated", "a", {{"WATER", 50}, {"PROCNT", 10}, {"CHOCDF", 10}})};
  const TargetBalance line =
      judged(problem, target("ENERC", {.min = 1}, Unit::Kilocalorie, Basis::Day), grams({100, 300}));
  EXPECT_NEAR(line.coverage, 0.25, kTiny);
  EXPECT_THAT(line.value, Optional(DoubleNear(170, kTiny)));
}

TEST(BalanceCoverage, OfAPowderWithoutAWaterValueStillSaysAtLeast) {
  BalanceProblem problem = greensAndInsects();
  problem.foods.push_back(makeFood("powder", "mineral", {{"CA", 38'000}}));
  problem.reference = grams({200, 0, 0});
  const TargetBalance phosphorus =
      judged(problem, target("P", {.min = 1}, Unit::Milligram, Basis::Day), grams({100, 50, 1}));
  EXPECT_EQ(phosphorus.coverage, 1.0);  // its dry matter is unknown, so it has no part in the dry matter
  EXPECT_TRUE(phosphorus.atLeast);      // but its phosphorus could add
  const TargetBalance alone =
      judged(problem, target("P", {.min = 1}, Unit::Milligram, Basis::Day), grams({0, 0, 1}));
  EXPECT_EQ(alone.coverage, 0.0);
  EXPECT_EQ(alone.state, TargetState::Unknown);
}

// Scatter of Ca: 30 mg from 100 g greens and 40 mg from 50 g insects make 50 mg together (3-4-5).
BalanceProblem scatteredCalcium() {
  BalanceProblem problem = greensAndInsects();
  problem.foods[0] =
      makeFood("greens", "leafy vegetable", {{"WATER", 90}, {"CA", 200, 30}, {"P", 50}, {"ENERC", 40}});
  problem.foods[1] =
      makeFood("insects", "insect", {{"WATER", 60}, {"CA", 40, 80}, {"P", 300}, {"ENERC", 200}});
  return problem;
}

TEST(BalanceScatter, AddsUpInSquaresAndIsStatedPerBasis) {
  const auto sd = [](Unit unit, Basis basis) {
    return judged(scatteredCalcium(), target("CA", {.min = 1}, unit, basis)).sd;
  };
  EXPECT_NEAR(sd(Unit::Milligram, Basis::Day), 50, kTiny);
  EXPECT_NEAR(sd(Unit::Gram, Basis::DryMatter), 0.050 / 0.030, kTiny);
  EXPECT_EQ(judged(greensAndInsects(), target("CA", {.min = 1}, Unit::Gram, Basis::Day)).sd, 0.0);
}

TEST(BalanceScatter, OfARatioFollowsFirstOrderPropagation) {
  BalanceProblem problem = scatteredCalcium();
  EXPECT_NEAR(judged(problem, ratio("CA", "P", {.min = 1})).sd, 50 / 200.0, kTiny);
  problem.foods[1] =
      makeFood("insects", "insect", {{"WATER", 60}, {"CA", 40, 80}, {"P", 300, 60}, {"ENERC", 200}});
  // sd of P is 30 mg: sqrt((50/200)² + (1.1 · 30/200)²)
  EXPECT_NEAR(judged(problem, ratio("CA", "P", {.min = 1})).sd, 0.299541316, 1e-9);
}

// Normal distribution: 0.841344746 within one standard deviation to one side, 0.682689492 to both.
TEST(BalanceChance, ThatABoundHoldsFollowsTheNormalDistribution) {
  const auto chance = [](Zone zone) {
    return judged(scatteredCalcium(), target("CA", zone, Unit::Milligram, Basis::Day)).chance;
  };
  EXPECT_THAT(chance({.min = 170}), Optional(DoubleNear(0.841344746, 1e-9)));
  EXPECT_THAT(chance({.max = 170}), Optional(DoubleNear(1 - 0.841344746, 1e-9)));
  EXPECT_THAT(chance({.min = 170, .max = 270}), Optional(DoubleNear(0.682689492, 1e-9)));
  EXPECT_THAT(chance({.min = 220}), Optional(DoubleNear(0.5, kTiny)));
}

TEST(BalanceChance, WithoutScatterIsAllOrNothing) {
  EXPECT_THAT(calcium({.min = 220}, Unit::Milligram, Basis::Day).chance, Optional(1.0));
  EXPECT_THAT(calcium({.min = 221}, Unit::Milligram, Basis::Day).chance, Optional(0.0));
}

// z = 1.644853627 for 95 %: 50 mg of scatter ask for a margin of 82.24268134 mg.
TEST(BalanceConfidence, CountsTheMarginAgainstTheBoundButShowsTheMean) {
  BalanceProblem problem = scatteredCalcium();
  problem.confidence = 0.95;
  const TargetBalance low = judged(problem, target("CA", {.min = 140}, Unit::Milligram, Basis::Day));
  EXPECT_THAT(low.value, Optional(DoubleNear(220, kTiny)));
  EXPECT_EQ(low.state, TargetState::Short);
  EXPECT_NEAR(low.shortfall, (140 - (220 - 82.24268134)) / 140, 1e-9);
  const TargetBalance high = judged(problem, target("CA", {.max = 300}, Unit::Milligram, Basis::Day));
  EXPECT_EQ(high.state, TargetState::Over);
  EXPECT_NEAR(high.shortfall, (302.24268134 - 300) / 300, 1e-9);
  EXPECT_EQ(judged(problem, target("CA", {.min = 137}, Unit::Milligram, Basis::Day)).state, TargetState::Met);
}

TEST(BalanceConfidence, MayMissBothBoundsOfANarrowZone) {
  BalanceProblem problem = scatteredCalcium();
  problem.confidence = 0.95;
  const TargetBalance line =
      judged(problem, target("CA", {.min = 200, .max = 240}, Unit::Milligram, Basis::Day));
  EXPECT_NEAR(line.shortfall, (200 - 137.75731866) / 200 + (302.24268134 - 240) / 240, 1e-9);
  EXPECT_EQ(line.state, TargetState::Short);  // the larger miss
}

TEST(BalanceConfidence, LeavesRatiosAtTheirMeans) {
  BalanceProblem problem = scatteredCalcium();
  problem.confidence = 0.95;
  EXPECT_EQ(judged(problem, ratio("CA", "P", {.min = 1.0})).state, TargetState::Met);
}

TEST(BalanceLines, StandInTheOrderTargetsRatiosShares) {
  BalanceProblem problem = greensAndInsects();
  problem.shares = {share("insect", {.max = 1}, Basis::AsFed)};
  problem.ratios = {ratio("CA", "P", {.min = 1})};
  problem.targets = {target("P", {.min = 1}, Unit::Gram, Basis::Day),
                     target("CA", {.min = 1}, Unit::Gram, Basis::Day)};
  const Balance result = balance(problem, usualBowl());
  ASSERT_EQ(result.targets.size(), 4U);
  EXPECT_EQ(result.targets[1].id, "CA");
  EXPECT_EQ(result.targets[1].index, 1U);
  EXPECT_EQ(result.targets[2].kind, TargetKind::Ratio);
  EXPECT_EQ(result.targets[3].kind, TargetKind::Share);
}

TEST(BalanceInput, ThatCannotBeCountedIsUnknownAndDoesNotCrash) {
  const BalanceProblem problem = greensAndInsects();  // no body mass
  const TargetBalance perKg = judged(problem, target("CA", {.min = 1}, Unit::Gram, Basis::BodyMass));
  EXPECT_EQ(perKg.state, TargetState::Unknown);
  EXPECT_EQ(perKg.value, std::nullopt);
  EXPECT_EQ(judged(problem, target("CA", {.min = 1}, Unit::Kilocalorie, Basis::Day)).state,
            TargetState::Unknown);
  EXPECT_EQ(judged(problem, share("insect", {.min = 1}, Basis::Day)).state, TargetState::Unknown);
  EXPECT_THROW((void)balance(problem, grams({1})), std::invalid_argument);
}

TEST(StateWords, AreThoseOfTheResultFile) {
  EXPECT_EQ(symbolOf(TargetState::Met), "met");
  EXPECT_EQ(symbolOf(TargetState::AtMin), "at-min");
  EXPECT_EQ(symbolOf(TargetState::AtMax), "at-max");
  EXPECT_EQ(symbolOf(TargetState::Short), "short");
  EXPECT_EQ(symbolOf(TargetState::Over), "over");
  EXPECT_EQ(symbolOf(TargetState::Unknown), "unknown");
}

}  // namespace
}  // namespace tarebowl::diet
