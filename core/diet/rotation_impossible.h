// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/diet/rotation_model.h"

#include <string>
#include <vector>

namespace tarebowl::diet {

/// The first rule that no plan can keep, by counting alone: what is locked breaks it by itself, with what was
/// fed before (stock, number of days, runs, foods of a day), or too few days are left for a food. Empty where
/// none is found. Foods are those of the model, in its order.
[[nodiscard]] std::string impossibleByCounting(const RotationModel& model,
                                               const std::vector<DietFood>& foods);

}  // namespace tarebowl::diet
