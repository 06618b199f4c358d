// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_file.h"

#include "core/store/sqlite_handle.h"
#include "core/store/store_error.h"

#include <fmt/format.h>

#include <cerrno>
#include <cstddef>
#include <cstring>
#include <string>
#include <vector>

namespace tarebowl::store {

using namespace sqlite_api;  // SOCI brings SQLite's own header in this namespace

struct SqliteFile::Inner {
  explicit Inner(const std::filesystem::path& named) : path(named), name(named.string()) {
    sqlite3_initialize();
    sqlite3_vfs* const disk = sqlite3_vfs_find(nullptr);
    room.resize(static_cast<std::size_t>(disk->szOsFile) / sizeof(std::max_align_t) + 1);
    const int told =
        disk->xOpen(disk, name.c_str(), file(), SQLITE_OPEN_READONLY | SQLITE_OPEN_MAIN_DB, nullptr);
    if (told == SQLITE_OK) return;
    const int why = errno;
    close();
    throw StoreError(StoreErrorCode::NoPermission, path,
                     fmt::format("cannot be opened: {}", std::strerror(why)));
  }
  ~Inner() { close(); }
  Inner(const Inner&) = delete;
  Inner& operator=(const Inner&) = delete;

  [[nodiscard]] sqlite3_file* file() { return reinterpret_cast<sqlite3_file*>(room.data()); }
  void close() {
    if (file()->pMethods != nullptr) file()->pMethods->xClose(file());
    file()->pMethods = nullptr;
  }
  [[noreturn]] void cannotRead() const {
    throw StoreError(StoreErrorCode::DiskError, path, "cannot be read");
  }

  std::filesystem::path path;
  std::string name;                    ///< the engine keeps no copy of it
  std::vector<std::max_align_t> room;  ///< in which the engine keeps its file
};

SqliteFile::SqliteFile(const std::filesystem::path& file) : inner_(std::make_unique<Inner>(file)) {}
SqliteFile::~SqliteFile() = default;

std::uint64_t SqliteFile::size() const {
  sqlite3_int64 size = 0;
  if (inner_->file()->pMethods->xFileSize(inner_->file(), &size) != SQLITE_OK) inner_->cannotRead();
  return static_cast<std::uint64_t>(size);
}

void SqliteFile::read(std::uint64_t offset, std::span<char> bytes) const {
  const int told = inner_->file()->pMethods->xRead(
      inner_->file(), bytes.data(), static_cast<int>(bytes.size()), static_cast<sqlite3_int64>(offset));
  if (told != SQLITE_OK) inner_->cannotRead();
}

}  // namespace tarebowl::store
