// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_model.h"

#include <Eigen/Core>
#include <optional>

namespace tarebowl::diet {

/// On how many days the period wants each food: as all days taken together, in any amounts, answer the
/// questions best. Nothing where even they find no plan: then the hard rules contradict each other.
[[nodiscard]] std::optional<Eigen::VectorXd> wantedDays(const RotationModel& model);

}  // namespace tarebowl::diet
