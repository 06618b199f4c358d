// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_blocks.h"
#include "core/diet/rotation_model.h"
#include "core/solver/program.h"

#include <array>
#include <optional>
#include <vector>

namespace tarebowl::diet {

/// The questions, in their order.
enum class RotationStage { Period, Daily, Wishes, Objective };
inline constexpr std::array kRotationStages{RotationStage::Period, RotationStage::Daily,
                                            RotationStage::Wishes, RotationStage::Objective};

/// What may be missed in the questions before the one that is asked.
using RotationBudgets = std::array<double, 3>;
inline constexpr double kBudgetRounding = 1e-7;  ///< so much more is in a budget, relative to it

/// One question as a program for the solver.
struct RotationProgram {
  solver::Program program;
  DayBlocks blocks;
  solver::RowMatrix gramsColumn;  ///< blocks x foods: column of the grams, -1 where nothing is to be decided
  solver::RowMatrix daysColumn;   ///< blocks x foods: column of the days, -1 where they need not be counted
  bool isViolation = false;       ///< the question is the program's violation, not its objective
  double constant = 0.0;          ///< what fixed grams add to the objective

  [[nodiscard]] double valueOf(double violation, double objective) const {
    return isViolation ? violation : constant + objective;
  }
};

enum class WithDailyZones { No, Yes };

[[nodiscard]] RotationProgram rotationProgram(const RotationModel& model, DayBlocks blocks,
                                              RotationStage stage, const RotationBudgets& budgets,
                                              WithDailyZones daily);

/// Whether a rule says on which or how many days a food is fed.
[[nodiscard]] bool isSpokenOf(const RotationModel& model, Eigen::Index food);

/// Whether it matters on which or how many days a food is fed, or only how much of it.
[[nodiscard]] bool daysMatter(const RotationModel& model, Eigen::Index food);

/// The most days that a food can be fed on, by availability and runs alone.
[[nodiscard]] int mostDaysOf(const RotationModel& model, Eigen::Index food);

}  // namespace tarebowl::diet
