// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/energy.h"

#include <QString>

namespace tarebowl::ui {

class DietDesk;

/// What the solver does or did, in one line: "solved in whole scale steps, proved best · 4 ms".
[[nodiscard]] QString solvingText(const DietDesk& desk);

/// "modified Atwater", "NRC 2006, dog" …
[[nodiscard]] QString energyMethodText(food::EnergyMethod method);

}  // namespace tarebowl::ui
