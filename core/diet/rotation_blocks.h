// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_model.h"

#include <Eigen/Core>
#include <vector>

namespace tarebowl::diet {

/// Days that are taken together: a plan then says how much of a food is fed on them in all, and on how many
/// of them. Every plan of the rotation is one of the lumped one too, so that what this reaches is a bound;
/// with each day on its own it is the rotation itself.
using DayBlocks = std::vector<std::vector<Eigen::Index>>;
[[nodiscard]] DayBlocks allTogether(const RotationModel& model);
[[nodiscard]] DayBlocks alikeTogether(
    const RotationModel& model);  ///< days with the same cells and structure
[[nodiscard]] DayBlocks eachAlone(const RotationModel& model);

}  // namespace tarebowl::diet
