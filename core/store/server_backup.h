// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <filesystem>
#include <string>

/// Backups of a collection on a server, by PostgreSQL's own pg_dump and pg_restore, which must be found here
/// and be no older than the server. A password goes to them by the environment, never by the command line.
namespace tarebowl::store {

/// Writes the collection, as it is at one moment, into a new file, and looks through what was written;
/// whoever writes meanwhile goes on. For whoever set the collection up: the tables' owner. Throws StoreError;
/// no half-written file is left.
void dumpServer(const std::filesystem::path& address, const OpenOptions& options,
                const std::filesystem::path& file);

/// Refuses a file that is no whole dump of a collection. Throws StoreError.
void refuseUnsoundDump(const std::filesystem::path& dump);

/// Puts a dump into the database, in the place of the collection there, which is set aside under another
/// schema and not deleted; one of an older schema is raised, and what each role may do is said anew. Where
/// something fails, the former collection is in its place again. Returns the schema in which it lies
/// otherwise; empty where there was none. Throws StoreError.
std::string restoreServer(const std::filesystem::path& address, const OpenOptions& options,
                          const std::filesystem::path& dump, const Author& author);

}  // namespace tarebowl::store
