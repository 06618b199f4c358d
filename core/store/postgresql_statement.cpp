// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/postgresql_statement.h"

#include "core/store/postgresql_connection.h"
#include "core/store/postgresql_text.h"

#include <libpq-fe.h>

#include <charconv>
#include <cstdlib>
#include <utility>

namespace tarebowl::store {

PostgresqlStatement::PostgresqlStatement(PostgresqlConnection& connection,
                                         std::shared_ptr<KnownStatement> statement)
    : connection_(connection), statement_(std::move(statement)) {}

std::optional<std::string>& PostgresqlStatement::at(int place) {
  const auto index = static_cast<std::size_t>(place) - 1;
  if (values_.size() <= index) values_.resize(index + 1);
  return values_[index];
}

void PostgresqlStatement::bind(int place, double value) {
  at(place) = serverText(value);
}

void PostgresqlStatement::bind(int place, long long value) {
  at(place) = serverText(value);
}

void PostgresqlStatement::bind(int place, const std::string& text) {
  refuseUnkept(text);
  at(place) = text;
}

void PostgresqlStatement::bindNull(int place) {
  at(place).reset();
}

int PostgresqlStatement::run() {
  const auto result = connection_.execute(*statement_, values_);
  return std::atoi(PQcmdTuples(result.get()));
}

std::optional<long long> PostgresqlStatement::runForNumber() {
  reset();
  if (!step()) return std::nullopt;
  const long long found = number(0);
  reset();
  return found;
}

bool PostgresqlStatement::step() {
  if (!rows_) {
    rows_ = connection_.answer(statement_, values_);
    row_ = -1;
    if (!rows_) return false;  // not answered yet
  }
  if (++row_ < PQntuples(rows_.get())) return true;
  rows_.reset();
  return false;
}

void PostgresqlStatement::reset() {
  rows_.reset();
}

long long PostgresqlStatement::number(int column) const {
  long long value = 0;
  const char* const text = PQgetvalue(rows_.get(), row_, column);
  std::from_chars(text, text + PQgetlength(rows_.get(), row_, column), value);
  return value;
}

std::optional<long long> PostgresqlStatement::numberOrNull(int column) const {
  if (isNull(column)) return std::nullopt;
  return number(column);
}

double PostgresqlStatement::real(int column) const {
  double value = 0.0;
  const char* const text = PQgetvalue(rows_.get(), row_, column);
  std::from_chars(text, text + PQgetlength(rows_.get(), row_, column), value);
  return value;
}

bool PostgresqlStatement::isNull(int column) const {
  return PQgetisnull(rows_.get(), row_, column) != 0;
}

std::string PostgresqlStatement::text(int column) const {
  return {PQgetvalue(rows_.get(), row_, column),
          static_cast<std::size_t>(PQgetlength(rows_.get(), row_, column))};
}

}  // namespace tarebowl::store
