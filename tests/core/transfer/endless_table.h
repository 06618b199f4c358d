// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/table_input.h"

#include <cstddef>

/// Invented tables of any length, made as they are read, so that they are never in memory.
namespace tarebowl::transfer {

/// A row a value: so many foods with `valuesOfFood` nutrients each, no value like another.
[[nodiscard]] exchange::TableInput longTable(std::size_t foods, std::size_t valuesOfFood);
/// A row a food.
[[nodiscard]] exchange::TableInput wideTable(std::size_t foods, std::size_t valuesOfFood);

}  // namespace tarebowl::transfer
