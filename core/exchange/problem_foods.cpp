// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/problem_foods.h"

#include <algorithm>
#include <string_view>

namespace tarebowl::exchange {

namespace {

using food::SampleOrigin;

/// "Kale, raw" is a name with its form; the form stands beside it.
std::string nameWithoutForm(const diet::DietFood& from) {
  std::string_view name = from.name;
  for (const std::string_view remark : {" (invented)", " (invented product)"})
    if (name.ends_with(remark)) name.remove_suffix(remark.size());
  const std::string tail = ", " + from.form;
  if (!from.form.empty() && name.ends_with(tail)) name.remove_suffix(tail.size());
  return std::string(name);
}

bool says(std::string_view text, std::string_view word) {
  return text.find(word) != std::string_view::npos;
}

SampleOrigin originOf(const food::NutrientValue& value, const diet::DietFood& from) {
  const bool guaranteed =
      value.qualifier == food::Qualifier::AtLeast || value.qualifier == food::Qualifier::AtMost;
  if (guaranteed || (from.invented && says(value.source, "nvented"))) return SampleOrigin::Label;
  for (const std::string_view word : {"calculated", "imputed", "assumed", "estimate", "nvented"})
    if (says(value.source, word)) return SampleOrigin::Estimate;
  return SampleOrigin::Publication;
}

food::Food foodOf(const diet::DietFood& from) {
  return {.code = from.id,
          .name = nameWithoutForm(from),
          .form = from.form,
          .group = from.group,
          .scaleStep = from.scaleStep,
          .pricePerKg = from.costPerKg,
          .note = from.preparation,
          .invented = from.invented};
}

bool knows(const ProblemFood& known, food::NutrientId nutrient) {
  return std::ranges::any_of(known.samples, [&](const food::Sample& sample) {
    return std::ranges::any_of(sample.values, [&](const auto& value) { return value.nutrient == nutrient; });
  });
}

food::Sample& sampleFor(ProblemFood& known, SampleOrigin origin, const std::string& source) {
  const auto found = std::ranges::find_if(known.samples, [&](const food::Sample& sample) {
    return sample.origin == origin && sample.source == source;
  });
  if (found != known.samples.end()) return *found;
  return known.samples.emplace_back(food::Sample{.origin = origin, .source = source});
}

void takeValues(ProblemFood& known, const diet::DietFood& from) {
  std::vector<food::NutrientId> fresh;
  for (const food::NutrientId nutrient : from.composition.knownNutrients())
    if (!knows(known, nutrient)) fresh.push_back(nutrient);
  for (const food::NutrientId nutrient : fresh) {
    const food::NutrientValue& value = *from.composition.find(nutrient);
    food::SampleValue kept{.nutrient = nutrient,
                           .amount = value.amount,
                           .count = value.sampleCount,
                           .qualifier = value.qualifier};
    if (value.sd) kept.sd = value.sd->value();
    sampleFor(known, originOf(value, from), value.source).values.push_back(kept);
  }
}

}  // namespace

std::vector<ProblemFood> foodsOf(std::span<const diet::BalanceProblem> problems) {
  std::vector<ProblemFood> foods;
  for (const diet::BalanceProblem& problem : problems)
    for (const diet::DietFood& from : problem.foods) {
      auto known = std::ranges::find(foods, from.id, [](const ProblemFood& food) { return food.food.code; });
      if (known == foods.end()) {
        foods.push_back({.food = foodOf(from)});
        known = std::prev(foods.end());
      }
      if (!known->food.pricePerKg) known->food.pricePerKg = from.costPerKg;
      known->food.scaleStep = std::min(known->food.scaleStep, from.scaleStep);
      takeValues(*known, from);
    }
  return foods;
}

}  // namespace tarebowl::exchange
