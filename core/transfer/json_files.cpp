// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/json_files.h"

#include <algorithm>

namespace tarebowl::transfer {

std::vector<std::filesystem::path> jsonFilesIn(const std::filesystem::path& folder) {
  std::vector<std::filesystem::path> files;
  if (!std::filesystem::is_directory(folder)) return files;
  for (const auto& entry : std::filesystem::directory_iterator(folder))
    if (entry.path().extension() == ".json") files.push_back(entry.path());
  std::ranges::sort(files);
  return files;
}

}  // namespace tarebowl::transfer
