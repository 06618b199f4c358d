// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <span>

namespace tarebowl::fuzz {

/// A file that lies in memory and has a path for who reads files.
class FileInMemory {
 public:
  explicit FileInMemory(std::span<const std::uint8_t> content);
  ~FileInMemory();
  FileInMemory(const FileInMemory&) = delete;
  FileInMemory& operator=(const FileInMemory&) = delete;
  [[nodiscard]] std::filesystem::path path() const;

 private:
  int file_ = -1;
};

}  // namespace tarebowl::fuzz
