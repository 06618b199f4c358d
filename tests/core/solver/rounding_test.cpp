// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/solve.h"

#include <gtest/gtest.h>

// Programs that can be solved, but whose last digits say otherwise: none of them may be called infeasible.

namespace tarebowl::solver {
namespace {

constexpr double kNone = kInfinity;

Program continuous(RowMatrix rows, std::initializer_list<double> lower, std::initializer_list<double> upper) {
  const Eigen::Index n = rows.cols();
  Program program;
  program.rows = std::move(rows);
  program.rowLower = Eigen::Map<const Eigen::VectorXd>(lower.begin(), Eigen::Index(lower.size()));
  program.rowUpper = Eigen::Map<const Eigen::VectorXd>(upper.begin(), Eigen::Index(upper.size()));
  program.price = Eigen::VectorXd::Constant(program.rowCount(), kInfinity);
  program.lower = program.step = program.cost = program.centre = Eigen::VectorXd::Zero(n);
  program.upper = Eigen::VectorXd::Constant(n, kInfinity);
  program.curvature = Eigen::VectorXd::Ones(n);
  return program;
}

/// least 0.1 · max(0, 1 - b x1 - k b x2)  subject to  -a x1 - k a x2 >= 0,  x in [0, 2] x [0, 40].
/// Both rows are multiples of one another but for their last digits, and only x = 0 holds the hard one.
Program oneDirection(double a, double b, double k) {
  RowMatrix rows(2, 2);
  rows << -a, -a * k, b, b * k;
  Program program = continuous(rows, {0, 1}, {kNone, kNone});
  program.price[1] = 0.1;
  program.upper = Eigen::Vector2d(2, 40);
  program.centre = Eigen::Vector2d(0, 2.7);
  return program;
}

TEST(Rounding, OfParallelRowsThatOnlyZeroHoldsIsNoContradiction) {
  for (int i = 1; i <= 30; ++i) {
    for (int j = 1; j <= 30; ++j) {
      const Solution solution = solve(oneDirection(i / 31.0, j / 37.0, (i + j) / 61.0));
      ASSERT_EQ(solution.status, Status::Optimal) << solution.reason << " at " << i << " " << j;
      EXPECT_NEAR(solution.x.norm(), 0.0, 1e-9);
      EXPECT_NEAR(solution.violation, 0.1, 1e-9);
    }
  }
}

// The hard rows ask for x1 between 0.0594 and 0.0713 where x2 = x3 = x4 = 0. Without upper limits the way
// there passes amounts ten thousand times as large, whose last digits stay behind.
TEST(Rounding, OfLargeAmountsPassedOnTheWayIsNoContradiction) {
  RowMatrix rows(6, 4);
  rows << 0, -0.00043351483939933278, -0.00071502112539677807, -0.0018371734400005224,  //
      0, -0.0010563809879615925, -0.0017423503285530679, -0.0044767904514955237,        //
      0, 12.125930941096822, 20.000000000000004, 51.387948544346663,                    //
      0, 10.104942450914018, 16.666666666666671, 42.823290453622214,                    //
      16.825396825396826, 0, 20.000000000000004, 0,                                     //
      14.02116402116402, 0, 16.666666666666668, 0;
  Program program = continuous(rows, {0, -kNone, 1, -kNone, 1, -kNone}, {kNone, 0, kNone, 1, kNone, 1});
  program.price[2] = program.price[3] = 0.1;
  program.centre = Eigen::Vector4d(63.1, 0.6, 78.8, 0);
  program.curvature = program.centre.cwiseMax(7.125).array().square().inverse().matrix();
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_NEAR(solution.violation, 0.1, 1e-9);  // row 2 misses all of its 1
  EXPECT_NEAR(solution.x[0], 1 / 14.02116402116402, 1e-6);
}

// Every row holds at x = 0, and nearly only there: more constraints meet in that corner than there are
// columns.
TEST(Rounding, InACornerWithTooManyConstraintsIsNoContradiction) {
  RowMatrix rows(3, 4);
  rows << -0.18390243902439027, 3.3483860665644203, -0.00016469867079624682, -0.023101045296167251,  //
      -0.1839024390243903, 3.0439548372772331, -0.0074766727691490129, -0.023101045296167251,        //
      -0.24390243902439024, 7.7147082253789563, 0.08662408052651957, -0.034843205574912897;
  Program program = continuous(rows, {0, -kNone, -kNone}, {kNone, 0, 0});
  program.centre = Eigen::Vector4d(0, 4.1, 0, 0);
  program.curvature = program.centre.cwiseMax(0.205).array().square().inverse().matrix();
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_LE(hardViolation(program, solution.x), 1e-9);
}

}  // namespace
}  // namespace tarebowl::solver
