// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/table_row.h"
#include "core/exchange/text_table.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <iosfwd>
#include <memory>
#include <string>

namespace tarebowl::exchange {

/// A table that can be read from its beginning as often as it takes: once to guess, once to plan, once to
/// write.
struct TableInput {
  std::string name;  ///< what messages call it
  std::function<std::unique_ptr<std::istream>()> open;
  std::uintmax_t size = 0;              ///< bytes; 0 where unknown
  std::filesystem::path folder{};       ///< where a second table is looked for
  std::filesystem::path spreadsheet{};  ///< the XLSX file itself, which is no stream; empty for text
};

/// Throws FormatError for a file that is not there or cannot be opened.
[[nodiscard]] TableInput tableFile(const std::filesystem::path& file);
/// A table that is already in memory.
[[nodiscard]] TableInput tableText(std::string text, std::string name);

/// A reader at the beginning of the table; form counts for text only. Throws FormatError.
[[nodiscard]] std::unique_ptr<TableReader> openTable(const TableInput& input, const TextTableForm& form);

}  // namespace tarebowl::exchange
