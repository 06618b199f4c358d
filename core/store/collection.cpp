// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/collection.h"

#include "core/store/backup.h"
#include "core/store/change_log.h"
#include "core/store/new_file.h"
#include "core/store/opening.h"
#include "core/store/sqlite_dialect.h"
#include "core/store/sqlite_header.h"
#include "core/store/sqlite_safety.h"

#include <fmt/format.h>

#include <utility>

namespace tarebowl::store {

namespace {

namespace fs = std::filesystem;
using Depth = SqliteConnection::Depth;
using Access = OpenOptions::Access;

SqliteConnection::Access accessOf(const OpenOptions& options) {
  return options.access == Access::ReadOnly ? SqliteConnection::Access::ReadOnly
                                            : SqliteConnection::Access::ReadWrite;
}

/// In a folder that cannot be written there is no journal to read by either, unless another program keeps
/// one there.
std::unique_ptr<Collection::Inner> connected(const fs::path& file, const OpenOptions& options) {
  try {
    return guarded(file, [&] {
      auto inner = std::make_unique<Collection::Inner>(file, options);
      (void)inner->connection.schemaVersion();  // reads of the file for the first time
      return inner;
    });
  } catch (const StoreError& error) {
    const bool mayRead = error.code() == StoreErrorCode::NoPermission && options.access == Access::ReadOnly;
    if (!mayRead || hasOpenLog(file)) throw;
  }
  return std::make_unique<Collection::Inner>(file, SqliteConnection::Access::Still, options.patience);
}

fs::file_time_type timeOf(const fs::path& file) {
  std::error_code error;
  const auto time = fs::last_write_time(file, error);
  return error ? fs::file_time_type{} : time;
}

int newest(std::span<const Migration> steps) {
  return steps.empty() ? 0 : steps.back().number;
}

void apply(SqliteConnection& connection, const Migration& step) {
  WriteTransaction transaction(connection);
  if (connection.schemaVersion() >= step.number) return;  // another window was faster
  for (const std::string& statement : toSqlite(step.sql)) connection.sql() << statement;
  connection.setSchemaVersion(step.number);
  transaction.commit();
}

void refuseDamage(SqliteConnection& connection, Depth depth) {
  const auto damage = connection.firstDamage(depth);
  if (!damage) return;
  throw StoreError(StoreErrorCode::Damaged, connection.file(), "is damaged (" + *damage + ")");
}

/// A collection of an older Tarebowl is raised; before that it is copied.
void bringUpToDate(SqliteConnection& connection, const std::string& at, const OpenOptions& options,
                   std::span<const Migration> steps) {
  const int version = connection.schemaVersion();
  if (version == newest(steps)) return;
  if (options.access == Access::ReadOnly) {
    throw StoreError(StoreErrorCode::NeedsUpgrade, connection.file(),
                     "was written by an older Tarebowl and is open for reading only; copy it where it can be "
                     "written and open the copy");
  }
  const fs::path backup = makeBackup(connection.file(), at, "before-upgrade");
  try {
    raiseSchema(connection, steps);
  } catch (const StoreError& error) {
    throw StoreError(error.code(), error.file(), error.detail(), backup);
  }
}

void build(const fs::path& file, const Author& author, std::span<const Migration> steps) {
  makeOwnFile(file);
  Collection::Inner inner(file, {});
  inner.connection.markAsCollection();
  raiseSchema(inner.connection, steps);
  WriteTransaction transaction(inner.connection);
  record(inner, {.author = author, .verb = "create collection", .subject = "collection"});
  transaction.commit();
}

/// Where the file is found to be no sound collection, a copy from before is named with it.
template <class Work>
auto orNameBackup(const fs::path& file, Work work) {
  try {
    return work();
  } catch (const StoreError& error) {
    const bool mayHelp = error.code() == StoreErrorCode::Damaged ||
                         error.code() == StoreErrorCode::NotACollection ||
                         error.code() == StoreErrorCode::Untrusted;
    if (!mayHelp || error.backup()) throw;
    throw StoreError(error.code(), error.file(), error.detail(), newestSoundBackup(file));
  }
}

Collection openSound(const fs::path& file, const std::string& at, const OpenOptions& options,
                     std::span<const Migration> steps) {
  refuseWhatIsNoCollection(file, newest(steps));
  const bool doubtful = hasOpenLog(file);
  return guarded(file, [&] {
    auto inner = connected(file, options);
    SqliteConnection& connection = inner->connection;
    const int version = connection.schemaVersion();  // the log may hold a newer one than the header
    if (version > newest(steps))
      throw StoreError(StoreErrorCode::TooNew, file, "was written by a newer Tarebowl; nothing was changed");
    refuseForeignSchema(connection, steps);
    const bool writes = options.access == Access::ReadWrite;
    if (writes && connection.isReadOnly())
      throw StoreError(StoreErrorCode::NoPermission, file, "the file or its folder cannot be written");
    if (options.check == OpenOptions::Check::Always)
      refuseDamage(connection, Depth::Thorough);
    else if (doubtful)
      refuseDamage(connection, Depth::Quick);
    bringUpToDate(connection, at, options, steps);
    if (writes) connection.keepLog();
    inner->seenVersion = connection.dataVersion();
    inner->seenTime = timeOf(file);
    return Collection::Inner::wrap(std::move(inner));
  });
}

}  // namespace

Collection::Inner::Inner(const fs::path& file, const OpenOptions& options)
    : Inner(file, accessOf(options), options.patience) {}

Collection::Inner::Inner(const fs::path& file, SqliteConnection::Access access,
                         std::chrono::milliseconds patience)
    : connection(file, access, patience) {}

Collection Collection::Inner::wrap(std::unique_ptr<Inner> inner) {
  return Collection(std::move(inner));
}

void raiseSchema(SqliteConnection& connection, std::span<const Migration> steps) {
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

Collection openWith(const fs::path& file, const std::string& at, const OpenOptions& options,
                    std::span<const Migration> steps) {
  if (options.access == Access::AsAllowed) return openAsAllowed(file, at, options, steps);
  return orNameBackup(file, [&] { return openSound(file, at, options, steps); });
}

Collection createWith(const fs::path& file, const Author& author, const OpenOptions& options,
                      std::span<const Migration> steps) {
  std::error_code ignored;
  if (fs::exists(file, ignored)) throw StoreError(StoreErrorCode::AlreadyThere, file, "is there already");
  const fs::path made = file.string() + "-new";
  fs::remove(made, ignored);  // left by a creation that was killed
  try {
    guarded(file, [&] { build(made, author, steps); });
    putInPlace(made, file);
  } catch (const StoreError& error) {
    fs::remove(made, ignored);
    throw StoreError(error.code(), file, error.detail());
  }
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
  return inner_->connection.access() == SqliteConnection::Access::ReadWrite;
}

/// Another collection stands under the name by now, as a program that keeps copies in step puts it there.
/// Where it may be opened as it is, it is read from here on; otherwise the one that is gone stays open, and
/// every verb refuses.
bool Collection::tookReplacement() {
  try {
    (void)Collection::open(file(), {}, {.access = Access::ReadOnly});
  } catch (const StoreError&) {
    return false;
  }
  guarded(file(), [&] { inner_->connection.readAnew(); });
  inner_->components.forget();
  inner_->seenVersion = guarded(file(), [&] { return inner_->connection.dataVersion(); });
  return true;
}

bool Collection::changedElsewhere() {
  if (inner_->connection.hasLostFile()) return tookReplacement();
  if (inner_->connection.access() == SqliteConnection::Access::Still) {
    const auto time = timeOf(file());
    if (std::exchange(inner_->seenTime, time) == time) return false;
    guarded(file(), [&] { inner_->connection.readAnew(); });
    inner_->components.forget();
    return true;
  }
  const long long version = guarded(file(), [&] { return inner_->connection.dataVersion(); });
  const bool changed = version != inner_->seenVersion;
  inner_->seenVersion = version;
  return changed;
}

void Collection::checkIntegrity() {
  orNameBackup(file(), [&] { guarded(file(), [&] { refuseDamage(inner_->connection, Depth::Thorough); }); });
}

int currentSchemaVersion() {
  return newest(migrations());
}

}  // namespace tarebowl::store
