// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/server_setup.h"

#include "core/store/postgresql_connection.h"
#include "core/store/postgresql_failure.h"
#include "core/store/server_opening.h"

#include <fmt/format.h>
#include <libpq-fe.h>

#include <algorithm>

namespace tarebowl::store {

namespace {

namespace fs = std::filesystem;
using Text = std::unique_ptr<char, decltype(&PQfreemem)>;

void runAll(PostgresqlConnection& connection, const std::string& statements) {
  checked(PQexec(connection.handle(), statements.c_str()));
}

/// A name as SQL takes it whatever is in it.
std::string quoted(PostgresqlConnection& connection, const std::string& name) {
  const Text text(PQescapeIdentifier(connection.handle(), name.c_str(), name.size()), &PQfreemem);
  return text ? text.get() : "";
}

/// As the server keeps it: nobody reads it in the server's log.
std::string hashed(PostgresqlConnection& connection, const std::string& person, const std::string& password) {
  const Text hash(PQencryptPasswordConn(connection.handle(), password.c_str(), person.c_str(), nullptr),
                  &PQfreemem);
  if (!hash)
    throw StoreError(StoreErrorCode::Failed, connection.file(),
                     firstLineOf(PQerrorMessage(connection.handle())));
  return hash.get();
}

bool knows(PostgresqlConnection& connection, const std::string& person) {
  int count = 0;
  connection.sql() << "SELECT COUNT(*) FROM pg_catalog.pg_roles WHERE rolname = :person", soci::use(person),
      soci::into(count);
  return count > 0;
}

}  // namespace

bool upgradeServer(const fs::path& address, const OpenOptions& options) {
  return raiseServer(address, options, migrations());
}

void letIn(const fs::path& address, const OpenOptions& options, const std::string& person,
           std::string_view role, const std::optional<std::string>& newPassword) {
  if (std::ranges::find(kServerRoles, role) == kServerRoles.end())
    throw StoreError(StoreErrorCode::Refused, address, fmt::format("there is no role {}", role));
  const auto connection = connectToServer(address, options);
  guarded(address, [&] {
    WriteTransaction transaction(*connection);
    const std::string name = quoted(*connection, person);
    if (!knows(*connection, person)) {
      if (!newPassword)
        throw StoreError(StoreErrorCode::Refused, address,
                         fmt::format("the server does not know {}; somebody new needs a password", person));
      // The hash is of letters, digits and a few marks; none of them ends the text.
      runAll(*connection, fmt::format("CREATE ROLE {} LOGIN PASSWORD '{}'", name,
                                      hashed(*connection, person, *newPassword)));
    }
    runAll(*connection, fmt::format("GRANT tarebowl_{} TO {}", role, name));
    transaction.commit();
  });
}

bool isKnown(const fs::path& address, const OpenOptions& options, const std::string& person) {
  const auto connection = connectToServer(address, options);
  return guarded(address, [&] { return knows(*connection, person); });
}

}  // namespace tarebowl::store
