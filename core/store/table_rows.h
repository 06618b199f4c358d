// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/prepared_statement.h"
#include "core/store/sqlite_tables.h"
#include "core/store/table_filling.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

/// Whole tables row by row, whatever the engine. All of it runs inside guarded().
namespace tarebowl::store {

/// The rows of a table in the order of its key, some thousands at a time: memory does not grow with the
/// table.
class TableRows {
 public:
  /// condition: of the rows that are wanted, in SQL; empty: all of them.
  TableRows(Connection& connection, const TableShape& table, const std::string& condition = {});
  /// The next row; false after the last one.
  [[nodiscard]] bool next(TableRow& row);

 private:
  void read(TableRow& row);

  const TableShape& table_;
  PreparedStatement first_, further_;
  PreparedStatement* page_;
  int onPage_ = 0;
  std::vector<std::size_t> key_;  ///< which columns it is
  std::vector<long long> last_;
};

/// Adds rows to a table, a statement each: a row that is refused is known at once.
class TableWriter final : public TableFilling {
 public:
  TableWriter(Connection& connection, const TableShape& table);
  void add(const TableRow& row) override;
  void end() override {}

 private:
  PreparedStatement insert_;
};

/// Removes rows by their keys.
class TableEraser {
 public:
  TableEraser(Connection& connection, const TableShape& table);
  void remove(const std::vector<long long>& key);

 private:
  PreparedStatement remove_;
};

/// Which columns are the key.
[[nodiscard]] std::vector<std::size_t> keyColumns(const TableShape& table);

/// A checksum of rows in their order (CRC-64 of ECMA-182): the same on every engine for the same values.
class RowChecksum {
 public:
  void add(const TableRow& row);
  [[nodiscard]] std::uint64_t value() const { return value_; }

 private:
  void add(std::string_view bytes);
  std::uint64_t value_ = 0;
};

}  // namespace tarebowl::store
