// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/derived_values.h"

#include "core/food/stated_value.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace tarebowl::ui {
namespace {

using food::NutrientId;
using food::NutrientValue;
using food::SampleOrigin;

/// One sample's statement, on its way to a mean.
struct Candidate {
  const KeptSample* sample;
  const food::SampleValue* stated;
};
using Candidates = std::map<NutrientId, std::vector<Candidate>>;

Candidates collect(const FoodPage& page) {
  Candidates result;
  for (const KeptSample& kept : page.samples)
    for (const food::SampleValue& value : kept.sample.values)
      result[value.nutrient].push_back({&kept, &value});
  return result;
}

std::optional<NutrientValue> asFed(const Candidate& candidate, const food::BasisFacts& facts) {
  const food::SampleValue& value = *candidate.stated;
  const double scale = food::basisOf(value.amount) == quantity::Basis::Energy ? 1000.0 : 100.0;
  const food::StatedValue stated{.amount = food::amountOf(value.amount),
                                 .sd = value.sd,
                                 .unit = food::describe(value.nutrient).unit,
                                 .per = scale,
                                 .basis = food::basisOf(value.amount),
                                 .sampleCount = value.count,
                                 .qualifier = value.qualifier,
                                 .source = candidate.sample->sample.source};
  auto read = food::toAsFed(value.nutrient, stated, facts);
  if (auto* result = std::get_if<NutrientValue>(&read)) return std::move(*result);
  return std::nullopt;
}

bool isNewer(const food::Sample& a, const food::Sample& b) {
  if (a.date.has_value() != b.date.has_value()) return a.date.has_value();
  return a.date && *a.date > *b.date;
}

/// Mean weighted by determinations and pooled scatter: within the reports, and between their means.
NutrientValue pooled(const std::vector<NutrientValue>& values) {
  if (values.size() == 1) return values.front();
  double n = 0.0;
  double sum = 0.0;
  for (const NutrientValue& value : values) {
    const double weight = value.sampleCount.value_or(1);
    n += weight;
    sum += weight * value.amount.value();
  }
  const double mean = sum / n;
  double squares = 0.0;
  for (const NutrientValue& value : values) {
    const double weight = value.sampleCount.value_or(1);
    const double sd = value.sd ? value.sd->value() : 0.0;
    squares += (weight - 1.0) * sd * sd + weight * std::pow(value.amount.value() - mean, 2);
  }
  NutrientValue result = values.front();
  result.amount = quantity::AsFedContent(mean);
  result.sd = quantity::AsFedContent(std::sqrt(squares / (n - 1.0)));
  result.sampleCount = static_cast<int>(std::lround(n));
  return result;
}

/// The candidates that count: all of the own laboratory, or the newest of the best origin.
std::vector<const Candidate*> best(const std::vector<Candidate>& candidates) {
  std::vector<const Candidate*> usable;
  for (const Candidate& candidate : candidates)
    if (!candidate.sample->sample.excluded) usable.push_back(&candidate);
  if (usable.empty()) return usable;
  const auto origin = [](const Candidate* candidate) { return candidate->sample->sample.origin; };
  const SampleOrigin first = origin(*std::min_element(
      usable.begin(), usable.end(), [&](const auto* a, const auto* b) { return origin(a) < origin(b); }));
  std::erase_if(usable, [&](const auto* candidate) { return origin(candidate) != first; });
  if (first == SampleOrigin::OwnLab) return usable;
  return {*std::min_element(usable.begin(), usable.end(), [](const auto* a, const auto* b) {
    return isNewer(a->sample->sample, b->sample->sample);
  })};
}

DerivedValue derive(NutrientId nutrient, const std::vector<Candidate>& candidates,
                    const food::BasisFacts& facts) {
  DerivedValue derived{.nutrient = nutrient};
  const std::vector<const Candidate*> counted = best(candidates);
  std::vector<NutrientValue> values;
  for (const Candidate& candidate : candidates) {
    Statement statement{.sample = candidate.sample->key};
    const auto value = asFed(candidate, facts);
    const bool counts = std::find(counted.begin(), counted.end(), &candidate) != counted.end();
    if (candidate.sample->sample.excluded)
      statement.standing = Standing::SetAside;
    else if (!value)
      statement.standing = Standing::Unreadable;
    else if (!counts)
      statement.standing = Standing::PassedOver;
    else
      values.push_back(*value);
    statement.value = value.value_or(NutrientValue{
        .amount = quantity::AsFedContent(food::amountOf(candidate.stated->amount)), .source = {}});
    derived.statements.push_back(std::move(statement));
  }
  if (values.empty()) return derived;
  derived.origin = counted.front()->sample->sample.origin;
  derived.value = pooled(values);
  return derived;
}

std::optional<double> amountOf(const std::vector<DerivedValue>& values, NutrientId nutrient) {
  for (const DerivedValue& value : values)
    if (value.nutrient == nutrient && value.value) return value.value->amount.value();
  return std::nullopt;
}

void setByHand(std::vector<DerivedValue>& values, const SetByHand& hand) {
  auto found = std::find_if(values.begin(), values.end(),
                            [&](const DerivedValue& value) { return value.nutrient == hand.nutrient; });
  if (found == values.end()) found = values.insert(values.end(), DerivedValue{.nutrient = hand.nutrient});
  for (Statement& statement : found->statements)
    if (statement.standing == Standing::Counted) statement.standing = Standing::PassedOver;
  found->setByHand = hand.reason;
  found->origin.reset();
  NutrientValue value{.amount = quantity::AsFedContent(hand.amount), .source = hand.reason};
  if (hand.sd) value.sd = quantity::AsFedContent(*hand.sd);
  found->value = std::move(value);
}

std::vector<DerivedValue> deriveAll(const Candidates& candidates, const FoodPage& page,
                                    const food::BasisFacts& facts) {
  std::vector<DerivedValue> values;
  for (const auto& [nutrient, stated] : candidates) values.push_back(derive(nutrient, stated, facts));
  for (const SetByHand& hand : page.setByHand) setByHand(values, hand);
  return values;
}

}  // namespace

std::vector<DerivedValue> derivedValues(const FoodPage& page) {
  const Candidates candidates = collect(page);
  // Water and energy first: what is stated on dry matter or per 1000 kcal waits for them.
  food::BasisFacts facts;
  std::vector<DerivedValue> values;
  for (int round = 0; round < 2; ++round) {
    values = deriveAll(candidates, page, facts);
    const auto water = amountOf(values, food::nutrients::water());
    const auto energy = amountOf(values, food::nutrients::energy());
    if (water && *water < 100.0) facts.dryMatter = quantity::DryMatterShare::fromWaterPer100g(*water);
    if (energy && *energy > 0.0) facts.energyPer100g = quantity::Kilocalories(*energy);
  }
  values = deriveAll(candidates, page, facts);
  std::sort(values.begin(), values.end(),
            [](const DerivedValue& a, const DerivedValue& b) { return a.nutrient < b.nutrient; });
  return values;
}

food::Composition compositionOf(const std::vector<DerivedValue>& values) {
  food::Composition composition;
  for (const DerivedValue& value : values)
    if (value.value) composition.set(value.nutrient, *value.value);
  return composition;
}

food::Composition compositionOf(const FoodPage& page) {
  return compositionOf(derivedValues(page));
}

}  // namespace tarebowl::ui
