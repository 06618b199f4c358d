// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/nutrient.h"

#include <QString>

namespace tarebowl::ui {

/// The trade's word for a nutrient: "Crude protein".
[[nodiscard]] QString nutrientName(food::NutrientId nutrient);
/// The same within a phrase: "calcium", "NDF" as it is.
[[nodiscard]] QString nutrientWithin(food::NutrientId nutrient);

}  // namespace tarebowl::ui
