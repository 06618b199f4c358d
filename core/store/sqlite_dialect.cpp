// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_dialect.h"

#include "core/store/migration_statements.h"

#include <fmt/format.h>

namespace tarebowl::store {

namespace {

void addTriggers(const std::string& table, std::vector<std::string>& statements) {
  for (const char* const event : {"UPDATE", "DELETE"}) {
    statements.push_back(
        fmt::format("CREATE TRIGGER {0}_keeps_on_{1} BEFORE {1} ON {0} "
                    "BEGIN SELECT RAISE(ABORT, '{0} is append-only'); END",
                    table, event));
  }
}

}  // namespace

std::vector<std::string> toSqlite(std::string_view migration) {
  std::vector<std::string> statements;
  for (const MigrationStatement& statement : statementsOf(migration)) {
    if (statement.table.empty()) {
      statements.push_back(statement.text);
      continue;
    }
    statements.push_back(statement.text + (statement.clustered ? " STRICT, WITHOUT ROWID" : " STRICT"));
    if (statement.appendOnly) addTriggers(statement.table, statements);
  }
  return statements;
}

}  // namespace tarebowl::store
