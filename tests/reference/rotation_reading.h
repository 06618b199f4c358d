// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation.h"
#include "tests/reference/linear_program.h"

namespace tarebowl::reference {

/// A rotation as a mixed-integer program, written from the problem's own words and day by day, for solvers of
/// other people: whole steps of each food on each day, and whether it is fed. Structure, runs and portions
/// only: what randomRotation() draws.
enum class Asked {
  LeastPeriodShortfall,  ///< the days' own zones are not looked at
  Cheapest               ///< every zone holds
};
[[nodiscard]] LinearProgram readRotation(const diet::RotationProblem& problem, Asked asked);

}  // namespace tarebowl::reference
