// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <cstdlib>
#include <filesystem>
#include <string>

/// Files of the benchmarks: collections that they make, below the system's folder for such files.
namespace tarebowl::bench {

inline const store::Author kBench{"bench", "2026-01-01T00:00:00Z"};

inline std::filesystem::path workFile(const std::string& name) {
  const std::filesystem::path folder = std::filesystem::temp_directory_path() / "tarebowl-bench";
  std::filesystem::create_directories(folder);
  return folder / name;
}

/// In the place of one that was there.
inline store::Collection newCollection(const std::filesystem::path& file) {
  for (const char* tail : {"", "-wal", "-shm"}) std::filesystem::remove(file.string() + tail);
  return store::Collection::create(file, kBench);
}

inline bool runs(const std::string& command) {
  return std::system(command.c_str()) == 0;
}

inline double megabytes(const std::filesystem::path& file) {
  return static_cast<double>(std::filesystem::file_size(file)) / 1e6;
}

}  // namespace tarebowl::bench
