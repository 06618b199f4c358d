// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/conflict.h"

#include "core/solver/continuous.h"
#include "tests/core/solver/random_program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::solver {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

Program emptyProgram(Eigen::Index rows, Eigen::Index columns) {
  Program program;
  program.rows.setZero(rows, columns);
  program.rowLower.setConstant(rows, -kInfinity);
  program.rowUpper.setConstant(rows, kInfinity);
  program.price.setOnes(rows);
  program.lower.setZero(columns);
  program.upper.setConstant(columns, 10.0);
  program.step.setZero(columns);
  program.centre.setOnes(columns);
  program.curvature.setOnes(columns);
  program.cost.setZero(columns);
  return program;
}

std::vector<Rule> eachRow(const Program& program) {
  std::vector<Rule> rules;
  for (Eigen::Index i = 0; i < program.rowCount(); ++i) rules.push_back({{i}, {}});
  for (std::size_t c = 0; c < program.choices.size(); ++c) rules.push_back({{}, {c}});
  return rules;
}

TEST(Conflict, TwoRowsThatPullApartAreNamedAndTheBystanderIsNot) {
  Program program = emptyProgram(3, 2);
  program.rows.row(0) << 1, 1;  // at least 5
  program.rowLower[0] = 5;
  program.rows.row(1) << 1, 0;  // anything goes
  program.rowUpper[1] = 9;
  program.rows.row(2) << 1, 1;  // at most 4
  program.rowUpper[2] = 4;
  EXPECT_THAT(findConflict(program, eachRow(program)).rules, ElementsAre(0U, 2U));
  EXPECT_THAT(findConflict(program, std::vector<Rule>{{{0}, {}}, {{1}, {}}}).rules, IsEmpty());
}

TEST(Conflict, ALimitOfTheFoodItselfIsBackgroundSoOneRowAloneCanBeTheConflict) {
  Program program = emptyProgram(1, 1);
  program.rows(0, 0) = 1;
  program.rowLower[0] = 11;
  EXPECT_THAT(findConflict(program, eachRow(program)).rules, ElementsAre(0U));
}

TEST(Conflict, ThatOnlyTheGridMakesIsFoundOnTheGrid) {
  Program program = emptyProgram(2, 1);
  program.step.setOnes();
  program.rows(0, 0) = 1;
  program.rowLower[0] = 1.3;
  program.rows(1, 0) = 1;
  program.rowUpper[1] = 1.7;
  const Conflict conflict = findConflict(program, eachRow(program));
  EXPECT_THAT(conflict.rules, ElementsAre(0U, 1U));
  EXPECT_TRUE(conflict.onlyOnGrid);
}

TEST(Conflict, ThatAmountsBetweenTheStepsHaveTooIsNotTheGridsFault) {
  Program program = emptyProgram(2, 1);
  program.step.setOnes();
  program.rows(0, 0) = 1;
  program.rowLower[0] = 5.5;
  program.rows(1, 0) = 1;
  program.rowUpper[1] = 4.5;
  const Conflict conflict = findConflict(program, eachRow(program));
  EXPECT_THAT(conflict.rules, ElementsAre(0U, 1U));
  EXPECT_FALSE(conflict.onlyOnGrid);
}

TEST(Conflict, SpeaksOfBothBoundsOfATargetAsOneRule) {
  Program program = emptyProgram(3, 1);
  program.rows.col(0).setOnes();
  program.rowLower[0] = 2;  // a target from 2 to 3 …
  program.rowUpper[1] = 3;
  program.rowLower[2] = 5;  // … and one of at least 5
  EXPECT_THAT(findConflict(program, std::vector<Rule>{{{0, 1}, {}}, {{2}, {}}}).rules, ElementsAre(0U, 1U));
}

TEST(Conflict, OfARuleThatAsksForMoreThanItAllowsIsThatRuleAlone) {
  Program program = emptyProgram(3, 1);
  program.rows.col(0).setOnes();
  program.rowLower[0] = 4;
  program.rowUpper[1] = 3;
  program.rowLower[2] = 1;
  EXPECT_THAT(findConflict(program, std::vector<Rule>{{{0, 1}, {}}, {{2}, {}}}).rules, ElementsAre(0U));
}

TEST(Conflict, CountsTheScatterOfARowThatHoldsWithAChance) {
  Program program = emptyProgram(2, 1);
  program.rows.col(0).setOnes();
  program.rowLower[0] = 5;  // with 10 % scatter: x - 0.1 x >= 5 asks for 5.56
  program.rowUpper[1] = 5.2;
  EXPECT_THAT(findConflict(program, eachRow(program)).rules, IsEmpty());
  program.scatter = RowMatrix::Zero(2, 1);
  (*program.scatter)(0, 0) = 0.1;
  EXPECT_THAT(findConflict(program, eachRow(program)).rules, ElementsAre(0U, 1U));
}

TEST(Conflict, AChoiceThatCannotBeMadeIsNamed) {
  Program program = emptyProgram(1, 2);
  program.rows.row(0) << 1, 1;
  program.rowUpper[0] = 3;
  program.choices.push_back({{0, 1}, 2, 2, 2.0});
  EXPECT_THAT(findConflict(program, eachRow(program)).rules, ElementsAre(0U, 1U));
}

double leastOf(Program program, const std::vector<std::size_t>& rows) {
  for (Eigen::Index i = 0; i < program.rowCount(); ++i) {
    program.price[i] = 1.0;
    if (std::find(rows.begin(), rows.end(), std::size_t(i)) != rows.end()) continue;
    program.rowLower[i] = -kInfinity;
    program.rowUpper[i] = kInfinity;
  }
  return solve(program).violation;
}

/// By leaving each member out in turn, with the whole program solved again. Returns whether there was any.
bool expectSmallest(const Program& program, const std::string& where) {
  const Conflict conflict = findConflict(program, eachRow(program));
  if (conflict.empty()) {
    EXPECT_LE(leastOf(program, {0, 1, 2, 3, 4, 5, 6, 7, 8}), 1e-9) << where;
    return false;
  }
  EXPECT_TRUE(conflict.minimal) << where;
  EXPECT_GT(leastOf(program, conflict.rules), 1e-9) << where;
  for (std::size_t k = 0; k < conflict.rules.size(); ++k) {
    std::vector<std::size_t> rest = conflict.rules;
    rest.erase(rest.begin() + std::ptrdiff_t(k));
    EXPECT_LE(leastOf(program, rest), 1e-9) << where << " without " << conflict.rules[k];
  }
  return true;
}

TEST(Conflict, IsSmallestInTheSenseThatAnyMemberLeftOutMakesTheRestHold) {
  int found = 0;
  for (unsigned seed = 1; seed <= 200; ++seed) {
    std::mt19937 random(seed);
    const Program program = randomProgram(random, {.columns = 4, .rows = 9, .step = 0.0});
    found += expectSmallest(program, "seed " + std::to_string(seed)) ? 1 : 0;
  }
  EXPECT_GT(found, 100);
}

TEST(Conflict, IsSmallestOnAGridToo) {
  int found = 0;
  for (unsigned seed = 1; seed <= 200; ++seed) {
    std::mt19937 random(seed);
    const Program program = randomProgram(random, {.columns = 3, .rows = 9, .step = 1.0, .upper = 6.0});
    found += expectSmallest(program, "seed " + std::to_string(seed)) ? 1 : 0;
  }
  EXPECT_GT(found, 100);
}

}  // namespace
}  // namespace tarebowl::solver
