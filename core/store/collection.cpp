// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/collection.h"

#include "core/store/change_log.h"
#include "core/store/file_opening.h"
#include "core/store/opening.h"
#include "core/store/server_address.h"
#include "core/store/server_opening.h"
#include "core/store/sqlite_connection.h"

#include <fmt/format.h>

namespace tarebowl::store {

namespace {

namespace fs = std::filesystem;
using Access = OpenOptions::Access;

void apply(Connection& connection, const Migration& step) {
  WriteTransaction transaction(connection);
  if (connection.schemaVersion() >= step.number) return;  // another window was faster
  for (const std::string& statement : connection.translated(step.sql)) connection.sql() << statement;
  connection.setSchemaVersion(step.number);
  transaction.commit();
}

Collection openAsAllowed(const fs::path& file, const std::string& at, OpenOptions options,
                         std::span<const Migration> steps) {
  try {
    options.access = Access::ReadWrite;
    return openWith(file, at, options, steps);
  } catch (const StoreError& error) {
    if (error.code() != StoreErrorCode::NoPermission) throw;
  }
  options.access = Access::ReadOnly;
  return openWith(file, at, options, steps);
}

}  // namespace

Collection Collection::Inner::wrap(std::unique_ptr<Inner> inner) {
  return Collection(std::move(inner));
}

int newest(std::span<const Migration> steps) {
  return steps.empty() ? 0 : steps.back().number;
}

void raiseSchema(Connection& connection, std::span<const Migration> steps) {
  for (const Migration& step : steps) {
    try {
      apply(connection, step);
    } catch (const soci::soci_error& error) {
      throw StoreError(
          StoreErrorCode::MigrationFailed, connection.file(),
          fmt::format("its schema could not be raised by {} and is as it was ({})", step.name, error.what()));
    }
  }
}

void recordCreation(Collection::Inner& inner, const Author& author) {
  WriteTransaction transaction(inner.connection);
  record(inner, {.author = author, .verb = "create collection", .subject = "collection"});
  transaction.commit();
}

Collection openWith(const fs::path& file, const std::string& at, const OpenOptions& options,
                    std::span<const Migration> steps) {
  if (options.access == Access::AsAllowed) return openAsAllowed(file, at, options, steps);
  if (isServerAddress(file)) return openServer(file, options, steps);
  return openFile(file, at, options, steps);
}

Collection createWith(const fs::path& file, const Author& author, const OpenOptions& options,
                      std::span<const Migration> steps) {
  const auto fill = [&author](Collection::Inner& made) { recordCreation(made, author); };
  if (isServerAddress(file))
    createServer(file, options, steps, fill);
  else
    createFile(file, steps, fill);
  return openWith(file, author.at, options, steps);
}

Collection Collection::create(const fs::path& file, const Author& author, const OpenOptions& options) {
  return createWith(file, author, options, migrations());
}

Collection Collection::open(const fs::path& file, const std::string& at, const OpenOptions& options) {
  return openWith(file, at, options, migrations());
}

Collection::Collection(std::unique_ptr<Inner> inner) : inner_(std::move(inner)) {}
Collection::~Collection() = default;
Collection::Collection(Collection&&) noexcept = default;
Collection& Collection::operator=(Collection&&) noexcept = default;

const fs::path& Collection::file() const {
  return inner_->file();
}

int Collection::schemaVersion() const {
  return guarded(file(), [&] { return inner_->connection.schemaVersion(); });
}

bool Collection::mayWrite() const {
  return inner_->connection.access() == Connection::Access::ReadWrite;
}

void Collection::checkIntegrity() {
  if (auto* connection = dynamic_cast<SqliteConnection*>(&inner_->connection)) refuseDamagedFile(*connection);
}

int currentSchemaVersion() {
  return newest(migrations());
}

}  // namespace tarebowl::store
