// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/ranges.h"

#include <gtest/gtest.h>

namespace tarebowl::solver {
namespace {

using Signs = std::vector<signed char>;

/// least x^2 + y^2 with x + y >= 2 and x at most 1.5.
Program twoFoods() {
  Program program;
  program.rows = RowMatrix::Ones(1, 2);
  program.rowLower = Eigen::VectorXd::Constant(1, 2.0);
  program.rowUpper = Eigen::VectorXd::Constant(1, kInfinity);
  program.price = Eigen::VectorXd::Constant(1, 1.0);
  program.lower = program.centre = program.cost = program.step = Eigen::VectorXd::Zero(2);
  program.upper = Eigen::Vector2d(1.5, 10.0);
  program.curvature = Eigen::VectorXd::Ones(2);
  return program;
}

Program withBoundAt(double bound) {
  Program program = twoFoods();
  program.rowLower[0] = bound;
  return program;
}

// x = y = 1: the next unit of the sum costs 2 x = 2.
TEST(Ranges, APressureIsWhatAUnitOfABoundCosts) {
  const Pressure pressure = pressureOf(twoFoods(), Asked::Objective);
  ASSERT_EQ(pressure.status, Status::Optimal);
  EXPECT_NEAR(pressure.x[0], 1.0, 1e-9);
  EXPECT_NEAR(pressure.rows[0], -2.0, 1e-9);
  EXPECT_NEAR(pressure.columns[0], 0.0, 1e-9);
  const Shape shape = shapeOf(pressure);
  EXPECT_EQ(shape.rows, Signs({-1}));
  EXPECT_EQ(shape.columns, Signs({0, 0}));
}

// At 4 x is at its limit and y = 2.5: x pushes with 2 y - 2 x = 2.
TEST(Ranges, ALimitThatPushesIsPartOfTheShape) {
  const Pressure pressure = pressureOf(withBoundAt(4.0), Asked::Objective);
  ASSERT_EQ(pressure.status, Status::Optimal);
  EXPECT_NEAR(pressure.rows[0], -5.0, 1e-9);
  EXPECT_NEAR(pressure.columns[0], 2.0, 1e-9);
  EXPECT_EQ(shapeOf(pressure).columns, Signs({1, 0}));
}

// Up to 3, where x comes to its limit, and down to 0, where nothing is asked any more.
TEST(Ranges, AShapeIsKeptAsFarAsNoLimitComesIntoPlay) {
  const auto at = [](double t) { return withBoundAt(2.0 + t); };
  const Shape shape = shapeOf(pressureOf(twoFoods(), Asked::Objective));
  EXPECT_NEAR(reachOfShape(at, Asked::Objective, shape, 5.0), 1.0, 1e-6);
  EXPECT_NEAR(reachOfShape(at, Asked::Objective, shape, -5.0), -2.0, 1e-6);
  EXPECT_EQ(reachOfShape(at, Asked::Objective, shape, 0.5), 0.5);
}

// The two hold 11.5 at most: of 14 are 2.5 missed, each at the price of 1, until no more than 11.5 is asked.
TEST(Ranges, WhatIsMissedPushesWithItsPrice) {
  const Pressure pressure = pressureOf(withBoundAt(14.0), Asked::Violation);
  ASSERT_EQ(pressure.status, Status::Optimal);
  EXPECT_NEAR(pressure.rows[0], -1.0, 1e-9);
  EXPECT_NEAR(pressure.columns[0], 1.0, 1e-9);
  EXPECT_NEAR(pressure.columns[1], 1.0, 1e-9);
  const auto at = [](double t) { return withBoundAt(14.0 + t); };
  EXPECT_NEAR(reachOfShape(at, Asked::Violation, shapeOf(pressure), -5.0), -2.5, 1e-6);
  EXPECT_EQ(reachOfShape(at, Asked::Violation, shapeOf(pressure), 5.0), 5.0);
}

TEST(Ranges, OfTheObjectiveThereAreNoneWhereSomethingIsMissed) {
  EXPECT_EQ(pressureOf(withBoundAt(14.0), Asked::Objective).status, Status::Infeasible);
}

TEST(Ranges, WholeStepsAndChoicesAreLaidAside) {
  Program program = twoFoods();
  program.step.setConstant(0.7);
  program.choices.push_back({{0, 1}, 1, 1, 0.5});
  EXPECT_NEAR(pressureOf(program, Asked::Objective).rows[0], -2.0, 1e-9);
}

}  // namespace
}  // namespace tarebowl::solver
