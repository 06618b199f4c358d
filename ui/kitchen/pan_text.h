// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/pan_doubt.h"
#include "ui/kitchen/kitchen_sheet.h"

#include <QString>

/// Control pans in words.
namespace tarebowl::ui {

[[nodiscard]] QString panFoodText(const intake::KitchenFood& food);
[[nodiscard]] QString panClassText(const std::string& foodClass);
/// "lost 12 % of its mass", "drew 3 % …", or that it still stands.
[[nodiscard]] QString waterText(const intake::ControlPan& pan);
/// A line of the list: "all leafy vegetable: 50 g → 44 g, lost 12 % of its mass (Keeper B)".
[[nodiscard]] QString panText(const intake::ControlPan& pan, const KitchenSheet& sheet);
[[nodiscard]] QString panDoubtText(intake::PanDoubt doubt);

}  // namespace tarebowl::ui
