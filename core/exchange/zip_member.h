// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

namespace tarebowl::exchange {

/// One member of a ZIP archive, unpacked piece by piece.
class ZipMember {
 public:
  /// Throws FormatError where the archive or the member cannot be read.
  ZipMember(const std::filesystem::path& archive, const std::string& member);
  ~ZipMember();
  ZipMember(const ZipMember&) = delete;
  ZipMember& operator=(const ZipMember&) = delete;

  /// The next piece, valid until the next call; empty at the end. Throws FormatError where it is damaged.
  [[nodiscard]] std::string_view read();
  /// 0 … 1.
  [[nodiscard]] double progress() const;

  [[nodiscard]] static bool exists(const std::filesystem::path& archive, const std::string& member);

 private:
  struct Archive;
  std::string name_;
  std::unique_ptr<Archive> archive_;
  std::string piece_;
  std::uint64_t size_ = 0;
  std::uint64_t done_ = 0;
};

}  // namespace tarebowl::exchange
