// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/endless_gain.h"

#include "core/solver/solve.h"

#include <gtest/gtest.h>

namespace tarebowl::solver {
namespace {

/// Two foods without a limit and one rule that must hold: most at the most of a x + b y.
Program atMost(double a, double b, double most, Eigen::Vector2d cost) {
  Program program;
  program.rows.resize(1, 2);
  program.rows << a, b;
  program.rowLower = Eigen::VectorXd::Constant(1, -kInfinity);
  program.rowUpper = Eigen::VectorXd::Constant(1, most);
  program.price = Eigen::VectorXd::Constant(1, kInfinity);
  program.lower = program.centre = program.curvature = program.step = Eigen::VectorXd::Zero(2);
  program.upper = Eigen::VectorXd::Constant(2, kInfinity);
  program.cost = cost;
  return program;
}

// x - y <= 3: the two rise together. Where x gains 2 and y costs 1, each such step gains 1.
TEST(EndlessGain, IsThereWhereAMixGainsAndPushesNoRule) {
  EXPECT_TRUE(gainsWithoutEnd(atMost(1, -1, 3, {-2, 1})));
  EXPECT_FALSE(gainsWithoutEnd(atMost(1, -1, 3, {-1, 2})));  // the step costs 1
  EXPECT_FALSE(gainsWithoutEnd(atMost(1, 1, 3, {-2, 1})));   // the rule ends it
  EXPECT_FALSE(gainsWithoutEnd(atMost(-1, -1, -3, {2, 1})));
}

TEST(EndlessGain, EndsAtALimit) {
  Program program = atMost(1, -1, 3, {-2, 1});
  program.upper[1] = 5.0;
  EXPECT_FALSE(gainsWithoutEnd(program));
}

TEST(EndlessGain, IsWhatSolveCallsUnbounded) {
  EXPECT_EQ(solve(atMost(1, -1, 3, {-2, 1})).status, Status::Unbounded);
}

// x >= 1e9 where it costs 1: there is a least cost, however far from everything that the program speaks of.
TEST(EndlessGain, IsNotSaidOfAnAnswerThatIsOnlyFarAway) {
  const Solution solution = solve(atMost(-1e-9, 0, -1, {1, 1}));
  EXPECT_NE(solution.status, Status::Unbounded);
  if (solution.status != Status::Optimal) return;  // withheld
  EXPECT_NEAR(solution.x[0], 1e9, 1.0);
}

}  // namespace
}  // namespace tarebowl::solver
