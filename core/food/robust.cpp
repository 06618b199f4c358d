// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/robust.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

namespace tarebowl::food {

double medianOf(std::vector<double> values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::ranges::nth_element(values, middle);
  if (values.size() % 2 == 1) return *middle;
  const double below = *std::max_element(values.begin(), middle);
  return below + (*middle - below) / 2.0;
}

std::optional<RobustScatter> robustScatter(std::span<const double> values) {
  if (values.empty()) return std::nullopt;
  // The 0.75 quantile of the normal distribution, and the ratio of its sd to its mean absolute deviation.
  constexpr double kMadOfNormal = 0.6745;
  constexpr double kSdPerMeanDeviation = 1.253314;
  const double median = medianOf({values.begin(), values.end()});
  std::vector<double> deviations;
  deviations.reserve(values.size());
  for (const double value : values) deviations.push_back(std::abs(value - median));
  double spread = medianOf(deviations) / kMadOfNormal;
  if (spread == 0.0) {
    const double total = std::accumulate(deviations.begin(), deviations.end(), 0.0);
    spread = kSdPerMeanDeviation * total / static_cast<double>(deviations.size());
  }
  if (!(spread > 0.0)) return std::nullopt;
  return RobustScatter{median, spread};
}

double robustZ(double value, const RobustScatter& scatter) {
  return (value - scatter.median) / scatter.spread;
}

}  // namespace tarebowl::food
