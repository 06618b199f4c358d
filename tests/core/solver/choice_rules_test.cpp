// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/choice_rules.h"

#include <gtest/gtest.h>

namespace tarebowl::solver {
namespace {

/// Six columns from 0 to 10, without rows.
Program sixColumns(std::vector<Choice> choices) {
  Program program;
  program.rows.resize(0, 6);
  program.rowLower.resize(0);
  program.rowUpper.resize(0);
  program.price.resize(0);
  program.lower.setZero(6);
  program.upper.setConstant(6, 10.0);
  program.step.setOnes(6);
  program.centre.setConstant(6, 5.0);
  program.curvature.setOnes(6);
  program.cost.setZero(6);
  program.choices = std::move(choices);
  return program;
}

struct Settled {
  bool admitted;
  Eigen::VectorXd lower;
  Eigen::VectorXd upper;
  std::vector<Eigen::Index> narrowed;
};

Settled settle(const Program& program) {
  const ScaledProgram scaled(program);
  Settled settled{false, scaled.lower, scaled.upper, {}};
  settled.admitted = settleChoices(scaled, settled.lower, settled.upper, settled.narrowed);
  return settled;
}

TEST(ChoiceRules, NothingIsDecidedWhileTheCountIsOpen) {
  const Settled settled = settle(sixColumns({{{0, 1, 2}, 1, 2, 3.0}}));
  EXPECT_TRUE(settled.admitted);
  EXPECT_TRUE(settled.narrowed.empty());
}

TEST(ChoiceRules, WhenEnoughAreUsedTheOthersAreLeftOut) {
  Program program = sixColumns({{{0, 1, 2}, 1, 2, 3.0}});
  program.lower[0] = program.lower[2] = 4.0;
  const Settled settled = settle(program);
  EXPECT_TRUE(settled.admitted);
  EXPECT_EQ(settled.upper[1], 0.0);
  EXPECT_EQ(settled.narrowed, std::vector<Eigen::Index>{1});
}

TEST(ChoiceRules, WhenOnlyEnoughAreLeftAllOfThemAreUsedFromTheThresholdOn) {
  Program program = sixColumns({{{0, 1, 2}, 2, 3, 3.0}});
  program.upper[0] = 0.0;
  const Settled settled = settle(program);
  EXPECT_TRUE(settled.admitted);
  EXPECT_EQ(settled.lower[1], 3.0);
  EXPECT_EQ(settled.lower[2], 3.0);
}

TEST(ChoiceRules, AMemberThatCannotReachTheThresholdIsOut) {
  Program program = sixColumns({{{0, 1}, 2, 2, 3.0}});
  program.upper[0] = 2.0;
  EXPECT_FALSE(settle(program).admitted);
}

TEST(ChoiceRules, TooManyUsedCannotBe) {
  Program program = sixColumns({{{0, 1, 2}, 0, 1, 3.0}});
  program.lower[0] = program.lower[1] = 1.0;
  EXPECT_FALSE(settle(program).admitted);
}

TEST(ChoiceRules, WhatOneChoiceDecidesAnotherSees) {
  // The second leaves out column 1, whose place in the first column 0 then has to take.
  Program program = sixColumns({{{0, 1}, 1, 2, 3.0}, {{1, 2}, 0, 1, 3.0}});
  program.lower[2] = 3.0;
  const Settled settled = settle(program);
  EXPECT_TRUE(settled.admitted);
  EXPECT_EQ(settled.upper[1], 0.0);
  EXPECT_EQ(settled.lower[0], 3.0);
}

TEST(ChoiceRules, WithoutALeastAmountOneStepOfTheGridIsUsed) {
  const ScaledProgram scaled(sixColumns({{{0, 1}, 1, 1, 0.0}}));
  EXPECT_EQ(scaled.threshold[0], 1.0);
  EXPECT_EQ(scaled.threshold[2], 0.0);
}

TEST(ChoiceRules, AmountsBelowTheThresholdAndWrongCountsDoNotHold) {
  const Program program = sixColumns({{{0, 1, 2}, 1, 2, 3.0}});
  const ScaledProgram scaled(program);
  Eigen::VectorXd z = Eigen::VectorXd::Zero(6);
  EXPECT_FALSE(choicesHold(scaled, z));
  z[0] = 2.0;
  EXPECT_FALSE(choicesHold(scaled, z));
  z[0] = 3.0;
  EXPECT_TRUE(choicesHold(scaled, z));
  z[1] = z[2] = 3.0;
  EXPECT_FALSE(choicesHold(scaled, z));
}

}  // namespace
}  // namespace tarebowl::solver
