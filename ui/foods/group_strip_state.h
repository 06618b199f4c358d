// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/food_desk.h"
#include "ui/foods/food_text.h"
#include "ui/foods/group_strip.h"

namespace tarebowl::ui {

/// Where the shown food stands among those of its group, on a basis. group: what they are made of.
[[nodiscard]] GroupStripState groupStripState(const FoodDesk& desk, food::NutrientId nutrient,
                                              CompositionBasis basis, const FoodDesk::Figures& group);

}  // namespace tarebowl::ui
