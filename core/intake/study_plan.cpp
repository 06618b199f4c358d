// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/study_plan.h"

#include "core/intake/student.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::intake {

namespace {

constexpr int kMostDays = 3653;
constexpr std::size_t kPairsForLag = 10;

bool holds(const std::vector<std::string>& list, const std::string& text) {
  return std::ranges::find(list, text) != list.end();
}

void want(std::vector<PanWanted>& pans, const std::string& place, const FedItem& item) {
  auto found = std::ranges::find_if(
      pans, [&](const PanWanted& pan) { return pan.place == place && pan.foodClass == item.foodClass; });
  if (found == pans.end()) found = pans.insert(found, {place, item.foodClass, {}});
  if (!holds(found->foods, item.food)) found->foods.push_back(item.food);
}

}  // namespace

std::optional<int> daysNeeded(double sd, const Precision& precision) {
  const auto enough = [&](int n) {
    return meanHalfWidth(sd, static_cast<double>(n), precision.confidence) <= precision.halfWidth;
  };
  if (!enough(kMostDays)) return std::nullopt;
  // The half width falls with every further day.
  int few = 1;
  int many = kMostDays;
  while (many - few > 1) {
    const int middle = few + (many - few) / 2;
    (enough(middle) ? many : few) = middle;
  }
  return many;
}

double DayVariation::sdForPlanning() const {
  constexpr double kMostCorrelation = 0.95;
  const double r = std::clamp(lag1, 0.0, kMostCorrelation);
  return sd * std::sqrt((1.0 + r) / (1.0 - r));
}

std::optional<DayVariation> variationOf(const DailySeries& series) {
  DayVariation variation;
  double sum = 0.0;
  for (const auto& value : series.values) {
    if (!value) continue;
    ++variation.days;
    sum += *value;
  }
  if (variation.days < 2) return std::nullopt;
  const auto count = static_cast<double>(variation.days);
  variation.mean = sum / count;
  double squares = 0.0;
  double products = 0.0;
  std::size_t pairs = 0;
  for (std::size_t i = 0; i < series.values.size(); ++i) {
    if (!series.values[i]) continue;
    const double deviation = *series.values[i] - variation.mean;
    squares += deviation * deviation;
    if (i == 0 || !series.values[i - 1]) continue;
    products += deviation * (*series.values[i - 1] - variation.mean);
    ++pairs;
  }
  variation.sd = std::sqrt(squares / (count - 1.0));
  if (pairs >= kPairsForLag && squares > 0.0)
    variation.lag1 = (products / static_cast<double>(pairs)) / (squares / count);
  return variation;
}

std::optional<StudyPlan> planStudy(const DayVariation& variation, const Precision& precision,
                                   std::span<const FedBowl> bowls, std::span<const std::string> unchanged) {
  const auto days = daysNeeded(variation.sdForPlanning(), precision);
  if (!days) return std::nullopt;
  StudyPlan plan{.days = *days, .variation = variation, .precision = precision};
  for (const FedBowl& bowl : bowls)
    for (const FedItem& item : bowl.items) {
      if (!holds(plan.foods, item.food)) plan.foods.push_back(item.food);
      if (std::ranges::find(unchanged, item.foodClass) == unchanged.end()) want(plan.pans, bowl.place, item);
    }
  return plan;
}

}  // namespace tarebowl::intake
