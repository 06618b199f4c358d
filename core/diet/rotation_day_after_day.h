// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_model.h"
#include "core/diet/rotation_program.h"
#include "core/solver/solve.h"

#include <Eigen/Core>
#include <cstdint>
#include <optional>
#include <span>

namespace tarebowl::diet {

/// A plan made one day after another, in this order of the open days: each by branch and bound, foods and
/// grams at once, beside all days that are still to come taken together in any amounts; what was decided
/// stays
/// ("relax and fix"). So every day is one that can be fed by itself, and the period is kept in sight. Where a
/// day cannot keep within the budgets, all begins anew with that day first, without the foods that runs
/// forbade it: what is hardest is decided while everything else is open. A day that cannot keep within them
/// even so misses as little of its own zones as it can. Nothing where the nodes did not suffice for a day, or
/// what was decided leaves no day that keeps the rules.
[[nodiscard]] std::optional<solver::RowMatrix> dayAfterDay(const RotationModel& model,
                                                           std::span<const Eigen::Index> order,
                                                           const RotationBudgets& budgets,
                                                           const solver::Limits& limits, std::int64_t& nodes);

}  // namespace tarebowl::diet
