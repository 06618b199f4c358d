// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

#include <chrono>
#include <cstdint>
#include <stop_token>
#include <string>

namespace tarebowl::solver {

enum class Status {
  Optimal,     ///< both stages closed, or the best answer found with its gap when the limits ran out
  Infeasible,  ///< the hard rows, bounds and choices contradict each other
  Unbounded,   ///< the objective has no least value
  Stopped,     ///< limits ran out before any answer
  Failed       ///< the answer did not pass verification; see reason
};

struct Limits {
  std::chrono::milliseconds deadline{10'000};
  std::int64_t nodes = 50'000'000;
  int threads = 2;  ///< for searches over whole steps; the answer does not depend on it
  std::stop_token stop{};
};

struct Solution {
  Status status = Status::Failed;
  std::string reason;
  Eigen::VectorXd x;
  double violation = 0.0;  ///< stage 1 value
  double objective = 0.0;  ///< stage 2 value
  double gap = 0.0;        ///< relative, of the first stage that was not closed; 0 when proven
  Eigen::VectorXd
      multipliers;  ///< m, of the stage 2 problem's rows at the continuous relaxation (0 where not binding)
  std::int64_t nodes = 0;  ///< branch and bound nodes; 0 for a continuous program
};

[[nodiscard]] Solution solve(const Program& program, const Limits& limits = {});
/// For columns in whole steps, with a point that is known: where it holds all that must hold, only what is
/// better is looked for, and no answer is worse.
[[nodiscard]] Solution solve(const Program& program, const Limits& limits, const Eigen::VectorXd& known);

}  // namespace tarebowl::solver
