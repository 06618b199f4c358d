// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/branch_and_bound.h"
#include "core/solver/scaled_program.h"
#include "core/solver/solve.h"

#include <chrono>
#include <functional>

namespace tarebowl::solver {

/// Both stages of a program whose columns move in steps, to a proven gap.
[[nodiscard]] Solution solveWholeSteps(const ScaledProgram& program, const Limits& limits,
                                       std::chrono::steady_clock::time_point deadline);

/// Answers one stage's question on the grid.
using StageSearch =
    std::function<SearchResult(const Stage&, SearchStart, std::chrono::steady_clock::time_point)>;

/// Both stages by whatever search: program says what its answers are judged by. relaxationHolds: with amounts
/// between the grid's points nothing need be violated.
[[nodiscard]] Solution bothStagesOnGrid(const ScaledProgram& program, bool relaxationHolds,
                                        const StageSearch& search,
                                        std::chrono::steady_clock::time_point deadline);

}  // namespace tarebowl::solver
