// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_statement.h"

namespace tarebowl::store {

using namespace sqlite_api;  // SOCI brings SQLite's own header in this namespace

void SqliteStatement::check(int result) const {
  if (result != SQLITE_OK && result != SQLITE_DONE && result != SQLITE_ROW)
    throw soci::sqlite3_soci_error(sqlite3_errmsg(database_), result);
}

void SqliteStatement::end(int result) const {
  sqlite3_reset(statement_);
  check(result);
}

SqliteStatement::SqliteStatement(soci::session& session, const std::string& sql)
    : database_(handleOf(session)) {
  check(sqlite3_prepare_v2(database_, sql.c_str(), -1, &statement_, nullptr));
}

SqliteStatement::~SqliteStatement() {
  sqlite3_finalize(statement_);
}

void SqliteStatement::bind(int place, double value) {
  check(sqlite3_bind_double(statement_, place, value));
}

void SqliteStatement::bind(int place, long long value) {
  check(sqlite3_bind_int64(statement_, place, value));
}

void SqliteStatement::bind(int place, const std::string& text) {
  check(sqlite3_bind_text(statement_, place, text.data(), static_cast<int>(text.size()), nullptr));
}

void SqliteStatement::bindNull(int place) {
  check(sqlite3_bind_null(statement_, place));
}

int SqliteStatement::run() {
  const int result = sqlite3_step(statement_);
  const int rows = result == SQLITE_DONE ? sqlite3_changes(database_) : 0;
  end(result);
  return rows;
}

std::optional<long long> SqliteStatement::runForNumber() {
  const int result = sqlite3_step(statement_);
  std::optional<long long> number;
  if (result == SQLITE_ROW) number = sqlite3_column_int64(statement_, 0);
  end(result);
  return number;
}

bool SqliteStatement::step() {
  const int result = sqlite3_step(statement_);
  if (result == SQLITE_ROW) return true;
  end(result);
  return false;
}

void SqliteStatement::reset() {
  sqlite3_reset(statement_);
}

long long SqliteStatement::number(int column) const {
  return sqlite3_column_int64(statement_, column);
}

std::optional<long long> SqliteStatement::numberOrNull(int column) const {
  // Most numbers are neither: nothing reads as 0, and only then it is asked which of the two it is.
  const long long value = number(column);
  if (value == 0 && isNull(column)) return std::nullopt;
  return value;
}

double SqliteStatement::real(int column) const {
  return sqlite3_column_double(statement_, column);
}

bool SqliteStatement::isNull(int column) const {
  return sqlite3_column_type(statement_, column) == SQLITE_NULL;
}

std::string SqliteStatement::text(int column) const {
  const unsigned char* const text = sqlite3_column_text(statement_, column);
  const auto bytes = static_cast<std::size_t>(sqlite3_column_bytes(statement_, column));
  return text == nullptr ? std::string() : std::string(reinterpret_cast<const char*>(text), bytes);
}

}  // namespace tarebowl::store
