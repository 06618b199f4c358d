// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/solve.h"

namespace tarebowl::solver {

/// A program with scatter: rows_i x -/+ ||scatter_i x|| against the bounds, a second-order cone. Continuous
/// amounts by Newton's method on the cones (ConeStages), judged by their optimality conditions, choices by
/// a search over those; whole steps by branch and bound over tangents (solveConesInWholeSteps).
[[nodiscard]] Solution solveWithChance(const Program& program, const Limits& limits);

/// Whether any scatter is there to be dealt with.
[[nodiscard]] bool hasScatter(const Program& program);

}  // namespace tarebowl::solver
