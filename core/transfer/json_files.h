// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <vector>

namespace tarebowl::transfer {

/// The .json files of a folder by their names; none where there is no such folder.
[[nodiscard]] std::vector<std::filesystem::path> jsonFilesIn(const std::filesystem::path& folder);

}  // namespace tarebowl::transfer
