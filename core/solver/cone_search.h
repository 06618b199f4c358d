// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/solve.h"

#include <chrono>

namespace tarebowl::solver {

/// A program with scatter whose columns move in steps, to a proven gap. Branch and bound over tangents of the
/// cones, every whole point judged by the cones themselves; where many points turn out worse than tangents
/// say, the search starts again with tangents at those points and the best answer so far (in the manner of
/// outer approximation: Duran and Grossmann 1986, "An outer-approximation algorithm for a class of
/// mixed-integer nonlinear programs", Math. Programming 36). It may look further each time, and a tree whose
/// ends are single points is finite: so it comes to an end. smooth: the answer without steps and choices.
[[nodiscard]] Solution solveConesInWholeSteps(const Program& program, const Solution& smooth,
                                              const Limits& limits,
                                              std::chrono::steady_clock::time_point deadline);

}  // namespace tarebowl::solver
