// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/choice_search.h"

#include "tests/core/solver/random_program.h"

#include <gtest/gtest.h>

#include <bit>
#include <cmath>
#include <optional>

namespace tarebowl::solver {
namespace {

constexpr double kThreshold = 2.0;

/// Two choices of four columns each, one or two of the first, exactly two of the second.
Program chosen(unsigned seed, bool linear, double hardShare) {
  std::mt19937 random(seed);
  Program program = randomProgram(
      random, {.columns = 10, .rows = 8, .hardShare = hardShare, .step = 0.0, .linear = linear});
  program.lower.setZero();
  program.choices.push_back({{0, 1, 2, 3}, 1, 2, kThreshold});
  program.choices.push_back({{4, 5, 6, 7}, 2, 2, kThreshold});
  return program;
}

/// The program in which just these of the first eight columns are used; nothing where the counts are wrong.
std::optional<Program> subsetOf(const Program& program, unsigned used) {
  const int first = std::popcount(used & 15U);
  if (first < 1 || first > 2 || std::popcount(used >> 4U) != 2) return std::nullopt;
  Program part = program;
  part.choices.clear();
  for (unsigned j = 0; j < 8; ++j) {
    const bool isUsed = ((used >> j) & 1U) != 0;
    (isUsed ? part.lower : part.upper)[Eigen::Index(j)] = isUsed ? kThreshold : 0.0;
  }
  return part;
}

struct Best {
  double violation = kInfinity;
  double objective = kInfinity;
};

Best bestOfAllSubsets(const Program& program) {
  Best best;
  std::vector<Solution> solved;
  for (unsigned used = 0; used < 256; ++used) {
    const std::optional<Program> part = subsetOf(program, used);
    if (!part) continue;
    solved.push_back(solve(*part));
    if (solved.back().status == Status::Optimal)
      best.violation = std::min(best.violation, solved.back().violation);
  }
  for (const Solution& solution : solved) {
    if (solution.status == Status::Optimal && solution.violation <= best.violation * (1 + 2e-6) + 2e-9)
      best.objective = std::min(best.objective, solution.objective);
  }
  return best;
}

void expectBestOfAllSubsets(const Program& program, unsigned seed) {
  SCOPED_TRACE(testing::Message() << "seed " << seed);
  const Best best = bestOfAllSubsets(program);
  const Solution solution = solve(program);
  if (best.violation == kInfinity) {
    EXPECT_EQ(solution.status, Status::Infeasible);
    return;
  }
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_EQ(solution.gap, 0.0);
  EXPECT_NEAR(solution.violation, best.violation, 2e-6 * best.violation + 2e-9);
  EXPECT_NEAR(solution.objective, best.objective, 1e-6 * (1 + std::abs(best.objective)));
  EXPECT_LE(hardViolation(program, solution.x), 1e-9);
}

TEST(ChoiceSearch, TheNearestDietIsTheBestOfAllSubsets) {
  for (unsigned seed = 1; seed <= 40; ++seed) expectBestOfAllSubsets(chosen(seed, false, 0.1), seed);
}

TEST(ChoiceSearch, TheCheapestDietIsTheBestOfAllSubsets) {
  for (unsigned seed = 1; seed <= 25; ++seed) expectBestOfAllSubsets(chosen(seed, true, 0.1), seed);
}

TEST(ChoiceSearch, ManyHardRowsAreImpossibleExactlyWhereNoSubsetHolds) {
  for (unsigned seed = 1; seed <= 40; ++seed) expectBestOfAllSubsets(chosen(seed, false, 0.8), seed);
}

TEST(ChoiceSearch, AtMostOneWithoutALeastAmountEndsAndKeepsTheNearer) {
  // Centre (3, 2): of two only one may be above 0. Without the second that costs 4, without the first 9.
  Program program;
  program.rows.resize(0, 2);
  program.rowLower.resize(0);
  program.rowUpper.resize(0);
  program.price.resize(0);
  program.lower.setZero(2);
  program.upper.setConstant(2, 10.0);
  program.step.setZero(2);
  program.centre = Eigen::Vector2d(3.0, 2.0);
  program.curvature.setOnes(2);
  program.cost.setZero(2);
  program.choices.push_back({{0, 1}, 0, 1, 0.0});
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::Optimal) << solution.reason;
  EXPECT_NEAR(solution.objective, 4.0, 1e-12);
  EXPECT_EQ(solution.x[1], 0.0);
}

TEST(ChoiceSearch, StoppedEarlyTheGapStillHoldsTheBestThereIs) {
  int stoppedWithAnswer = 0;
  for (unsigned seed = 1; seed <= 40; ++seed) {
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    const Program program = chosen(seed, false, 0.0);
    const Solution whole = solve(program);
    for (const std::int64_t nodes : {4, 7, 12, 20}) {
      Limits limits;
      limits.nodes = nodes;
      const Solution early = solve(program, limits);
      if (early.status != Status::Optimal) continue;
      stoppedWithAnswer += early.gap > 0 ? 1 : 0;
      if (early.gap <= 0) {
        EXPECT_NEAR(early.objective, whole.objective, 1e-6 * (1 + whole.objective));
      } else if (early.violation <= whole.violation * (1 + 2e-6) + 2e-9) {
        EXPECT_LE(early.objective * (1 - early.gap), whole.objective * (1 + 1e-6));
      } else {
        EXPECT_LE(early.violation * (1 - early.gap), whole.violation + 1e-9);
      }
    }
  }
  EXPECT_GT(stoppedWithAnswer, 5);
}

TEST(ChoiceSearch, WhoAsksToStopIsHeard) {
  std::stop_source source;
  source.request_stop();
  Limits limits;
  limits.stop = source.get_token();
  EXPECT_EQ(solve(chosen(1, false, 0.0), limits).status, Status::Stopped);
}

}  // namespace
}  // namespace tarebowl::solver
