// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/server_rights.h"

#include "core/store/postgresql_connection.h"
#include "core/store/postgresql_failure.h"

#include <libpq-fe.h>

#include <string>

namespace tarebowl::store {

void grantRights(PostgresqlConnection& connection) {
  checked(PQexec(connection.handle(), std::string(rightsSql()).c_str()));
}

}  // namespace tarebowl::store
