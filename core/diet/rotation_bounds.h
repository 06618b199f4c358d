// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_program.h"
#include "core/solver/solve.h"

#include <Eigen/Core>
#include <optional>

namespace tarebowl::diet {

/// What no plan betters.
struct RotationBound {
  bool isImpossible = false;  ///< there is no plan at all
  double value = -solver::kInfinity;
  Eigen::VectorXd grams;  ///< of each food over the period, where the bound was found
  Eigen::VectorXd days;   ///< on which it is fed; nothing counts them: as many as its grams allow
};

/// The best value of a question with days taken together and any amounts, within budgets for the questions
/// before.
[[nodiscard]] RotationBound relaxedBound(const RotationModel& model, DayBlocks blocks, RotationStage stage,
                                         const RotationBudgets& budgets, WithDailyZones daily);

/// The same with whole steps and whole days, as far as the nodes go.
[[nodiscard]] RotationBound wholeBound(const RotationModel& model, DayBlocks blocks, RotationStage stage,
                                       const RotationBudgets& budgets, const solver::Limits& limits,
                                       std::int64_t& nodes);

}  // namespace tarebowl::diet
