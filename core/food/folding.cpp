// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/folding.h"

#include <algorithm>
#include <array>

namespace tarebowl::food {

namespace {

constexpr char32_t kFirstLatin = 0xC0;

// Letters of Latin-1 and Latin Extended-A (U+00C0 ... U+017F) without case and accent, by the Unicode
// decompositions; letters without one by custom.
// clang-format off
constexpr std::array<std::string_view, 192> kLatin{
    "a", "a", "a", "a", "a", "a", "ae", "c", "e", "e", "e", "e", "i", "i", "i", "i",
    "d", "n", "o", "o", "o", "o", "o", " ", "o", "u", "u", "u", "u", "y", "th", "ss",
    "a", "a", "a", "a", "a", "a", "ae", "c", "e", "e", "e", "e", "i", "i", "i", "i",
    "d", "n", "o", "o", "o", "o", "o", " ", "o", "u", "u", "u", "u", "y", "th", "y",
    "a", "a", "a", "a", "a", "a", "c", "c", "c", "c", "c", "c", "c", "c", "d", "d",
    "d", "d", "e", "e", "e", "e", "e", "e", "e", "e", "e", "e", "g", "g", "g", "g",
    "g", "g", "g", "g", "h", "h", "h", "h", "i", "i", "i", "i", "i", "i", "i", "i",
    "i", "i", "ij", "ij", "j", "j", "k", "k", "k", "l", "l", "l", "l", "l", "l", "l",
    "l", "l", "l", "n", "n", "n", "n", "n", "n", "n", "n", "n", "o", "o", "o", "o",
    "o", "o", "oe", "oe", "r", "r", "r", "r", "r", "r", "s", "s", "s", "s", "s", "s",
    "s", "s", "t", "t", "t", "t", "t", "t", "u", "u", "u", "u", "u", "u", "u", "u",
    "u", "u", "u", "u", "w", "w", "y", "y", "y", "z", "z", "z", "z", "z", "z", "s",
};
// clang-format on

struct Letter {
  char32_t code;
  std::size_t bytes;
};

/// The letter at a place; a byte that is no UTF-8 counts as a letter of its own.
Letter letterAt(std::string_view text, std::size_t place) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[place + i]); };
  const unsigned char lead = byte(0);
  const std::size_t bytes = lead < 0x80   ? 1
                            : lead < 0xC2 ? 0
                            : lead < 0xE0 ? 2
                            : lead < 0xF0 ? 3
                            : lead < 0xF5 ? 4
                                          : 0;
  if (bytes <= 1 || place + bytes > text.size()) return {lead, 1};
  char32_t code = lead & (0xFFU >> (bytes + 1));
  for (std::size_t i = 1; i < bytes; ++i) {
    if ((byte(i) & 0xC0U) != 0x80U) return {lead, 1};
    code = (code << 6U) | (byte(i) & 0x3FU);
  }
  return {code, bytes};
}

bool isCombiningMark(char32_t code) {
  return code >= 0x300 && code <= 0x36F;
}

/// Capital letters of Greek and Cyrillic stand a fixed distance before the small ones; both lie in two-byte
/// UTF-8.
char32_t smallLetter(char32_t code) {
  if (code >= 0x391 && code <= 0x3A9) return code + 0x20;
  if (code >= 0x410 && code <= 0x42F) return code + 0x20;
  if (code >= 0x400 && code <= 0x40F) return code + 0x50;
  return code;
}

void append(std::string& text, char32_t code) {
  text += static_cast<char>(0xC0U | (code >> 6U));
  text += static_cast<char>(0x80U | (code & 0x3FU));
}

char foldedAscii(char c) {
  if (c >= 'A' && c <= 'Z') return static_cast<char>(c - 'A' + 'a');
  const bool kept = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
  return kept ? c : ' ';
}

}  // namespace

std::string folded(std::string_view text) {
  std::string result;
  result.reserve(text.size());
  for (std::size_t place = 0; place < text.size();) {
    const auto [code, bytes] = letterAt(text, place);
    if (bytes == 1 && code < 0x80)
      result += foldedAscii(text[place]);
    else if (bytes > 1 && code >= kFirstLatin && code < kFirstLatin + kLatin.size())
      result += kLatin.at(code - kFirstLatin);
    else if (bytes > 1 && smallLetter(code) != code)
      append(result, smallLetter(code));
    else if (!isCombiningMark(code))
      result += text.substr(place, bytes);
    place += bytes;
  }
  return result;
}

std::vector<std::string> wordsOf(std::string_view foldedText) {
  std::vector<std::string> words;
  for (std::size_t place = 0; place < foldedText.size();) {
    const std::size_t end = std::min(foldedText.find(' ', place), foldedText.size());
    if (end > place) words.emplace_back(foldedText.substr(place, end - place));
    place = end + 1;
  }
  return words;
}

}  // namespace tarebowl::food
