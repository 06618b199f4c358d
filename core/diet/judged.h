// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/solve.h"

namespace tarebowl::diet {

/// A diet as it stands, judged and put where a solution would stand, so that both are shown alike. Balanced
/// where every target holds, a compromise where not.
[[nodiscard]] DietSolution judged(const BalanceProblem& problem, const Diet& diet);

}  // namespace tarebowl::diet
