// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/rotation_days.h"

#include "core/exchange/field_reader.h"
#include "core/exchange/rotation_json.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace tarebowl::exchange {
namespace {

constexpr std::array<std::string_view, 7> kWeekdays{"mon", "tue", "wed", "thu", "fri", "sat", "sun"};

std::chrono::sys_days inDays(quantity::Date date) {
  return std::chrono::sys_days(date);
}

}  // namespace

quantity::Date dateOfDay(quantity::Date from, int day) {
  return quantity::Date(inDays(from) + std::chrono::days(day));
}

quantity::Date RotationDays::requireFrom(const JsonReader& reader) const {
  if (!from_) reader.refuse("a number of a day: the date of the first day is not known (\"from\", --from)");
  return *from_;
}

int RotationDays::day(const JsonReader& reader) const {
  if (!reader.isText()) return reader.wholeNumber(1, count_) - 1;
  const auto date = quantity::parseDate(reader.text());
  if (!date) reader.refuse("a number of a day, 1 for the first, or a day as YYYY-MM-DD");
  const auto day = (inDays(*date) - inDays(requireFrom(reader))).count();
  if (day < 0 || day >= count_) reader.refuse(fmt::format("a day of the {} days of the period", count_));
  return static_cast<int>(day);
}

diet::DayList RotationDays::list(const JsonReader& reader) const {
  diet::DayList days;
  for (const JsonReader& entry : reader.elements()) {
    const auto weekday =
        entry.isText() ? std::ranges::find(kWeekdays, std::string_view(entry.text())) : kWeekdays.end();
    if (weekday == kWeekdays.end()) {
      days.push_back(this->day(entry));
      continue;
    }
    const quantity::Date from = requireFrom(entry);
    const auto wanted = static_cast<unsigned>(weekday - kWeekdays.begin()) + 1;
    for (int d = 0; d < count_; ++d)
      if (std::chrono::weekday(inDays(dateOfDay(from, d))).iso_encoding() == wanted) days.push_back(d);
  }
  std::ranges::sort(days);
  days.erase(std::unique(days.begin(), days.end()), days.end());
  return days;
}

diet::DayList RotationDays::outside(quantity::Date first, quantity::Date last,
                                    const JsonReader& reader) const {
  diet::DayList days;
  const quantity::Date from = requireFrom(reader);
  for (int d = 0; d < count_; ++d) {
    const quantity::Date date = dateOfDay(from, d);
    if (date < first || date > last) days.push_back(d);
  }
  return days;
}

}  // namespace tarebowl::exchange
