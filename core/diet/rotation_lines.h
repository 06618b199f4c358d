// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/diet_version.h"
#include "core/diet/version_problem.h"

#include <span>
#include <vector>

namespace tarebowl::diet {

/// What the kitchen prepares on a day of a plan in place of the version's own lines: the foods fed that day
/// with the version's meals, purposes and preparations. Allowances are no lines; they stay what they are.
/// places: one per food of the day, as versionProblem() gives them. Throws std::invalid_argument where they
/// are not.
[[nodiscard]] std::vector<DietLine> linesOfPlannedDay(const DietVersion& version,
                                                      std::span<const PlaceInVersion> places,
                                                      const Diet& day);

}  // namespace tarebowl::diet
