// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Linear questions over real foods (the Indian Food Composition Tables 2017): the answers must cost what
// those of GLPK (in rational arithmetic), Clp and, in whole grams, CBC cost.
#include "core/solver/continuous.h"
#include "core/solver/solve.h"
#include "tests/reference/ifct_programs.h"
#include "tests/reference/other_solvers.h"

#include <gtest/gtest.h>

#include <array>

namespace tarebowl::reference {
namespace {

using Aim = ProgramKind::Aim;
using Targets = ProgramKind::Targets;

constexpr double kAgreement = 1e-7;  // relative
constexpr double kNothing = 2e-9;    // below this a shortfall is none

class LinearQuestions : public testing::Test {
 protected:
  void SetUp() override {
    const auto file = ifctFile();
    if (!file) GTEST_SKIP() << ifctMissingNote();
    table = readIfctTable(*file);
  }

  /// Sizes grow with the seed's turn, so that the large ones are few.
  solver::Program program(std::uint64_t seed, Targets targets, Aim aim) const {
    ProgramKind kind =
        seed % 20 == 19 ? kLarge : (seed % 20 == 9 ? kForty : (seed % 2 == 1 ? kMedium : kSmall));
    kind.targets = targets;
    kind.aim = aim;
    return seededProgram(table, kind, seed).program;
  }

  IfctTable table;
};

solver::Solution solved(const solver::Program& program) {
  solver::Solution solution = solver::solve(program);
  EXPECT_EQ(solution.status, solver::Status::Optimal) << solution.reason;
  EXPECT_EQ(solution.gap, 0.0);
  if (solution.status != solver::Status::Optimal) solution.x.setZero(program.variableCount());
  EXPECT_LE(solver::hardViolation(program, solution.x), 1e-9);
  return solution;
}

/// The least shortfall of the question, on which GLPK and Clp agree.
double agreedShortfall(const LinearProgram& question) {
  const auto glpk = Glpk(question).solveExactly();
  const auto clp = Clp(question).solveClosely();
  EXPECT_TRUE(glpk && clp) << "another solver gave up";
  if (!glpk || !clp) return -1.0;
  EXPECT_NEAR(glpk->value, clp->value, kAgreement * glpk->value + kNothing);
  return glpk->value;
}

void expectWithinBudget(const solver::Program& program, const solver::Solution& solution, double least) {
  const double shortfall = solver::elasticViolation(program, solution.x);
  EXPECT_GE(shortfall, least * (1.0 - kAgreement) - kNothing);
  EXPECT_LE(shortfall, solver::violationBudget(least) * (1.0 + kAgreement) + kNothing);
}

TEST_F(LinearQuestions, LeastShortfallIsThatOfGlpkAndClpOn200Programs) {
  int missed = 0;
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    const solver::Program p =
        program(seed, seed % 4 == 0 ? Targets::Met : Targets::Unmet, Aim::ShortfallOnly);
    const double least = agreedShortfall(leastShortfall(p));
    expectWithinBudget(p, solved(p), least);
    missed += least > 1e-6 ? 1 : 0;
  }
  EXPECT_EQ(missed, 150);
}

TEST_F(LinearQuestions, LeastCostIsThatOfGlpkAndClpOn200Programs) {
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    const std::array kTargets{Targets::Met, Targets::Hard, Targets::Unmet, Targets::Unmet};
    const solver::Program p = program(seed, kTargets[seed % 4], Aim::Cheapest);
    const double least = agreedShortfall(leastShortfall(p));
    const LinearProgram question = leastCost(p, solver::violationBudget(least));
    const auto glpk = Glpk(question).solveExactly();
    const auto clp = Clp(question).solveClosely();
    ASSERT_TRUE(glpk && clp) << "another solver gave up";
    EXPECT_NEAR(glpk->value, clp->value, 1e-5 * glpk->value);  // Clp's tolerance in the budget's row
    const solver::Solution solution = solved(p);
    expectWithinBudget(p, solution, least);
    EXPECT_NEAR(solution.objective, glpk->value, 1e-6 * glpk->value);
    EXPECT_NEAR(solution.objective, p.cost.dot(solution.x), 1e-12);
  }
}

/// Deviations from the diet as it is now, as rows of their own.
solver::Program withDeviations(const solver::Program& nearest) {
  solver::Program p = nearest;
  const Eigen::Index n = p.variableCount();
  const Eigen::Index m = p.rowCount();
  p.rows.conservativeResize(m + n, n);
  p.rows.bottomRows(n).setIdentity();
  for (Eigen::VectorXd* bound : {&p.rowLower, &p.rowUpper}) {
    bound->conservativeResize(m + n);
    bound->tail(n) = p.centre;
  }
  p.price.conservativeResize(m + n);
  p.price.tail(n) = nearest.curvature.cwiseSqrt();
  p.curvature.setZero();
  return p;
}

TEST_F(LinearQuestions, TheGoalProgrammeOfShortfallsAndDeviationsIsThatOfGlpkAndClpOn100Programs) {
  for (std::uint64_t seed = 1; seed <= 100; ++seed) {
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    const solver::Program nearest = program(seed, Targets::Unmet, Aim::Nearest);
    const double least = agreedShortfall(leastDeviation(nearest, nearest.curvature.cwiseSqrt()));
    const solver::Program goals = withDeviations(nearest);
    EXPECT_GT(least, 0.1);
    expectWithinBudget(goals, solved(goals), least);
  }
}

class WholeGrams : public LinearQuestions {
 protected:
  solver::Program wholeProgram(std::uint64_t seed, Targets targets, Aim aim) const {
    ProgramKind kind = kSmall;
    kind.foods = 6 + static_cast<Eigen::Index>(seed % 7);
    kind.targets = targets;
    kind.aim = aim;
    kind.step = 1.0;
    return seededProgram(table, kind, seed).program;
  }
};

TEST_F(WholeGrams, LeastShortfallIsThatOfGlpkAndCbcOn100Programs) {
  for (std::uint64_t seed = 1; seed <= 100; ++seed) {
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    const solver::Program p = wholeProgram(seed, Targets::Unmet, Aim::ShortfallOnly);
    const LinearProgram question = leastShortfall(p);
    const auto glpk = Glpk(question).solveWhole(60.0);
    const auto cbc = solveWholeByCbc(question, 60.0);
    ASSERT_TRUE(glpk && cbc) << "another solver gave up";
    const double least = solver::elasticViolation(p, glpk->grams);
    EXPECT_NEAR(least, solver::elasticViolation(p, cbc->grams), 1e-6 * least);
    EXPECT_GT(least, 1e-6);
    expectWithinBudget(p, solved(p), least);
  }
}

TEST_F(WholeGrams, LeastCostWithinHardBandsIsThatOfGlpkAndCbcOn100Programs) {
  for (std::uint64_t seed = 1; seed <= 100; ++seed) {
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    const solver::Program p = wholeProgram(seed, Targets::Hard, Aim::Cheapest);
    const LinearProgram question = leastCost(p, 0.0);
    const auto glpk = Glpk(question).solveWhole(60.0);
    const auto cbc = solveWholeByCbc(question, 60.0);
    ASSERT_TRUE(glpk && cbc) << "another solver gave up";
    EXPECT_NEAR(p.cost.dot(glpk->grams), p.cost.dot(cbc->grams), 1e-9);
    EXPECT_NEAR(solved(p).objective, p.cost.dot(glpk->grams), 1e-9);
  }
}

}  // namespace
}  // namespace tarebowl::reference
