// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/engine_error.h"

namespace tarebowl::store {

EngineError meaningOf(const soci::soci_error& error) {
  if (auto meant = meaningInSqlite(error)) return *meant;
  if (auto meant = meaningInPostgresql(error)) return *meant;
  return {StoreErrorCode::Failed, "the collection could not be read or written", false};
}

}  // namespace tarebowl::store
