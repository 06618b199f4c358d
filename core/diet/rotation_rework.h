// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_model.h"
#include "core/solver/solve.h"

#include <Eigen/Core>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace tarebowl::diet {

/// Cells of a rotation, days x foods.
using CellChoice = Eigen::Array<bool, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

/// Every food of these days.
[[nodiscard]] CellChoice wholeDays(const RotationModel& model, std::span<const Eigen::Index> days);

/// These cells of the plan planned anew by branch and bound, foods and grams at once, while all others stay:
/// question by question, each as far as the nodes go. Where there is a plan from before, each cell as near to
/// what it was as what must hold allows, instead of the objective. Nothing where no such days were found;
/// what comes may still be worse than the plan.
[[nodiscard]] std::optional<solver::RowMatrix> reworked(const RotationModel& model,
                                                        const solver::RowMatrix& plan,
                                                        const CellChoice& cells, const solver::Limits& limits,
                                                        std::int64_t& nodes,
                                                        const solver::RowMatrix* before = nullptr);

}  // namespace tarebowl::diet
