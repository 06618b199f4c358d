// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_connection.h"

#include "core/store/sqlite_handle.h"
#include "core/store/sqlite_header.h"
#include "core/store/sqlite_safety.h"

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

StoreErrorCode codeOf(int result) {
  switch (result & 0xff) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      return StoreErrorCode::Busy;
    case SQLITE_FULL:
      return StoreErrorCode::DiskFull;
    case SQLITE_IOERR:
      return StoreErrorCode::DiskError;
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
      return StoreErrorCode::Damaged;
    case SQLITE_READONLY:
    case SQLITE_CANTOPEN:
    case SQLITE_PERM:
    case SQLITE_AUTH:
      return StoreErrorCode::NoPermission;
    case SQLITE_CONSTRAINT:
      return StoreErrorCode::Refused;
    default:
      return StoreErrorCode::Failed;
  }
}

std::string_view meaningOf(StoreErrorCode code) {
  switch (code) {
    case StoreErrorCode::Busy:
      return "is being written by another window or command";
    case StoreErrorCode::DiskFull:
      return "cannot be written: the disk is full";
    case StoreErrorCode::DiskError:
      return "cannot be read or written: the disk reports an error";
    case StoreErrorCode::Damaged:
      return "is damaged";
    case StoreErrorCode::NoPermission:
      return "the file or its folder cannot be written";
    case StoreErrorCode::Refused:
      return "the change breaks a rule of the collection";
    default:
      return "the collection could not be read or written";
  }
}

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

/// A connection serves the thread that opened it and no other, so the engine need not lock it at each of the
/// many columns that years of bowls have. Before the first one is opened.
void leaveOutLocks() {
  [[maybe_unused]] static const int kDone = sqlite3_config(SQLITE_CONFIG_MULTITHREAD);
}

template <class T>
T ask(soci::session& session, const std::string& statement) {
  T answer{};
  session << statement, soci::into(answer);
  return answer;
}

}  // namespace

void rethrow(const fs::path& file, const soci::soci_error& error) {
  const auto* engine = dynamic_cast<const soci::sqlite3_soci_error*>(&error);
  const StoreErrorCode code = engine ? codeOf(engine->result()) : StoreErrorCode::Failed;
  const bool isClear = code == StoreErrorCode::NoPermission || code == StoreErrorCode::Busy ||
                       code == StoreErrorCode::DiskFull || code == StoreErrorCode::Damaged;
  throw StoreError(
      code, file,
      isClear ? std::string(meaningOf(code)) : fmt::format("{} ({})", meaningOf(code), error.what()));
}

bool isRefusal(const soci::soci_error& error) {
  const auto* engine = dynamic_cast<const soci::sqlite3_soci_error*>(&error);
  return engine != nullptr && codeOf(engine->result()) == StoreErrorCode::Refused;
}

SqliteConnection::SqliteConnection(fs::path file, Access access, std::chrono::milliseconds patience)
    : file_(std::move(file)), access_(access), patience_(patience) {
  leaveOutLocks();
  guarded(file_, [&] {
    session_.open(soci::sqlite3, access_ == Access::Still ? stillUri(file_) : connectString(file_));
    setUp();
  });
}

void SqliteConnection::setUp() {
  harden(session_);
  session_ << fmt::format("PRAGMA busy_timeout = {}", patience_.count());
  session_ << "PRAGMA foreign_keys = ON";
  session_ << "PRAGMA synchronous = FULL";
  if (access_ != Access::ReadWrite) session_ << "PRAGMA query_only = ON";
}

void SqliteConnection::readAnew() {
  session_.reconnect();
  setUp();
}

int SqliteConnection::schemaVersion() {
  return ask<int>(session_, "PRAGMA user_version");
}

void SqliteConnection::setSchemaVersion(int version) {
  session_ << fmt::format("PRAGMA user_version = {}", version);
}

void SqliteConnection::markAsCollection() {
  session_ << fmt::format("PRAGMA application_id = {}", kApplicationId);
}

void SqliteConnection::keepLog() {
  if (ask<std::string>(session_, "PRAGMA journal_mode = WAL") != "wal")
    throw StoreError(StoreErrorCode::NoPermission, file_, "the file or its folder cannot be written");
}

bool SqliteConnection::emptyLog() {
  return guarded(file_, [&] { return ask<int>(session_, "PRAGMA wal_checkpoint(TRUNCATE)") == 0; });
}

long long SqliteConnection::dataVersion() {
  return ask<long long>(session_, "PRAGMA data_version");
}

bool SqliteConnection::isReadOnly() {
  return sqlite3_db_readonly(handleOf(session_), "main") != 0;
}

bool SqliteConnection::hasLostFile() {
  int moved = 0;
  sqlite3_file_control(handleOf(session_), "main", SQLITE_FCNTL_HAS_MOVED, &moved);
  return moved != 0;
}

std::optional<std::string> SqliteConnection::firstDamage(Depth depth) {
  const char* const check = depth == Depth::Quick ? "PRAGMA quick_check(1)" : "PRAGMA integrity_check(1)";
  if (auto finding = ask<std::string>(session_, check); finding != "ok") return finding;
  if (depth == Depth::Quick) return std::nullopt;
  const soci::rowset<soci::row> orphans = (session_.prepare << "PRAGMA foreign_key_check");
  if (orphans.begin() != orphans.end()) return "a row refers to one that is missing";
  return std::nullopt;
}

void SqliteConnection::refuseLostFile() {
  if (!hasLostFile()) return;
  throw StoreError(
      StoreErrorCode::Gone, file_,
      "was moved, deleted or replaced while it was open; nothing was written. Put it back where it "
      "was, or open it anew");
}

void SqliteConnection::copyTo(const fs::path& copy) {
  const std::string path = copy.string();
  session_ << "VACUUM INTO :path", soci::use(path);
}

void SqliteConnection::takeContentOf(SqliteConnection& source) {
  sqlite3* const to = handleOf(session_);
  sqlite3_backup* const backup = sqlite3_backup_init(to, "main", handleOf(source.session_), "main");
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
  const StoreErrorCode code = codeOf(result);
  throw StoreError(code, file_, fmt::format("{} ({})", meaningOf(code), sqlite3_errstr(result)));
}

WriteTransaction::WriteTransaction(SqliteConnection& connection)
    : connection_(connection), inner_(connection.isWriting_) {
  if (connection.access() != SqliteConnection::Access::ReadWrite)
    throw StoreError(StoreErrorCode::NoPermission, connection.file(),
                     "is open for reading only; nothing was written");
  connection.refuseLostFile();
  connection.sql() << (inner_ ? "SAVEPOINT part" : "BEGIN IMMEDIATE");
  connection.isWriting_ = true;
}

WriteTransaction::~WriteTransaction() {
  if (!open_) return;
  connection_.isWriting_ = inner_;
  try {
    connection_.sql() << (inner_ ? "ROLLBACK TO part" : "ROLLBACK");
    if (inner_) connection_.sql() << "RELEASE part";
  } catch (const soci::soci_error&) {  // NOLINT(bugprone-empty-catch): the engine has rolled back by itself
  }
}

void WriteTransaction::commit() {
  if (!inner_) connection_.refuseLostFile();
  connection_.sql() << (inner_ ? "RELEASE part" : "COMMIT");
  connection_.isWriting_ = inner_;
  open_ = false;
}

}  // namespace tarebowl::store
