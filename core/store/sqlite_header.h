// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>

namespace tarebowl::store {

/// "TARE": the application id in the header of a collection file.
inline constexpr std::uint32_t kApplicationId = 0x54415245;

/// Reads the first 100 bytes (https://www.sqlite.org/fileformat.html) without opening the file as a database,
/// so that what is not ours is not touched. Throws StoreError: NotFound, NotAFile, NoPermission,
/// NotACollection, TooNew, or Damaged where the file is shorter than its header says.
void refuseWhatIsNoCollection(const std::filesystem::path& file, int newestVersion);

/// Whether a connection has the file open, or the last one ended without closing it.
[[nodiscard]] bool hasOpenLog(const std::filesystem::path& file);

}  // namespace tarebowl::store
