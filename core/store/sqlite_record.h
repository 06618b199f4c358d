// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/sqlite_pages.h"

namespace tarebowl::store {

/// A number of so many bytes, the first the highest, as the file format writes it; 0 past the end.
[[nodiscard]] std::uint32_t bigEndian(std::string_view bytes, std::size_t at, std::size_t width);

/// Reads on through bytes; past their end it reads zeros and is no longer sound.
class Cursor {
 public:
  Cursor(std::string_view bytes, std::size_t at) : bytes_(bytes), at_(at) {}
  [[nodiscard]] std::uint32_t fixed(std::size_t width);
  /// One to nine bytes, seven bits of each.
  [[nodiscard]] std::uint64_t varint();
  [[nodiscard]] std::size_t place() const { return at_; }
  [[nodiscard]] bool isSound() const { return sound_; }

 private:
  [[nodiscard]] unsigned char byte();
  std::string_view bytes_;
  std::size_t at_;
  bool sound_ = true;
};

/// The values of a record; nothing where its parts do not add up to its length, where a text is none (broken
/// UTF-8, control characters) or where a value is a blob.
[[nodiscard]] std::optional<std::vector<PageValue>> recordIn(std::string_view payload);

}  // namespace tarebowl::store
