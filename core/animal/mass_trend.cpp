// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/mass_trend.h"

#include "core/food/robust.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace tarebowl::animal {

namespace {

constexpr std::size_t kEnoughDays = 4;
constexpr double kNormal975 = 1.959964;  // 0.975 quantile of the normal distribution

struct Point {
  int day;
  double logMass;
};

int numberOf(quantity::Date day) {
  return static_cast<int>(std::chrono::sys_days(day).time_since_epoch().count());
}

/// All slopes per day, the least first.
std::vector<double> slopesOf(const std::vector<Point>& points) {
  std::vector<double> slopes;
  for (std::size_t i = 0; i < points.size(); ++i)
    for (std::size_t j = i + 1; j < points.size(); ++j)
      if (const int days = points[j].day - points[i].day; days != 0)
        slopes.push_back((points[j].logMass - points[i].logMass) / days);
  std::ranges::sort(slopes);
  return slopes;
}

/// How many slopes to count in from either end: (N - C) / 2, with C by the normal approximation of Kendall's
/// statistic.
std::size_t marginOf(std::size_t slopes, std::size_t points) {
  const auto n = static_cast<double>(points);
  const double c = kNormal975 * std::sqrt(n * (n - 1.0) * (2.0 * n + 5.0) / 18.0);
  const double margin = (static_cast<double>(slopes) - c) / 2.0;
  return margin > 0.0 ? static_cast<std::size_t>(margin) : 0;
}

double perWeek(double slope) {
  return std::expm1(7.0 * slope);
}

}  // namespace

std::optional<MassTrend> trendOn(std::span<const MassReading> series, quantity::Date day, int days,
                                 std::optional<quantity::Kilograms> expected) {
  MassTrend trend;
  trend.leftOut = doubtsAbout(series, day, expected);
  std::vector<Point> points;
  std::set<int> distinct;
  for (std::size_t i = 0; i < series.size(); ++i) {
    const MassReading& reading = series[i];
    const int age = numberOf(day) - numberOf(reading.on);
    const bool isDoubted =
        std::ranges::find(trend.leftOut, i, &DoubtedReading::reading) != trend.leftOut.end();
    if (reading.excluded || isDoubted || age < 0 || age >= days) continue;
    points.push_back({numberOf(reading.on), std::log(reading.mass.value())});
    distinct.insert(points.back().day);
  }
  if (distinct.size() < kEnoughDays) return std::nullopt;
  const std::vector<double> slopes = slopesOf(points);
  const std::size_t margin = marginOf(slopes.size(), points.size());
  trend.perWeek = perWeek(food::medianOf(slopes));
  trend.low = perWeek(slopes[margin]);
  trend.high = perWeek(slopes[slopes.size() - 1 - margin]);
  trend.readings = points.size();
  trend.from = quantity::Date(std::chrono::sys_days(std::chrono::days(*distinct.begin())));
  trend.until = quantity::Date(std::chrono::sys_days(std::chrono::days(*distinct.rbegin())));
  return trend;
}

}  // namespace tarebowl::animal
