// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/time_of_sheet.h"

#include <fmt/format.h>

#include <charconv>

namespace tarebowl::intake {

namespace {

constexpr long long kMinute = 60;
constexpr long long kHour = 60 * kMinute;
constexpr long long kDay = 24 * kHour;

/// Two digits of a time, at most `most`.
std::optional<int> pair(std::string_view time, std::size_t at, int most) {
  int value = 0;
  const char* const end = time.data() + at + 2;
  const auto read = std::from_chars(time.data() + at, end, value);
  if (read.ec != std::errc{} || read.ptr != end || value < 0 || value > most) return std::nullopt;
  return value;
}

}  // namespace

int dayNumber(quantity::Date day) {
  return static_cast<int>(std::chrono::sys_days(day).time_since_epoch().count());
}

quantity::Date dayOfNumber(int number) {
  return std::chrono::sys_days(std::chrono::days(number));
}

std::optional<long long> secondsFrom(quantity::Date day, std::string_view time) {
  constexpr std::string_view kShape = "2026-11-25T07:30:00Z";
  if (time.size() != kShape.size() || time[10] != 'T' || time[13] != ':' || time[16] != ':' ||
      time.back() != 'Z')
    return std::nullopt;
  const auto on = quantity::dayOfTime(time);
  const auto hour = pair(time, 11, 23);
  const auto minute = pair(time, 14, 59);
  const auto second = pair(time, 17, 60);
  if (!on || !hour || !minute || !second) return std::nullopt;
  return (dayNumber(*on) - dayNumber(day)) * kDay + *hour * kHour + *minute * kMinute + *second;
}

std::string timeFrom(quantity::Date day, long long seconds) {
  const long long days = seconds >= 0 ? seconds / kDay : -((kDay - 1 - seconds) / kDay);
  const long long rest = seconds - days * kDay;
  return fmt::format("{}T{:02}:{:02}:{:02}Z",
                     quantity::isoDate(dayOfNumber(dayNumber(day) + static_cast<int>(days))), rest / kHour,
                     rest % kHour / kMinute, rest % kMinute);
}

}  // namespace tarebowl::intake
