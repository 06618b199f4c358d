// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"
#include "core/store/component_list.h"
#include "core/store/migration.h"
#include "core/store/sqlite_connection.h"

#include <span>

namespace tarebowl::store {

/// What a Collection holds, for the rooms of store.
class Collection::Inner {
 public:
  Inner(const std::filesystem::path& file, const OpenOptions& options);
  Inner(const std::filesystem::path& file, SqliteConnection::Access access,
        std::chrono::milliseconds patience);

  [[nodiscard]] static Collection wrap(std::unique_ptr<Inner> inner);
  [[nodiscard]] soci::session& sql() { return connection.sql(); }
  [[nodiscard]] const std::filesystem::path& file() const { return connection.file(); }

  SqliteConnection connection;
  ComponentList components;
  long long seenVersion = 0;
  /// When the file was last written, where nothing else tells that somebody wrote (SqliteConnection::Still).
  std::filesystem::file_time_type seenTime{};
};

/// As Collection::create and open, over another list of migrations: for tests.
[[nodiscard]] Collection createWith(const std::filesystem::path& file, const Author& author,
                                    const OpenOptions& options, std::span<const Migration> steps);
[[nodiscard]] Collection openWith(const std::filesystem::path& file, const std::string& at,
                                  const OpenOptions& options, std::span<const Migration> steps);

/// Raises the schema to the last of the steps, each in a transaction of its own.
void raiseSchema(SqliteConnection& connection, std::span<const Migration> steps);

}  // namespace tarebowl::store
