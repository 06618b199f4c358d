// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/solve.h"
#include "tests/core/solver/random_program.h"

#include <gtest/gtest.h>

namespace tarebowl::solver {
namespace {

constexpr std::chrono::minutes kPatience{30};  // nodes end these searches, however slow the machine is

/// Large enough that both threads have work: some thousand nodes.
Program largeProgram(unsigned seed, bool linear) {
  std::mt19937 random(seed);
  return randomProgram(random,
                       {.columns = 16, .rows = 12, .hardShare = 0.0, .upper = 20.0, .linear = linear});
}

TEST(WholeStepsLimits, OneThreadAndTwoWalkTheSameNodesToTheSameAnswer) {
  std::int64_t most = 0;
  for (unsigned seed = 1; seed <= 12; ++seed) {
    for (const bool linear : {false, true}) {
      SCOPED_TRACE(testing::Message() << "seed " << seed << " linear " << linear);
      const Program program = largeProgram(seed, linear);
      const Solution alone = solve(program, {.deadline = kPatience, .threads = 1});
      const Solution together = solve(program, {.deadline = kPatience, .threads = 2});
      ASSERT_EQ(alone.status, Status::Optimal);
      ASSERT_EQ(together.status, Status::Optimal);
      EXPECT_EQ(alone.nodes, together.nodes);
      EXPECT_EQ(alone.x, together.x);
      EXPECT_EQ(alone.gap, together.gap);
      most = std::max(most, together.nodes);
    }
  }
  EXPECT_GT(most, 2000) << "too small to need a second thread";
}

TEST(WholeStepsLimits, ASearchCutShortKeepsItsBestAnswerAndAGapThatReachesTheTrueOne) {
  for (unsigned seed = 1; seed <= 12; ++seed) {
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    const Program program = largeProgram(seed, false);
    const Solution full = solve(program, {.deadline = kPatience});
    ASSERT_EQ(full.status, Status::Optimal);
    ASSERT_EQ(full.gap, 0.0);
    for (const std::int64_t nodes : {20, 100, 500}) {
      const Solution cut = solve(program, {.deadline = kPatience, .nodes = nodes});
      ASSERT_EQ(cut.status, Status::Optimal);
      EXPECT_LE(hardViolation(program, cut.x), 1e-9);
      EXPECT_GE(cut.violation, full.violation * (1.0 - 2e-6) - 2e-9);
      EXPECT_LE(cut.violation * (1.0 - cut.gap), full.violation * (1.0 + 2e-6) + 2e-9);
      if (cut.violation <= full.violation * (1.0 + 1e-6) + 1e-9 && full.violation <= 1e-9) {
        EXPECT_GE(cut.objective, full.objective * (1.0 - 1e-8));
        EXPECT_LE(cut.objective * (1.0 - cut.gap), full.objective * (1.0 + 1e-8));
      }
    }
  }
}

TEST(WholeStepsLimits, AStoppedSearchSaysSoAtOnce) {
  std::stop_source source;
  source.request_stop();
  const Solution solution = solve(largeProgram(1, false), {.stop = source.get_token()});
  EXPECT_EQ(solution.status, Status::Stopped);
  EXPECT_FALSE(solution.reason.empty());
}

}  // namespace
}  // namespace tarebowl::solver
