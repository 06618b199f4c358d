// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/date.h"

#include <optional>
#include <string>
#include <string_view>

/// Times against the day of a sheet. They are in UTC throughout, so that clocks that change twice a year make
/// no gap and no hour twice; a bowl that is weighed after midnight stays with its day.
namespace tarebowl::intake {

/// Seconds from 00:00 UTC of the day to "2026-11-25T07:30:00Z"; below 0 for a time before it. Nothing for a
/// text that is no such time.
[[nodiscard]] std::optional<long long> secondsFrom(quantity::Date day, std::string_view time);
/// The way back.
[[nodiscard]] std::string timeFrom(quantity::Date day, long long seconds);

/// Whole days since 1970-01-01.
[[nodiscard]] int dayNumber(quantity::Date day);
[[nodiscard]] quantity::Date dayOfNumber(int number);

}  // namespace tarebowl::intake
