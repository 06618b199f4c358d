// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/chance.h"

#include "core/solver/continuous_solver.h"
#include "core/solver/tangent_rounds.h"
#include "tests/core/solver/random_program.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tarebowl::solver {
namespace {

/// Two columns from 0 to 10 about the centre (0, 0), one row.
Program twoColumns(double first, double second, double firstSd, double secondSd) {
  Program program;
  program.rows.resize(1, 2);
  program.rows << first, second;
  program.rowLower.setConstant(1, -kInfinity);
  program.rowUpper.setConstant(1, kInfinity);
  program.price.setConstant(1, kInfinity);
  program.lower.setZero(2);
  program.upper.setConstant(2, 10.0);
  program.step.setZero(2);
  program.centre.setZero(2);
  program.curvature.setOnes(2);
  program.cost.setZero(2);
  program.scatter = RowMatrix(1, 2);
  *program.scatter << firstSd, secondSd;
  return program;
}

TEST(Chance, TwoLikeFoodsShareWhatIsNeededBecauseScatterEvensOut) {
  // x + y - 0.2 sqrt(x^2 + y^2) >= 4 with x = y: (2 - 0.2 sqrt 2) x = 4, x = 4 / 1.7171572875 = 2.3294312...
  Program program = twoColumns(1.0, 1.0, 0.2, 0.2);
  program.rowLower[0] = 4.0;
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  const double each = 4.0 / (2.0 - 0.2 * std::sqrt(2.0));
  EXPECT_NEAR(solution.x[0], each, 1e-10);
  EXPECT_NEAR(solution.x[1], each, 1e-10);
  // d objective / d bound: the objective is 2 each^2, and each is bound / 1.717...: 4 each / 1.717...
  EXPECT_NEAR(-solution.multipliers[0], 4.0 * each / (2.0 - 0.2 * std::sqrt(2.0)), 1e-8);
}

TEST(Chance, ScatterOfASingleFoodIsASafetyMarginOnItsOwnValue) {
  // x (1 - 0.25) >= 3 where only x holds any: x = 4.
  Program program = twoColumns(1.0, 0.0, 0.25, 0.0);
  program.rowLower[0] = 3.0;
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_NEAR(solution.x[0], 4.0, 1e-10);
  EXPECT_NEAR(solution.x[1], 0.0, 1e-10);
}

TEST(Chance, NoScatterAtAllIsThePlainProgram) {
  Program program = twoColumns(1.0, 1.0, 0.0, 0.0);
  program.rowLower[0] = 4.0;
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_NEAR(solution.x[0], 2.0, 1e-10);
}

TEST(Chance, AFoodOfFixedAmountKeepsItsScatter) {
  // y is 6 whatever is asked: 6 + x - sqrt((0.5 6)^2 + (0.1 x)^2) >= 5. With t = x + 1: t^2 = 9 + 0.01 x^2,
  // 0.99 x^2 + 2 x - 8 = 0, x = (-2 + sqrt(4 + 31.68)) / 1.98.
  Program program = twoColumns(1.0, 1.0, 0.1, 0.5);
  program.lower[1] = program.upper[1] = 6.0;
  program.rowLower[0] = 5.0;
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_NEAR(solution.x[0], (-2.0 + std::sqrt(35.68)) / 1.98, 1e-10);
}

TEST(Chance, AtTheTipOfAConeTheEmptyBowlIsBest) {
  // x + y - 0.3 |(x, y)| >= 0 and the nearest to (0, 0) is (0, 0), where the norm has no gradient.
  Program program = twoColumns(1.0, 1.0, 0.3, 0.3);
  program.rowLower[0] = 0.0;
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_NEAR(solution.x.norm(), 0.0, 1e-10);
}

TEST(Chance, AConePulledToItsTipFromOutside) {
  // 0.1 x - 0.5 y - |(0.2 x, 0.2 y)| >= 0: only (0, 0) holds, but the centre is (3, 3).
  Program program = twoColumns(0.1, -0.5, 0.2, 0.2);
  program.rowLower[0] = 0.0;
  program.centre.setConstant(3.0);
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_NEAR(solution.x.norm(), 0.0, 1e-8);
  EXPECT_NEAR(solution.objective, 18.0, 1e-6);
}

TEST(Chance, MoreCertaintyThanTheFoodsAllowIsImpossible) {
  // x + y - 1.5 |(x, y)| is below 0 but at (0, 0): sqrt 2 < 1.5.
  Program program = twoColumns(1.0, 1.0, 1.5, 1.5);
  program.rowLower[0] = 1.0;
  EXPECT_EQ(solve(program).status, Status::Infeasible);
}

TEST(Chance, AnElasticBoundIsMissedByTheLeastThatScatterAllows) {
  // Up to 10 each: 20 - 0.2 sqrt 200 = 17.1715...; of 20 that misses by 2.8284... = 2 sqrt 2, and no less can
  // be.
  Program program = twoColumns(1.0, 1.0, 0.2, 0.2);
  program.rowLower[0] = 20.0;
  program.price[0] = 1.0;
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_NEAR(solution.violation, 2.0 * std::sqrt(2.0), 5e-6);
  EXPECT_LE(solution.violation, violationBudget(2.0 * std::sqrt(2.0)) + 1e-12);
}

TEST(Chance, BothBoundsOfARowMissedAtOnceCountOnceAsTheLargerMiss) {
  // x is 10: mean 10, sd 2, bounds 9 and 11.5 guarded by the sd: 8 misses 9 by 1, 12 misses 11.5 by 0.5.
  Program program = twoColumns(1.0, 0.0, 0.2, 0.0);
  program.lower[0] = 10.0;
  program.rowLower[0] = 9.0;
  program.rowUpper[0] = 11.5;
  program.price[0] = 1.0;
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_NEAR(solution.violation, 1.0, 2e-6);
}

TEST(Chance, TwoBoundsThatPullApartMeetWhereTheirMissesAreEqual) {
  // mean x, sd 0.2 x, bounds 9 and 10: 9 - 0.8 x = 1.2 x - 10 at x = 9.5, where both miss by 1.4.
  Program program = twoColumns(1.0, 0.0, 0.2, 0.0);
  program.rowLower[0] = 9.0;
  program.rowUpper[0] = 10.0;
  program.price[0] = 1.0;
  program.centre[0] = 9.5;
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_NEAR(solution.violation, 1.4, 3e-6);
  EXPECT_NEAR(solution.x[0], 9.5, 1e-5);
}

/// Random points of the box, drawn towards the answer, of which none may be better.
void expectNoPointIsBetter(const Program& program, const Solution& solution, std::mt19937& random) {
  std::uniform_real_distribution<double> unit(0.0, 1.0);
  for (int draw = 0; draw < 3000; ++draw) {
    const double reach = std::pow(10.0, -6.0 * unit(random));
    Eigen::VectorXd x = solution.x;
    for (Eigen::Index j = 0; j < x.size(); ++j) {
      const double to = program.lower[j] + (program.upper[j] - program.lower[j]) * unit(random);
      x[j] += reach * (to - x[j]);
    }
    if (hardViolation(program, x) > 0.0) continue;
    const double violation = elasticViolation(program, x);
    ASSERT_GE(violation * (1 + 1e-6) + 1e-9, solution.violation * (1 - 1e-12)) << "draw " << draw;
    if (violation > solution.violation * (1 - 1e-9)) continue;
    ASSERT_GE(objectiveValue(program, x), solution.objective - 1e-7 * (1 + std::abs(solution.objective)))
        << "draw " << draw;
  }
}

void expectBest(const RandomShape& shape, unsigned seed) {
  SCOPED_TRACE(testing::Message() << "seed " << seed);
  std::mt19937 random(seed);
  const Program program = randomProgram(random, shape);
  const Solution solution = solve(program);
  if (solution.status == Status::Infeasible) return;
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_LE(hardViolation(program, solution.x), 1e-9);
  expectNoPointIsBetter(program, solution, random);
}

TEST(Chance, NoPointOfManyIsBetterThanTheAnswer) {
  for (unsigned seed = 1; seed <= 60; ++seed) {
    for (const bool linear : {false, true}) {
      expectBest(
          {.columns = 6, .rows = 9, .hardShare = 0.1, .step = 0.0, .linear = linear, .withScatter = true},
          seed);
    }
  }
}

/// Tangents in place of cones promise more than can be: what they reach bounds the answer from below.
TEST(Chance, TangentsAgreeWithTheConesWhereTheyClose) {
  int compared = 0;
  for (unsigned seed = 1; seed <= 40; ++seed) {
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    std::mt19937 random(seed);
    const Program program =
        randomProgram(random, {.columns = 5, .rows = 8, .step = 0.0, .withScatter = true});
    const Solution solution = solve(program);
    const Solution byTangents = solveByTangents(program, {}, {});
    if (byTangents.status == Status::Failed) continue;
    ASSERT_EQ(solution.status, byTangents.status) << solution.reason;
    if (solution.status != Status::Optimal) continue;
    ++compared;
    EXPECT_NEAR(solution.violation, byTangents.violation, 2e-6 * (1 + byTangents.violation));
    if (byTangents.violation < 1e-9) {
      EXPECT_NEAR(solution.objective, byTangents.objective, 1e-6 * (1 + byTangents.objective));
    }
  }
  EXPECT_GT(compared, 20);
}

/// Of all ways to use or leave out the members of a choice, each solved as a program of its own, the best.
TEST(Chance, ChoicesOverConesAreTheBestOfAllSubsets) {
  for (unsigned seed = 1; seed <= 30; ++seed) {
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    std::mt19937 random(seed);
    Program program =
        randomProgram(random, {.columns = 6, .rows = 7, .hardShare = 0.1, .step = 0.0, .withScatter = true});
    program.lower.setZero();
    program.choices.push_back({{0, 1, 2, 3}, 1, 2, 2.0});
    const Solution solution = solve(program);
    double least = kInfinity;
    std::vector<Solution> subsets;
    for (unsigned used = 0; used < 16; ++used) {
      const int count = __builtin_popcount(used);
      if (count < 1 || count > 2) continue;
      Program part = program;
      part.choices.clear();
      for (Eigen::Index j = 0; j < 4; ++j)
        ((used >> unsigned(j)) & 1U ? part.lower[j] : part.upper[j]) = (used >> unsigned(j)) & 1U ? 2.0 : 0.0;
      subsets.push_back(solve(part));
      if (subsets.back().status == Status::Optimal) least = std::min(least, subsets.back().violation);
    }
    if (least == kInfinity) {
      EXPECT_EQ(solution.status, Status::Infeasible);
      continue;
    }
    ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
    EXPECT_EQ(solution.gap, 0.0);
    EXPECT_NEAR(solution.violation, least, 3e-6 * (1 + least));
    if (least > 1e-8) continue;
    double best = kInfinity;
    for (const Solution& part : subsets) {
      if (part.status == Status::Optimal && part.violation <= 2e-9) best = std::min(best, part.objective);
    }
    EXPECT_NEAR(solution.objective, best, 1e-6 * (1 + std::abs(best)));
  }
}

}  // namespace
}  // namespace tarebowl::solver
