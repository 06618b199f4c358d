// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/drops.h"

#include "core/food/robust.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <span>

namespace tarebowl::intake {

namespace {

/// Missing unless every averaged day but a third is known.
std::vector<std::optional<double>> averaged(const DailySeries& series, std::size_t days) {
  if (days <= 1) return series.values;
  const std::vector<RollingMean> means = rollingMeans(series, days, days - days / 3);
  std::vector<std::optional<double>> values;
  values.reserve(means.size());
  for (const RollingMean& mean : means) values.push_back(mean.mean);
  return values;
}

struct History {
  food::RobustScatter scatter;
  std::size_t known = 0;
};

class Watch {
 public:
  Watch(const DailySeries& series, const DropRule& rule)
      : series_(series), rule_(rule), values_(averaged(series, rule.averagedDays)), low_(values_.size()) {}

  std::vector<Drop> run() {
    for (std::size_t i = 0; i < values_.size(); ++i) {
      if (!values_[i]) continue;
      const std::vector<double> past = pastBefore(i);
      const auto history = mayBeLow(*values_[i], past) ? historyOf(past) : std::nullopt;
      low_[i] = history && isLow(*values_[i], *history);
      if (low_[i])
        note(i, *history);
      else
        open_ = false;
    }
    return drops_;
  }

 private:
  /// Empty where too few days are known.
  [[nodiscard]] std::vector<double> pastBefore(std::size_t day) const {
    const std::size_t gap = std::max<std::size_t>(1, rule_.averagedDays);  // averages must not overlap
    std::vector<double> past;
    if (day < gap) return past;
    past.reserve(rule_.historyDays);
    for (std::size_t j = day - std::min(day, rule_.historyDays); j + gap <= day; ++j) {
      if (!values_[j] || low_[j]) continue;
      if (rule_.sameWeekdayOnly && (day - j) % 7 != 0) continue;
      past.push_back(*values_[j]);
    }
    if (past.size() < std::max<std::size_t>(2, rule_.leastKnown)) past.clear();
    return past;
  }

  /// Whether the median can be so far above the value at all: half of the past must be. Years are looked
  /// through without a median for every day.
  [[nodiscard]] bool mayBeLow(double value, std::span<const double> past) const {
    constexpr double kRounding = 1e-9;
    const double low = value - kRounding * std::abs(value);
    const auto above =
        std::ranges::count_if(past, [&](double other) { return other * (1.0 - rule_.leastShare) >= low; });
    return 2 * above >= std::ssize(past);
  }

  static std::optional<History> historyOf(std::span<const double> past) {
    if (past.empty()) return std::nullopt;
    const auto scatter = food::robustScatter(past);
    // All equal: any other value is farther away than they ever scattered.
    return History{scatter.value_or(food::RobustScatter{past.front(), 0.0}), past.size()};
  }

  [[nodiscard]] bool isLow(double value, const History& history) const {
    const double below = history.scatter.median - value;
    return below > rule_.spreads * history.scatter.spread &&
           below >= rule_.leastShare * history.scatter.median;
  }

  void note(std::size_t day, const History& history) {
    if (!open_) drops_.push_back({.from = series_.dayAt(day)});
    open_ = true;
    Drop& drop = drops_.back();
    drop.until = series_.dayAt(day);
    const bool lowest = drop.days == 0 || *values_[day] < drop.lowest;
    ++drop.days;
    if (!lowest) return;
    drop.lowest = *values_[day];
    drop.usual = history.scatter.median;
    drop.spread = history.scatter.spread;
    drop.known = history.known;
  }

  const DailySeries& series_;
  const DropRule& rule_;
  std::vector<std::optional<double>> values_;
  std::vector<bool> low_;
  std::vector<Drop> drops_;
  bool open_ = false;
};

}  // namespace

std::vector<Drop> dropsIn(const DailySeries& series, const DropRule& rule) {
  return Watch(series, rule).run();
}

}  // namespace tarebowl::intake
