// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/continuous_solver.h"

#include "tests/core/solver/random_program.h"

#include <gtest/gtest.h>

#include <array>

namespace tarebowl::solver {
namespace {

constexpr double kSame = 1e-8;

/// A row is doubled, a food is doubled, a row says nothing, bounds meet, everything lies on a coarse grid so
/// that many constraints meet in one corner: what a method may cycle on.
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
    program.centre[1] = program.centre[0];
    program.curvature[1] = program.curvature[0];
    program.lower[1] = program.lower[0];
  }
  if (kind % 5 == 0) program.rows.row(2).setZero();
  if (kind % 7 == 0) {
    program.rows = (program.rows.array() * 4).round() / 4;
    program.rowLower = program.rowLower.array().round();
    program.rowUpper = program.rowUpper.array().round().max(program.rowLower.array());
    program.centre = program.centre.array().round();
    program.curvature.setOnes();
    program.price.setOnes();
  }
  if (kind % 11 == 0) program.lower = program.upper;
  return program;
}

/// One row twice, at half its price.
Program withRowTwice(const Program& program, Eigen::Index row) {
  Program twice = program;
  const Eigen::Index m = program.rowCount();
  twice.rows.conservativeResize(m + 1, program.variableCount());
  for (Eigen::VectorXd* part : {&twice.rowLower, &twice.rowUpper, &twice.price})
    part->conservativeResize(m + 1);
  twice.price[row] /= 2.0;
  twice.rows.row(m) = twice.rows.row(row);
  twice.rowLower[m] = twice.rowLower[row];
  twice.rowUpper[m] = twice.rowUpper[row];
  twice.price[m] = twice.price[row];
  return twice;
}

ContinuousSolver solved(const Program& program) {
  ContinuousSolver solver(ContinuousProgram::of(program));
  EXPECT_EQ(solver.solve(), Status::Optimal) << solver.reason();
  return solver;
}

void expectSame(const ContinuousSolver& warm, const ContinuousSolver& cold) {
  ASSERT_EQ(warm.status(), cold.status()) << warm.reason() << " / " << cold.reason();
  if (cold.status() != Status::Optimal) return;
  EXPECT_NEAR(warm.violation(), cold.violation(), kSame * (1 + cold.violation()));
  EXPECT_NEAR(warm.objective(), cold.objective(), kSame * (1 + std::abs(cold.objective())));
  EXPECT_LE((warm.x() - cold.x()).cwiseAbs().maxCoeff(), 1e-6 * (1 + cold.x().cwiseAbs().maxCoeff()));
}

// least x^2 + y^2 with x + y >= 2 priced 3 and x <= 0.5 held: y = 1.5 and nothing is missed.
TEST(ContinuousSolver, MeetsABoundThatCanBeMet) {
  Program program;
  program.rows = RowMatrix::Ones(1, 2);
  program.rowLower = Eigen::VectorXd::Constant(1, 2.0);
  program.rowUpper = Eigen::VectorXd::Constant(1, kInfinity);
  program.price = Eigen::VectorXd::Constant(1, 3.0);
  program.lower = program.centre = program.cost = Eigen::VectorXd::Zero(2);
  program.upper = Eigen::Vector2d(0.5, 10.0);
  program.curvature = Eigen::VectorXd::Ones(2);
  ContinuousSolver solver(ContinuousProgram::of(program));
  ASSERT_EQ(solver.solve(), Status::Optimal);
  EXPECT_NEAR(solver.x()[0], 0.5, 1e-12);
  EXPECT_NEAR(solver.x()[1], 1.5, 1e-12);
  EXPECT_NEAR(solver.violation(), 0.0, 1e-15);
  EXPECT_NEAR(solver.rowMultipliers()[0], -3.0, 1e-12);    // 2 y: the next unit costs 3
  EXPECT_NEAR(solver.columnMultipliers()[0], 2.0, 1e-12);  // - 2 x + 3

  // At a price of 1/3 each a unit missed costs 1 = 2 x = 2 y: x = y = 0.5, of 2 are 1 missed at a price of 3.
  ASSERT_EQ(solver.solveAtPrice(1.0 / 3.0), Status::Optimal);
  EXPECT_NEAR(solver.x()[0], 0.5, 1e-12);
  EXPECT_NEAR(solver.x()[1], 0.5, 1e-12);
  EXPECT_NEAR(solver.violation(), 3.0, 1e-12);
}

// x >= 3 priced 1 where x <= 1: the best misses 2; of the budget 2e-6 + 1e-9 may be spent to come nearer to
// 0.
TEST(ContinuousSolver, SpendsTheBudgetOfTheSecondStageAndNoMore) {
  Program program;
  program.rows = RowMatrix::Ones(1, 1);
  program.rowLower = Eigen::VectorXd::Constant(1, 3.0);
  program.rowUpper = Eigen::VectorXd::Constant(1, kInfinity);
  program.price = program.upper = program.curvature = Eigen::VectorXd::Ones(1);
  program.lower = program.centre = program.cost = Eigen::VectorXd::Zero(1);
  ContinuousSolver solver(ContinuousProgram::of(program));
  ASSERT_EQ(solver.solve(ContinuousSolver::Budget::Exact), Status::Optimal);
  EXPECT_EQ(solver.x()[0], 1.0);
  ASSERT_EQ(solver.solve(), Status::Optimal);
  EXPECT_EQ(solver.leastViolation(), 2.0);
  EXPECT_LE(solver.violation(), violationBudget(2.0));
  EXPECT_NEAR(solver.x()[0], 1.0 - 2.001e-6, 1e-10);
}

// Twice at half the price is once: where the row's multiplier comes to its end, one of the two takes the
// place of the other, and the budget is spent as before.
TEST(ContinuousSolver, SpendsTheBudgetWhereARowStandsTwice) {
  for (unsigned seed = 1; seed <= 2000; ++seed) {
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    std::mt19937 random(seed);
    const Program program = randomProgram(random, {.columns = 4, .rows = 6, .hardShare = 0.0, .step = 0.0});
    const ContinuousSolver once = solved(program);
    for (Eigen::Index row = 0; row < program.rowCount(); ++row) {
      const ContinuousSolver twice = solved(withRowTwice(program, row));
      EXPECT_NEAR(twice.violation(), once.violation(), 1e-9 * (1 + once.violation()));
      EXPECT_NEAR(twice.objective(), once.objective(), 1e-8 * (1 + once.objective()));
    }
  }
}

TEST(ContinuousSolver, NamesHardRowsThatCannotHoldTogether) {
  Program program;
  program.rows = RowMatrix::Ones(3, 1);
  program.rowLower = Eigen::Vector3d(2.0, -kInfinity, 0.0);
  program.rowUpper = Eigen::Vector3d(kInfinity, 1.0, kInfinity);
  program.price = Eigen::Vector3d(kInfinity, kInfinity, kInfinity);
  program.upper = Eigen::VectorXd::Constant(1, 9.0);
  program.lower = program.centre = program.cost = Eigen::VectorXd::Zero(1);
  program.curvature = Eigen::VectorXd::Ones(1);
  ContinuousSolver solver(ContinuousProgram::of(program));
  ASSERT_EQ(solver.solve(), Status::Infeasible);
  std::vector<Eigen::Index> rows = solver.blockingRows();
  std::sort(rows.begin(), rows.end());
  EXPECT_EQ(rows, (std::vector<Eigen::Index>{0, 1}));
}

TEST(ContinuousSolver, VerifiesItsAnswerToThousandPrograms) {
  constexpr std::array<std::array<Eigen::Index, 2>, 6> kSizes = {
      {{3, 4}, {4, 6}, {6, 12}, {12, 31}, {25, 20}, {25, 53}}};
  double worst = 0.0;
  ContinuousSolver solver;
  for (unsigned seed = 1; seed <= 10'000; ++seed) {
    std::mt19937 random(seed);
    const auto [columns, rows] = kSizes[seed % 31 == 0 ? 5 : seed % 5];
    const RandomShape shape{
        .columns = columns, .rows = rows, .hardShare = seed % 3 == 0 ? 0.2 : 0.0, .step = 0.0};
    const Program program = degenerate(random, shape, seed);
    solver.assign(ContinuousProgram::of(program));
    const Status status = solver.solve();
    ASSERT_TRUE(status == Status::Optimal || status == Status::Infeasible)
        << "seed " << seed << " " << solver.reason();
    if (status == Status::Optimal) worst = std::max(worst, solver.error());
  }
  EXPECT_LE(worst, 1e-10);
}

TEST(ContinuousSolver, AnswersTheSameWarmAsColdAfterAThousandEdits) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> unit(0.0, 1.0);
  Program program =
      randomProgram(random, {.columns = 8, .rows = 14, .hardShare = 0.1, .step = 0.0, .upper = 20.0});
  ContinuousSolver warm(ContinuousProgram::of(program));
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
      warm.setColumnBounds(column, program.lower[column], program.upper[column]);
    } else if (kind < 0.8) {
      program.price[row] = 0.1 + unit(random);
      warm.setPrice(row, program.price[row]);
    } else if (kind < 0.9) {
      program.centre[column] = 16.0 * unit(random);
      warm.setCentre(column, program.centre[column]);
    } else {
      for (Eigen::Index i = 0; i < 14; ++i)
        program.rows(i, column) = coefficients[std::size_t(i)] = unit(random) - 0.3;
      program.curvature[column] = 0.1 + unit(random);
      warm.replaceColumn(column, {coefficients, program.lower[column], program.upper[column],
                                  program.centre[column], program.curvature[column], 0.0});
    }
    ContinuousSolver cold(ContinuousProgram::of(program));
    if (edit % 4 == 3) {
      warm.solveAtPrice(5.0);
      cold.solveAtPrice(5.0);
    } else {
      warm.solve();
      cold.solve();
    }
    expectSame(warm, cold);
  }
}

}  // namespace
}  // namespace tarebowl::solver
