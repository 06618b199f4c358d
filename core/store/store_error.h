// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>

namespace tarebowl::store {

/// Why a collection cannot be opened, read or written.
enum class StoreErrorCode {
  NotFound,         ///< there is no such file
  AlreadyThere,     ///< a new collection would overwrite a file
  NotAFile,         ///< a folder or a device
  NoPermission,     ///< the file or its folder cannot be read or written
  NotACollection,   ///< another program's file, or no database at all
  TooNew,           ///< written by a newer Tarebowl; nothing was touched
  NeedsUpgrade,     ///< opened for reading only, and its schema is older than this program's
  Untrusted,        ///< holds triggers, views or tables that Tarebowl did not make
  Damaged,          ///< the file does not hold what it says it holds
  MigrationFailed,  ///< the schema could not be raised; the collection is as it was
  Busy,             ///< another window or command held the file for too long
  Gone,             ///< moved, deleted or replaced while it was open; nothing was written
  NoServer,         ///< the server does not answer, or hung up
  PasswordNeeded,   ///< the server asks for a password, or does not accept the one it was given
  DiskFull,
  DiskError,
  Conflict,  ///< the thing was changed elsewhere since it was read
  Refused,   ///< the collection's rules do not allow it: a code that is taken, a food that is in use
  Failed     ///< anything else, with the engine's own words
};

/// An error of the world. what() is one line: the file, or the address on a server, and what is the matter
/// with it.
class StoreError : public std::runtime_error {
 public:
  StoreError(StoreErrorCode code, std::filesystem::path file, std::string detail,
             std::optional<std::filesystem::path> backup = std::nullopt);
  [[nodiscard]] StoreErrorCode code() const { return code_; }
  [[nodiscard]] const std::filesystem::path& file() const { return file_; }
  [[nodiscard]] const std::string& detail() const { return detail_; }
  /// A sound copy made before, where one is known.
  [[nodiscard]] const std::optional<std::filesystem::path>& backup() const { return backup_; }

 private:
  StoreErrorCode code_;
  std::filesystem::path file_;
  std::string detail_;
  std::optional<std::filesystem::path> backup_;
};

/// An edit of something that was changed since it was read; nothing was written.
class ConflictError : public StoreError {
 public:
  /// mine: the refused version; theirs: what the collection holds now, empty where it was removed. Both JSON.
  ConflictError(std::filesystem::path file, std::string what, std::string mine, std::string theirs);
  [[nodiscard]] const std::string& mine() const { return mine_; }
  [[nodiscard]] const std::string& theirs() const { return theirs_; }

 private:
  std::string mine_;
  std::string theirs_;
};

}  // namespace tarebowl::store
