// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/problem_words.h"

#include <algorithm>
#include <cstddef>
#include <span>

namespace tarebowl::exchange {

namespace {

template <class Enum>
std::optional<Enum> parseEnumerator(std::string_view text, std::span<const std::string_view> words) {
  const auto found = std::find(words.begin(), words.end(), text);
  if (found == words.end()) return std::nullopt;
  return static_cast<Enum>(found - words.begin());
}

}  // namespace

std::optional<food::Qualifier> parseQualifier(std::string_view text) {
  return parseEnumerator<food::Qualifier>(text, kQualifierWords);
}

std::optional<quantity::Basis> parseShareBasis(std::string_view text) {
  if (std::find(kShareBasisWords.begin(), kShareBasisWords.end(), text) == kShareBasisWords.end())
    return std::nullopt;
  return quantity::parseBasis(text);
}

std::string_view symbolOf(food::Qualifier qualifier) {
  return kQualifierWords.at(static_cast<std::size_t>(qualifier));
}

}  // namespace tarebowl::exchange
