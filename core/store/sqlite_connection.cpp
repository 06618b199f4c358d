// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_connection.h"

#include "core/store/named_places.h"
#include "core/store/sqlite_dialect.h"
#include "core/store/sqlite_handle.h"
#include "core/store/sqlite_header.h"
#include "core/store/sqlite_safety.h"
#include "core/store/sqlite_statement.h"

#include <fmt/format.h>

#include <cctype>
#include <utility>

namespace tarebowl::store {

namespace {

namespace fs = std::filesystem;
using namespace sqlite_api;  // SOCI brings SQLite's own header in this namespace

constexpr int kPagesAStep = 4096;
constexpr int kPatienceAStepMs = 50;
constexpr int kStepsOfPatience = 200;

/// As a URI of SQLite, which promises that nobody writes the file meanwhile, so that no lock or journal is
/// looked for beside it.
std::string stillUri(const fs::path& file) {
  std::string uri = "file:";
  for (const char c : fs::absolute(file).string()) {
    const auto byte = static_cast<unsigned char>(c);
    if (std::isalnum(byte) != 0 || c == '/' || c == '.' || c == '-' || c == '_')
      uri += c;
    else
      uri += fmt::format("%{:02X}", byte);
  }
  return "db=\"" + uri + "?mode=ro&immutable=1\"";
}

/// SOCI takes options as key="value"; a path without "=" may stand alone and hold any character.
std::string connectString(const fs::path& file) {
  std::string path = file.string();
  if (path.find('=') == std::string::npos) return path;
  if (path.find('"') == std::string::npos) return "db=\"" + path + "\"";
  throw StoreError(StoreErrorCode::Failed, file, "a path with both = and \" cannot be opened; rename it");
}

/// Before the first connection is opened. Each serves the thread that opened it and no other, so the engine
/// need not lock it at each of the many columns that years of bowls have; nor need it count, under a lock
/// that all threads share, how much memory it has. Pages are kept in one piece: on a thread that is not the
/// first one, the C library asks the system anew for almost every page.
void setUpEngine() {
  constexpr int kPagesAtFirst = 512;  // 2 MB: what a day of a large collection reads
  [[maybe_unused]] static const bool kDone = [] {
    sqlite3_config(SQLITE_CONFIG_MULTITHREAD);
    sqlite3_config(SQLITE_CONFIG_MEMSTATUS, 0);
    sqlite3_config(SQLITE_CONFIG_PAGECACHE, nullptr, 0, kPagesAtFirst);
    return true;
  }();
}

fs::file_time_type timeOf(const fs::path& file) {
  std::error_code error;
  const auto time = fs::last_write_time(file, error);
  return error ? fs::file_time_type{} : time;
}

template <class T>
T ask(soci::session& session, const std::string& statement) {
  T answer{};
  session << statement, soci::into(answer);
  return answer;
}

}  // namespace

SqliteConnection::SqliteConnection(fs::path file, Access access, std::chrono::milliseconds patience)
    : Connection(std::move(file), access), patience_(patience) {
  setUpEngine();
  if (access == Access::Still) seenTime_ = timeOf(this->file());
  guarded(this->file(), [&] {
    sql().open(soci::sqlite3, access == Access::Still ? stillUri(this->file()) : connectString(this->file()));
    setUp();
  });
}

std::unique_ptr<EngineStatement> SqliteConnection::prepare(const std::string& statement) {
  return std::make_unique<SqliteStatement>(sql(), withBarePlaces(statement));
}

std::vector<std::string> SqliteConnection::translated(std::string_view migration) const {
  return toSqlite(migration);
}

void SqliteConnection::setUp() {
  harden(sql());
  sql() << fmt::format("PRAGMA busy_timeout = {}", patience_.count());
  sql() << "PRAGMA foreign_keys = ON";
  sql() << "PRAGMA synchronous = FULL";
  if (access() != Access::ReadWrite) sql() << "PRAGMA query_only = ON";
}

void SqliteConnection::takeUpAgain() {
  guarded(file(), [&] {
    sql().reconnect();
    setUp();
    seenVersion_ = dataVersion();
  });
}

bool SqliteConnection::heardOfWrite() {
  if (access() == Access::Still) {
    const auto time = timeOf(file());
    if (std::exchange(seenTime_, time) == time) return false;
    takeUpAgain();
    return true;
  }
  const long long version = dataVersion();
  return std::exchange(seenVersion_, version) != version;
}

/// It is begun with the first that is read, and spares the locks of each statement.
bool SqliteConnection::beginReading() {
  if (hasNoSession()) return false;
  sqlite3* const handle = handleOf(sql());
  return sqlite3_get_autocommit(handle) != 0 &&
         sqlite3_exec(handle, "BEGIN", nullptr, nullptr, nullptr) == SQLITE_OK;
}

void SqliteConnection::endReading() noexcept {
  // Nothing was written; after an error the engine may have ended it by itself.
  sqlite3_exec(handleOf(sql()), "ROLLBACK", nullptr, nullptr, nullptr);
}

void SqliteConnection::beginWriting() {
  sql() << "BEGIN IMMEDIATE";
}

void SqliteConnection::commit() {
  sql() << "COMMIT";
}

int SqliteConnection::schemaVersion() {
  return ask<int>(sql(), "PRAGMA user_version");
}

void SqliteConnection::setSchemaVersion(int version) {
  sql() << fmt::format("PRAGMA user_version = {}", version);
}

void SqliteConnection::markAsCollection() {
  sql() << fmt::format("PRAGMA application_id = {}", kApplicationId);
}

void SqliteConnection::keepLog() {
  if (ask<std::string>(sql(), "PRAGMA journal_mode = WAL") != "wal")
    throw StoreError(StoreErrorCode::NoPermission, file(), "the file or its folder cannot be written");
}

bool SqliteConnection::emptyLog() {
  return guarded(file(), [&] { return ask<int>(sql(), "PRAGMA wal_checkpoint(TRUNCATE)") == 0; });
}

long long SqliteConnection::dataVersion() {
  return ask<long long>(sql(), "PRAGMA data_version");
}

bool SqliteConnection::isReadOnly() {
  return sqlite3_db_readonly(handleOf(sql()), "main") != 0;
}

/// SOCI has none after it tried in vain to open the file again.
bool SqliteConnection::hasNoSession() {
  return sql().get_backend() == nullptr;
}

bool SqliteConnection::isLost() {
  if (hasNoSession()) return true;
  int moved = 0;
  sqlite3_file_control(handleOf(sql()), "main", SQLITE_FCNTL_HAS_MOVED, &moved);
  return moved != 0;
}

std::optional<std::string> SqliteConnection::firstDamage(Depth depth) {
  const char* const check = depth == Depth::Quick ? "PRAGMA quick_check(1)" : "PRAGMA integrity_check(1)";
  if (auto finding = ask<std::string>(sql(), check); finding != "ok") return finding;
  if (depth == Depth::Quick) return std::nullopt;
  const soci::rowset<soci::row> orphans = (sql().prepare << "PRAGMA foreign_key_check");
  if (orphans.begin() != orphans.end()) return "a row refers to one that is missing";
  return std::nullopt;
}

void SqliteConnection::refuseLost() {
  if (!isLost()) return;
  throw StoreError(
      StoreErrorCode::Gone, file(),
      "was moved, deleted or replaced while it was open; nothing was written. Put it back where it "
      "was, or open it anew");
}

void SqliteConnection::copyTo(const fs::path& copy) {
  const std::string path = copy.string();
  sql() << "VACUUM INTO :path", soci::use(path);
}

void SqliteConnection::takeContentOf(SqliteConnection& source) {
  sqlite3* const to = handleOf(sql());
  sqlite3_backup* const backup = sqlite3_backup_init(to, "main", handleOf(source.sql()), "main");
  int result = backup != nullptr ? SQLITE_OK : sqlite3_errcode(to);
  for (int wait = 0; result == SQLITE_OK || (result == SQLITE_BUSY && wait < kStepsOfPatience);) {
    result = sqlite3_backup_step(backup, kPagesAStep);
    if (result == SQLITE_BUSY || result == SQLITE_LOCKED) {
      ++wait;
      sqlite3_sleep(kPatienceAStepMs);
    }
  }
  const int end = sqlite3_backup_finish(backup);
  if (result == SQLITE_DONE) result = end;
  if (result == SQLITE_OK) return;
  throw soci::sqlite3_soci_error(sqlite3_errstr(result), result);
}

}  // namespace tarebowl::store
