// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/solve.h"

namespace tarebowl::solver {

/// A program with scatter: rows_i x -/+ ||scatter_i x|| against the bounds, a second-order cone.
///
/// The norm is convex and equal to the largest of its tangents, so the rows are replaced by tangents taken
/// where the answer lies, until the answer violates none (Kelley 1960, "The cutting-plane method for solving
/// convex programs"). Every round is a relaxation: its value is a bound. An elastic row keeps one violation
/// for all its tangents, in a column of its own. Falls back to Failed (with a reason) where the tangents have
/// not closed after a fixed number of rounds.
[[nodiscard]] Solution solveWithChance(const Program& program, const Limits& limits);

/// Whether any scatter is there to be dealt with.
[[nodiscard]] bool hasScatter(const Program& program);

}  // namespace tarebowl::solver
