// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"

#include <vector>

namespace tarebowl::diet {

/// The problem in which a locked food keeps its grams (min = max = grams, whatever its own limits and step).
/// grams, locked: one per food.
[[nodiscard]] BalanceProblem withLocked(BalanceProblem problem, const Diet& grams,
                                        const std::vector<bool>& locked);

}  // namespace tarebowl::diet
