// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/row_writer.h"
#include "ui/intake/intake_view.h"

#include <string>
#include <vector>

namespace tarebowl::ui {

/// What the charts show, as numbers: titles, then a row for each point. What is missing is empty.
[[nodiscard]] std::vector<std::vector<exchange::Cell>> intakeTable(const transfer::IntakeTrend& trend,
                                                                   const DaySpan& span);
[[nodiscard]] std::string intakeTableAsCsv(const transfer::IntakeTrend& trend, const DaySpan& span);
/// Tab-separated, as a spreadsheet takes it.
[[nodiscard]] QString intakeTableToCopy(const transfer::IntakeTrend& trend, const DaySpan& span);

}  // namespace tarebowl::ui
