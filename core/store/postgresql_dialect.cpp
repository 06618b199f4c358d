// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/postgresql_dialect.h"

#include "core/store/migration_statements.h"
#include "core/store/named_places.h"

#include <fmt/format.h>

#include <array>
#include <cctype>
#include <regex>

namespace tarebowl::store {

namespace {

struct TypeWord {
  const char* common;
  const char* here;
};

constexpr std::array kTypes{TypeWord{R"(\bINTEGER\b)", "BIGINT"}, TypeWord{R"(\bREAL\b)", "DOUBLE PRECISION"},
                            TypeWord{R"(\bTEXT\b)", "TEXT COLLATE \"C\""}};

std::string withTypes(std::string text) {
  for (const TypeWord& type : kTypes) text = std::regex_replace(text, std::regex(type.common), type.here);
  return text;
}

void addTriggers(const std::string& table, std::vector<std::string>& statements) {
  statements.emplace_back(
      "CREATE OR REPLACE FUNCTION refuse_change() RETURNS TRIGGER LANGUAGE plpgsql AS $body$ BEGIN "
      "RAISE EXCEPTION '% is append-only', TG_TABLE_NAME USING ERRCODE = 'restrict_violation'; END $body$");
  statements.push_back(fmt::format(
      "CREATE TRIGGER {0}_keeps BEFORE UPDATE OR DELETE ON {0} FOR EACH ROW EXECUTE FUNCTION refuse_change()",
      table));
  statements.push_back(
      fmt::format("CREATE TRIGGER {0}_keeps_all BEFORE TRUNCATE ON {0} FOR EACH STATEMENT EXECUTE FUNCTION "
                  "refuse_change()",
                  table));
}

bool isDigit(char c) {
  return std::isdigit(static_cast<unsigned char>(c)) != 0;
}

}  // namespace

std::vector<std::string> toPostgresql(std::string_view migration) {
  std::vector<std::string> statements;
  for (const MigrationStatement& statement : statementsOf(migration)) {
    if (statement.table.empty()) {
      statements.push_back(statement.text);
      continue;
    }
    statements.push_back(withTypes(statement.text));
    if (statement.appendOnly) addTriggers(statement.table, statements);
  }
  return statements;
}

std::string withNumberedPlaces(std::string_view statement) {
  const std::string bare = withBarePlaces(statement);
  std::string made;
  int next = 0;
  bool quoted = false;
  for (std::size_t i = 0; i < bare.size(); ++i) {
    if (bare[i] == '\'') quoted = !quoted;
    if (bare[i] != '?' || quoted) {
      made += bare[i];
      continue;
    }
    made += '$';
    if (i + 1 == bare.size() || !isDigit(bare[i + 1])) made += std::to_string(++next);
  }
  return made;
}

}  // namespace tarebowl::store
