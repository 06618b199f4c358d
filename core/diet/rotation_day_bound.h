// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_program.h"
#include "core/solver/solve.h"

#include <cstdint>

namespace tarebowl::diet {

/// What no plan betters in its objective, closer than days taken together say: every day must be one that can
/// be fed by itself, in whole steps, its own zones kept. The days together are paid for each gram and each
/// day of a food what the days apart are asked for it; whatever the prices, what both come to is a bound
/// (weak duality), and they are moved uphill until it reaches `enough` or the limits run out. Only where
/// nothing may be missed on the days; -infinity where there is no such bound.
[[nodiscard]] double dayByDayBound(const RotationModel& model, const RotationBudgets& budgets, double enough,
                                   const solver::Limits& limits, std::int64_t& nodes);

}  // namespace tarebowl::diet
