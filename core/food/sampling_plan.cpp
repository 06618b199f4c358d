// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/sampling_plan.h"

#include <algorithm>

namespace tarebowl::food {

namespace {

std::optional<quantity::Date> lastAnalysis(NutrientId nutrient, std::span<const Sample> samples) {
  std::optional<quantity::Date> last;
  for (const Sample& sample : samples) {
    if (sample.origin != SampleOrigin::OwnLab || sample.excluded || !sample.date) continue;
    const bool has =
        std::ranges::find(sample.values, nutrient, &SampleValue::nutrient) != sample.values.end();
    if (has && (!last || *sample.date > *last)) last = sample.date;
  }
  return last;
}

}  // namespace

std::vector<DueAnalysis> dueOn(quantity::Date day, std::span<const PlannedAnalysis> plan,
                               std::span<const Sample> samples) {
  std::vector<DueAnalysis> due;
  for (const auto& [nutrient, everyMonths] : plan) {
    DueAnalysis item{nutrient, lastAnalysis(nutrient, samples), std::nullopt};
    if (item.last) item.due = quantity::plusMonths(*item.last, everyMonths);
    if (!item.due || *item.due <= day) due.push_back(item);
  }
  std::ranges::stable_sort(due, {}, &DueAnalysis::due);  // nothing sorts before any day
  return due;
}

}  // namespace tarebowl::food
