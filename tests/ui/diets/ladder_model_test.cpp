// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/ladder_model.h"

#include "tests/ui/diets/example_diet.h"
#include "ui/diets/diet_desk.h"

#include <QAbstractItemModelTester>
#include <QTest>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using quantity::Grams;

/// The example on hold, as the bowl is now: Ca 4.6 (short of 10), P 8, energy 16, E "at least", D unknown, Ca
/// : P 0.575.
class LadderTest : public ::testing::Test {
 protected:
  LadderTest() {
    desk.setHolding(true);
    desk.open(exampleProblem());
  }
  [[nodiscard]] std::string text(int row, int column) const {
    return model.index(row, column).data().toString().toStdString();
  }
  [[nodiscard]] int rowOf(std::size_t target) const {
    return model.rowOf({diet::TargetKind::Nutrient, target});
  }
  [[nodiscard]] Rung rungAt(int row) const { return model.index(row, 0).data(kRungRole).value<Rung>(); }

  DietDesk desk{&exampleSolve};
  LadderModel model{desk};
  QAbstractItemModelTester tester{&model, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

TEST_F(LadderTest, HasOneRungForEachTargetRatioAndShare) {
  EXPECT_EQ(model.rowCount(), 7);
}

TEST_F(LadderTest, AShortCalciumIsFirst) {
  EXPECT_EQ(text(0, RungName), "Calcium");
  EXPECT_EQ(text(0, RungValue), "4.60 g/kg DM");
  EXPECT_EQ(text(0, RungTrack), "at least 10 g/kg DM");
  EXPECT_EQ(text(0, RungState), "short");
}

TEST_F(LadderTest, WhatIsMetComesAfterAllTroubleAndWhatNobodyCanJudgeIsLast) {
  EXPECT_GT(rowOf(kEnergy), rowOf(kCalcium));
  EXPECT_GT(rowOf(kEnergy), model.rowOf({diet::TargetKind::Ratio, 0}));
  EXPECT_EQ(text(model.rowCount() - 1, RungState), "unknown");
  EXPECT_EQ(text(model.rowCount() - 1, RungName),
            QString::fromStdString(food::describe(*food::findByTagname("VITD")).name).toStdString());
}

TEST_F(LadderTest, AnUnknownValueReadsAsAQuestionMarkAndNeverAsZero) {
  EXPECT_EQ(rungAt(rowOf(kVitaminD)).valueText.toStdString(), "?");
}

// 0.4 mg from the leaves in 5 g of dry matter is 80 mg/kg; the insects, 3 of 5 g, were never measured.
TEST_F(LadderTest, ASumWithUnmeasuredFoodsReadsAtLeast) {
  const Rung rung = rungAt(rowOf(kVitaminE));
  EXPECT_EQ(rung.valueText.toStdString(), "≥ 80.0");
  EXPECT_NEAR(rung.coverage, 0.4, 1e-9);
  EXPECT_TRUE(rung.description.contains(QStringLiteral("known for 40\u00a0% of the dry matter")))
      << rung.description.toStdString();
}

TEST_F(LadderTest, AShareReadsInPercentOfItsBasis) {
  const Rung rung = rungAt(model.rowOf({diet::TargetKind::Share, 0}));
  EXPECT_EQ(rung.name.toStdString(), "Insect");
  EXPECT_EQ(rung.valueText.toStdString(), "60.0");
  EXPECT_EQ(rung.unit.toStdString(), "% of DM");
  EXPECT_EQ(rung.max, 70.0);
}

TEST_F(LadderTest, ARatioIsCalledByItsSymbols) {
  const Rung rung = rungAt(model.rowOf({diet::TargetKind::Ratio, 0}));
  EXPECT_EQ(rung.name.toStdString(), "Ca : P");
  EXPECT_EQ(rung.valueText.toStdString(), "0.575");
}

/// A line of the example's balance when the insects' calcium is unknown and that of the leaves scatters.
diet::TargetBalance lineWithUnknownCalcium(diet::BalanceProblem& problem, std::size_t line) {
  auto& insects = problem.foods[kInsects].composition;
  insects.erase(food::nutrients::calcium());
  auto& leaves = problem.foods[kLeaves].composition;
  food::NutrientValue calcium = *leaves.find(food::nutrients::calcium());
  calcium.sd = quantity::AsFedContent(10.0);
  leaves.set(food::nutrients::calcium(), calcium);
  return diet::balance(problem, {Grams(20), Grams(10), Grams(0)}).targets.at(line);
}

TEST(Rungs, ARatioWithAnUnmeasuredSideIsOnlyAboutAndNamesNoChance) {
  diet::BalanceProblem problem = exampleProblem();
  const std::size_t ratio = problem.targets.size();
  const Rung rung = rungOf(problem, lineWithUnknownCalcium(problem, ratio));
  EXPECT_EQ(rung.valueText.toStdString(), "≈ 0.500");  // 20 mg of calcium known, 40 mg of phosphorus
  EXPECT_FALSE(rung.description.contains(QStringLiteral("chance"))) << rung.description.toStdString();
}

TEST(Rungs, TheChanceOfAMinimumWithUnmeasuredFoodsIsAtLeastWhatIsShown) {
  diet::BalanceProblem problem = exampleProblem();
  const Rung rung = rungOf(problem, lineWithUnknownCalcium(problem, kCalcium));
  EXPECT_TRUE(rung.description.contains(QStringLiteral("chance of at least")))
      << rung.description.toStdString();
}

TEST_F(LadderTest, EveryRungCanBeReadAloud) {
  for (int row = 0; row < model.rowCount(); ++row) {
    const Rung rung = rungAt(row);
    const QString spoken = model.index(row, RungTrack).data(Qt::AccessibleTextRole).toString();
    EXPECT_TRUE(spoken.contains(wordOf(rung.mark))) << spoken.toStdString();
    EXPECT_TRUE(spoken.contains(rung.valueText)) << spoken.toStdString();
    EXPECT_TRUE(spoken.contains(QStringLiteral("target"))) << spoken.toStdString();
  }
}

TEST_F(LadderTest, AHardRuleSaysSo) {
  EXPECT_TRUE(rungAt(rowOf(kEnergy)).hard);
  EXPECT_TRUE(rungAt(rowOf(kEnergy)).description.contains(QStringLiteral("hard rule")));
}

TEST_F(LadderTest, TheChosenRungIsFollowedWhenTheOrderChanges) {
  const QPersistentModelIndex calcium = model.index(0, RungName);
  desk.setGrams(kLimestone, Grams(0.5));  // 200 mg of calcium more: met
  EXPECT_NE(calcium.row(), 0);
  EXPECT_EQ(calcium.data().toString().toStdString(), "Calcium");
  EXPECT_EQ(text(calcium.row(), RungState), "met");
}

TEST_F(LadderTest, AHardMissComesBeforeASoftOneThatIsGreater) {
  desk.setGrams(kLeaves, Grams(10));  // 2 + 12 = 14 kcal of at least 15
  EXPECT_EQ(rowOf(kEnergy), 0);
}

TEST_F(LadderTest, TwoTargetsOfOneNutrientAreToldApart) {
  diet::BalanceProblem problem = exampleProblem();
  problem.targets.push_back(problem.targets[kCalcium]);
  problem.targets.back().id = "ca-max";
  problem.targets.back().min.reset();
  problem.targets.back().max = 20;
  desk.open(problem);
  EXPECT_EQ(rungAt(rowOf(kCalcium)).remark.toStdString(), "min");
  EXPECT_EQ(rungAt(rowOf(5)).remark.toStdString(), "max");
  EXPECT_EQ(rungAt(rowOf(kEnergy)).remark.toStdString(), "");
}

// 23 mg of calcium in 5 g of dry matter and 16 kcal: 4.6 g/kg, 0.023 g a day, 1.4375 g per 1000 kcal.
TEST_F(LadderTest, ReadsEveryTargetOnAnotherBasisAsItComesToInThisBowl) {
  model.setView({LadderOrder::Trouble, quantity::Basis::Day, EnergyUnit::Kilocalorie, false});
  EXPECT_NEAR(rungAt(rowOf(kCalcium)).value.value(), 0.023, 1e-9);
  EXPECT_NEAR(rungAt(rowOf(kCalcium)).min.value(), 0.05, 1e-9) << "10 g/kg of 5 g";
  model.setView({LadderOrder::Trouble, quantity::Basis::Energy, EnergyUnit::Kilocalorie, false});
  EXPECT_NEAR(rungAt(rowOf(kCalcium)).value.value(), 1.4375, 1e-9);
  EXPECT_EQ(rungAt(rowOf(kCalcium)).mark, Mark::Lacking) << "on whichever basis";
}

// 1 kcal is 4.184 kJ: 16 kcal are 66.944 kJ, 15 to 17 kcal 62.76 to 71.128 kJ.
TEST_F(LadderTest, ReadsEnergyInKilojoules) {
  model.setView({LadderOrder::Trouble, {}, EnergyUnit::Kilojoule, false});
  const Rung energy = rungAt(rowOf(kEnergy));
  EXPECT_NEAR(energy.value.value(), 66.944, 1e-9);
  EXPECT_NEAR(energy.max.value(), 71.128, 1e-9);
  EXPECT_EQ(energy.unit.toStdString(), "kJ a day");
  model.setView({LadderOrder::Trouble, quantity::Basis::Energy, EnergyUnit::Kilojoule, false});
  EXPECT_NEAR(rungAt(rowOf(kCalcium)).value.value(), 1.4375 / 4.184, 1e-9);
  EXPECT_EQ(rungAt(rowOf(kCalcium)).unit.toStdString(), "g/MJ");
}

// 62.76 kJ are 15 kcal.
TEST_F(LadderTest, ReadsATargetThatIsStatedInKilojoulesAsThePersonReadsEnergy) {
  diet::BalanceProblem problem = exampleProblem();
  problem.targets[kEnergy].unit = quantity::Unit::Kilojoule;
  problem.targets[kEnergy].min = 62.76;
  problem.targets[kEnergy].max = std::nullopt;
  desk.open(problem);
  const Rung energy = rungAt(rowOf(kEnergy));
  EXPECT_NEAR(energy.value.value(), 16.0, 1e-9);
  EXPECT_NEAR(energy.min.value(), 15.0, 1e-9);
  EXPECT_EQ(energy.unit.toStdString(), "kcal a day");
}

TEST_F(LadderTest, StandsAsStatedOrByName) {
  model.setView({LadderOrder::Table, {}, EnergyUnit::Kilocalorie, false});
  EXPECT_EQ(rowOf(kVitaminD), static_cast<int>(kVitaminD));
  model.setView({LadderOrder::Name, {}, EnergyUnit::Kilocalorie, false});
  for (int row = 0; row + 1 < model.rowCount(); ++row)
    EXPECT_LE(QString::localeAwareCompare(QString::fromStdString(text(row, RungName)),
                                          QString::fromStdString(text(row + 1, RungName))),
              0);
}

// Half of the insects is left: 20 mg of calcium and 3 x 0.5 mg in 2 + 1.5 g; as offered 23 mg in 5 g.
TEST_F(LadderTest, ReadsAsEatenOrAsOffered) {
  diet::BalanceProblem problem = exampleProblem();
  problem.foods[kInsects].eatenFraction = 0.5;
  desk.open(problem);
  EXPECT_NEAR(rungAt(rowOf(kCalcium)).value.value(), 21.5 / 3.5, 1e-9);
  model.setView({LadderOrder::Trouble, {}, EnergyUnit::Kilocalorie, true});
  EXPECT_NEAR(rungAt(rowOf(kCalcium)).value.value(), 4.6, 1e-9);
}

}  // namespace
}  // namespace tarebowl::ui
