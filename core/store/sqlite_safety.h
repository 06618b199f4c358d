// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/migration.h"

#include <span>

namespace soci {
class session;
}

namespace tarebowl::store {

class SqliteConnection;

/// A collection may come from a stranger. What SQLite recommends for files of unknown origin
/// (https://www.sqlite.org/security.html): its schema is not trusted, no extension is loaded, pages are
/// looked at before they are believed, and limits are no wider than a collection needs.
void harden(soci::session& session);

/// Triggers, views and tables run code of the file's maker. Throws StoreError (Untrusted) where the file
/// holds a trigger, a view or a virtual table that the steps up to its version do not make, or where what
/// they make was changed. Plain tables and indexes beside ours are left alone: they run nothing.
void refuseForeignSchema(SqliteConnection& connection, std::span<const Migration> steps);

}  // namespace tarebowl::store
