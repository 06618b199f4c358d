// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/scale_line.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>
#include <cstddef>
#include <string>
#include <vector>

namespace tarebowl::intake {
namespace {

constexpr double kGramsPerPound = 453.59237;

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}
bool isLetter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '?';
}
bool isMark(char c) {
  return c == '.' || c == ',';
}

std::string lowered(std::string_view text) {
  std::string lower(text);
  std::ranges::transform(lower, lower.begin(),
                         [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
  return lower;
}

template <std::size_t Count>
bool isOneOf(const std::string& word, const std::array<std::string_view, Count>& words) {
  return std::ranges::find(words, word) != words.end();
}

/// A number or a word of a line; a sign that stands alone is a part of the number behind it.
struct Piece {
  std::string text;
  bool number = false;
};

/// The end of the digits from `at` on, with one decimal mark that has digits on both sides.
std::size_t endOfNumber(std::string_view line, std::size_t at) {
  bool marked = false;
  while (at < line.size() && (isDigit(line[at]) || (!marked && isMark(line[at]) && at + 1 < line.size() &&
                                                    isDigit(line[at + 1])))) {
    marked = marked || isMark(line[at]);
    ++at;
  }
  return at;
}

std::size_t endOfWord(std::string_view line, std::size_t at) {
  while (at < line.size() && isLetter(line[at])) ++at;
  return at;
}

/// Nothing where a byte is no printable text.
std::optional<std::vector<Piece>> piecesOf(std::string_view line) {
  std::vector<Piece> pieces;
  std::string sign;
  for (std::size_t at = 0; at < line.size();) {
    const char c = line[at];
    std::size_t end = at + 1;
    if (isDigit(c)) {
      end = endOfNumber(line, at);
      pieces.push_back({sign + std::string(line.substr(at, end - at)), true});
      sign.clear();
    } else if (isLetter(c)) {
      end = endOfWord(line, at);
      pieces.push_back({std::string(line.substr(at, end - at))});
    } else if (c == '-' || c == '+') {
      sign.assign(c == '-' ? 1 : 0, '-');
    } else if (c < 0x20 || c > 0x7e) {
      if (c != '\t') return std::nullopt;
    }
    at = end;
  }
  return pieces;
}

std::optional<ScaleUnit> unitOf(const std::string& word) {
  if (isOneOf(word, std::array<std::string_view, 4>{"g", "gr", "gram", "grams"})) return ScaleUnit::Gram;
  if (isOneOf(word, std::array<std::string_view, 2>{"kg", "kgs"})) return ScaleUnit::Kilogram;
  if (isOneOf(word, std::array<std::string_view, 2>{"oz", "ozs"})) return ScaleUnit::Ounce;
  if (isOneOf(word, std::array<std::string_view, 2>{"lb", "lbs"})) return ScaleUnit::Pound;
  return std::nullopt;
}

bool saysOutOfRange(const std::string& word) {
  return isOneOf(word,
                 std::array<std::string_view, 8>{"ol", "ul", "err", "error", "high", "low", "over", "under"});
}

/// What a word says of the pan; nothing where it says nothing of it.
std::optional<bool> steadyBy(const std::string& word) {
  if (isOneOf(word, std::array<std::string_view, 3>{"s", "st", "stable"})) return true;
  if (isOneOf(word, std::array<std::string_view, 5>{"d", "us", "sd", "?", "unstable"})) return false;
  return std::nullopt;
}

std::optional<double> valueOf(std::string text) {
  std::ranges::replace(text, ',', '.');
  double value = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return value;
}

int decimalsOf(const std::string& text) {
  const std::size_t mark = text.find_first_of(".,");
  return mark == std::string::npos ? 0 : static_cast<int>(text.size() - mark - 1);
}

std::optional<ScaleFault> faultOf(const std::vector<Piece>& pieces) {
  const auto numbers = std::ranges::count_if(pieces, &Piece::number);
  const bool outOfRange = std::ranges::any_of(
      pieces, [](const Piece& piece) { return !piece.number && saysOutOfRange(lowered(piece.text)); });
  if (outOfRange) return ScaleFault::OutOfRange;
  if (numbers == 0) return ScaleFault::NoNumber;
  if (numbers > 1) return ScaleFault::SeveralNumbers;
  return std::nullopt;
}

}  // namespace

quantity::Grams toGrams(double number, ScaleUnit unit) {
  switch (unit) {
    case ScaleUnit::Gram:
      return quantity::Grams(number);
    case ScaleUnit::Kilogram:
      return quantity::Grams(number * 1000.0);
    case ScaleUnit::Ounce:
      return quantity::Grams(number * kGramsPerPound / 16.0);
    case ScaleUnit::Pound:
      return quantity::Grams(number * kGramsPerPound);
  }
  return quantity::Grams(number);
}

std::variant<ScaleLine, ScaleFault> readScaleLine(std::string_view line) {
  const auto pieces = piecesOf(line);
  if (!pieces) return ScaleFault::Garbled;
  if (const auto fault = faultOf(*pieces)) return *fault;
  const auto number = std::ranges::find_if(*pieces, &Piece::number);
  const auto value = valueOf(number->text);
  if (!value) return ScaleFault::Garbled;
  ScaleLine read{.number = *value, .decimals = decimalsOf(number->text), .unit = {}, .steady = {}};
  for (auto piece = pieces->begin(); piece != pieces->end(); ++piece) {
    if (piece == number) continue;
    const std::string word = lowered(piece->text);
    const bool behind = piece > number;
    if (behind && !read.unit && (read.unit = unitOf(word))) continue;
    if (const auto steady = steadyBy(word))
      read.steady = *steady && read.steady.value_or(true);
    else if (behind && piece == number + 1)
      return ScaleFault::UnknownUnit;
  }
  return read;
}

}  // namespace tarebowl::intake
