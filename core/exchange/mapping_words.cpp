// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/mapping_words.h"

#include <algorithm>

namespace tarebowl::exchange {

namespace {

template <class Enum, std::size_t N>
std::optional<Enum> parseWord(std::string_view text, const std::array<std::string_view, N>& words) {
  const auto* const place = std::ranges::find(words, text);
  if (place == words.end()) return std::nullopt;
  return static_cast<Enum>(place - words.begin());
}

}  // namespace

std::optional<ColumnRole> parseRole(std::string_view text) {
  return parseWord<ColumnRole>(text, kRoleWords);
}

std::optional<Layout> parseLayout(std::string_view text) {
  return parseWord<Layout>(text, kLayoutWords);
}

std::optional<DecimalMark> parseDecimalMark(std::string_view text) {
  return parseWord<DecimalMark>(text, kDecimalWords);
}

std::optional<ZeroMeans> parseZero(std::string_view text) {
  return parseWord<ZeroMeans>(text, kZeroWords);
}

std::optional<quantity::Basis> parseFoodBasis(std::string_view text) {
  return parseWord<quantity::Basis>(text, kFoodBasisWords);
}

}  // namespace tarebowl::exchange
