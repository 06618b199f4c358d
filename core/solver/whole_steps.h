// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/branch_and_bound.h"
#include "core/solver/scaled_program.h"
#include "core/solver/solve.h"

#include <chrono>
#include <functional>
#include <optional>

namespace tarebowl::solver {

/// Both stages of a program whose columns move in steps, to a proven gap.
[[nodiscard]] Solution solveWholeSteps(const ScaledProgram& program, const Limits& limits,
                                       std::chrono::steady_clock::time_point deadline,
                                       const Eigen::VectorXd* known = nullptr);

/// Answers one stage's question on the grid.
using StageSearch =
    std::function<SearchResult(const Stage&, SearchStart, std::chrono::steady_clock::time_point)>;

/// Both stages by whatever search: program says what its answers are judged by. relaxationHolds: with amounts
/// between the grid's points nothing need be violated. known: a point of the grid to begin with.
[[nodiscard]] Solution bothStagesOnGrid(const ScaledProgram& program, bool relaxationHolds,
                                        const StageSearch& search,
                                        std::chrono::steady_clock::time_point deadline,
                                        std::optional<Incumbent> known = std::nullopt);

}  // namespace tarebowl::solver
