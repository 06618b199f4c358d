// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/continuous_solver.h"
#include "tests/core/solver/allocation/allocation_count.h"
#include "tests/core/solver/random_program.h"

#include <gtest/gtest.h>

namespace tarebowl::solver {
namespace {

using testing::allocationCount;

Program diet(unsigned seed) {
  std::mt19937 random(seed);
  return randomProgram(
      random,
      {.columns = 12, .rows = 31, .hardShare = seed % 3 == 0 ? 0.05 : 0.0, .step = 0.0, .upper = 20.0});
}

TEST(Allocation, IsCountedOfBothKinds) {
  long before = allocationCount();
  Eigen::VectorXd vector = Eigen::VectorXd::Ones(100);
  EXPECT_EQ(vector.sum(), 100.0);
  EXPECT_EQ(allocationCount(), before + 1);
  before = allocationCount();
  void* const block = ::operator new(100);
  EXPECT_GT(allocationCount(), before);
  ::operator delete(block);
}

TEST(Allocation, NoneWhileASolverSetUpOnceIsAskedAgainAndAgain) {
  for (unsigned seed = 1; seed <= 40; ++seed) {
    SCOPED_TRACE(seed);
    const Program program = diet(seed);
    ContinuousSolver solver(ContinuousProgram::of(program));
    const long before = allocationCount();
    for (int move = 0; move < 50; ++move) {
      const auto row = Eigen::Index((7 * move) % 31);
      const double by = 0.3 * double(move % 5 - 2);
      solver.setRowBounds(row, program.rowLower[row] + by, program.rowUpper[row] + by);
      solver.solve(move % 4 == 0 ? ContinuousSolver::Budget::Exact : ContinuousSolver::Budget::Spent);
      if (move % 10 == 9) solver.solveAtPrice(1.0);
    }
    EXPECT_EQ(allocationCount(), before);
  }
}

TEST(Allocation, NoneWhereAProgramOfTheSameSizeTakesThePlace) {
  ContinuousSolver solver(ContinuousProgram::of(diet(1)));
  solver.solve();
  for (unsigned seed = 2; seed <= 30; ++seed) {
    SCOPED_TRACE(seed);
    const Program program = diet(seed);
    const long before = allocationCount();
    solver.assign(ContinuousProgram::of(program));
    solver.solve();
    EXPECT_EQ(allocationCount(), before);
  }
}

}  // namespace
}  // namespace tarebowl::solver
