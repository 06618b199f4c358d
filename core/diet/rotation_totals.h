// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_pattern.h"
#include "core/diet/rotation_program.h"
#include "core/solver/solve.h"

#include <cstdint>
#include <optional>

namespace tarebowl::diet {

/// The rotation in which exactly the foods of the pattern are fed on each day: how often is settled.
[[nodiscard]] RotationModel restrictedTo(const RotationModel& model, const FedPattern& pattern);

enum class Amounts { Any, OnScale };

/// Grams of each food over blocks of days, with the best value of each question asked of them.
struct Totals {
  DayBlocks blocks;
  solver::RowMatrix grams;  ///< blocks x foods, of free cells
  double period = 0.0;
  double objective = 0.0;
  std::int64_t nodes = 0;
};

/// The best sums for a pattern: least shortfall of the period, then what is left of stock, then the
/// objective. The days' own zones are not looked at. Nothing where no sums keep the hard rules.
[[nodiscard]] std::optional<Totals> bestTotals(const RotationModel& restricted, Amounts amounts,
                                               const solver::Limits& limits);

/// The sums laid out over the days, evenly, then moved between days while that makes the days better.
/// Sums stay what they are.
[[nodiscard]] solver::RowMatrix laidOut(const RotationModel& restricted, const Totals& totals);

}  // namespace tarebowl::diet
