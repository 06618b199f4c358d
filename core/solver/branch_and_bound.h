// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/continuous.h"
#include "core/solver/scaled_program.h"
#include "core/solver/solve.h"

#include <optional>
#include <vector>

namespace tarebowl::solver {

/// Which of the two lexicographic questions a search answers.
struct Stage {
  enum class Kind {
    LeastViolation,  ///< stage 1: sum of price times violation
    ObjectiveHard,   ///< stage 2 where no violation is needed: every row holds
    ObjectiveBudget  ///< stage 2 where the least violation is above zero: at most budget of it
  };
  Kind kind = Kind::LeastViolation;
  double budget = 0.0;  ///< most violation a stage 2 answer may have
  double lambda = 1.0;  ///< ObjectiveBudget: first guess of what a unit of violation costs
};

struct Incumbent {
  Eigen::VectorXd z;
  double violation = kInfinity;
  double objective = kInfinity;
};

/// A part of the box that may hold answers as good as the best within the tolerance between the stages.
struct Region {
  double bound = -kInfinity;
  Box limits;
};

struct SearchResult {
  std::optional<Incumbent> best;
  double bound = -kInfinity;  ///< of the stage's value, proven
  bool closed = false;        ///< best is optimal, or there is no answer at all
  bool pressesGenerousLimit = false;
  std::int64_t nodes = 0;
  /// After LeastViolation: outside these every point violates more than the budget of stage 2. Empty where
  /// that is not known, or where they are too many to be of use.
  std::vector<Region> ties;
  /// Whole points at which the relaxation is not what answers are judged by, in terms of the judge; and
  /// whether the search gave up because there were many.
  std::vector<Eigen::VectorXd> missed;
  bool hasManyMissed = false;
};

struct SearchStart {
  std::optional<Incumbent> incumbent{};
  std::vector<Region> regions{};  ///< where to look; the whole box where empty
  /// After so many nodes without any answer the search gives up.
  std::int64_t nodesToFirst = std::numeric_limits<std::int64_t>::max();
  bool firstIsEnough = false;  ///< only whether there is an answer matters
  /// After so many points at which an outer approximation is too kind the search gives up: tangents there
  /// will spare it more than it would find.
  std::size_t mostMissed = std::numeric_limits<std::size_t>::max();
};

/// Branch and bound over the piecewise-linear relaxation: best first with plunging, reduced-cost narrowing at
/// every node, and every bound worked out from the original rows. Deterministic, whatever the number of
/// threads, while the limits do not run out.
[[nodiscard]] SearchResult search(const ScaledProgram& program, const Stage& stage, SearchStart start,
                                  const Limits& limits, std::chrono::steady_clock::time_point deadline);

}  // namespace tarebowl::solver
