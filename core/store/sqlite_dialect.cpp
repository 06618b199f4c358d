// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_dialect.h"

#include <fmt/format.h>

#include <regex>

namespace tarebowl::store {

namespace {

constexpr std::string_view kClustered = "/* clustered */";
constexpr std::string_view kAppendOnly = "/* append-only */";

/// Comments to the end of the line are for readers only.
std::string withoutComments(std::string_view text) {
  static const std::regex kComment("--[^\n]*");
  return std::regex_replace(std::string(text), kComment, "");
}

std::string trimmed(std::string_view text) {
  constexpr std::string_view kBlank = " \t\r\n";
  const auto first = text.find_first_not_of(kBlank);
  if (first == std::string_view::npos) return {};
  return std::string(text.substr(first, text.find_last_not_of(kBlank) - first + 1));
}

bool take(std::string& statement, std::string_view mark) {
  const auto place = statement.find(mark);
  if (place == std::string::npos) return false;
  statement.erase(place, mark.size());
  statement = trimmed(statement);
  return true;
}

void addTriggers(const std::string& table, std::vector<std::string>& statements) {
  for (const char* const event : {"UPDATE", "DELETE"}) {
    statements.push_back(
        fmt::format("CREATE TRIGGER {0}_keeps_on_{1} BEFORE {1} ON {0} "
                    "BEGIN SELECT RAISE(ABORT, '{0} is append-only'); END",
                    table, event));
  }
}

void translate(std::string statement, std::vector<std::string>& statements) {
  static const std::regex kTable(R"(^CREATE TABLE (\w+))");
  std::smatch match;
  if (!std::regex_search(statement, match, kTable)) {
    statements.push_back(std::move(statement));
    return;
  }
  const std::string table = match[1].str();
  const bool clustered = take(statement, kClustered);
  const bool appendOnly = take(statement, kAppendOnly);
  statements.push_back(statement + (clustered ? " STRICT, WITHOUT ROWID" : " STRICT"));
  if (appendOnly) addTriggers(table, statements);
}

}  // namespace

std::vector<std::string> toSqlite(std::string_view migration) {
  const std::string text = withoutComments(migration) + "\n";
  std::vector<std::string> statements;
  std::size_t begin = 0;
  for (std::size_t end = text.find(";\n"); end != std::string::npos; end = text.find(";\n", begin)) {
    std::string statement = trimmed(std::string_view(text).substr(begin, end - begin));
    if (!statement.empty()) translate(std::move(statement), statements);
    begin = end + 2;
  }
  if (std::string rest = trimmed(std::string_view(text).substr(begin)); !rest.empty())
    translate(std::move(rest), statements);
  return statements;
}

}  // namespace tarebowl::store
