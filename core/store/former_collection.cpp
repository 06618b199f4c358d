// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/former_collection.h"

#include "core/store/change_log.h"
#include "core/store/migration.h"
#include "core/store/opening.h"
#include "core/store/postgresql_connection.h"
#include "core/store/server_opening.h"

#include <fmt/format.h>

#include <cctype>
#include <utility>

namespace tarebowl::store {

namespace {

constexpr const char* kFormer = "tarebowl_before_restore_";

/// Of those that begin so; empty where there is none.
std::string newestSchema(Connection& connection, const char* prefix) {
  std::string name;
  connection.sql() << fmt::format(
      "SELECT COALESCE((SELECT CAST(nspname AS TEXT) FROM pg_catalog.pg_namespace WHERE "
      "starts_with(CAST(nspname AS TEXT), '{}') ORDER BY nspname DESC LIMIT 1), '')",
      prefix),
      soci::into(name);
  return name;
}

std::string timeIn(const std::string& schema, const std::string& prefix) {
  return schema.empty() ? schema : schema.substr(prefix.size());
}

}  // namespace

std::string schemaNamedAfter(const std::string& prefix, const std::string& at) {
  std::string name = prefix;
  for (const char c : at)
    if (std::isalnum(static_cast<unsigned char>(c)) != 0)
      name += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return name;
}

std::string setFormerAside(Connection& connection, const std::string& at) {
  WriteTransaction transaction(connection);
  if (connection.schemaVersion() == 0) return {};
  const std::string name = schemaNamedAfter(kFormer, at);
  connection.sql() << "ALTER SCHEMA tarebowl RENAME TO " + name;
  transaction.commit();
  return name;
}

std::string leftByRestore(Connection& connection) {
  const std::string former = newestSchema(connection, kFormer);
  const std::string moved = newestSchema(connection, kMovedAway);
  return timeIn(moved, kMovedAway) < timeIn(former, kFormer) ? former : std::string();
}

UndoneRestore undoRestore(const std::filesystem::path& address, const OpenOptions& options,
                          const Author& author) {
  auto opened = connectToServer(address, options);
  PostgresqlConnection& connection = *opened;
  Collection::Inner inner(std::move(opened));
  return guarded(address, [&] {
    WriteTransaction transaction(connection);
    UndoneRestore undone{.former = newestSchema(connection, kFormer)};
    if (undone.former.empty())
      throw StoreError(StoreErrorCode::NotFound, address,
                       "no collection was set aside by a restore; nothing was changed");
    // Its name is free then: of two within one second the other takes it.
    connection.sql() << "ALTER SCHEMA " + undone.former + " RENAME TO tarebowl_coming_back";
    undone.aside = setFormerAside(connection, author.at);
    connection.sql() << "ALTER SCHEMA tarebowl_coming_back RENAME TO tarebowl";
    (void)raiseOpened(connection, migrations());
    record(inner, {.author = author,
                   .verb = "undo restore",
                   .subject = "collection",
                   .after = '"' + undone.former + '"'});
    transaction.commit();
    return undone;
  });
}

}  // namespace tarebowl::store
