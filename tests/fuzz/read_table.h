// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/table_input.h"

#include <cstdint>
#include <span>

namespace tarebowl::fuzz {

/// Guesses and imports the table: one line that says what is wrong, or foods with values and an account of
/// all else. Anything else aborts.
void readTable(const exchange::TableInput& table);

/// The same for a spreadsheet's bytes as a file; nothing where they are no archive.
void readSpreadsheet(std::span<const std::uint8_t> bytes);

}  // namespace tarebowl::fuzz
