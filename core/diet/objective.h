// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"

namespace tarebowl::diet {

/// The objective of a diet in the trade's terms: for "closest" the sum of ((x - x°)/d)², d being the food's
/// grams in the reference x° or 5 % of all its grams where that is more; for "lowest-cost" the cost per
/// animal and day of what is offered (a food without a price costs nothing); for "lowest" and "highest" the
/// nutrient's amount as eaten, in its own unit; for "fewest foods" how many are in the bowl.
[[nodiscard]] double objectiveOf(const BalanceProblem& problem, const Diet& reference, const Diet& diet);

}  // namespace tarebowl::diet
