// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"

#include "core/store/change_log.h"
#include "core/store/new_file.h"
#include "core/store/opening.h"
#include "core/store/server_address.h"
#include "core/store/sqlite_connection.h"
#include "core/store/sqlite_header.h"
#include "core/store/sqlite_safety.h"

#include <algorithm>
#include <regex>
#include <utility>

namespace tarebowl::store {

namespace {

namespace fs = std::filesystem;
using Access = SqliteConnection::Access;

constexpr std::chrono::milliseconds kPatience{10'000};
constexpr std::size_t kDayLength = 8;  // "20261125"

/// "2026-11-25T07:30:00Z" as it may stand in a file name anywhere: "20261125T073000Z".
std::string compact(std::string at) {
  std::erase_if(at, [](char c) { return c == '-' || c == ':'; });
  return at;
}

[[noreturn]] void cannotWrite(const fs::path& file, const std::error_code& error) {
  throw StoreError(StoreErrorCode::NoPermission, file, "cannot be written: " + error.message());
}

/// A name in the folder of backups that is still free.
fs::path freeName(const fs::path& collection, const std::string& at, std::string_view reason) {
  const fs::path folder = backupFolder(collection);
  std::error_code error;
  if (fs::create_directories(folder, error))
    fs::permissions(folder, fs::perms::others_all, fs::perm_options::remove, error);
  if (error) cannotWrite(folder, error);
  const std::string stem = collection.stem().string() + '-' + compact(at) + '-' + std::string(reason);
  fs::path file = folder / (stem + ".tarebowl");
  for (int i = 2; fs::exists(file); ++i) file = folder / (stem + '-' + std::to_string(i) + ".tarebowl");
  return file;
}

void removeOldest(const fs::path& collection, std::string_view reason) {
  std::size_t kept = 0;
  for (const Backup& backup : listBackups(collection)) {
    if (backup.reason != reason || ++kept <= kKeptBackups) continue;
    std::error_code ignored;
    fs::remove(backup.file, ignored);
  }
}

fs::path copyInto(SqliteConnection& connection, const fs::path& target) {
  const fs::path part = target.string() + ".part";
  std::error_code error;
  fs::remove(part, error);
  try {
    makeOwnFile(part);
    connection.copyTo(part);
  } catch (...) {
    fs::remove(part, error);
    throw;
  }
  fs::rename(part, target, error);
  if (error) cannotWrite(target, error);
  return target;
}

void refuseServer(const fs::path& collection) {
  if (isServerAddress(collection))
    throw StoreError(StoreErrorCode::Failed, collection,
                     "is on a server: whoever set it up makes its backups, with tarebowl server backup");
}

void refuseUnsound(const fs::path& backup) {
  refuseWhatIsNoCollection(backup, currentSchemaVersion());
  SqliteConnection connection(backup, Access::ReadOnly, kPatience);
  if (const auto damage = connection.firstDamage(SqliteConnection::Depth::Thorough))
    throw StoreError(StoreErrorCode::Damaged, backup, "is damaged (" + *damage + "); nothing was restored");
  refuseForeignSchema(connection, migrations());
}

bool isUnsound(const fs::path& backup) {
  try {
    guarded(backup, [&] { refuseUnsound(backup); });
    return false;
  } catch (const StoreError&) {
    return true;
  }
}

bool isSound(const fs::path& collection) {
  try {
    refuseWhatIsNoCollection(collection, currentSchemaVersion());
    return guarded(collection, [&] {
      SqliteConnection connection(collection, Access::ReadWrite, kPatience);
      return !connection.firstDamage(SqliteConnection::Depth::Quick);
    });
  } catch (const StoreError& error) {
    if (error.code() == StoreErrorCode::Damaged || error.code() == StoreErrorCode::NotFound ||
        error.code() == StoreErrorCode::NotACollection)
      return false;
    throw;
  }
}

fs::path overwrite(const fs::path& collection, const fs::path& backup, const std::string& at) {
  return guarded(collection, [&] {
    SqliteConnection present(collection, Access::ReadWrite, kPatience);
    fs::path former = copyInto(present, freeName(collection, at, "before-restore"));
    SqliteConnection source(backup, Access::ReadOnly, kPatience);
    present.takeContentOf(source);
    return former;
  });
}

/// The new file is complete under another name before the old one leaves its place.
fs::path replace(const fs::path& collection, const fs::path& backup, const std::string& at) {
  const fs::path part = collection.string() + "-restored";
  std::error_code error;
  fs::copy_file(backup, part, fs::copy_options::overwrite_existing, error);
  if (error) cannotWrite(part, error);
  fs::path former = setFileAside(collection, at, "damaged");
  fs::rename(part, collection, error);
  if (error) cannotWrite(collection, error);
  return former;
}

}  // namespace

fs::path backupFolder(const fs::path& collection) {
  return collection.string() + "-backups";
}

std::vector<Backup> listBackups(const fs::path& collection) {
  static const std::regex kName(R"(^.*-(\d{8}T\d{6}Z)-([a-z][a-z-]*?)(-\d+)?\.tarebowl$)");
  std::vector<Backup> backups;
  std::error_code error;
  for (fs::directory_iterator entry(backupFolder(collection), error), end; !error && entry != end;
       entry.increment(error)) {
    const std::string name = entry->path().filename().string();
    std::smatch match;
    if (std::regex_match(name, match, kName))
      backups.push_back({entry->path(), match[1].str(), match[2].str()});
  }
  std::ranges::sort(backups, [](const Backup& a, const Backup& b) {
    return std::pair(b.at, b.file) < std::pair(a.at, a.file);
  });
  return backups;
}

std::optional<fs::path> newestSoundBackup(const fs::path& collection) {
  for (const Backup& backup : listBackups(collection))
    if (!isUnsound(backup.file)) return backup.file;
  return std::nullopt;
}

fs::path setFileAside(const fs::path& collection, const std::string& at, std::string_view reason) {
  fs::path former = freeName(collection, at, reason);
  std::error_code error;
  for (const char* tail : {"", "-wal", "-shm"}) {
    const fs::path old = collection.string() + tail;
    if (!fs::exists(old)) continue;
    fs::rename(old, former.string() + tail, error);
    if (error) cannotWrite(old, error);
  }
  return former;
}

fs::path makeBackup(const fs::path& collection, const std::string& at, std::string_view reason) {
  refuseServer(collection);
  return guarded(collection, [&] {
    SqliteConnection connection(collection, Access::ReadWrite, kPatience);
    fs::path made = copyInto(connection, freeName(collection, at, reason));
    removeOldest(collection, reason);
    return made;
  });
}

std::optional<fs::path> makeDailyBackup(const fs::path& collection, const std::string& at) {
  if (isServerAddress(collection)) return std::nullopt;
  const std::string today = compact(at).substr(0, kDayLength);
  for (const Backup& backup : listBackups(collection))
    if (backup.reason == "daily" && backup.at.substr(0, kDayLength) == today) return std::nullopt;
  return makeBackup(collection, at, "daily");
}

fs::path restore(const fs::path& collection, const fs::path& backup, const Author& author) {
  refuseServer(collection);
  guarded(backup, [&] { refuseUnsound(backup); });
  fs::path former =
      isSound(collection) ? overwrite(collection, backup, author.at) : replace(collection, backup, author.at);
  const Collection restored = Collection::open(collection, author.at);
  guarded(collection, [&] {
    WriteTransaction transaction(restored.inner().connection);
    record(restored.inner(), {.author = author,
                              .verb = "restore backup",
                              .subject = "collection",
                              .after = '"' + backup.filename().string() + '"'});
    transaction.commit();
  });
  return former;
}

}  // namespace tarebowl::store
