// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/number_text.h"

#include "core/exchange/plain_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <string>

namespace tarebowl::exchange {

namespace {

constexpr std::array<std::string_view, 15> kUnknownWords{
    "",    "-",  "--",  "---",  "?",   "n.d.",         "nd",
    "n.d", "na", "n/a", "n.a.", "n.a", "not analysed", "not determined",
    "."};
constexpr std::array<std::string_view, 5> kTraceWords{"tr", "tr.", "trace", "traces", "(tr)"};
constexpr std::array<std::string_view, 12> kMonths{"jan", "feb", "mar", "apr", "may", "jun",
                                                   "jul", "aug", "sep", "oct", "nov", "dec"};

struct QualifierWord {
  std::string_view word;
  food::Qualifier qualifier;
};
// Longest first where one begins with another.
constexpr std::array<QualifierWord, 10> kQualifiers{{{"<=", food::Qualifier::AtMost},
                                                     {"≤", food::Qualifier::AtMost},
                                                     {"max.", food::Qualifier::AtMost},
                                                     {"max", food::Qualifier::AtMost},
                                                     {"<", food::Qualifier::Below},
                                                     {">=", food::Qualifier::AtLeast},
                                                     {"≥", food::Qualifier::AtLeast},
                                                     {"min.", food::Qualifier::AtLeast},
                                                     {"min", food::Qualifier::AtLeast},
                                                     {">", food::Qualifier::Above}}};

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

bool isLetter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

template <std::size_t N>
bool isOneOf(std::string_view text, const std::array<std::string_view, N>& words) {
  return std::ranges::find(words, text) != words.end();
}

std::size_t digitsAt(std::string_view text, std::size_t at) {
  std::size_t count = 0;
  while (at + count < text.size() && isDigit(text[at + count])) ++count;
  return count;
}

bool holdsMonth(std::string_view text) {
  const auto begin = std::ranges::find_if(text, isLetter);
  const auto at = static_cast<std::size_t>(begin - text.begin());
  return isOneOf(text.substr(std::min(at, text.size()), 3), kMonths) && std::ranges::any_of(text, isDigit);
}

/// Two separators of one kind between groups of digits: 3/4/2021, 2021-03-04, 1.3.2021; also 3/4.
bool looksLikeDate(std::string_view text) {
  if (holdsMonth(text)) return true;
  std::size_t at = digitsAt(text, 0);
  if (at == 0 || at > 4 || at >= text.size()) return false;
  const char separator = text[at];
  if (separator != '/' && separator != '-' && separator != '.') return false;
  const std::size_t second = digitsAt(text, at + 1);
  if (second == 0 || second > 2) return false;
  at += 1 + second;
  if (at == text.size()) return separator != '.';
  if (text[at] != separator) return false;
  const std::size_t third = digitsAt(text, at + 1);
  const bool likeYear = third == 2 || third == 4 || (third > 0 && at > 4);
  return likeYear && (at + 1 + third == text.size() || !isDigit(text[at + 1 + third]));
}

NumberFault faultOf(std::string_view text) {
  if (text.starts_with('=') || (text.size() > 1 && (text[0] == '+' || text[0] == '@') && isLetter(text[1])))
    return NumberFault::Formula;
  if (text.starts_with('#')) return NumberFault::SpreadsheetError;
  constexpr std::array<std::string_view, 8> kNotFinite{"nan",      "inf",       "-inf", "+inf",
                                                       "infinity", "-infinity", "-nan", "∞"};
  if (isOneOf(text, kNotFinite)) return NumberFault::NotFinite;
  if (looksLikeDate(text)) return NumberFault::Date;
  return NumberFault::NotANumber;
}

bool isGroupMark(char c, DecimalMark mark) {
  return c == ' ' || c == '\'' || c == (mark == DecimalMark::Point ? ',' : '.');
}

/// The whole part without the marks between its thousands; nothing where they stand elsewhere.
std::optional<std::string> ungrouped(std::string_view whole, DecimalMark mark) {
  std::string digits;
  std::size_t sinceMark = 0;
  bool grouped = false;
  for (const char c : whole) {
    if (isDigit(c)) {
      digits += c;
      ++sinceMark;
      continue;
    }
    if (!isGroupMark(c, mark) || sinceMark == 0 || sinceMark > 3 || (grouped && sinceMark != 3))
      return std::nullopt;
    grouped = true;
    sinceMark = 0;
  }
  if (grouped && sinceMark != 3) return std::nullopt;
  return digits;
}

/// One number without anything around it, in the spelling of the C locale; a fault where it is none.
std::variant<std::string, NumberFault> respell(std::string_view text, DecimalMark mark) {
  const std::string_view all = text;
  const char point = mark == DecimalMark::Point ? '.' : ',';
  std::string result;
  if (text.starts_with('-') || text.starts_with('+')) {
    if (text.front() == '-') result = "-";
    text.remove_prefix(1);
  }
  const auto exponent = std::min(text.find_first_of("eE"), text.size());
  const std::string_view mantissa = text.substr(0, exponent);
  const auto at = std::min(mantissa.find(point), mantissa.size());
  const auto known = [&](char c) { return isDigit(c) || isGroupMark(c, mark); };
  const std::string_view whole = mantissa.substr(0, at);
  const std::string_view fraction = mantissa.substr(std::min(at + 1, mantissa.size()));
  if (!std::ranges::all_of(whole, known) || (whole.empty() && fraction.empty())) return faultOf(all);
  const auto digits = ungrouped(whole, mark);
  if (!digits || !std::ranges::all_of(fraction, isDigit)) {
    const NumberFault fault = faultOf(all);
    const bool numberLike = std::ranges::all_of(
        mantissa, [](char c) { return isDigit(c) || c == '.' || c == ',' || c == ' ' || c == '\''; });
    return fault == NumberFault::NotANumber && numberLike ? NumberFault::MisplacedGrouping : fault;
  }
  result += digits->empty() ? "0" : *digits;
  if (!fraction.empty()) (result += '.') += fraction;
  return result += text.substr(exponent);
}

std::variant<double, NumberFault> readOne(std::string_view text, DecimalMark mark) {
  const auto spelled = respell(text, mark);
  if (const auto* fault = std::get_if<NumberFault>(&spelled)) return *fault;
  const auto& plain = std::get<std::string>(spelled);
  double value = 0.0;
  const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value);
  if (end != plain.data() + plain.size()) return faultOf(text);
  if (error == std::errc::result_out_of_range) {
    // Too small to be told from 0 is 0; too large is no number.
    return plain.find("e-") != std::string::npos || plain.find("E-") != std::string::npos
               ? std::variant<double, NumberFault>(0.0)
               : NumberFault::NotFinite;
  }
  if (error != std::errc()) return NumberFault::NotANumber;
  if (!std::isfinite(value)) return NumberFault::NotFinite;
  if (value < 0.0) return NumberFault::Negative;
  return value == 0.0 ? 0.0 : value;
}

food::Qualifier takeQualifier(std::string_view& text) {
  for (const auto& [word, qualifier] : kQualifiers) {
    if (!text.starts_with(word)) continue;
    text = trimmed(text.substr(word.size()));
    return qualifier;
  }
  return food::Qualifier::Equal;
}

/// "12.3±0.4", "12.3 +/- 0.4" and "12.3 (0.4)": the second part, which is taken off text.
std::optional<std::string_view> takeScatter(std::string_view& text) {
  for (const std::string_view mark :
       {std::string_view("±"), std::string_view("+/-"), std::string_view("+-")}) {
    const auto at = text.find(mark);
    if (at == std::string_view::npos) continue;
    const auto scatter = trimmed(text.substr(at + mark.size()));
    text = trimmed(text.substr(0, at));
    return scatter;
  }
  const auto open = text.find('(');
  if (open == std::string_view::npos || open == 0 || !text.ends_with(')')) return std::nullopt;
  const auto scatter = trimmed(text.substr(open + 1, text.size() - open - 2));
  text = trimmed(text.substr(0, open));
  return scatter;
}

NumberReading readCarefully(std::string_view cell, DecimalMark mark) {
  const std::string folded = foldedText(cell);
  std::string_view text = trimmed(folded);
  if (isOneOf(text, kUnknownWords)) return NothingKnown{};
  if (isOneOf(text, kTraceWords)) return NumberText{0.0, std::nullopt, food::Qualifier::Trace};
  NumberText number;
  number.qualifier = takeQualifier(text);
  const auto scatter = takeScatter(text);
  const auto amount = readOne(text, mark);
  if (const auto* fault = std::get_if<NumberFault>(&amount)) return *fault;
  number.amount = std::get<double>(amount);
  if (!scatter) return number;
  const auto sd = readOne(*scatter, mark);
  if (const auto* fault = std::get_if<NumberFault>(&sd)) return *fault;
  number.sd = std::get<double>(sd);
  return number;
}

}  // namespace

std::string_view expectationOf(NumberFault fault) {
  switch (fault) {
    case NumberFault::NotANumber:
      return "a number";
    case NumberFault::MisplacedGrouping:
      return "a number whose thousands are grouped by three";
    case NumberFault::Formula:
      return "a number and no formula";
    case NumberFault::SpreadsheetError:
      return "a number and no error of a spreadsheet";
    case NumberFault::Date:
      return "a number and no date";
    case NumberFault::NotFinite:
      return "a finite number";
    case NumberFault::Negative:
      return "a number of 0 or more";
  }
  return "a number";
}

NumberReading readNumber(std::string_view text, DecimalMark mark) {
  text = trimmed(text);
  const bool plain = !text.empty() && isDigit(text.front()) && isDigit(text.back()) &&
                     std::ranges::all_of(text, [&](char c) {
                       return isDigit(c) || (c == '.' && mark == DecimalMark::Point);
                     });
  if (plain) {
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error == std::errc() && end == text.data() + text.size()) return NumberText{value, {}, {}};
  }
  return readCarefully(text, mark);
}

void DecimalMarkEvidence::look(std::string_view text, std::size_t line) {
  const auto at = text.find_first_of(".,");
  if (at == std::string_view::npos) return;
  const auto last = text.find_last_of(".,");
  const auto note = [&](char mark, bool open) {
    std::size_t& first = mark == '.' ? (open ? openPoint_ : point_) : (open ? openComma_ : comma_);
    if (first == 0) first = line;
    if (!open) ++(mark == '.' ? points_ : commas_);
  };
  const auto reads = [&](DecimalMark mark) {
    return std::holds_alternative<NumberText>(readNumber(text, mark));
  };
  if (!reads(DecimalMark::Point) && !reads(DecimalMark::Comma)) return;
  if (text[at] != text[last]) return note(text[last], false);
  // The same mark twice groups thousands: the other one is the decimal mark.
  if (at != last) return note(text[at] == '.' ? ',' : '.', false);
  std::size_t before = 0;
  while (before < at && isDigit(text[at - 1 - before])) ++before;
  const bool couldGroup =
      digitsAt(text, at + 1) == 3 && before >= 1 && before <= 3 && text[at - before] != '0';
  note(text[at], couldGroup);
}

std::optional<DecimalMark> DecimalMarkEvidence::mark() const {
  // Where few speak against many, the few are slips: reading them by the mark of the many refuses them.
  constexpr std::size_t kMany = 3;
  if (commas_ > 0 && commas_ >= kMany * points_) return DecimalMark::Comma;
  if (points_ > 0 && points_ >= kMany * commas_) return DecimalMark::Point;
  if (points_ + commas_ > 0) return std::nullopt;
  // "1.234" everywhere is a decimal point with three digits, as published tables print it; "1,234" may be
  // either.
  if (openComma_ > 0 && openPoint_ == 0) return std::nullopt;
  return openComma_ > 0 ? std::nullopt : std::optional(DecimalMark::Point);
}

std::size_t DecimalMarkEvidence::lineFor(DecimalMark mark) const {
  return mark == DecimalMark::Point ? point_ : comma_;
}

}  // namespace tarebowl::exchange
