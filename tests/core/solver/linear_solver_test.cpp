// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/linear_solver.h"

#include "core/solver/solve.h"
#include "tests/core/solver/random_program.h"

#include <gtest/gtest.h>

#include <array>

namespace tarebowl::solver {
namespace {

constexpr double kSame = 1e-8;

/// What a method may cycle on: a row or a food twice, a row that says nothing, a corner of a coarse grid
/// where many rows meet, foods that cost nothing.
Program degenerate(std::mt19937& random, const RandomShape& shape, unsigned kind) {
  Program program = randomProgram(random, shape);
  if (kind % 2 == 0) {
    program.rows.row(1) = program.rows.row(0);
    program.rowLower[1] = program.rowLower[0];
    program.rowUpper[1] = program.rowUpper[0];
    program.price[1] = program.price[0];
  }
  if (kind % 3 == 0) {
    program.rows.col(1) = program.rows.col(0);
    program.cost[1] = program.cost[0];
    program.lower[1] = program.lower[0];
  }
  if (kind % 5 == 0) program.rows.row(2).setZero();
  if (kind % 7 == 0) {
    program.rows = (program.rows.array() * 4).round() / 4;
    program.rowLower = program.rowLower.array().round();
    program.rowUpper = program.rowUpper.array().round().max(program.rowLower.array());
    program.cost = program.cost.array().round();
    program.price = program.price.unaryExpr([](double p) { return p < kInfinity ? 1.0 : p; });
  }
  if (kind % 11 == 0) program.lower = program.upper;
  if (kind % 13 == 0) program.cost.head(2).setZero();
  return program;
}

void expectSame(const LinearSolver& warm, const LinearSolver& cold) {
  ASSERT_EQ(warm.status(), cold.status()) << warm.reason() << " / " << cold.reason();
  if (cold.status() != Status::Optimal) return;
  EXPECT_NEAR(warm.violation(), cold.violation(), kSame * (1 + cold.violation()));
  EXPECT_NEAR(warm.objective(), cold.objective(), kSame * (1 + std::abs(cold.objective())));
}

Program twoFoods() {
  Program program;
  program.rows = RowMatrix::Ones(1, 2);
  program.rowLower = Eigen::VectorXd::Constant(1, 2.0);
  program.rowUpper = Eigen::VectorXd::Constant(1, kInfinity);
  program.price = Eigen::VectorXd::Constant(1, 3.0);
  program.lower = program.centre = program.curvature = Eigen::VectorXd::Zero(2);
  program.upper = Eigen::Vector2d(0.5, 10.0);
  program.cost = Eigen::Vector2d(1.0, 4.0);
  return program;
}

// x + y >= 2 with x <= 0.5 at 1 each and y at 4 each: 0.5 of x, 1.5 of y.
TEST(LinearSolver, MeetsABoundAsCheaplyAsItCanBeMet) {
  LinearSolver solver(ContinuousProgram::of(twoFoods()));
  ASSERT_EQ(solver.solve(), Status::Optimal) << solver.reason();
  EXPECT_NEAR(solver.x()[0], 0.5, 1e-12);
  EXPECT_NEAR(solver.x()[1], 1.5, 1e-12);
  EXPECT_EQ(solver.violation(), 0.0);
  EXPECT_NEAR(solver.objective(), 6.5, 1e-12);
  EXPECT_NEAR(solver.rowMultipliers()[0], -4.0, 1e-12);  // the next unit costs 4

  // A unit missed costs 3 of the price's own; at lambda 1 that is less than 4: y is left out.
  ASSERT_EQ(solver.solveAtPrice(1.0), Status::Optimal);
  EXPECT_NEAR(solver.x()[1], 0.0, 1e-12);
  EXPECT_NEAR(solver.violation(), 4.5, 1e-12);
}

// x >= 3 priced 1 where x <= 1: the best misses 2, and 2e-6 + 1e-9 more may be missed to save cost.
TEST(LinearSolver, SpendsTheBudgetOfTheSecondStageAndNoMore) {
  Program program = twoFoods();
  program.rows(0, 1) = 0.0;
  program.rowLower[0] = 3.0;
  program.price[0] = 1.0;
  program.upper[0] = 1.0;
  LinearSolver solver(ContinuousProgram::of(program));
  ASSERT_EQ(solver.solve(LinearSolver::Budget::Exact), Status::Optimal);
  EXPECT_EQ(solver.x()[0], 1.0);
  ASSERT_EQ(solver.solve(), Status::Optimal) << solver.reason();
  EXPECT_NEAR(solver.leastViolation(), 2.0, 1e-12);
  EXPECT_LE(solver.violation(), violationBudget(2.0));
  EXPECT_NEAR(solver.x()[0], 1.0 - 2.001e-6, 1e-10);
  EXPECT_EQ(solver.x()[1], 0.0);
}

TEST(LinearSolver, SaysWhereNothingLimitsTheObjective) {
  Program program = twoFoods();
  program.cost[1] = -1.0;
  program.upper[1] = kInfinity;
  LinearSolver solver(ContinuousProgram::of(program));
  EXPECT_EQ(solver.solve(), Status::Unbounded);
  program.rowUpper[0] = 7.0;
  program.price[0] = kInfinity;
  solver.assign(ContinuousProgram::of(program));
  ASSERT_EQ(solver.solve(), Status::Optimal) << solver.reason();
  EXPECT_NEAR(solver.x()[1], 7.0, 1e-12);
}

// A number of a rule that is a million times too large, and two foods without a limit: 1e6 x - y <= -0.005 is
// met by 0.005 of y. Beside amounts of ten thousand, which only the limits speak of that stand for none, the
// rule looked held by nothing at all.
TEST(LinearSolver, JudgesARuleByUsualAmountsAndNotByLimitsThatStandForNone) {
  Program program = twoFoods();
  program.rows << 1e6, -1.0;
  program.rowLower[0] = -kInfinity;
  program.rowUpper[0] = -0.005;
  program.upper.setConstant(kInfinity);
  program.step.setZero(2);
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_NEAR(solution.x[0], 0.0, 1e-12);
  EXPECT_NEAR(solution.x[1], 0.005, 1e-12);
  EXPECT_NEAR(solution.violation, 0.0, 1e-9);
  EXPECT_NEAR(solution.objective, 0.02, 1e-12);
}

TEST(LinearSolver, VerifiesItsAnswerToThousandsOfPrograms) {
  constexpr std::array<std::array<Eigen::Index, 2>, 6> kSizes = {
      {{3, 4}, {4, 6}, {6, 12}, {12, 31}, {25, 20}, {25, 53}}};
  double worst = 0.0;
  LinearSolver solver;
  for (unsigned seed = 1; seed <= 6000; ++seed) {
    std::mt19937 random(seed);
    const auto [columns, rows] = kSizes[seed % 31 == 0 ? 5 : seed % 5];
    const Program program = degenerate(random,
                                       {.columns = columns,
                                        .rows = rows,
                                        .hardShare = seed % 3 == 0 ? 0.2 : 0.0,
                                        .step = 0.0,
                                        .linear = true},
                                       seed);
    solver.assign(ContinuousProgram::of(program));
    const Status status = solver.solve();
    ASSERT_TRUE(status == Status::Optimal || status == Status::Infeasible)
        << "seed " << seed << " " << solver.reason();
    if (status == Status::Optimal) worst = std::max(worst, solver.error());
    const Solution other = solve(program);
    ASSERT_EQ(other.status, status) << "seed " << seed << " " << other.reason;
    if (status != Status::Optimal) continue;
    ASSERT_NEAR(other.violation, solver.violation(), kSame * (1 + other.violation)) << "seed " << seed;
    ASSERT_NEAR(other.objective, solver.objective(), 1e-6 * (1 + std::abs(other.objective)))
        << "seed " << seed;
  }
  EXPECT_LE(worst, 1e-10);
}

TEST(LinearSolver, AnswersTheSameWarmAsColdAfterAThousandEdits) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> unit(0.0, 1.0);
  Program program = randomProgram(
      random, {.columns = 8, .rows = 14, .hardShare = 0.1, .step = 0.0, .upper = 20.0, .linear = true});
  LinearSolver warm(ContinuousProgram::of(program));
  std::vector<double> coefficients(14);
  for (int edit = 0; edit < 1000; ++edit) {
    SCOPED_TRACE(edit);
    const auto row = Eigen::Index(14 * unit(random));
    const auto column = Eigen::Index(8 * unit(random));
    const double kind = unit(random);
    if (kind < 0.6) {
      double& bound = program.rowLower[row] > -kInfinity ? program.rowLower[row] : program.rowUpper[row];
      bound += unit(random) - 0.5;
      program.rowUpper[row] = std::max(program.rowUpper[row], program.rowLower[row]);
      warm.setRowBounds(row, program.rowLower[row], program.rowUpper[row]);
    } else if (kind < 0.7) {
      program.upper[column] = 1.0 + 20.0 * unit(random);
      program.lower[column] = std::min(program.lower[column], program.upper[column]);
      warm.setColumnBounds(column, program.lower[column], program.upper[column]);
    } else if (kind < 0.8) {
      program.price[row] = unit(random) < 0.1 ? kInfinity : 0.1 + 3.0 * unit(random);
      warm.setPrice(row, program.price[row]);
    } else if (kind < 0.9) {
      program.cost[column] = 1.2 * unit(random) - 0.2;
      warm.setCost(column, program.cost[column]);
    } else {
      for (Eigen::Index i = 0; i < 14; ++i)
        coefficients[std::size_t(i)] = program.rows(i, column) = 1.6 * unit(random) - 0.6;
      program.lower[column] = 0.0;
      program.cost[column] = unit(random);
      warm.replaceColumn(column, {coefficients, 0.0, program.upper[column], 0.0, 0.0, program.cost[column]});
    }
    LinearSolver cold(ContinuousProgram::of(program));
    cold.solve();
    warm.solve();
    expectSame(warm, cold);
    if (edit % 7 == 0) {
      cold.solveAtPrice(0.7);
      warm.solveAtPrice(0.7);
      expectSame(warm, cold);
    }
    if (edit % 11 == 0) {
      cold.solve(LinearSolver::Budget::Exact);
      warm.solve(LinearSolver::Budget::Exact);
      expectSame(warm, cold);
    }
  }
}

}  // namespace
}  // namespace tarebowl::solver
