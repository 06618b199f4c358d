// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/nutrient.h"

#include <vector>

namespace tarebowl::food {

/// What dry matter, energy by any of the methods (energy.h) and a cooked food (cooking.h) are worked out
/// from: whoever reads only some nutrients of a food reads these too.
[[nodiscard]] std::vector<NutrientId> proximates();

}  // namespace tarebowl::food
