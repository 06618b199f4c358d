// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/server_opening.h"

#include "core/store/former_collection.h"
#include "core/store/postgresql_connection.h"
#include "core/store/server_rights.h"

#include <fmt/format.h>

#include <utility>

namespace tarebowl::store {

namespace {

namespace fs = std::filesystem;
using Access = OpenOptions::Access;

/// How a database stands to whoever opens it, in one way there and back.
struct Standing {
  int isClosed = 0;  ///< nobody has let them in
  int hasState = 0;
  int mayWrite = 0;
};

Standing standingOf(Connection& connection) {
  Standing standing;
  connection.sql()
      << "SELECT CASE WHEN n.oid IS NOT NULL AND NOT has_schema_privilege(n.oid, 'USAGE') THEN 1 ELSE "
         "0 END, CASE WHEN s.oid IS NULL THEN 0 ELSE 1 END, CASE WHEN l.oid IS NOT NULL AND "
         "has_table_privilege(l.oid, 'INSERT') THEN 1 ELSE 0 END FROM (SELECT 1) AS one LEFT JOIN "
         "pg_catalog.pg_namespace n ON n.nspname = 'tarebowl' LEFT JOIN pg_catalog.pg_class s ON "
         "s.relnamespace = n.oid AND s.relname = 'collection_state' LEFT JOIN pg_catalog.pg_class l ON "
         "l.relnamespace = n.oid AND l.relname = 'change_log'",
      soci::into(standing.isClosed), soci::into(standing.hasState), soci::into(standing.mayWrite);
  return standing;
}

void refuseOtherSchema(const fs::path& address, int version, int newest) {
  if (version == 0)
    throw StoreError(StoreErrorCode::NotACollection, address,
                     "the database holds no collection; tarebowl server init makes one in it");
  if (version > newest)
    throw StoreError(StoreErrorCode::TooNew, address,
                     "was raised by a newer Tarebowl; install that here, too. Nothing was changed");
  if (version < newest)
    throw StoreError(
        StoreErrorCode::NeedsUpgrade, address,
        "was made by an older Tarebowl; whoever set it up raises it with tarebowl server upgrade");
}

/// A restore that died on its way must not look like a database in which nothing was ever set up.
void refuseHalfRestored(Connection& connection) {
  const std::string former = leftByRestore(connection);
  if (former.empty()) return;
  throw StoreError(
      StoreErrorCode::Gone, connection.file(),
      fmt::format("the database holds no collection any more, as where a restore did not come to "
                  "its end; the one that gave way to the backup lies whole in the schema {}: "
                  "tarebowl server undo-restore puts it back, tarebowl server restore tries again",
                  former));
}

int schemaIn(Connection& connection, const Standing& standing) {
  int version = 0;
  if (standing.hasState != 0)
    connection.sql() << "SELECT schema_version FROM tarebowl.collection_state", soci::into(version);
  return version;
}

/// Who reads only would be refused at every verb: it is said at once.
void refuseUnlessOpen(Connection& connection, const OpenOptions& options, int newest) {
  const fs::path& address = connection.file();
  const Standing standing = standingOf(connection);
  if (standing.isClosed != 0)
    throw StoreError(StoreErrorCode::NoPermission, address,
                     "nobody has let you into this collection; whoever runs it does so with tarebowl server "
                     "add");
  const int version = schemaIn(connection, standing);
  if (version == 0) refuseHalfRestored(connection);
  refuseOtherSchema(address, version, newest);
  if (options.access != Access::ReadOnly && standing.mayWrite == 0)
    throw StoreError(StoreErrorCode::NoPermission, address,
                     "your role on the server may read the collection but not write to it");
}

/// Where a collection on a server keeps what a file has in its header.
void buildSchema(Connection& connection) {
  connection.sql() << "CREATE SCHEMA IF NOT EXISTS tarebowl";
  connection.sql()
      << "CREATE TABLE collection_state (only_row BIGINT PRIMARY KEY CHECK (only_row = 1), format "
         "TEXT NOT NULL, schema_version BIGINT NOT NULL)";
  connection.sql() << "INSERT INTO collection_state (only_row, format, schema_version) VALUES (1, "
                      "'tarebowl-collection', 0)";
}

}  // namespace

std::unique_ptr<PostgresqlConnection> connectToServer(const fs::path& address, const OpenOptions& options) {
  const bool reads = options.access == Access::ReadOnly;
  return std::make_unique<PostgresqlConnection>(
      address, PostgresqlConnection::Options{
                   .access = reads ? Connection::Access::ReadOnly : Connection::Access::ReadWrite,
                   .patience = options.patience,
                   .password = options.password});
}

Collection openServer(const fs::path& address, const OpenOptions& options, std::span<const Migration> steps) {
  auto opened = connectToServer(address, options);
  return guarded(address, [&] {
    refuseUnlessOpen(*opened, options, newest(steps));
    return Collection::Inner::wrap(std::make_unique<Collection::Inner>(std::move(opened)));
  });
}

void createServer(const fs::path& address, const OpenOptions& options, std::span<const Migration> steps,
                  const std::function<void(Collection::Inner&)>& fill) {
  auto opened = connectToServer(address, options);
  PostgresqlConnection& connection = *opened;
  Collection::Inner inner(std::move(opened));
  guarded(address, [&] {
    WriteTransaction transaction(connection);
    if (connection.schemaVersion() > 0)
      throw StoreError(StoreErrorCode::AlreadyThere, address, "the database holds a collection already");
    refuseHalfRestored(connection);
    buildSchema(connection);
    raiseSchema(connection, steps);
    fill(inner);
    if (newest(steps) == currentSchemaVersion()) grantRights(connection);  // they speak of all of its tables
    transaction.commit();
  });
}

bool raiseOpened(PostgresqlConnection& connection, std::span<const Migration> steps) {
  const int version = connection.schemaVersion();
  if (version == 0 || version > newest(steps)) refuseOtherSchema(connection.file(), version, newest(steps));
  raiseSchema(connection, steps);
  grantRights(connection);
  return version != newest(steps);
}

bool raiseServer(const fs::path& address, const OpenOptions& options, std::span<const Migration> steps) {
  const auto opened = connectToServer(address, options);
  return guarded(address, [&] {
    WriteTransaction transaction(*opened);
    const bool raised = raiseOpened(*opened, steps);
    transaction.commit();
    return raised;
  });
}

}  // namespace tarebowl::store
