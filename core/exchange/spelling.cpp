// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/spelling.h"

#include <algorithm>
#include <vector>

namespace tarebowl::exchange {

namespace {

char lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

std::size_t slipsForgiven(std::size_t length) {
  return length <= 6 ? 1 : 2;
}

}  // namespace

std::size_t slipsBetween(std::string_view a, std::string_view b) {
  std::vector<std::size_t> beforeLast(b.size() + 1);
  std::vector<std::size_t> last(b.size() + 1);
  std::vector<std::size_t> current(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    current[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t change = lower(a[i - 1]) == lower(b[j - 1]) ? 0 : 1;
      current[j] = std::min({last[j] + 1, current[j - 1] + 1, last[j - 1] + change});
      const bool swapped =
          i > 1 && j > 1 && lower(a[i - 1]) == lower(b[j - 2]) && lower(a[i - 2]) == lower(b[j - 1]);
      if (swapped) current[j] = std::min(current[j], beforeLast[j - 2] + 1);
    }
    beforeLast.swap(last);
    last.swap(current);
  }
  return last[b.size()];
}

std::optional<std::string_view> likelyMeant(std::string_view text, std::span<const std::string_view> known) {
  std::optional<std::string_view> best;
  std::size_t fewest = 0;
  for (const std::string_view word : known) {
    if (word == text) return std::nullopt;
    const std::size_t forgiven = slipsForgiven(word.size());
    if (text.size() > word.size() + forgiven || word.size() > text.size() + forgiven) continue;
    const std::size_t slips = slipsBetween(text, word);
    if (slips > forgiven || (best && slips >= fewest)) continue;
    best = word;
    fewest = slips;
  }
  return best;
}

std::string inWords(std::span<const std::string_view> choices) {
  std::string text;
  for (std::size_t i = 0; i < choices.size(); ++i) {
    if (i > 0) text += i + 1 == choices.size() ? " or " : ", ";
    text += choices[i];
  }
  return text;
}

}  // namespace tarebowl::exchange
