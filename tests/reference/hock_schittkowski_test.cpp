// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Convex quadratic programs with published optima whose objective has no mixed terms, which is the solver's
// form: Hock and Schittkowski, "Test Examples for Nonlinear Programming Codes" (1981), problems 21 and 118,
// and Schittkowski, "More Test Examples" (1987), problem 224. Statements and optima from memory; the
// optimality conditions are checked beside the printed optimum, so that a slip of memory would show.
#include "core/solver/solve.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace tarebowl::reference {
namespace {

using Eigen::Index;
using Eigen::VectorXd;
using solver::kInfinity;

/// n variables without limits above, m hard rows; curvature, cost and rows to be filled in.
solver::Program blank(Index n, Index m) {
  solver::Program p;
  p.rows = solver::RowMatrix::Zero(m, n);
  p.rowLower = VectorXd::Constant(m, -kInfinity);
  p.rowUpper = VectorXd::Constant(m, kInfinity);
  p.price = VectorXd::Constant(m, kInfinity);
  p.lower = p.step = p.centre = p.curvature = p.cost = VectorXd::Zero(n);
  p.upper = VectorXd::Constant(n, kInfinity);
  return p;
}

VectorXd vector(const std::vector<double>& values) {
  return Eigen::Map<const VectorXd>(values.data(), static_cast<Index>(values.size()));
}

VectorXd gradient(const solver::Program& p, const VectorXd& x) {
  return (2.0 * p.curvature.array() * (x - p.centre).array()).matrix() + p.cost;
}

void expectOptimum(const solver::Solution& solution, double value, const VectorXd& x) {
  ASSERT_EQ(solution.status, solver::Status::Optimal) << solution.reason;
  EXPECT_NEAR(solution.objective, value, 1e-9 * (1.0 + std::abs(value)));
  ASSERT_EQ(solution.x.size(), x.size());
  EXPECT_LT((solution.x - x).cwiseAbs().maxCoeff(), 1e-6) << solution.x.transpose();
}

// least 0.01 x1^2 + x2^2 - 100, 10 x1 - x2 >= 10, 2 <= x1 <= 50, -50 <= x2 <= 50: -99.96 at (2, 0).
// Moved by 50 in x2, since the solver's variables are not negative.
TEST(HockSchittkowski, Problem21) {
  solver::Program p = blank(2, 1);
  p.rows << 10, -1;
  p.rowLower << 10 - 50;
  p.lower << 2, 0;
  p.upper << 50, 100;
  p.curvature << 0.01, 1;
  p.centre << 0, 50;
  expectOptimum(solver::solve(p), -99.96 + 100, vector({2, 50}));
}

// least 2 x1^2 + x2^2 - 48 x1 - 40 x2, 0 <= x1 + 3 x2 <= 18, 0 <= x1 + x2 <= 8, 0 <= x <= 6: -304 at (4, 4).
TEST(HockSchittkowski, Problem224) {
  solver::Program p = blank(2, 2);
  p.rows << 1, 3, 1, 1;
  p.rowLower << 0, 0;
  p.rowUpper << 18, 8;
  p.upper << 6, 6;
  p.curvature << 2, 1;
  p.cost << -48, -40;
  // At (4, 4) the gradient is (-32, -32): 32 times the row x1 + x2 <= 8, which is met exactly.
  EXPECT_EQ(gradient(p, vector({4, 4})), vector({-32, -32}));
  expectOptimum(solver::solve(p), -304, vector({4, 4}));
}

/// Five periods of three products: least sum of 2.3 a + 0.0001 a^2 + 1.7 b + 0.0001 b^2 + 2.2 c + 0.00015
/// c^2, with a step from one period to the next within -7 … 6 (a, c) and -7 … 7 (b), and a demand each
/// period.
solver::Program problem118() {
  solver::Program p = blank(15, 17);
  const std::vector<double> demand{60, 50, 70, 85, 100};
  const std::vector<double> highestStep{6, 7, 6};
  const std::vector<double> upper{90, 120, 60};
  const std::vector<double> cost{2.3, 1.7, 2.2};
  const std::vector<double> curvature{0.0001, 0.0001, 0.00015};
  for (Index period = 0; period < 5; ++period) {
    for (Index product = 0; product < 3; ++product) {
      const auto k = static_cast<std::size_t>(product);
      const Index j = 3 * period + product;
      p.cost[j] = cost[k];
      p.curvature[j] = curvature[k];
      p.upper[j] = upper[k];
      p.rows(period, j) = 1;
      if (period == 0) continue;
      const Index row = 5 + 3 * (period - 1) + product;
      p.rows(row, j) = 1;
      p.rows(row, j - 3) = -1;
      p.rowLower[row] = -7;
      p.rowUpper[row] = highestStep[k];
    }
    p.rowLower[period] = demand[static_cast<std::size_t>(period)];
  }
  p.lower.head(3) = vector({8, 43, 3});
  p.upper.head(3) = vector({21, 57, 16});
  return p;
}

// The printed optimum is 664.8204500 (f = 664.82045000 in the 1981 tables).
TEST(HockSchittkowski, Problem118) {
  const VectorXd x = vector({8, 49, 3, 1, 56, 0, 1, 63, 6, 3, 70, 12, 5, 77, 18});
  const solver::Program p = problem118();
  EXPECT_NEAR(solver::objectiveValue(p, x), 664.82045, 5e-9);
  EXPECT_EQ(solver::hardViolation(p, x), 0.0);
  expectOptimum(solver::solve(p), 664.82045, x);
}

}  // namespace
}  // namespace tarebowl::reference
