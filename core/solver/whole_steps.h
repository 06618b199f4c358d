// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/scaled_program.h"
#include "core/solver/solve.h"

#include <chrono>

namespace tarebowl::solver {

/// Both stages of a program whose columns move in steps, to a proven gap.
[[nodiscard]] Solution solveWholeSteps(const ScaledProgram& program, const Limits& limits,
                                       std::chrono::steady_clock::time_point deadline);

}  // namespace tarebowl::solver
