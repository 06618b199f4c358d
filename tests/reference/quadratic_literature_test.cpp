// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Convex quadratic programs with published optima whose objectives have mixed terms: Hock and Schittkowski,
// "Test Examples for Nonlinear Programming Codes" (1981); Schittkowski, "More Test Examples for Nonlinear
// Programming Codes" (1987); Maros and Mészáros, "A repository of convex quadratic programming problems",
// Optimization Methods and Software 11 (1999), whose optima are printed to eight digits or more. Statements
// from memory; each is checked against the optimum's own arithmetic beside it.
#include "tests/reference/dense_quadratic.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace tarebowl::reference {
namespace {

using Eigen::Index;
using Eigen::VectorXd;

VectorXd vector(const std::vector<double>& values) {
  return Eigen::Map<const VectorXd>(values.data(), static_cast<Index>(values.size()));
}

constexpr double kShift = 1000.0;

void makeFree(DenseQuadratic& program) {
  program.lower.setConstant(-solver::kInfinity);
}

/// value is the published optimum, x the point at which it is taken.
void expectOptimum(const DenseAnswer& answer, const DenseQuadratic& program, double value,
                   const VectorXd& x) {
  EXPECT_NEAR(program.value(x), value, 1e-9 * (1.0 + std::abs(value))) << "the statement itself";
  ASSERT_EQ(answer.status, solver::Status::Optimal) << answer.reason;
  EXPECT_NEAR(answer.value, value, 1e-8 * (1.0 + std::abs(value)));
  EXPECT_LT((answer.x - x).cwiseAbs().maxCoeff(), 1e-6) << answer.x.transpose();
}

// (x1 + x2)^2 + (x2 + x3)^2, x1 + 2 x2 + 3 x3 = 1, no limits: 0 at (0.5, -0.5, 0.5).
TEST(HockSchittkowski, Problem28) {
  DenseQuadratic p(3, 1);
  makeFree(p);
  p.addSquare(vector({1, 1, 0}), 0);
  p.addSquare(vector({0, 1, 1}), 0);
  p.setEqual(0, vector({1, 2, 3}), 1);
  expectOptimum(solveBySubstitution(p, kShift), p, 0.0, vector({0.5, -0.5, 0.5}));
}

/// 9 - 8 x1 - 6 x2 - 4 x3 + 2 x1^2 + 2 x2^2 + x3^2 + 2 x1 x2 + 2 x1 x3, x1 + x2 + 2 x3 <= 3, x >= 0.
DenseQuadratic problem35() {
  DenseQuadratic p(3, 1);
  p.hessian << 4, 2, 2, 2, 4, 0, 2, 0, 2;
  p.gradient << -8, -6, -4;
  p.constant = 9;
  p.rows << 1, 1, 2;
  p.rowUpper << 3;
  return p;
}

TEST(HockSchittkowski, Problem35) {
  const DenseQuadratic p = problem35();
  expectOptimum(solveBySubstitution(p, kShift), p, 1.0 / 9.0, vector({4.0 / 3.0, 7.0 / 9.0, 4.0 / 9.0}));
}

// (x1 - 1)^2 + (x2 - x3)^2 + (x4 - x5)^2, x1 + … + x5 = 5, x3 - 2 (x4 + x5) = -3: 0 where all are 1.
TEST(HockSchittkowski, Problem48) {
  DenseQuadratic p(5, 2);
  makeFree(p);
  p.addSquare(vector({1, 0, 0, 0, 0}), 1);
  p.addSquare(vector({0, 1, -1, 0, 0}), 0);
  p.addSquare(vector({0, 0, 0, 1, -1}), 0);
  p.setEqual(0, vector({1, 1, 1, 1, 1}), 5);
  p.setEqual(1, vector({0, 0, 1, -2, -2}), -3);
  expectOptimum(solveBySubstitution(p, kShift), p, 0.0, VectorXd::Ones(5));
}

/// (a x1 - x2)^2 + (x2 + x3 - 2)^2 + (x4 - 1)^2 + (x5 - 1)^2, x1 + 3 x2 = b, x3 + x4 - 2 x5 = 0, x2 - x5 = 0.
DenseQuadratic problem51To53(double a, double b) {
  DenseQuadratic p(5, 3);
  makeFree(p);
  p.addSquare(vector({a, -1, 0, 0, 0}), 0);
  p.addSquare(vector({0, 1, 1, 0, 0}), 2);
  p.addSquare(vector({0, 0, 0, 1, 0}), 1);
  p.addSquare(vector({0, 0, 0, 0, 1}), 1);
  p.setEqual(0, vector({1, 3, 0, 0, 0}), b);
  p.setEqual(1, vector({0, 0, 1, 1, -2}), 0);
  p.setEqual(2, vector({0, 1, 0, 0, -1}), 0);
  return p;
}

TEST(HockSchittkowski, Problem51) {
  const DenseQuadratic p = problem51To53(1, 4);
  expectOptimum(solveBySubstitution(p, kShift), p, 0.0, VectorXd::Ones(5));
}

TEST(HockSchittkowski, Problem52) {
  const DenseQuadratic p = problem51To53(4, 0);
  expectOptimum(solveBySubstitution(p, kShift), p, 1859.0 / 349.0, vector({-33, 11, 180, -158, 11}) / 349.0);
}

TEST(HockSchittkowski, Problem53) {
  DenseQuadratic p = problem51To53(1, 0);
  p.lower.setConstant(-10);
  p.upper.setConstant(10);
  expectOptimum(solveBySubstitution(p, kShift), p, 176.0 / 43.0, vector({-33, 11, 27, -5, 11}) / 43.0);
}

// x1^2 + x2^2 / 2 + x3^2 + x4^2 / 2 - x1 x3 + x3 x4 - x1 - 3 x2 + x3 - x4, x1 + 2 x2 + x3 + x4 <= 5,
// 3 x1 + x2 + 2 x3 - x4 <= 4, x2 + 4 x3 >= 1.5, x >= 0: -1133/242 at (3, 23, 0, 6) / 11.
TEST(HockSchittkowski, Problem76) {
  DenseQuadratic p(4, 3);
  p.hessian << 2, 0, -1, 0, 0, 1, 0, 0, -1, 0, 2, 1, 0, 0, 1, 1;
  p.gradient << -1, -3, 1, -1;
  p.rows << 1, 2, 1, 1, 3, 1, 2, -1, 0, 1, 4, 0;
  p.rowUpper << 5, 4, solver::kInfinity;
  p.rowLower[2] = 1.5;
  expectOptimum(solveBySubstitution(p, kShift), p, -1133.0 / 242.0, vector({3, 23, 0, 6}) / 11.0);
}

// |D x - d|^2 with D (1, 2, -1, 3, -4) = d, so that the optimum is 0; ill-conditioned, so the point is asked
// for less closely than elsewhere.
TEST(Schittkowski, Problem268) {
  DenseQuadratic p(5, 5);
  makeFree(p);
  const std::vector<std::vector<double>> forms{{-74, 80, 18, -11, -4}, {14, -69, 21, 28, 0},
                                               {66, -72, -5, 7, 1},    {-12, 66, -30, -23, 3},
                                               {3, 8, -7, -4, 1},      {4, -12, 4, 4, 0}};
  const std::vector<double> targets{51, -61, -56, 69, 10, -12};
  const VectorXd x = vector({1, 2, -1, 3, -4});
  for (std::size_t k = 0; k < forms.size(); ++k) {
    EXPECT_EQ(vector(forms[k]).dot(x), targets[k]);
    p.addSquare(vector(forms[k]), targets[k]);
  }
  p.rows << -1, -1, -1, -1, -1, 10, 10, -3, 5, 4, -8, 1, -2, -5, 3, 8, -1, 2, 5, -3, -4, -2, 3, -5, 1;
  p.rowLower << -5, 20, -40, 11, -30;
  const DenseAnswer answer = solveBySubstitution(p, kShift);
  ASSERT_EQ(answer.status, solver::Status::Optimal) << answer.reason;
  EXPECT_NEAR(answer.value, 0.0, 1e-6);
  EXPECT_LT((answer.x - x).cwiseAbs().maxCoeff(), 1e-3) << answer.x.transpose();
}

// (x - y)^2, x + y = 1, x, y >= 0: 0 at (0.5, 0.5).
TEST(MarosMeszaros, Tame) {
  DenseQuadratic p(2, 1);
  p.addSquare(vector({1, -1}), 0);
  p.setEqual(0, vector({1, 1}), 1);
  expectOptimum(solveBySubstitution(p, kShift), p, 0.0, vector({0.5, 0.5}));
}

// 1.5 x - 2 y + (8 x^2 + 4 x y + 10 y^2) / 2, 2 x + y >= 2, -x + 2 y <= 6, 0 <= x <= 20, y >= 0:
// 4.3718750 at (0.7625, 0.475).
TEST(MarosMeszaros, Qptest) {
  DenseQuadratic p(2, 2);
  p.hessian << 8, 2, 2, 10;
  p.gradient << 1.5, -2;
  p.rows << 2, 1, -1, 2;
  p.rowLower[0] = 2;
  p.rowUpper[1] = 6;
  p.upper[0] = 20;
  expectOptimum(solveBySubstitution(p, kShift), p, 4.371875, vector({0.7625, 0.475}));
}

// Hock and Schittkowski's problem 35 with x2 fixed at 0.5: 0.25 at (1.5, 0.5, 0.5).
TEST(MarosMeszaros, Hs35mod) {
  DenseQuadratic p = problem35();
  p.lower[1] = p.upper[1] = 0.5;
  expectOptimum(solveBySubstitution(p, kShift), p, 0.25, vector({1.5, 0.5, 0.5}));
}

// sum of (x_i + x_{i+1})^2, x_i + 2 x_{i+1} + 3 x_{i+2} = 1, ten variables without limits: 9.2717369e-01.
TEST(MarosMeszaros, Genhs28) {
  DenseQuadratic p(10, 8);
  makeFree(p);
  for (Index i = 0; i < 9; ++i) p.addSquare(VectorXd::Unit(10, i) + VectorXd::Unit(10, i + 1), 0);
  for (Index i = 0; i < 8; ++i)
    p.setEqual(i, VectorXd::Unit(10, i) + 2 * VectorXd::Unit(10, i + 1) + 3 * VectorXd::Unit(10, i + 2), 1);
  const DenseAnswer answer = solveBySubstitution(p, kShift);
  ASSERT_EQ(answer.status, solver::Status::Optimal) << answer.reason;
  EXPECT_NEAR(answer.value, 9.2717369e-01, 5e-9);
}

// 2 y^2 - 2 x - 3 y, x + y <= 2, x + 4 y <= 4, 0 <= x, y <= 10: -4.125 at (1.75, 0.25). Flat in x.
TEST(MarosMeszaros, Zecevic2) {
  DenseQuadratic p(2, 2);
  p.hessian << 0, 0, 0, 4;
  p.gradient << -2, -3;
  p.rows << 1, 1, 1, 4;
  p.rowUpper << 2, 4;
  p.upper << 10, 10;
  EXPECT_THROW((void)solveBySubstitution(p, kShift), std::invalid_argument);
  expectOptimum(solveByProximalPoints(p, kShift), p, -4.125, vector({1.75, 0.25}));
}

}  // namespace
}  // namespace tarebowl::reference
