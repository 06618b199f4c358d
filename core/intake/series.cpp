// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/series.h"

#include <algorithm>

namespace tarebowl::intake {

DailySeries onCalendar(std::span<const DayValue> days) {
  DailySeries series;
  if (days.empty()) return series;
  series.first = days.front().day;
  const std::chrono::sys_days first = series.first;
  const auto place = [&](quantity::Date day) {
    return static_cast<std::size_t>((std::chrono::sys_days(day) - first).count());
  };
  series.values.resize(place(days.back().day) + 1);
  for (const DayValue& day : days) series.values[place(day.day)] = day.value;
  return series;
}

std::vector<RollingMean> rollingMeans(const DailySeries& series, std::size_t window, std::size_t atLeast) {
  std::vector<RollingMean> means;
  means.reserve(series.values.size());
  for (std::size_t i = 0; i < series.values.size(); ++i) {
    // Added up anew each time: a sum that is carried along for years drifts.
    double sum = 0.0;
    RollingMean mean;
    for (std::size_t j = i + 1 - std::min(window, i + 1); j <= i; ++j) {
      if (!series.values[j]) continue;
      sum += *series.values[j];
      ++mean.days;
    }
    if (mean.days >= std::max<std::size_t>(1, atLeast)) mean.mean = sum / static_cast<double>(mean.days);
    means.push_back(mean);
  }
  return means;
}

}  // namespace tarebowl::intake
