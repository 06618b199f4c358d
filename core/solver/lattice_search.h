// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/branch_and_bound.h"

namespace tarebowl::solver {

/// Whether a is a better answer than b for the stage: feasible before infeasible, then the stage's value.
[[nodiscard]] bool isBetter(const Stage& stage, const Incumbent& a, const Incumbent& b);

/// z with its violation and objective, both in the source program's terms.
[[nodiscard]] Incumbent evaluate(const ScaledProgram& program, Eigen::VectorXd z);
/// Hard rows, limits and choices hold, and the budget of a stage 2.
[[nodiscard]] bool isAcceptable(const ScaledProgram& program, const Stage& stage, const Incumbent& candidate);

/// From a point of the relaxation to a good point on the grid: round, then exchange single steps and pairs of
/// steps while that improves. Nothing is promised; a search only starts better with it.
[[nodiscard]] Incumbent improveOnGrid(const ScaledProgram& program, const Stage& stage, Eigen::VectorXd z);

}  // namespace tarebowl::solver
