// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/file_opening.h"

#include "core/store/backup.h"
#include "core/store/new_file.h"
#include "core/store/sqlite_connection.h"
#include "core/store/sqlite_header.h"
#include "core/store/sqlite_safety.h"

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
std::unique_ptr<SqliteConnection> connected(const fs::path& file, const OpenOptions& options) {
  try {
    return guarded(file, [&] {
      auto connection = std::make_unique<SqliteConnection>(file, accessOf(options), options.patience);
      (void)connection->schemaVersion();  // reads of the file for the first time
      return connection;
    });
  } catch (const StoreError& error) {
    const bool mayRead = error.code() == StoreErrorCode::NoPermission && options.access == Access::ReadOnly;
    if (!mayRead || hasOpenLog(file)) throw;
  }
  return std::make_unique<SqliteConnection>(file, SqliteConnection::Access::Still, options.patience);
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

void build(const fs::path& file, std::span<const Migration> steps,
           const std::function<void(Collection::Inner&)>& fill) {
  Collection::Inner inner(newFile(file));
  raiseSchema(inner.connection, steps);
  fill(inner);
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
    auto opened = connected(file, options);
    SqliteConnection& connection = *opened;
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
    (void)connection.heardOfWrite();  // what was written so far is read from here on
    return Collection::Inner::wrap(std::make_unique<Collection::Inner>(std::move(opened)));
  });
}

}  // namespace

std::unique_ptr<SqliteConnection> newFile(const fs::path& file) {
  makeOwnFile(file);
  auto made =
      std::make_unique<SqliteConnection>(file, SqliteConnection::Access::ReadWrite, OpenOptions{}.patience);
  made->markAsCollection();
  return made;
}

Collection openFile(const fs::path& file, const std::string& at, const OpenOptions& options,
                    std::span<const Migration> steps) {
  return orNameBackup(file, [&] { return openSound(file, at, options, steps); });
}

void createFile(const fs::path& file, std::span<const Migration> steps,
                const std::function<void(Collection::Inner&)>& fill) {
  std::error_code ignored;
  if (fs::exists(file, ignored)) throw StoreError(StoreErrorCode::AlreadyThere, file, "is there already");
  const fs::path made = file.string() + "-new";
  fs::remove(made, ignored);  // left by a creation that was killed
  try {
    guarded(file, [&] { build(made, steps, fill); });
    putInPlace(made, file);
  } catch (const StoreError& error) {
    fs::remove(made, ignored);
    throw StoreError(error.code(), file, error.detail());
  }
}

void refuseDamagedFile(SqliteConnection& connection) {
  const fs::path& file = connection.file();
  orNameBackup(file, [&] { guarded(file, [&] { refuseDamage(connection, Depth::Thorough); }); });
}

}  // namespace tarebowl::store
