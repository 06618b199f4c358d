// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <filesystem>
#include <string>

/// Collections on a server that gave way to a backup: each lies whole under a schema of its own.
namespace tarebowl::store {

class Connection;

/// How schemas begin in which collections lie that were moved elsewhere (move.h).
inline constexpr const char* kMovedAway = "tarebowl_moved_";

/// The name of a schema for what is set aside at a moment: "20261126T190000Z", in small letters.
[[nodiscard]] std::string schemaNamedAfter(const std::string& prefix, const std::string& at);

/// Sets the collection aside; returns the schema in which it lies then, empty where there was none. Whoever
/// has it open is told that it is gone. Inside guarded().
[[nodiscard]] std::string setFormerAside(Connection& connection, const std::string& at);

/// Of a database without a collection: the schema of the one that gave way to a backup which never came;
/// empty where there is none, or where the last one was moved elsewhere. Inside guarded().
[[nodiscard]] std::string leftByRestore(Connection& connection);

struct UndoneRestore {
  std::string former{};  ///< the schema whose collection is in its place again
  std::string aside{};   ///< the schema of what stood there meanwhile; empty where nothing did
};

/// Puts the collection that was set aside last in its place again: after a restore that died on its way, or
/// that brought back the wrong day. What stands there is set aside in turn, so that doing it twice changes
/// nothing. Throws StoreError (NotFound where none was set aside).
UndoneRestore undoRestore(const std::filesystem::path& address, const OpenOptions& options,
                          const Author& author);

}  // namespace tarebowl::store
