// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/sqlite_pages.h"

#include <map>
#include <span>
#include <string>

namespace tarebowl::store {

/// A column as the engine keeps it in a row.
struct SoughtColumn {
  std::string name{};
  enum class Type { Whole, Real, Text } type = Type::Text;
  bool mayBeMissing = false;
  bool isRowid = false;  ///< its value stands beside the row, not in it
};

/// A table of which rows are sought.
struct SoughtTable {
  std::string name{};
  bool isClustered = false;
  std::vector<SoughtColumn> columns{};  ///< in the order in which rows hold them
};

struct FoundRow {
  std::vector<PageValue> values{};  ///< one for each column
  bool isDoubtful = false;          ///< something else on its page cannot be read
};

/// What was found of one table.
struct FoundTable {
  std::vector<std::uint32_t> pages{};  ///< that hold its rows
  std::size_t unreadable = 0;          ///< rows or pages that are there and do not hold together
  bool whereUnknown = false;           ///< the schema does not tell where it begins
};

struct FoundTables {
  std::map<std::string, FoundTable> tables{};
  std::size_t pagesWithoutTable = 0;
  bool hasAny = false;  ///< the place of a table of ours was found
};

/// Finds the pages of the tables in a file: along their trees first, then those that no tree leads to any
/// more, where these can be of one damaged table only.
[[nodiscard]] FoundTables findTables(PageFile& file, std::span<const SoughtTable> tables);

/// The rows of a table on one of its pages.
[[nodiscard]] std::vector<FoundRow> rowsOn(PageFile& file, std::uint32_t page, const SoughtTable& table);

}  // namespace tarebowl::store
