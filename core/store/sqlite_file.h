// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <span>

namespace tarebowl::store {

/// The bytes of a database file, read without opening it as a database, but by the engine's own way to the
/// disk. A process that closes a file of its own loses all of its locks on it, those of the engine's
/// connections among them (https://www.sqlite.org/howtocorrupt.html, 2.2): another process then takes itself
/// for the last one and takes the log away beneath a connection that still writes to it. The engine closes a
/// file only when no connection of the process holds a lock on it.
class SqliteFile {
 public:
  /// Throws StoreError (NoPermission) where it cannot be opened.
  explicit SqliteFile(const std::filesystem::path& file);
  ~SqliteFile();
  SqliteFile(const SqliteFile&) = delete;
  SqliteFile& operator=(const SqliteFile&) = delete;

  [[nodiscard]] std::uint64_t size() const;
  /// Throws StoreError (DiskError) where it cannot be read so far. Within size().
  void read(std::uint64_t offset, std::span<char> bytes) const;

 private:
  struct Inner;
  std::unique_ptr<Inner> inner_;
};

}  // namespace tarebowl::store
