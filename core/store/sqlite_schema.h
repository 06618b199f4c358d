// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/migration.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace soci {
class session;
}

namespace tarebowl::store {

/// One line of a file's schema, as SQLite keeps it. The engine holds names of triggers apart from those of
/// tables and indexes, and lines of any name and case may have been written in by hand.
struct SchemaLine {
  std::string kind{};  ///< "table", "index", "trigger", "view"
  std::string name{};
  /// Of the statement that made it; empty for the indexes that the engine makes by itself.
  std::string text{};
};
using SqliteSchema = std::vector<SchemaLine>;

[[nodiscard]] SqliteSchema schemaIn(soci::session& sql);

/// What the steps end with, as the engine itself makes it of them, in memory: some ten milliseconds.
[[nodiscard]] SqliteSchema schemaMadeBy(std::span<const Migration> steps);

/// The same from the statements alone, but for the indexes that the engine makes by itself. Nothing where a
/// statement does what this does not follow.
[[nodiscard]] std::optional<SqliteSchema> schemaWrittenBy(std::span<const Migration> steps);

}  // namespace tarebowl::store
