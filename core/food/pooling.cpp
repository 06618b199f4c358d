// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/pooling.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::food {

namespace {

int countOf(const ReportedMean& report) {
  return report.count.value_or(1);
}

/// One determination has no scatter of its own; several have one that must be known.
bool scatterIsKnown(const ReportedMean& report) {
  if (!report.count) return !report.sd;
  return *report.count == 1 || report.sd.has_value();
}

double squaresWithin(const ReportedMean& report) {
  return countOf(report) > 1 ? (countOf(report) - 1) * *report.sd * *report.sd : 0.0;
}

}  // namespace

ReportedMean pool(std::span<const ReportedMean> reports) {
  if (reports.size() == 1) return reports.front();
  ReportedMean pooled;
  int count = 0;
  for (const ReportedMean& report : reports) {
    count += countOf(report);
    pooled.mean += countOf(report) * report.mean;
  }
  pooled.count = count;
  pooled.mean /= count;
  if (!std::all_of(reports.begin(), reports.end(), scatterIsKnown)) return pooled;
  double squares = 0.0;
  for (const ReportedMean& report : reports) {
    const double away = report.mean - pooled.mean;
    squares += squaresWithin(report) + countOf(report) * away * away;
  }
  pooled.sd = std::sqrt(squares / (count - 1));
  return pooled;
}

}  // namespace tarebowl::food
