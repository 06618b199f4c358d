// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/architecture/source_tree.h"

#include <filesystem>
#include <span>
#include <vector>

namespace tarebowl::architecture {

/// Over this many lines a C++ file says why in its first lines: "// Long because …".
inline constexpr std::size_t kLongFile = 600;

/// Who holds the copyright and under which licence, in the first three lines (a script starts with its
/// interpreter).
[[nodiscard]] std::vector<Finding> checkLicenceHeaders(std::span<const SourceFile> sources);

[[nodiscard]] std::vector<Finding> checkLengths(std::span<const SourceFile> sources);

/// Every header is guarded by #pragma once.
[[nodiscard]] std::vector<Finding> checkGuards(std::span<const SourceFile> sources);

/// Every top folder has a README that names at least two files or folders which are there.
[[nodiscard]] std::vector<Finding> checkReadmes(const std::filesystem::path& house);

}  // namespace tarebowl::architecture
