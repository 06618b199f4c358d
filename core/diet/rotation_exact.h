// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_program.h"
#include "core/solver/solve.h"

#include <cstdint>
#include <optional>

namespace tarebowl::diet {

/// A rotation so small that every day can be looked at as it is: all questions by branch and bound.
struct ExactPlan {
  bool isImpossible = false;               ///< proven
  std::optional<solver::RowMatrix> grams;  ///< of the last question that had an answer
  std::array<double, 4> bound{};           ///< of each question, within what the plan reached before
  bool isComplete = false;                 ///< every question had an answer
  std::int64_t nodes = 0;
};
/// Questions before the objective of which it is known that a plan misses nothing are not asked again.
using NothingMissed = std::array<bool, 3>;
/// From a plan, where there is one that keeps every rule: the objective is then only bettered.
[[nodiscard]] ExactPlan exactPlan(const RotationModel& model, const solver::Limits& limits,
                                  const NothingMissed& known = {}, const solver::RowMatrix* plan = nullptr);

/// Foods on days that are to be decided.
[[nodiscard]] Eigen::Index openCells(const RotationModel& model);

}  // namespace tarebowl::diet
