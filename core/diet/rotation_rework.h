// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_model.h"
#include "core/solver/solve.h"

#include <cstdint>
#include <optional>
#include <span>

namespace tarebowl::diet {

/// The rotation in which these days are open as they were and all others stay as the plan has them.
[[nodiscard]] RotationModel onlyDaysOpen(const RotationModel& model, const solver::RowMatrix& plan,
                                         std::span<const Eigen::Index> days);

/// The plan with these days planned anew by branch and bound, foods and grams at once, while the others stay:
/// question by question, each as far as the nodes go. Where there is a plan from before, as near to its days
/// as what must hold allows, instead of the objective. Nothing where no such days were found; what comes may
/// still be worse than the plan.
[[nodiscard]] std::optional<solver::RowMatrix> reworked(const RotationModel& model,
                                                        const solver::RowMatrix& plan,
                                                        std::span<const Eigen::Index> days,
                                                        const solver::Limits& limits, std::int64_t& nodes,
                                                        const solver::RowMatrix* before = nullptr);

}  // namespace tarebowl::diet
