// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_safety.h"

#include "core/store/opening.h"
#include "core/store/sqlite_handle.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>

namespace tarebowl::store {

namespace {

namespace fs = std::filesystem;
using namespace sqlite_api;  // SOCI brings SQLite's own header in this namespace

struct Limit {
  int what;
  int most;
};

// Far above what the program writes: a text or a row of 100 MB, a statement of 1 MB.
constexpr std::array kLimits{Limit{SQLITE_LIMIT_LENGTH, 100'000'000},
                             Limit{SQLITE_LIMIT_SQL_LENGTH, 1'000'000},
                             Limit{SQLITE_LIMIT_COLUMN, 200},
                             Limit{SQLITE_LIMIT_EXPR_DEPTH, 200},
                             Limit{SQLITE_LIMIT_COMPOUND_SELECT, 20},
                             Limit{SQLITE_LIMIT_VDBE_OP, 100'000},
                             Limit{SQLITE_LIMIT_FUNCTION_ARG, 20},
                             Limit{SQLITE_LIMIT_ATTACHED, 1},  // a copy attaches the file it makes
                             Limit{SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 10'000},
                             Limit{SQLITE_LIMIT_VARIABLE_NUMBER, 1'000},
                             Limit{SQLITE_LIMIT_TRIGGER_DEPTH, 5},
                             Limit{SQLITE_LIMIT_WORKER_THREADS, 0}};

struct Switch {
  int what;
  int on;
};

constexpr std::array kSwitches{
    Switch{SQLITE_DBCONFIG_DEFENSIVE, 1}, Switch{SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0},
    Switch{SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0}, Switch{SQLITE_DBCONFIG_ENABLE_FTS3_TOKENIZER, 0},
    Switch{SQLITE_DBCONFIG_ENABLE_VIEW, 0}};  // we have none

/// Everything that a file's schema names, with the text that made it.
struct Made {
  std::string kind;  ///< "table", "index", "trigger", "view"
  std::string text;
};
using Schema = std::map<std::string, Made>;

Schema schemaIn(soci::session& sql) {
  Schema schema;
  const soci::rowset<soci::row> rows =
      (sql.prepare
       << "SELECT name, type, COALESCE(sql, '') FROM sqlite_master WHERE name NOT LIKE 'sqlite\\_%' "
          "ESCAPE '\\'");
  for (const soci::row& row : rows)
    schema[row.get<std::string>(0)] = {row.get<std::string>(1), row.get<std::string>(2)};
  return schema;
}

std::span<const Migration> upTo(int version, std::span<const Migration> steps) {
  const auto end = std::ranges::find_if(steps, [&](const Migration& step) { return step.number > version; });
  return steps.first(static_cast<std::size_t>(end - steps.begin()));
}

/// As the engine itself makes it of the steps, in memory.
Schema schemaOf(std::span<const Migration> steps) {
  SqliteConnection made(":memory:", SqliteConnection::Access::ReadWrite, std::chrono::milliseconds(0));
  raiseSchema(made, steps);
  return schemaIn(made.sql());
}

/// What runs something that its maker wrote, when a file is read or written.
bool runs(const Made& made) {
  return made.kind == "trigger" || made.kind == "view" || made.text.starts_with("CREATE VIRTUAL");
}

[[noreturn]] void refuseMade(const fs::path& file, const std::string& kind, const std::string& name) {
  throw StoreError(
      StoreErrorCode::Untrusted, file,
      fmt::format("holds the {} {}, which Tarebowl did not make; it was not opened, because it could run "
                  "what its maker wrote. What it holds can be copied out: tarebowl salvage",
                  kind, name));
}

}  // namespace

void harden(soci::session& session) {
  sqlite3* const handle = handleOf(session);
  for (const Limit& limit : kLimits) sqlite3_limit(handle, limit.what, limit.most);
  for (const Switch& entry : kSwitches)
    sqlite3_db_config(handle, entry.what, entry.on, static_cast<int*>(nullptr));
  session << "PRAGMA cell_size_check = ON";
}

void refuseForeignSchema(SqliteConnection& connection, std::span<const Migration> steps) {
  const Schema ours = schemaOf(upTo(connection.schemaVersion(), steps));
  const Schema found = schemaIn(connection.sql());
  for (const auto& [name, made] : found) {
    const auto own = ours.find(name);
    const bool isOurs = own != ours.end() && own->second.text == made.text;
    if (!isOurs && (own != ours.end() || runs(made))) refuseMade(connection.file(), made.kind, name);
  }
  for (const auto& [name, made] : ours)
    if (made.kind != "index" && !found.contains(name))
      throw StoreError(StoreErrorCode::Damaged, connection.file(),
                       fmt::format("is damaged (the {} {} is missing)", made.kind, name));
}

}  // namespace tarebowl::store
