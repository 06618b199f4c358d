// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/date.h"

#include <algorithm>
#include <charconv>

namespace tarebowl::quantity {

namespace {

std::optional<int> digits(std::string_view text) {
  const bool plain = std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
  int value = 0;
  if (!plain || std::from_chars(text.data(), text.data() + text.size(), value).ec != std::errc{})
    return std::nullopt;
  return value;
}

std::string padded(int value, std::size_t width) {
  std::string text = std::to_string(value);
  return text.size() < width ? std::string(width - text.size(), '0') + text : text;
}

}  // namespace

std::optional<Date> parseDate(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
  const auto year = digits(text.substr(0, 4));
  const auto month = digits(text.substr(5, 2));
  const auto day = digits(text.substr(8, 2));
  if (!year || !month || !day || *year == 0) return std::nullopt;
  const Date date{std::chrono::year(*year), std::chrono::month(static_cast<unsigned>(*month)),
                  std::chrono::day(static_cast<unsigned>(*day))};
  return date.ok() ? std::optional(date) : std::nullopt;
}

std::optional<Date> dayOfTime(std::string_view time) {
  constexpr std::size_t kDayLength = 10;
  return parseDate(time.substr(0, kDayLength));
}

std::string isoDate(Date date) {
  return padded(static_cast<int>(date.year()), 4) + '-' +
         padded(static_cast<int>(static_cast<unsigned>(date.month())), 2) + '-' +
         padded(static_cast<int>(static_cast<unsigned>(date.day())), 2);
}

Date plusMonths(Date date, int months) {
  const Date moved = date + std::chrono::months(months);
  return moved.ok() ? moved : Date(moved.year() / moved.month() / std::chrono::last);
}

}  // namespace tarebowl::quantity
