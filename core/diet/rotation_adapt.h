// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_model.h"
#include "core/solver/solve.h"

#include <cstdint>
#include <optional>

namespace tarebowl::diet {

/// A plan from before (days x foods) brought to a model that has changed since, with as little changed as may
/// be: what is fixed is laid down; where that breaks rules, the foods of those rules give way, on the days
/// that were touched or, as foods that take turns must, on every day; then days that fall short are planned
/// anew one by one, as near to what they were as the zones let them be. Nothing where no plan that keeps
/// every hard rule is found this way.
[[nodiscard]] std::optional<solver::RowMatrix> adaptedPlan(const RotationModel& model,
                                                           const solver::RowMatrix& before,
                                                           const solver::Limits& limits, std::int64_t& nodes);

}  // namespace tarebowl::diet
