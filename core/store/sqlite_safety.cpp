// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_safety.h"

#include "core/store/opening.h"
#include "core/store/sqlite_connection.h"
#include "core/store/sqlite_handle.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <vector>

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

/// One line of a file's schema, with the text that made it. The engine holds names of triggers apart from
/// those of tables and indexes, and lines of any name and case may have been written in by hand.
struct Made {
  std::string kind;  ///< "table", "index", "trigger", "view"
  std::string name;
  std::string text;  ///< empty for the indexes that the engine makes by itself
};
using Schema = std::vector<Made>;

Schema schemaIn(soci::session& sql) {
  Schema schema;
  const soci::rowset<soci::row> rows =
      (sql.prepare << "SELECT COALESCE(type, ''), COALESCE(name, ''), COALESCE(sql, '') FROM sqlite_master");
  for (const soci::row& row : rows)
    schema.push_back({row.get<std::string>(0), row.get<std::string>(1), row.get<std::string>(2)});
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

/// Tables and indexes as the engine writes them down run nothing. Everything else may, when a file is read or
/// written.
bool runs(const Made& made) {
  const std::string_view text = made.text;
  if (made.kind == "table") return !text.starts_with("CREATE TABLE ");
  const bool isIndex =
      text.empty() || text.starts_with("CREATE INDEX ") || text.starts_with("CREATE UNIQUE INDEX ");
  return made.kind != "index" || !isIndex;
}

const Made* named(const Schema& schema, const Made& made) {
  const auto found = std::ranges::find_if(
      schema, [&](const Made& other) { return other.kind == made.kind && other.name == made.name; });
  return found == schema.end() ? nullptr : &*found;
}

[[noreturn]] void refuseMade(const fs::path& file, const Made& made) {
  throw StoreError(
      StoreErrorCode::Untrusted, file,
      fmt::format("holds the {} {}, which Tarebowl did not make; it was not opened, because it could run "
                  "what its maker wrote. What it holds can be copied out: tarebowl salvage",
                  made.kind, made.name));
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
  for (const Made& made : found) {
    const Made* own = named(ours, made);
    const bool isOurs = own != nullptr && own->text == made.text;
    if (!isOurs && (own != nullptr || runs(made))) refuseMade(connection.file(), made);
  }
  for (const Made& made : ours)
    if (made.kind != "index" && named(found, made) == nullptr)
      throw StoreError(StoreErrorCode::Damaged, connection.file(),
                       fmt::format("is damaged (the {} {} is missing)", made.kind, made.name));
}

}  // namespace tarebowl::store
