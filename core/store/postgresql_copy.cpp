// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/postgresql_copy.h"

#include "core/store/postgresql_failure.h"
#include "core/store/postgresql_text.h"

#include <fmt/format.h>
#include <fmt/ranges.h>
#include <libpq-fe.h>
#include <soci/postgresql/soci-postgresql.h>

#include <string_view>

namespace tarebowl::store {

namespace {

constexpr std::size_t kBytesAtOnce = 65'536;
constexpr const char* kConnectionLost = "08006";
constexpr const char* kNothing = "\\N";

std::string statementFor(const TableShape& table) {
  std::vector<std::string> names;
  for (const TableColumn& column : table.columns) names.push_back(column.name);
  return fmt::format("COPY {} ({}) FROM STDIN", table.name, fmt::join(names, ", "));
}

/// What ends a value or a line is told by a letter behind a backslash.
void addEscaped(std::string& lines, std::string_view text) {
  constexpr std::string_view kEnding = "\\\t\n\r";
  constexpr std::string_view kLetters = "\\tnr";
  for (const char c : text) {
    const std::size_t ending = kEnding.find(c);
    if (ending != std::string_view::npos) lines += '\\';
    lines += ending == std::string_view::npos ? c : kLetters[ending];
  }
}

struct AddValue {
  std::string& lines;
  void operator()(std::monostate /*nothing*/) const { lines += kNothing; }
  void operator()(long long number) const { lines += serverText(number); }
  void operator()(double real) const { lines += serverText(real).value_or(kNothing); }
  void operator()(const std::string& text) const {
    refuseUnkept(text);
    addEscaped(lines, text);
  }
};

}  // namespace

void addCopyLine(std::string& lines, const TableRow& row) {
  for (std::size_t i = 0; i < row.size(); ++i) {
    if (i > 0) lines += '\t';
    std::visit(AddValue{lines}, row[i]);
  }
  lines += '\n';
}

PostgresqlCopy::PostgresqlCopy(pg_conn* connection, const TableShape& table)
    : connection_(connection), table_(table.name) {
  checked(PQexec(connection_, statementFor(table).c_str()));
}

PostgresqlCopy::~PostgresqlCopy() {
  if (!open_) return;
  PQputCopyEnd(connection_, "it was given up");
  while (const PostgresqlResult left{PQgetResult(connection_)}) continue;
}

void PostgresqlCopy::add(const TableRow& row) {
  addCopyLine(lines_, row);
  if (lines_.size() >= kBytesAtOnce) send();
}

void PostgresqlCopy::send() {
  if (PQputCopyData(connection_, lines_.data(), static_cast<int>(lines_.size())) != 1)
    throw soci::postgresql_soci_error(PQerrorMessage(connection_), kConnectionLost);
  lines_.clear();
}

void PostgresqlCopy::end() {
  if (!lines_.empty()) send();
  if (PQputCopyEnd(connection_, nullptr) != 1)
    throw soci::postgresql_soci_error(PQerrorMessage(connection_), kConnectionLost);
  open_ = false;
  PostgresqlResult ended(PQgetResult(connection_));
  while (const PostgresqlResult left{PQgetResult(connection_)}) continue;
  checked(ended.release());
  // Who asks next is not to wait until the server has got to know the table by itself.
  checked(PQexec(connection_, ("ANALYZE " + table_).c_str()));
}

}  // namespace tarebowl::store
