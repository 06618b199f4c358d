// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace tarebowl::store {

class PostgresqlConnection;

/// Makes the roles (server_setup.h) where they are missing, and says anew what each may do. Inside a write
/// transaction, after the schema was made or raised.
void grantRights(PostgresqlConnection& connection);

/// server/rights.sql, compiled in.
[[nodiscard]] std::string_view rightsSql();

}  // namespace tarebowl::store
