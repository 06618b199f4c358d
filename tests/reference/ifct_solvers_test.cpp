// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// 200 random balance problems from the Indian Food Composition Tables 2017, all targets elastic: the least
// shortfall must be the one that GLPK (in rational arithmetic) and Clp find.
#include "core/diet/formulation.h"
#include "core/diet/solve.h"
#include "core/solver/continuous.h"
#include "core/solver/scaled_program.h"
#include "core/solver/solve.h"
#include "tests/reference/ifct_foods.h"
#include "tests/reference/other_solvers.h"

#include <gtest/gtest.h>

#include <array>

namespace tarebowl::reference {
namespace {

constexpr double kAgreement = 1e-7;  // relative
constexpr double kNothing = 1e-9;    // below this a shortfall is none

solver::Program programOf(const diet::BalanceProblem& problem) {
  return diet::formulate(problem, diet::measuresOf(problem), diet::referenceDiet(problem)).program;
}

double leastViolation(const solver::Program& program) {
  const solver::ScaledProgram scaled(program);
  const solver::ContinuousAnswer answer = solver::leastViolation(scaled, {scaled.lower, scaled.upper});
  EXPECT_EQ(answer.status, solver::Status::Optimal) << answer.reason;
  return answer.violation;
}

/// The answer of both stages may use the budget of the first.
void expectWithinBudget(const solver::Program& program, double least) {
  const solver::Solution solution = solver::solve(program);
  ASSERT_EQ(solution.status, solver::Status::Optimal) << solution.reason;
  EXPECT_EQ(solution.gap, 0.0);
  EXPECT_NEAR(solver::elasticViolation(program, solution.x), solution.violation, 1e-10);
  EXPECT_GE(solution.violation, least * (1.0 - kAgreement) - kNothing);
  EXPECT_LE(solution.violation, solver::violationBudget(least) * (1.0 + kAgreement) + 1e-11);
}

class FoodsOfTheIndianTables : public testing::Test {
 protected:
  void SetUp() override {
    const auto table = ifctFile();
    if (!table) GTEST_SKIP() << ifctMissingNote();
    foods = readIfctFoods(*table);
    ASSERT_GT(foods.size(), 400u);
  }
  std::vector<diet::DietFood> foods;
};

TEST_F(FoodsOfTheIndianTables, LeastShortfallOf200RandomProblemsIsThatOfGlpkAndClp) {
  constexpr std::array<std::size_t, 4> kFoodCounts{8, 12, 25, 50};
  int missed = 0;
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    const std::size_t count = kFoodCounts[seed % kFoodCounts.size()];
    const solver::Program program = programOf(
        randomBalance(foods, {.seed = seed, .foods = count, .targets = count, .wholeSteps = false}));
    const double ours = leastViolation(program);
    const LinearProgram question = leastShortfall(program);
    const auto glpk = Glpk(question).solveExactly();
    const auto clp = Clp(question).solveClosely();
    ASSERT_TRUE(glpk && clp) << "another solver gave up";
    EXPECT_NEAR(ours, glpk->value, kAgreement * glpk->value + kNothing);
    EXPECT_NEAR(ours, clp->value, kAgreement * clp->value + kNothing);
    expectWithinBudget(program, glpk->value);
    missed += glpk->value > 1e-6 ? 1 : 0;
  }
  // Else nothing was compared.
  EXPECT_GT(missed, 100);
  EXPECT_LT(missed, 200);
}

TEST_F(FoodsOfTheIndianTables, LeastShortfallInWholeStepsIsThatOfGlpksBranchAndCut) {
  int missed = 0;
  for (std::uint64_t seed = 1000; seed < 1035; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    diet::BalanceProblem problem =
        randomBalance(foods, {.seed = seed, .foods = 4 + seed % 6, .targets = 8, .wholeSteps = true});
    problem.objective.kind =
        diet::Objective::Kind::LowestCost;  // which no food has: only stage 1 is in question
    const solver::Program program = programOf(problem);
    const auto glpk = Glpk(leastShortfall(program)).solveWhole(60.0);
    ASSERT_TRUE(glpk) << "GLPK gave up";
    const double least = solver::elasticViolation(program, glpk->grams);
    expectWithinBudget(program, least);
    missed += least > 1e-6 ? 1 : 0;
  }
  EXPECT_GT(missed, 10);
}

}  // namespace
}  // namespace tarebowl::reference
