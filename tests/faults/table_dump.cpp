// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/table_dump.h"

#include <sqlite3.h>

#include <functional>
#include <memory>
#include <stdexcept>

namespace tarebowl::faults {

namespace {

using Database = std::unique_ptr<sqlite3, decltype(&sqlite3_close)>;
using Statement = std::unique_ptr<sqlite3_stmt, decltype(&sqlite3_finalize)>;

void forEachRow(sqlite3* database, const std::string& query,
                const std::function<void(const std::string&)>& take) {
  sqlite3_stmt* prepared = nullptr;
  if (sqlite3_prepare_v2(database, query.c_str(), -1, &prepared, nullptr) != SQLITE_OK)
    throw std::runtime_error(sqlite3_errmsg(database));
  const Statement statement(prepared, &sqlite3_finalize);
  while (sqlite3_step(prepared) == SQLITE_ROW) {
    std::string row;
    for (int column = 0; column < sqlite3_column_count(prepared); ++column) {
      const auto* text = reinterpret_cast<const char*>(sqlite3_column_text(prepared, column));
      if (column > 0) row += '|';
      row += text == nullptr ? "?" : text;
    }
    take(row);
  }
}

}  // namespace

TableDump dumpOf(const std::filesystem::path& file) {
  sqlite3* opened = nullptr;
  sqlite3_open_v2(file.c_str(), &opened, SQLITE_OPEN_READONLY, nullptr);
  const Database database(opened, &sqlite3_close);
  TableDump dump;
  forEachRow(opened, "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite%'",
             [&](const std::string& table) { dump[table]; });
  for (auto& [table, rows] : dump)
    forEachRow(opened, "SELECT * FROM " + table,
               [&rows = rows](const std::string& row) { rows.insert(row); });
  return dump;
}

}  // namespace tarebowl::faults
