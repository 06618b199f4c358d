// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/continuous_solver.h"

#include <optional>
#include <span>
#include <stop_token>
#include <vector>

namespace tarebowl::solver {

struct ScanLimits {
  int threads = 2;  ///< >= 1
  std::stop_token stop;
};

struct ScanResult {
  Status status = Status::Stopped;  ///< Stopped: not reached before stop was requested
  double violation = 0.0;
  double objective = 0.0;
  double amount = 0.0;  ///< of the candidate
};

/// Solves the continuous program (steps and choices are not looked at) once for each candidate in the place
/// of a column, or, without one, beside the others. Every candidate starts from the same state, so that the
/// results do not depend on the threads. Where the program's objective is linear (curvature 0), the
/// candidates' centre and curvature are not looked at.
[[nodiscard]] std::vector<ScanResult> scan(const Program& program, std::optional<Eigen::Index> column,
                                           std::span<const ContinuousSolver::Column> candidates,
                                           const ScanLimits& limits = {});

}  // namespace tarebowl::solver
