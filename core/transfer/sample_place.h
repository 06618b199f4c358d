// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

namespace tarebowl::transfer {

/// Where the files of the invented sample lie: in the folder that TAREBOWL_SAMPLE_DATA names; beside the
/// installed program, wherever that was put; or else in the source tree that the program was built from.
[[nodiscard]] std::filesystem::path sampleFolder();

/// The same for a program at this place.
[[nodiscard]] std::filesystem::path sampleFolderOf(const std::filesystem::path& program);

}  // namespace tarebowl::transfer
