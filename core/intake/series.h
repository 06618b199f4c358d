// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/date.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace tarebowl::intake {

/// A value a day; nothing on a day that is missing. Days are consecutive: a day without a bowl stands in it,
/// empty.
struct DailySeries {
  quantity::Date first{};
  std::vector<std::optional<double>> values{};
  [[nodiscard]] quantity::Date dayAt(std::size_t index) const {
    return std::chrono::sys_days(first) + std::chrono::days(index);
  }
};

struct DayValue {
  quantity::Date day{};
  std::optional<double> value{};
};
/// Lays days (in order, each once) on the calendar; days between them are empty. Nothing in, nothing out.
[[nodiscard]] DailySeries onCalendar(std::span<const DayValue> days);

/// A mean of the last days, the day itself included, and how many of them stand behind it.
struct RollingMean {
  std::optional<double> mean{};  ///< nothing below the least number of days: a gap stays a gap
  std::size_t days = 0;
};
/// One a day. window and atLeast are 1 or more. The first days have shorter windows.
[[nodiscard]] std::vector<RollingMean> rollingMeans(const DailySeries& series, std::size_t window,
                                                    std::size_t atLeast);

}  // namespace tarebowl::intake
