// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/solve.h"

namespace tarebowl::solver {

/// Less than this of a column is none of it; a used one is ten times as much or more.
inline constexpr double kNone = 1e-4;

/// How many columns are in use.
[[nodiscard]] int usedIn(const Eigen::VectorXd& x);

/// Of the answers with the least violation one with the fewest columns in use, and among those the best
/// objective. One column fewer is asked for again and again, as a choice among all of them, until there is
/// proof that none can be spared. gap: the share of the columns in use of which it was not shown that they
/// are needed, or the gap of the objective.
[[nodiscard]] Solution solveFewest(const Program& program, const Limits& limits = {});

}  // namespace tarebowl::solver
