// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/opening.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <span>

/// How a collection on a server is made, opened and raised. Every call throws StoreError.
namespace tarebowl::store {

class PostgresqlConnection;

[[nodiscard]] std::unique_ptr<PostgresqlConnection> connectToServer(const std::filesystem::path& address,
                                                                    const OpenOptions& options);

/// An older schema is not raised on the way: other desks may be at work with it (NeedsUpgrade).
[[nodiscard]] Collection openServer(const std::filesystem::path& address, const OpenOptions& options,
                                    std::span<const Migration> steps);

/// A new collection in a database that has none, with its roles (server_rights.h) and what `fill` puts into
/// it, in one transaction. What stands in the database beside it is left alone.
void createServer(const std::filesystem::path& address, const OpenOptions& options,
                  std::span<const Migration> steps, const std::function<void(Collection::Inner&)>& fill);

/// Within a transaction: raises the schema, and says anew what each role may do; false where there was
/// nothing to raise. Throws StoreError (TooNew).
bool raiseOpened(PostgresqlConnection& connection, std::span<const Migration> steps);

/// Raises the schema while nobody writes, and says anew what each role may do, in one transaction; false
/// where there was nothing to raise.
bool raiseServer(const std::filesystem::path& address, const OpenOptions& options,
                 std::span<const Migration> steps);

}  // namespace tarebowl::store
