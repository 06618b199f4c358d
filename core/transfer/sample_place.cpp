// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/sample_place.h"

#include <cstdlib>
#include <system_error>

namespace tarebowl::transfer {

std::filesystem::path sampleFolderOf(const std::filesystem::path& program) {
  std::filesystem::path installed = program.parent_path().parent_path() / "share/tarebowl/sample-data";
  std::error_code ignored;
  if (!program.empty() && std::filesystem::is_directory(installed, ignored)) return installed;
  return TAREBOWL_SOURCE_SAMPLE_DATA;
}

std::filesystem::path sampleFolder() {
  const char* told = std::getenv("TAREBOWL_SAMPLE_DATA");
  if (told != nullptr && *told != '\0') return told;
  std::error_code unknown;  // systems that do not tell where a program lies
  return sampleFolderOf(std::filesystem::read_symlink("/proc/self/exe", unknown));
}

}  // namespace tarebowl::transfer
