// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_model.h"
#include "core/solver/solve.h"

#include <cstdint>
#include <optional>

namespace tarebowl::diet {

/// A plan from before (days x foods) brought to a model that has changed since, with as little changed as may
/// be: what is fixed is laid down, days that do not keep the rules with it are planned anew, as near to what
/// they were as the zones let them be, then further days one by one while that leaves less short. Nothing
/// where no plan that keeps every hard rule is found this way.
[[nodiscard]] std::optional<solver::RowMatrix> adaptedPlan(const RotationModel& model,
                                                           const solver::RowMatrix& before,
                                                           const solver::Limits& limits, std::int64_t& nodes);

}  // namespace tarebowl::diet
