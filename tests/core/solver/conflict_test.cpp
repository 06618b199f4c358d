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
using testing::UnorderedElementsAre;

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

TEST(Conflict, TwoRowsThatPullApartAreNamedAndTheBystanderIsNot) {
  Program program = emptyProgram(3, 2);
  program.rows.row(0) << 1, 1;  // at least 5
  program.rowLower[0] = 5;
  program.rows.row(1) << 1, 0;  // anything goes
  program.rowUpper[1] = 9;
  program.rows.row(2) << 1, 1;  // at most 4
  program.rowUpper[2] = 4;
  EXPECT_THAT(findConflict(program, Among::AllRows).rows, UnorderedElementsAre(0, 2));
  EXPECT_THAT(findConflict(program, Among::HardOnly).rows, IsEmpty());
}

TEST(Conflict, ALimitOfTheFoodItselfIsBackgroundSoOneRowAloneCanBeTheConflict) {
  Program program = emptyProgram(1, 1);
  program.rows(0, 0) = 1;
  program.rowLower[0] = 11;
  EXPECT_THAT(findConflict(program, Among::AllRows).rows, ElementsAre(0));
}

TEST(Conflict, ThatOnlyTheGridMakesIsFoundOnTheGrid) {
  Program program = emptyProgram(2, 1);
  program.step.setOnes();
  program.rows(0, 0) = 1;
  program.rowLower[0] = 1.3;
  program.rows(1, 0) = 1;
  program.rowUpper[1] = 1.7;
  EXPECT_THAT(findConflict(program, Among::AllRows).rows, UnorderedElementsAre(0, 1));
}

TEST(Conflict, AChoiceThatCannotBeMadeIsNamed) {
  Program program = emptyProgram(1, 2);
  program.rows.row(0) << 1, 1;
  program.rowUpper[0] = 3;
  program.choices.push_back({{0, 1}, 2, 2, 2.0});
  const Conflict conflict = findConflict(program, Among::AllRows);
  EXPECT_THAT(conflict.rows, ElementsAre(0));
  EXPECT_THAT(conflict.choices, ElementsAre(0U));
}

double leastOf(Program program, const std::vector<Eigen::Index>& rows) {
  for (Eigen::Index i = 0; i < program.rowCount(); ++i) {
    program.price[i] = 1.0;
    if (std::find(rows.begin(), rows.end(), i) != rows.end()) continue;
    program.rowLower[i] = -kInfinity;
    program.rowUpper[i] = kInfinity;
  }
  return solve(program).violation;
}

TEST(Conflict, IsSmallestInTheSenseThatAnyMemberLeftOutMakesTheRestHold) {
  int found = 0;
  for (unsigned seed = 1; seed <= 200; ++seed) {
    std::mt19937 random(seed);
    const Program program = randomProgram(random, {.columns = 4, .rows = 9, .step = 0.0});
    const Conflict conflict = findConflict(program, Among::AllRows);
    if (conflict.empty()) continue;
    ++found;
    EXPECT_TRUE(conflict.minimal);
    EXPECT_GT(leastOf(program, conflict.rows), 1e-9) << "seed " << seed;
    for (std::size_t k = 0; k < conflict.rows.size(); ++k) {
      std::vector<Eigen::Index> rest = conflict.rows;
      rest.erase(rest.begin() + std::ptrdiff_t(k));
      EXPECT_LE(leastOf(program, rest), 1e-9) << "seed " << seed << " without " << conflict.rows[k];
    }
  }
  EXPECT_GT(found, 100);
}

}  // namespace
}  // namespace tarebowl::solver
