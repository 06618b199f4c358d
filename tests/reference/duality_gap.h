// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

namespace tarebowl::reference {

/// A number that no x of stage 2 goes below, worked out from the program and any multipliers alone (weak
/// duality): where it meets the objective of an x that holds, that x is proved best, and the conditions of
/// Karush, Kuhn and Tucker hold. Violations may cost `budget` in all. Multipliers are positive where a lower
/// bound binds. A slope of less than `flat`, relative to its parts, counts as none where a variable has no
/// upper bound.
[[nodiscard]] double lowerBound(const solver::Program& program, const Eigen::VectorXd& multipliers,
                                double budget, double flat = 1e-9);

/// Stage 1 of a program as stage 2 of another: what each elastic row misses is a variable of its own, which
/// costs the row's price. Without choices, scatter and steps.
[[nodiscard]] solver::Program shortfallAsObjective(const solver::Program& program);

}  // namespace tarebowl::reference
