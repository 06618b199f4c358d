// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"

#include <QString>

namespace tarebowl::ui {

/// A food as a table shows it: the name that is looked for, and softly behind it what sets it apart.
struct FoodLabel {
  QString name;    ///< "Endive", "Insect-eater pellet"
  QString remark;  ///< "raw", "dry (invented)"
};

/// Takes the form and a remark in brackets out of the name, so that neither is said twice.
[[nodiscard]] FoodLabel foodLabel(const diet::DietFood& food);

/// The name alone, with its remark only where another food of the problem has the same name.
[[nodiscard]] QString distinctName(const diet::BalanceProblem& problem, std::size_t food);

}  // namespace tarebowl::ui
