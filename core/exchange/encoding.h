// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace tarebowl::exchange {

/// How a table's bytes spell its letters.
enum class Encoding { Utf8, Utf16LittleEndian, Utf16BigEndian, Windows1252, Latin1 };

/// "utf-8", "utf-16le", "utf-16be", "windows-1252", "latin-1".
[[nodiscard]] std::string_view symbolOf(Encoding encoding);
[[nodiscard]] std::optional<Encoding> parseEncoding(std::string_view text);

/// Turns the bytes of a stream, piece by piece, into UTF-8. Where nobody states the encoding it is taken from
/// the byte order mark, from the zero bytes of UTF-16, or, at the first byte that is not ASCII, from whether
/// what follows is UTF-8; what is not is Windows-1252, which holds all letters of Latin-1.
class TextDecoder {
 public:
  explicit TextDecoder(std::optional<Encoding> stated = std::nullopt);
  ~TextDecoder();
  TextDecoder(TextDecoder&&) noexcept;
  TextDecoder& operator=(TextDecoder&&) noexcept;

  /// Appends to text what the bytes say, up to the first that says nothing; false where there is one. last:
  /// no more bytes will come. After false the decoder is spent.
  [[nodiscard]] bool decode(std::string_view bytes, bool last, std::string& text);

  /// What the bytes so far speak for; nothing while all are ASCII.
  [[nodiscard]] std::optional<Encoding> encoding() const;
  /// After decode() returned false: what stands there and what was expected, "the byte 0xE9 in a UTF-8 text".
  [[nodiscard]] const std::string& objection() const;

 private:
  class Work;
  std::unique_ptr<Work> work_;
};

}  // namespace tarebowl::exchange
