// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace tarebowl::quantity {

/// A day of the Gregorian calendar; always a day that exists where parseDate made it.
using Date = std::chrono::year_month_day;

/// Reads "2026-11-25" (ISO 8601, years 0001 … 9999). Nothing for any other text or a day that does not exist.
[[nodiscard]] std::optional<Date> parseDate(std::string_view text);
/// The day of a time, "2026-11-25T07:30:00Z".
[[nodiscard]] std::optional<Date> dayOfTime(std::string_view time);
[[nodiscard]] std::string isoDate(Date date);

/// The same day so many months later (or earlier, below 0); the last day of the month where it has no such
/// day: a month after 31 January is 28 or 29 February.
[[nodiscard]] Date plusMonths(Date date, int months);

}  // namespace tarebowl::quantity
