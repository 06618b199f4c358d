// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/postgresql_statement.h"

#include "core/store/postgresql_connection.h"

#include <libpq-fe.h>
#include <soci/postgresql/soci-postgresql.h>

#include <array>
#include <charconv>
#include <cmath>
#include <cstdlib>
#include <utility>

namespace tarebowl::store {

namespace {

constexpr std::size_t kLongestNumber = 40;

/// So that it reads back as it was.
template <class Number>
std::string written(Number value) {
  std::array<char, kLongestNumber> text{};
  const auto end = std::to_chars(text.data(), text.data() + text.size(), value).ptr;
  return {text.data(), end};
}

}  // namespace

PostgresqlStatement::PostgresqlStatement(PostgresqlConnection& connection, std::string statement)
    : connection_(connection), statement_(std::move(statement)) {}

std::optional<std::string>& PostgresqlStatement::at(int place) {
  const auto index = static_cast<std::size_t>(place) - 1;
  if (values_.size() <= index) values_.resize(index + 1);
  return values_[index];
}

/// What is no number is nothing, as SQLite has it.
void PostgresqlStatement::bind(int place, double value) {
  if (std::isnan(value))
    at(place).reset();
  else
    at(place) = written(value);
}

void PostgresqlStatement::bind(int place, long long value) {
  at(place) = written(value);
}

void PostgresqlStatement::bind(int place, const std::string& text) {
  if (text.find('\0') != std::string::npos)
    throw soci::postgresql_soci_error("ERROR: a text holds the character 0, which the server does not keep",
                                      "22021");
  at(place) = text;
}

void PostgresqlStatement::bindNull(int place) {
  at(place).reset();
}

PostgresqlResult PostgresqlStatement::execute() {
  std::vector<const char*> values;
  values.reserve(values_.size());
  for (const auto& value : values_) values.push_back(value ? value->c_str() : nullptr);
  const int count = static_cast<int>(values.size());
  constexpr int kAsText = 0;
  const std::string* name = connection_.nameFor(statement_);
  pg_conn* const handle = connection_.handle();
  if (name != nullptr)
    return checked(PQexecPrepared(handle, name->c_str(), count, values.data(), nullptr, nullptr, kAsText));
  return checked(
      PQexecParams(handle, statement_.c_str(), count, nullptr, values.data(), nullptr, nullptr, kAsText));
}

int PostgresqlStatement::run() {
  const PostgresqlResult result = execute();
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
    rows_ = execute();
    row_ = -1;
  }
  if (++row_ < PQntuples(rows_.get())) return true;
  rows_.reset();
  return false;
}

void PostgresqlStatement::reset() {
  rows_.reset();
}

long long PostgresqlStatement::number(int column) const {
  return std::strtoll(PQgetvalue(rows_.get(), row_, column), nullptr, 10);
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
