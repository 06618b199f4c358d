// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/continuous.h"
#include "core/solver/continuous_solver.h"
#include "core/solver/solve.h"
#include "tests/core/solver/random_program.h"

#include <gtest/gtest.h>

#include <optional>

namespace tarebowl::solver {
namespace {

struct Best {
  Eigen::VectorXd x;
  double violation;
  double objective;
};

bool choicesHold(const Program& program, const Eigen::VectorXd& x) {
  for (const Choice& choice : program.choices) {
    int used = 0;
    for (const Eigen::Index j : choice.members) {
      if (x[j] > 0 && x[j] < choice.threshold) return false;
      used += x[j] > 0 ? 1 : 0;
    }
    if (used < choice.atLeast || used > choice.atMost) return false;
  }
  return true;
}

/// Visits every point of the grid.
template <class Visit>
void forEachPoint(const Program& program, const Visit& visit) {
  Eigen::VectorXd x = program.lower;
  for (;;) {
    if (choicesHold(program, x) && hardViolation(program, x) <= 1e-9) visit(x);
    Eigen::Index j = 0;
    while (j < x.size() && x[j] + program.step[j] > program.upper[j] + 1e-9) {
      x[j] = program.lower[j];
      ++j;
    }
    if (j == x.size()) return;
    x[j] += program.step[j];
  }
}

std::optional<Best> bruteForce(const Program& program) {
  double least = kInfinity;
  forEachPoint(program,
               [&](const Eigen::VectorXd& x) { least = std::min(least, elasticViolation(program, x)); });
  if (least == kInfinity) return std::nullopt;
  std::optional<Best> best;
  forEachPoint(program, [&](const Eigen::VectorXd& x) {
    if (elasticViolation(program, x) > violationBudget(least)) return;
    const double objective = objectiveValue(program, x);
    if (!best || objective < best->objective) best = Best{x, elasticViolation(program, x), objective};
  });
  return best;
}

void expectSameAsBruteForce(const Program& program, const Limits& limits = {}) {
  const std::optional<Best> expected = bruteForce(program);
  const Solution solution = solve(program, limits);
  if (!expected) {
    EXPECT_EQ(solution.status, Status::Infeasible);
    return;
  }
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_EQ(solution.gap, 0.0);
  EXPECT_NEAR(solution.violation, expected->violation, 2e-9 * (1 + expected->violation));
  EXPECT_NEAR(solution.objective, expected->objective, 1e-7 * (1 + std::abs(expected->objective)));
  EXPECT_LE(hardViolation(program, solution.x), 1e-9);
}

void expectSameAsBruteForce(const RandomShape& shape, unsigned seed) {
  SCOPED_TRACE(testing::Message() << "seed " << seed);
  std::mt19937 random(seed);
  expectSameAsBruteForce(randomProgram(random, shape));
}

/// The second food is the first once more, under another name.
Program withTwin(Program program) {
  program.rows.col(1) = program.rows.col(0);
  for (Eigen::VectorXd* const each :
       {&program.lower, &program.upper, &program.centre, &program.curvature, &program.cost})
    (*each)[1] = (*each)[0];
  return program;
}

/// The first target asks for far more than all foods hold.
Program withTargetOutOfReach(Program program) {
  program.rowLower[0] = 100.0;
  program.rowUpper[0] = kInfinity;
  program.price[0] = 1.0;
  return program;
}

TEST(WholeSteps, NearestPointOfEveryGridIsTheOneThatTryingAllPointsFinds) {
  for (unsigned seed = 1; seed <= 300; ++seed) expectSameAsBruteForce({.columns = 4, .rows = 6}, seed);
}

TEST(WholeSteps, CheapestPointOfEveryGridIsTheOneThatTryingAllPointsFinds) {
  for (unsigned seed = 1; seed <= 300; ++seed)
    expectSameAsBruteForce({.columns = 4, .rows = 6, .linear = true}, seed);
}

TEST(WholeSteps, ManyHardRowsAreImpossibleExactlyWhereNoGridPointHolds) {
  for (unsigned seed = 1; seed <= 300; ++seed)
    expectSameAsBruteForce({.columns = 4, .rows = 7, .hardShare = 0.7}, seed);
}

TEST(WholeSteps, ChoicesAreKeptAndStillTheBestPointIsFound) {
  for (unsigned seed = 1; seed <= 300; ++seed) {
    expectSameAsBruteForce({.columns = 4, .rows = 5, .withChoices = true}, seed);
    expectSameAsBruteForce({.columns = 4, .rows = 5, .linear = true, .withChoices = true}, seed);
  }
}

TEST(WholeSteps, WhateverPointIsKnownTheBestOfAllIsFound) {
  for (unsigned seed = 1; seed <= 150; ++seed) {
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    std::mt19937 random(seed);
    const Program program = randomProgram(random, {.columns = 4, .rows = 6, .linear = true});
    const std::optional<Best> expected = bruteForce(program);
    for (const Eigen::VectorXd& known : {program.lower, program.upper}) {
      const Solution solution = solve(program, {}, known);
      ASSERT_EQ(solution.status == Status::Optimal, expected.has_value());
      if (!expected) continue;
      EXPECT_NEAR(solution.violation, expected->violation, 2e-9 * (1 + expected->violation));
      EXPECT_NEAR(solution.objective, expected->objective, 1e-7 * (1 + std::abs(expected->objective)));
    }
  }
}

TEST(WholeSteps, NoAnswerIsWorseThanAPointThatIsKnownHoweverFewNodesThereAre) {
  int kept = 0;
  for (unsigned seed = 1; seed <= 150; ++seed) {
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    std::mt19937 random(seed);
    const Program program = randomProgram(random, {.columns = 4, .rows = 6, .linear = true});
    const std::optional<Best> best = bruteForce(program);
    if (!best || best->violation > 0.0) continue;
    const Solution solution = solve(program, {.nodes = 1}, best->x);
    ASSERT_EQ(solution.status, Status::Optimal);
    EXPECT_LE(solution.objective, best->objective + 1e-7 * (1 + std::abs(best->objective)));
    ++kept;
  }
  EXPECT_GT(kept, 10);
}

TEST(WholeSteps, TheSameFoodTwiceChangesNothingAboutTheBestPoint) {
  for (unsigned seed = 1; seed <= 150; ++seed) {
    for (const bool linear : {false, true}) {
      SCOPED_TRACE(testing::Message() << "seed " << seed << " linear " << linear);
      std::mt19937 random(seed);
      expectSameAsBruteForce(withTwin(randomProgram(random, {.columns = 4, .rows = 6, .linear = linear})));
    }
  }
}

TEST(WholeSteps, WhereOneTargetIsOutOfReachTheOthersAndTheObjectiveStillDecide) {
  for (unsigned seed = 1; seed <= 150; ++seed) {
    for (const bool linear : {false, true}) {
      for (const bool choices : {false, true}) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << " linear " << linear);
        std::mt19937 random(seed);
        const RandomShape shape{.columns = 4, .rows = 4, .linear = linear, .withChoices = choices};
        const Program program = withTargetOutOfReach(randomProgram(random, shape));
        expectSameAsBruteForce(program, {.threads = 1});
        expectSameAsBruteForce(program, {.threads = 2});
      }
    }
  }
}

TEST(WholeSteps, HalfStepsAreASteppedGridToo) {
  for (unsigned seed = 1; seed <= 100; ++seed)
    expectSameAsBruteForce({.columns = 3, .rows = 5, .step = 0.5, .upper = 5.0}, seed);
}

TEST(WholeSteps, BoundsThatHoldWithAChanceAreKeptOnTheGridToo) {
  for (unsigned seed = 1; seed <= 100; ++seed) {
    expectSameAsBruteForce({.columns = 3, .rows = 5, .withScatter = true}, seed);
    expectSameAsBruteForce({.columns = 3, .rows = 5, .hardShare = 0.6, .linear = true, .withScatter = true},
                           seed);
  }
}

TEST(WholeSteps, BoundsThatHoldWithAChanceAreKeptBesideChoicesAndHalfSteps) {
  for (unsigned seed = 1; seed <= 60; ++seed) {
    expectSameAsBruteForce(
        {.columns = 4, .rows = 6, .hardShare = 0.0, .withChoices = true, .withScatter = true}, seed);
    expectSameAsBruteForce(
        {.columns = 3, .rows = 5, .hardShare = 0.3, .step = 0.5, .upper = 4.0, .withScatter = true}, seed);
  }
}

Program broadWithChance(unsigned seed) {
  std::mt19937 random(seed);
  return randomProgram(random,
                       {.columns = 10, .rows = 14, .hardShare = 0.0, .upper = 30.0, .withScatter = true});
}

TEST(WholeSteps, WhatHoldsWithAChanceDoesNotDependOnTheThreads) {
  for (unsigned seed = 1; seed <= 5; ++seed) {
    SCOPED_TRACE(seed);
    Limits alone;
    alone.threads = 1;
    const Solution one = solve(broadWithChance(seed), alone);
    const Solution two = solve(broadWithChance(seed));
    ASSERT_EQ(one.status, Status::Optimal) << one.reason;
    EXPECT_EQ(one.gap, 0.0);
    EXPECT_EQ(one.x, two.x);
    EXPECT_EQ(one.nodes, two.nodes);
  }
}

TEST(WholeSteps, WhereNodesRunOutTheGapOfAChanceIsHonest) {
  for (unsigned seed = 1; seed <= 10; ++seed) {
    SCOPED_TRACE(seed);
    const Program program = broadWithChance(seed);
    const Solution proven = solve(program);
    ASSERT_EQ(proven.status, Status::Optimal) << proven.reason;
    Limits few;
    few.nodes = 40;
    const Solution rough = solve(program, few);
    if (rough.status != Status::Optimal) continue;
    EXPECT_GE(rough.violation, proven.violation * (1 - 1e-6) - 2e-9);
    if (rough.violation > violationBudget(proven.violation)) {
      EXPECT_GE(rough.gap, (rough.violation - proven.violation) / rough.violation * (1 - 1e-6));
    } else if (proven.violation <= 0.0) {
      EXPECT_LE(rough.objective * (1 - rough.gap), proven.objective * (1 + 1e-9) + 1e-12);
    }
  }
}

/// The continuous answer may use every grid point, so none of them can beat it.
void expectNoGridPointBeats(const RandomShape& shape, unsigned seed) {
  SCOPED_TRACE(testing::Message() << "seed " << seed);
  std::mt19937 random(seed);
  Program program = randomProgram(random, shape);
  const std::optional<Best> onGrid = bruteForce(program);
  program.step.setZero();
  const Solution solution = solve(program);
  if (solution.status == Status::Infeasible) {
    EXPECT_FALSE(onGrid);
    return;
  }
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_LE(hardViolation(program, solution.x), 1e-9);
  if (!onGrid) return;
  EXPECT_LE(solution.violation, onGrid->violation * (1 + 1e-6) + 2e-9);
  if (onGrid->violation <= violationBudget(solution.violation)) {
    EXPECT_LE(solution.objective, onGrid->objective + 1e-7 * (1 + std::abs(onGrid->objective)));
  }
}

TEST(Continuous, NoPointOfTheGridBeatsTheContinuousAnswer) {
  for (unsigned seed = 1; seed <= 200; ++seed) {
    for (const bool linear : {false, true}) {
      for (const bool choices : {false, true}) {
        expectNoGridPointBeats(
            {.columns = 4, .rows = 6, .hardShare = 0.3, .linear = linear, .withChoices = choices}, seed);
      }
    }
  }
}

TEST(Continuous, NoPointOfTheGridBeatsTheAnswerThatHoldsWithAChance) {
  for (unsigned seed = 1; seed <= 100; ++seed) {
    expectNoGridPointBeats(
        {.columns = 3, .rows = 5, .hardShare = 0.3, .step = 0.25, .upper = 5.0, .withScatter = true}, seed);
    expectNoGridPointBeats(
        {.columns = 3, .rows = 5, .step = 0.25, .upper = 5.0, .linear = true, .withScatter = true}, seed);
  }
}

}  // namespace
}  // namespace tarebowl::solver
