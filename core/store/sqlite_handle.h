// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <soci/soci.h>
#include <soci/sqlite3/soci-sqlite3.h>

namespace tarebowl::store {

/// SQLite's own handle of a session, for what SOCI does not offer; for core/store/sqlite_* only.
inline sqlite_api::sqlite3* handleOf(soci::session& session) {
  return static_cast<soci::sqlite3_session_backend*>(session.get_backend())->conn_;
}

}  // namespace tarebowl::store
