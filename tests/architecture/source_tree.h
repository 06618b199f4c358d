// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <vector>

namespace tarebowl::architecture {

/// A file of ours: its path from the top of the house ("core/diet/problem.h") and its lines.
struct SourceFile {
  std::string path;
  std::vector<std::string> lines;
};

/// Something a rule objects to. line counts from 1; 0 speaks of the whole file.
struct Finding {
  std::string path;
  std::size_t line = 0;
  std::string what;
  bool operator==(const Finding&) const = default;
};

/// "core/diet/problem.h:12: …", one a line: what a failing test shows.
[[nodiscard]] std::string describe(const std::vector<Finding>& findings);

[[nodiscard]] std::vector<std::string> splitLines(const std::string& text);

/// The folders at the top of the house that hold our own work, without hidden ones and build trees.
[[nodiscard]] std::vector<std::string> topFolders(const std::filesystem::path& house);

/// Every C++, CMake, Python and shell file below the top folders, in order of path.
[[nodiscard]] std::vector<SourceFile> readSources(const std::filesystem::path& house);

[[nodiscard]] bool isCpp(const std::string& path);

}  // namespace tarebowl::architecture
