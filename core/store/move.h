// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace tarebowl::store {

struct MovedTable {
  std::string name{};
  std::size_t rows = 0;
  std::uint64_t checksum = 0;  ///< of all rows as both places hold them
};

struct MoveReport {
  std::vector<MovedTable> tables{};
  bool wasThere = false;  ///< an earlier move had come so far; it was looked through and brought to its end
  std::string aside{};    ///< where the collection lies that was moved: nothing of it was deleted
};

struct MoveOptions {
  OpenOptions opening{};                                    ///< of both places
  std::function<void(const MovedTable& table)> progress{};  ///< after each table
};

/// Moves a collection between a file and a server, or from one file or server to another. Nobody writes to it
/// meanwhile. The target comes to be as a whole, after every row of it was compared with the source's, or not
/// at all; then the source is set aside: a file among its backups, on a server under another schema. A move
/// that was interrupted between the two is brought to its end by moving again. Throws StoreError;
/// AlreadyThere where the target holds another collection.
MoveReport moveCollection(const std::filesystem::path& source, const std::filesystem::path& target,
                          const Author& author, const MoveOptions& options = {});

}  // namespace tarebowl::store
