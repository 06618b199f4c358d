// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/file_in_memory.h"

#include <sys/mman.h>
#include <unistd.h>

#include <cstdlib>
#include <string>

namespace tarebowl::fuzz {

FileInMemory::FileInMemory(std::span<const std::uint8_t> content) : file_(memfd_create("fuzz", 0)) {
  if (file_ < 0) std::abort();
  std::size_t done = 0;
  while (done < content.size()) {
    const auto written = write(file_, content.data() + done, content.size() - done);
    if (written <= 0) std::abort();
    done += static_cast<std::size_t>(written);
  }
}

FileInMemory::~FileInMemory() {
  close(file_);
}

std::filesystem::path FileInMemory::path() const {
  return "/proc/self/fd/" + std::to_string(file_);
}

}  // namespace tarebowl::fuzz
