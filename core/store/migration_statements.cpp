// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/migration_statements.h"

#include <algorithm>
#include <regex>
#include <utility>

namespace tarebowl::store {

namespace {

constexpr std::string_view kClustered = "/* clustered */";
constexpr std::string_view kAppendOnly = "/* append-only */";

/// Comments to the end of the line are for readers only.
std::string withoutComments(std::string_view text) {
  std::string kept;
  kept.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const auto comment = std::min(text.find("--", at), text.size());
    kept += text.substr(at, comment - at);
    at = std::min(text.find('\n', comment), text.size());
  }
  return kept;
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

MigrationStatement statementFrom(std::string text) {
  static const std::regex kTable(R"(^CREATE TABLE (\w+))");
  MigrationStatement statement;
  std::smatch match;
  if (std::regex_search(text, match, kTable)) {
    statement.table = match[1].str();
    statement.clustered = take(text, kClustered);
    statement.appendOnly = take(text, kAppendOnly);
  }
  statement.text = std::move(text);
  return statement;
}

}  // namespace

std::vector<MigrationStatement> statementsOf(std::string_view migration) {
  const std::string text = withoutComments(migration) + "\n";
  std::vector<MigrationStatement> statements;
  std::size_t begin = 0;
  for (std::size_t end = text.find(";\n"); end != std::string::npos; end = text.find(";\n", begin)) {
    std::string statement = trimmed(std::string_view(text).substr(begin, end - begin));
    if (!statement.empty()) statements.push_back(statementFrom(std::move(statement)));
    begin = end + 2;
  }
  if (std::string rest = trimmed(std::string_view(text).substr(begin)); !rest.empty())
    statements.push_back(statementFrom(std::move(rest)));
  return statements;
}

}  // namespace tarebowl::store
