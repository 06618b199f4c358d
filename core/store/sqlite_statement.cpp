// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_statement.h"

#include "core/store/sqlite_handle.h"

namespace tarebowl::store {

using namespace sqlite_api;  // SOCI brings SQLite's own header in this namespace

struct PreparedStatement::Inner {
  sqlite3* database = nullptr;
  sqlite3_stmt* statement = nullptr;

  void check(int result) const {
    if (result != SQLITE_OK && result != SQLITE_DONE && result != SQLITE_ROW)
      throw soci::sqlite3_soci_error(sqlite3_errmsg(database), result);
  }
  /// Ready for its next run, whatever this one came to.
  void end(int result) const {
    sqlite3_reset(statement);
    check(result);
  }
};

PreparedStatement::PreparedStatement(SqliteConnection& connection, const std::string& sql)
    : inner_(std::make_unique<Inner>()) {
  inner_->database = handleOf(connection.sql());
  inner_->check(sqlite3_prepare_v2(inner_->database, sql.c_str(), -1, &inner_->statement, nullptr));
}

PreparedStatement::~PreparedStatement() {
  sqlite3_finalize(inner_->statement);
}

void PreparedStatement::bind(int place, double value) {
  inner_->check(sqlite3_bind_double(inner_->statement, place, value));
}

void PreparedStatement::bind(int place, long long value) {
  inner_->check(sqlite3_bind_int64(inner_->statement, place, value));
}

void PreparedStatement::bind(int place, int value) {
  inner_->check(sqlite3_bind_int(inner_->statement, place, value));
}

void PreparedStatement::bind(int place, const std::string& text) {
  inner_->check(
      sqlite3_bind_text(inner_->statement, place, text.data(), static_cast<int>(text.size()), nullptr));
}

void PreparedStatement::bindNull(int place) {
  inner_->check(sqlite3_bind_null(inner_->statement, place));
}

int PreparedStatement::run() {
  const int result = sqlite3_step(inner_->statement);
  const int rows = result == SQLITE_DONE ? sqlite3_changes(inner_->database) : 0;
  inner_->end(result);
  return rows;
}

std::optional<long long> PreparedStatement::runForNumber() {
  const int result = sqlite3_step(inner_->statement);
  std::optional<long long> number;
  if (result == SQLITE_ROW) number = sqlite3_column_int64(inner_->statement, 0);
  inner_->end(result);
  return number;
}

bool PreparedStatement::step() {
  const int result = sqlite3_step(inner_->statement);
  if (result == SQLITE_ROW) return true;
  inner_->end(result);
  return false;
}

void PreparedStatement::reset() {
  sqlite3_reset(inner_->statement);
}

long long PreparedStatement::number(int column) const {
  return sqlite3_column_int64(inner_->statement, column);
}

std::optional<long long> PreparedStatement::numberOrNull(int column) const {
  // Most numbers are neither: nothing reads as 0, and only then it is asked which of the two it is.
  const long long value = number(column);
  if (value == 0 && isNull(column)) return std::nullopt;
  return value;
}

double PreparedStatement::real(int column) const {
  return sqlite3_column_double(inner_->statement, column);
}

bool PreparedStatement::isNull(int column) const {
  return sqlite3_column_type(inner_->statement, column) == SQLITE_NULL;
}

std::string PreparedStatement::text(int column) const {
  const unsigned char* const text = sqlite3_column_text(inner_->statement, column);
  const auto bytes = static_cast<std::size_t>(sqlite3_column_bytes(inner_->statement, column));
  return text == nullptr ? std::string() : std::string(reinterpret_cast<const char*>(text), bytes);
}

}  // namespace tarebowl::store
