// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_safety.h"

#include "core/store/sqlite_connection.h"
#include "core/store/sqlite_handle.h"
#include "core/store/sqlite_schema.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

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

std::span<const Migration> upTo(int version, std::span<const Migration> steps) {
  const auto end = std::ranges::find_if(steps, [&](const Migration& step) { return step.number > version; });
  return steps.first(static_cast<std::size_t>(end - steps.begin()));
}

/// Tables and indexes as the engine writes them down run nothing. Everything else may, when a file is read or
/// written.
bool runs(const SchemaLine& made) {
  const std::string_view text = made.text;
  if (made.kind == "table") return !text.starts_with("CREATE TABLE ");
  const bool isIndex =
      text.empty() || text.starts_with("CREATE INDEX ") || text.starts_with("CREATE UNIQUE INDEX ");
  return made.kind != "index" || !isIndex;
}

const SchemaLine* named(const SqliteSchema& schema, const SchemaLine& made) {
  const auto found = std::ranges::find_if(
      schema, [&](const SchemaLine& other) { return other.kind == made.kind && other.name == made.name; });
  return found == schema.end() ? nullptr : &*found;
}

/// Of what was found, the first that is not ours and may run something, or that was changed.
const SchemaLine* firstForeign(const SqliteSchema& found, const SqliteSchema& ours) {
  const auto foreign = std::ranges::find_if(found, [&](const SchemaLine& made) {
    const SchemaLine* own = named(ours, made);
    return own != nullptr ? own->text != made.text : runs(made);
  });
  return foreign == found.end() ? nullptr : &*foreign;
}

const SchemaLine* firstMissing(const SqliteSchema& found, const SqliteSchema& ours) {
  const auto missing = std::ranges::find_if(
      ours, [&](const SchemaLine& made) { return made.kind != "index" && named(found, made) == nullptr; });
  return missing == ours.end() ? nullptr : &*missing;
}

bool isOurs(const SqliteSchema& found, const SqliteSchema& ours) {
  return firstForeign(found, ours) == nullptr && firstMissing(found, ours) == nullptr;
}

[[noreturn]] void refuseMade(const fs::path& file, const SchemaLine& made) {
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
  const auto own = upTo(connection.schemaVersion(), steps);
  const SqliteSchema found = schemaIn(connection.sql());
  // Whoever opens a collection need not wait for the engine to make another one beside it.
  if (const auto written = schemaWrittenBy(own); written && isOurs(found, *written)) return;
  const SqliteSchema ours = schemaMadeBy(own);
  if (const SchemaLine* foreign = firstForeign(found, ours)) refuseMade(connection.file(), *foreign);
  if (const SchemaLine* missing = firstMissing(found, ours))
    throw StoreError(StoreErrorCode::Damaged, connection.file(),
                     fmt::format("is damaged (the {} {} is missing)", missing->kind, missing->name));
}

}  // namespace tarebowl::store
