// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/nutrient.h"

#include <string>
#include <vector>

namespace tarebowl::app {

/// Tagnames parted by commas; energy, protein, calcium and phosphorus where none is named. Throws UsageError.
[[nodiscard]] std::vector<food::NutrientId> nutrientsNamed(const std::string& text);

}  // namespace tarebowl::app
