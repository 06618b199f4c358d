// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/engine_error.h"
#include "core/store/sqlite_handle.h"

#include <string_view>

namespace tarebowl::store {

namespace {

using namespace sqlite_api;  // SOCI brings SQLite's own header in this namespace

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

std::string_view wordsFor(StoreErrorCode code) {
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

}  // namespace

std::optional<EngineError> meaningInSqlite(const soci::soci_error& error) {
  const auto* engine = dynamic_cast<const soci::sqlite3_soci_error*>(&error);
  if (engine == nullptr) return std::nullopt;
  const StoreErrorCode code = codeOf(engine->result());
  const bool isClear = code == StoreErrorCode::NoPermission || code == StoreErrorCode::Busy ||
                       code == StoreErrorCode::DiskFull || code == StoreErrorCode::Damaged;
  return EngineError{code, std::string(wordsFor(code)), isClear};
}

}  // namespace tarebowl::store
