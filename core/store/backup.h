// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::store {

/// How many backups of a kind are kept; older ones are removed when a new one is safely there.
inline constexpr std::size_t kKeptBackups = 14;

/// A copy beside the collection, in NAME.tarebowl-backups/, named by its time and why it was made.
struct Backup {
  std::filesystem::path file;
  std::string at;      ///< "20261125T073000Z"
  std::string reason;  ///< "daily", "before-upgrade", "before-restore"
};

[[nodiscard]] std::filesystem::path backupFolder(const std::filesystem::path& collection);
/// Newest first.
[[nodiscard]] std::vector<Backup> listBackups(const std::filesystem::path& collection);

/// The newest one that reads through without damage; reads them through, so for when something is wrong.
[[nodiscard]] std::optional<std::filesystem::path> newestSoundBackup(const std::filesystem::path& collection);

/// Takes a file away from its place, into the folder of backups, with what lies beside it; where it lies now.
/// For a collection that is damaged, or was moved elsewhere. Throws StoreError.
std::filesystem::path setFileAside(const std::filesystem::path& collection, const std::string& at,
                                   std::string_view reason);

/// Copies the collection as it is now. at: ISO 8601 UTC. Throws StoreError; no half-written backup is left.
/// Opens its own connection, so that a worker can do it while the window goes on.
std::filesystem::path makeBackup(const std::filesystem::path& collection, const std::string& at,
                                 std::string_view reason);
/// The same, once a day (UTC): nothing where today's daily backup is there, or on a server, which has backups
/// of its own. Call it after opening.
std::optional<std::filesystem::path> makeDailyBackup(const std::filesystem::path& collection,
                                                     const std::string& at);

/// Puts a backup in the collection's place, after backing up what is there. A collection that can be read is
/// overwritten in one transaction, and windows that have it open see a change; one that cannot is moved aside
/// into the folder of backups, never deleted. Returns where the former state lies. Throws StoreError; a
/// backup that is itself damaged or no collection changes nothing.
std::filesystem::path restore(const std::filesystem::path& collection, const std::filesystem::path& backup,
                              const Author& author);

}  // namespace tarebowl::store
