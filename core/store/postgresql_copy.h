// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/sqlite_tables.h"
#include "core/store/table_filling.h"

#include <string>

struct pg_conn;  // libpq's connection

namespace tarebowl::store {

/// COPY … FROM STDIN, in PostgreSQL's text format: rows go to the server one after another, and nobody waits
/// for each. A row that the server refuses is thrown at the end.
class PostgresqlCopy final : public TableFilling {
 public:
  PostgresqlCopy(pg_conn* connection, const TableShape& table);
  /// Gives up what has not come to its end: the transaction has failed then.
  ~PostgresqlCopy() override;
  void add(const TableRow& row) override;
  void end() override;

 private:
  void send();

  pg_conn* connection_;
  std::string table_;
  std::string lines_;
  bool open_ = true;
};

/// A row as COPY reads it, with the end of its line. Throws soci::postgresql_soci_error for a text that the
/// server does not keep.
void addCopyLine(std::string& lines, const TableRow& row);

}  // namespace tarebowl::store
