// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/body_mass.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace tarebowl::animal {

/// Where a mass is going: relative change per week, by slopes that a few wild readings do not turn.
struct MassTrend {
  double perWeek = 0.0;  ///< 0.02: 2 % heavier each week
  double low = 0.0;      ///< with a chance of about 95 % the change is not below this …
  double high = 0.0;     ///< … nor above this
  std::size_t readings = 0;
  quantity::Date from{};
  quantity::Date until{};
  std::vector<DoubtedReading> leftOut{};  ///< doubted readings of the series, which do not count
};

/// The median of all slopes between two readings of log mass over days (Theil 1950; the interval by Sen 1968,
/// Journal of the American Statistical Association 63:1379-1389; both from memory), over the last `days` days
/// up to the day. Nothing with fewer than four readings on as many days: a trend cannot be told from chance.
[[nodiscard]] std::optional<MassTrend> trendOn(std::span<const MassReading> series, quantity::Date day,
                                               int days = 90,
                                               std::optional<quantity::Kilograms> expected = std::nullopt);

}  // namespace tarebowl::animal
