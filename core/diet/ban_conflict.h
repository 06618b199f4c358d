// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/solve.h"

#include <chrono>

namespace tarebowl::diet {

/// Adds to the conflict of an answer the exclusions and cautions without which its rules could hold together:
/// each ban is released in turn, and stays so where the rules still fight. The answer is that of
/// withoutBanned(problem).
void addBans(DietSolution& answer, const BalanceProblem& problem, std::chrono::milliseconds deadline);

}  // namespace tarebowl::diet
