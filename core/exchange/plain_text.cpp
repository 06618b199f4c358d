// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/plain_text.h"

#include <algorithm>
#include <array>

namespace tarebowl::exchange {

namespace {

struct LookAlike {
  std::string_view letter;
  std::string_view plain;
};

constexpr std::array<LookAlike, 16> kLookAlikes{{{"\u2212", "-"},  // minus
                                                 {"\u2010", "-"},
                                                 {"\u2011", "-"},
                                                 {"\u2012", "-"},
                                                 {"\u2013", "-"},
                                                 {"\u2014", "-"},
                                                 {"\u00a0", " "},
                                                 {"\u2007", " "},
                                                 {"\u2009", " "},
                                                 {"\u200a", " "},
                                                 {"\u202f", " "},
                                                 {"\u2006", " "},
                                                 {"\u03bc", "\u00b5"},
                                                 {"\u2019", "'"},
                                                 {"\u2026", "..."},
                                                 {"\ufeff", ""}}};

constexpr std::string_view kSpaces = " \t\r\n";

}  // namespace

std::string_view trimmed(std::string_view text) {
  const auto begin = text.find_first_not_of(kSpaces);
  if (begin == std::string_view::npos) return {};
  return text.substr(begin, text.find_last_not_of(kSpaces) - begin + 1);
}

std::string onOneLine(std::string_view text) {
  std::string line(trimmed(text));
  for (char& c : line) c = c == '\n' || c == '\r' || c == '\t' ? ' ' : c;
  return line;
}

std::string foldedText(std::string_view text) {
  std::string folded;
  folded.reserve(text.size());
  while (!text.empty()) {
    const char c = text.front();
    if (static_cast<unsigned char>(c) < 0x80) {
      folded += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
      text.remove_prefix(1);
      continue;
    }
    const auto* const place =
        std::ranges::find_if(kLookAlikes, [&](const LookAlike& it) { return text.starts_with(it.letter); });
    if (place == kLookAlikes.end()) {
      folded += c;
      text.remove_prefix(1);
    } else {
      folded += place->plain;
      text.remove_prefix(place->letter.size());
    }
  }
  return folded;
}

}  // namespace tarebowl::exchange
