// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store_error.h"

#include <soci/soci.h>

#include <optional>
#include <string>

namespace tarebowl::store {

/// What an error of an engine means for a collection.
struct EngineError {
  StoreErrorCode code = StoreErrorCode::Failed;
  std::string words{};
  bool isClear = false;  ///< nobody needs the engine's own words beside these
};

[[nodiscard]] EngineError meaningOf(const soci::soci_error& error);

/// Of each engine: nothing for an error of another.
[[nodiscard]] std::optional<EngineError> meaningInSqlite(const soci::soci_error& error);
[[nodiscard]] std::optional<EngineError> meaningInPostgresql(const soci::soci_error& error);

}  // namespace tarebowl::store
