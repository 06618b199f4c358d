// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/prepared_statement.h"
#include "core/store/sqlite_handle.h"

namespace tarebowl::store {

/// A prepared statement of SQLite, by its own interface.
class SqliteStatement final : public EngineStatement {
 public:
  SqliteStatement(soci::session& session, const std::string& sql);
  ~SqliteStatement() override;

  void bind(int place, double value) override;
  void bind(int place, long long value) override;
  void bind(int place, const std::string& text) override;
  void bindNull(int place) override;
  int run() override;
  [[nodiscard]] std::optional<long long> runForNumber() override;
  [[nodiscard]] bool step() override;
  void reset() override;
  [[nodiscard]] long long number(int column) const override;
  [[nodiscard]] std::optional<long long> numberOrNull(int column) const override;
  [[nodiscard]] double real(int column) const override;
  [[nodiscard]] bool isNull(int column) const override;
  [[nodiscard]] std::string text(int column) const override;

 private:
  void check(int result) const;
  /// Ready for its next run, whatever this one came to.
  void end(int result) const;

  sqlite_api::sqlite3* database_;
  sqlite_api::sqlite3_stmt* statement_ = nullptr;
};

}  // namespace tarebowl::store
