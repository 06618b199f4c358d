// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/parametric.h"

#include "tests/core/solver/random_program.h"

#include <gtest/gtest.h>

namespace tarebowl::solver {
namespace {

void setBound(Program& program, MovingBound moving, double value) {
  if (moving.kind == MovingBound::Kind::RowLower) program.rowLower[moving.index] = value;
  if (moving.kind == MovingBound::Kind::RowUpper) program.rowUpper[moving.index] = value;
  if (moving.kind == MovingBound::Kind::RowBoth)
    program.rowLower[moving.index] = program.rowUpper[moving.index] = value;
  if (moving.kind == MovingBound::Kind::ColumnUpper) program.upper[moving.index] = value;
}

void expectStraightBetweenPoints(Program program, MovingBound moving, double from, double to) {
  ContinuousSolver solver(ContinuousProgram::of(program));
  const ParametricPath path = followBound(solver, moving, from, to);
  if (path.status == Status::Infeasible) return;
  ASSERT_EQ(path.status, Status::Optimal) << path.reason;
  ASSERT_FALSE(path.points.empty());
  if (path.isComplete) {
    EXPECT_EQ(path.points.back().bound, to);
  }
  for (std::size_t k = 0; k + 1 < path.points.size(); ++k) {
    const Breakpoint& a = path.points[k];
    const Breakpoint& b = path.points[k + 1];
    setBound(program, moving, 0.5 * (a.bound + b.bound));
    ContinuousSolver cold(ContinuousProgram::of(program));
    ASSERT_EQ(cold.solve(ContinuousSolver::Budget::Exact), Status::Optimal) << cold.reason();
    const Eigen::VectorXd middle = 0.5 * (a.x + b.x);
    EXPECT_LE((middle - cold.x()).cwiseAbs().maxCoeff(), 1e-8 * (1 + cold.x().cwiseAbs().maxCoeff()));
  }
}

// least x^2 + (y - 1)^2 with x + y <= t, both within [0, 1]: at t = 2 nothing binds (0, 1); below 1 the two
// share what is missing, until x has nothing left to give: from the start, so y = t.
TEST(Parametric, FollowsABoundThroughItsBreakpoints) {
  Program program;
  program.rows = RowMatrix::Ones(1, 2);
  program.rowLower = Eigen::VectorXd::Constant(1, -kInfinity);
  program.rowUpper = Eigen::VectorXd::Constant(1, 2.0);
  program.price = Eigen::VectorXd::Constant(1, kInfinity);
  program.lower = program.cost = Eigen::VectorXd::Zero(2);
  program.upper = program.curvature = Eigen::VectorXd::Ones(2);
  program.centre = Eigen::Vector2d(0.5, 1.0);
  ContinuousSolver solver(ContinuousProgram::of(program));
  const ParametricPath path = followBound(solver, {MovingBound::Kind::RowUpper, 0}, 2.0, -1.0);
  ASSERT_EQ(path.status, Status::Optimal) << path.reason;
  // Binds from 1.5 on; both fall by half of what goes, until x is 0 at (0, 0.5); then y alone, until nothing
  // is left.
  ASSERT_EQ(path.points.size(), 4U);
  EXPECT_FALSE(path.isComplete);
  EXPECT_NEAR(path.points[1].bound, 1.5, 1e-12);
  EXPECT_NEAR(path.points[2].bound, 0.5, 1e-12);
  EXPECT_NEAR(path.points[2].x[1], 0.5, 1e-12);
  EXPECT_NEAR(path.points[2].rowMultipliers[0], 1.0, 1e-12);  // 2 (1 - y)
  EXPECT_NEAR(path.points[3].bound, 0.0, 1e-12);
}

TEST(Parametric, IsAStraightLineBetweenBreakpointsWhateverMoves) {
  for (unsigned seed = 1; seed <= 150; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    Program program =
        randomProgram(random, {.columns = 5, .rows = 8, .hardShare = 0.1, .step = 0.0, .upper = 10.0});
    const Eigen::Index row = seed % 8;
    const bool isLower = program.rowLower[row] > -kInfinity;
    const double bound = isLower ? program.rowLower[row] : program.rowUpper[row];
    if (isLower) program.rowUpper[row] = kInfinity;
    const auto kind = isLower ? MovingBound::Kind::RowLower : MovingBound::Kind::RowUpper;
    expectStraightBetweenPoints(program, {kind, row}, bound - 4.0, bound + 4.0);
    expectStraightBetweenPoints(program, {kind, row}, bound + 3.0, bound - 3.0);
    expectStraightBetweenPoints(program, {MovingBound::Kind::ColumnUpper, seed % 5}, 9.0, 1.5);
    expectStraightBetweenPoints(program, {MovingBound::Kind::RowBoth, row}, bound - 1.0, bound + 1.0);
  }
}

}  // namespace
}  // namespace tarebowl::solver
