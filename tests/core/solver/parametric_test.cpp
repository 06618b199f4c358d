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

// Least cost of x + y >= t where x costs 1 and there are 2 of it, y costs 3 and there are 4: up to t = 2 x
// alone, then y as well; beyond 6 there is no more.
TEST(LinearParametric, FollowsABoundThroughItsBreakpoints) {
  Program program;
  program.rows = RowMatrix::Ones(1, 2);
  program.rowLower = Eigen::VectorXd::Zero(1);
  program.rowUpper = Eigen::VectorXd::Constant(1, kInfinity);
  program.price = Eigen::VectorXd::Constant(1, kInfinity);
  program.lower = program.centre = program.curvature = Eigen::VectorXd::Zero(2);
  program.upper = Eigen::Vector2d(2.0, 4.0);
  program.cost = Eigen::Vector2d(1.0, 3.0);
  LinearSolver solver(ContinuousProgram::of(program));
  const ParametricPath path = followBound(solver, {MovingBound::Kind::RowLower, 0}, -1.0, 9.0);
  ASSERT_EQ(path.status, Status::Optimal) << path.reason;
  EXPECT_FALSE(path.isComplete);
  ASSERT_EQ(path.points.size(), 4U);
  EXPECT_NEAR(path.points[1].bound, 0.0, 1e-12);
  EXPECT_NEAR(path.points[2].bound, 2.0, 1e-12);
  EXPECT_NEAR(path.points[2].objective, 2.0, 1e-12);
  EXPECT_NEAR(path.points[2].rowMultipliers[0], -1.0, 1e-12);  // on arrival the next unit still costs 1
  EXPECT_NEAR(path.points[3].bound, 6.0, 1e-12);
  EXPECT_NEAR(path.points[3].objective, 14.0, 1e-12);
}

void expectLinesBetweenPoints(Program program, MovingBound moving, double from, double to) {
  LinearSolver solver(ContinuousProgram::of(program));
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
    for (const double share : {0.0, 0.3, 0.7, 1.0}) {
      setBound(program, moving, (1 - share) * a.bound + share * b.bound);
      LinearSolver cold(ContinuousProgram::of(program));
      ASSERT_EQ(cold.solve(LinearSolver::Budget::Exact), Status::Optimal) << cold.reason();
      const Eigen::VectorXd x = (1 - share) * a.x + share * b.x;
      EXPECT_NEAR(elasticViolation(program, x), cold.violation(), 1e-8 * (1 + cold.violation()));
      EXPECT_NEAR(objectiveValue(program, x), cold.objective(), 1e-8 * (1 + std::abs(cold.objective())));
      EXPECT_LE(hardViolation(program, x), 1e-9);
      EXPECT_NEAR((1 - share) * a.violation + share * b.violation, cold.violation(),
                  1e-8 * (1 + cold.violation()));
    }
  }
}

TEST(LinearParametric, IsAStraightLineBetweenBreakpointsWhateverMoves) {
  for (unsigned seed = 1; seed <= 150; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    Program program = randomProgram(
        random, {.columns = 5, .rows = 8, .hardShare = 0.1, .step = 0.0, .upper = 10.0, .linear = true});
    if (seed % 4 == 0) program.cost.head(2).setZero();  // many answers cost the same
    if (seed % 6 == 0) program.price.setOnes();
    const Eigen::Index row = seed % 8;
    const bool isLower = program.rowLower[row] > -kInfinity;
    const double bound = isLower ? program.rowLower[row] : program.rowUpper[row];
    if (isLower) program.rowUpper[row] = kInfinity;
    const auto kind = isLower ? MovingBound::Kind::RowLower : MovingBound::Kind::RowUpper;
    expectLinesBetweenPoints(program, {kind, row}, bound - 4.0, bound + 4.0);
    expectLinesBetweenPoints(program, {kind, row}, bound + 3.0, bound - 3.0);
    expectLinesBetweenPoints(program, {MovingBound::Kind::ColumnUpper, seed % 5}, 9.0, 1.5);
    expectLinesBetweenPoints(program, {MovingBound::Kind::RowBoth, row}, bound - 1.0, bound + 1.0);
  }
}

// Beyond where the lower bound meets the upper one no value lies between them.
TEST(LinearParametric, EndsWhereTheTwoBoundsOfARowMeet) {
  Program program;
  program.rows = RowMatrix::Ones(1, 1);
  program.rowLower = Eigen::VectorXd::Zero(1);
  program.rowUpper = Eigen::VectorXd::Constant(1, 3.0);
  program.price = program.cost = Eigen::VectorXd::Ones(1);
  program.lower = program.centre = program.curvature = Eigen::VectorXd::Zero(1);
  program.upper = Eigen::VectorXd::Constant(1, 9.0);
  LinearSolver solver(ContinuousProgram::of(program));
  const ParametricPath path = followBound(solver, {MovingBound::Kind::RowLower, 0}, 1.0, 5.0);
  ASSERT_EQ(path.status, Status::Optimal) << path.reason;
  EXPECT_FALSE(path.isComplete);
  EXPECT_NEAR(path.points.back().bound, 3.0, 1e-12);
}

}  // namespace
}  // namespace tarebowl::solver
