// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_value_insert.h"

#include <soci/sqlite3/soci-sqlite3.h>

namespace tarebowl::store {

using namespace sqlite_api;  // SOCI brings SQLite's own header in this namespace

namespace {

constexpr const char* kInsert =
    "INSERT INTO sample_value (sample_id, component_id, amount, basis, qualifier, sd, determinations, "
    "reported_amount, "
    "reported_unit, reported_per) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?) "
    "ON CONFLICT (sample_id, component_id) DO NOTHING";

}  // namespace

struct ValueInsert::Statement {
  sqlite3* database = nullptr;
  sqlite3_stmt* insert = nullptr;

  void check(int result) const {
    if (result != SQLITE_OK && result != SQLITE_DONE)
      throw soci::sqlite3_soci_error(sqlite3_errmsg(database), result);
  }
  void bind(int place, double value) const { check(sqlite3_bind_double(insert, place, value)); }
  void bind(int place, long long value) const { check(sqlite3_bind_int64(insert, place, value)); }
  void bind(int place, int value) const { check(sqlite3_bind_int(insert, place, value)); }
  /// The text must live until the step.
  void bind(int place, const std::string& text) const {
    check(sqlite3_bind_text(insert, place, text.data(), static_cast<int>(text.size()), nullptr));
  }
  template <class T>
  void bind(int place, const std::optional<T>& value) const {
    if (value)
      bind(place, *value);
    else
      check(sqlite3_bind_null(insert, place));
  }
};

ValueInsert::ValueInsert(SqliteConnection& connection) : statement_(std::make_unique<Statement>()) {
  statement_->database = static_cast<soci::sqlite3_session_backend*>(connection.sql().get_backend())->conn_;
  statement_->check(sqlite3_prepare_v2(statement_->database, kInsert, -1, &statement_->insert, nullptr));
}

ValueInsert::~ValueInsert() {
  sqlite3_finalize(statement_->insert);
}

bool ValueInsert::insert(long long sample, const ValueRow& row) {
  const Statement& statement = *statement_;
  statement.bind(1, sample);
  statement.bind(2, row.component);
  statement.bind(3, row.amount);
  statement.bind(4, row.basis);
  statement.bind(5, row.qualifier);
  statement.bind(6, row.sd);
  statement.bind(7, row.count);
  statement.bind(8, row.reportedAmount);
  statement.bind(9, row.reportedUnit);
  statement.bind(10, row.reportedPer);
  const int result = sqlite3_step(statement.insert);
  const bool written = result == SQLITE_DONE && sqlite3_changes(statement.database) > 0;
  sqlite3_reset(statement.insert);
  statement.check(result);
  return written;
}

}  // namespace tarebowl::store
