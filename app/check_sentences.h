// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/table_reports.h"
#include "core/food/collection_checks.h"

#include <span>
#include <string>

namespace tarebowl::app {

/// One line: which food, what is doubtful, and what to do about it.
[[nodiscard]] std::string sentenceOf(const food::FoodFinding& finding,
                                     std::span<const exchange::CheckedName> names);

}  // namespace tarebowl::app
