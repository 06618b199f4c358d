// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/scaled_program.h"

#include <vector>

namespace tarebowl::solver {

/// Narrows the limits of a place in a search by what the choices leave no choice about: a member that may not
/// reach its least amount is left out, one that must be above 0 has at least that, and where the count of
/// those used or of those possible is at its end, the rest is decided. A member is used where its lower limit
/// is above 0, left out where its upper limit is 0, open otherwise. Columns that were narrowed are appended
/// to narrowed (some perhaps twice). False: the counts cannot be met within the limits.
[[nodiscard]] bool settleChoices(const ScaledProgram& program, Eigen::VectorXd& lower, Eigen::VectorXd& upper,
                                 std::vector<Eigen::Index>& narrowed);

/// Whether z keeps every choice: amounts of 0 or from the threshold on, and their count in its range.
[[nodiscard]] bool choicesHold(const ScaledProgram& program, const Eigen::VectorXd& z);

}  // namespace tarebowl::solver
