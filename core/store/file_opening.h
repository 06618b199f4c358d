// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/opening.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <span>
#include <string>

/// How a collection that is a file is made, opened and looked through. Every call throws StoreError.
namespace tarebowl::store {

class SqliteConnection;

/// An empty file that is marked as a collection, for what builds one in it.
[[nodiscard]] std::unique_ptr<SqliteConnection> newFile(const std::filesystem::path& file);

[[nodiscard]] Collection openFile(const std::filesystem::path& file, const std::string& at,
                                  const OpenOptions& options, std::span<const Migration> steps);

/// A file under this name that holds a new collection with what `fill` puts into it; it must not exist. It is
/// there when it is complete.
void createFile(const std::filesystem::path& file, std::span<const Migration> steps,
                const std::function<void(Collection::Inner&)>& fill);

/// Reads the whole file through; Damaged with the first thing found, and a sound backup where there is one.
void refuseDamagedFile(SqliteConnection& connection);

}  // namespace tarebowl::store
