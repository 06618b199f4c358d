// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation.h"

#include <span>
#include <vector>

namespace tarebowl::diet {

/// How days of a rotation stand, whoever planned or fed them.
struct RotationStanding {
  Balance period{};             ///< of the mean day, against the period's zones
  std::vector<Balance> days{};  ///< each against the daily zones
};

/// Days that are over count as eaten where that is known: as the grams offered of which so much is eaten.
/// days: one entry per day of the period, each in the order of the problem's foods.
[[nodiscard]] RotationStanding standingOf(const RotationProblem& problem, std::span<const Diet> days);

}  // namespace tarebowl::diet
