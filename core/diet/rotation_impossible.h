// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/diet/rotation_model.h"

#include <string>
#include <vector>

namespace tarebowl::diet {

/// The first rule that what is locked breaks by itself, with what was fed before and what is off: stock,
/// number of days, runs, foods of a day. Empty where there is none. Foods are those of the model, in its
/// order.
[[nodiscard]] std::string brokenByLocks(const RotationModel& model, const std::vector<DietFood>& foods);

}  // namespace tarebowl::diet
