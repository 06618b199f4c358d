// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/solve.h"

#include <vector>

namespace tarebowl::solver {

/// A program with scatter and without steps, its cones replaced by tangents, taken where the answer lies,
/// until the answer violates none (Kelley 1960, "The cutting-plane method for solving convex programs").
/// Where Newton's method on the cones fails. touching: points at which tangents are taken before the first
/// round. Failed (with a reason) where the tangents have not closed after a fixed number of rounds.
[[nodiscard]] Solution solveByTangents(const Program& program, const std::vector<Eigen::VectorXd>& touching,
                                       const Limits& limits);

}  // namespace tarebowl::solver
