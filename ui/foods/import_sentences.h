// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/plan_lines.h"

#include <QString>

/// What an import will do to a table's lines, in words.
namespace tarebowl::ui {

/// "new: 12 values", "3 values new, 1 changed, 8 unchanged".
[[nodiscard]] QString outcomeText(const exchange::PlannedFood& food);
/// Whose place it is: "column 4 (Calcium)", or the whole line.
[[nodiscard]] QString placeText(const exchange::Remark& remark);
/// Why the line is refused or left out, and what stands there: "a number is needed, “=D3” is a formula".
[[nodiscard]] QString reasonText(const exchange::PlannedRemark& remark);

/// One sentence for the whole plan: "2 foods new, 1 changed, 525 unchanged; 40 values new …".
[[nodiscard]] QString planText(const exchange::ImportPlan& plan);
/// The same after it was done.
[[nodiscard]] QString doneText(const exchange::ImportPlan& plan);

}  // namespace tarebowl::ui
