// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/derivation.h"

#include "core/food/pooling.h"

#include <algorithm>
#include <set>

namespace tarebowl::food {

namespace {

using quantity::AsFedContent;

/// A value of one sample, brought to 100 g as fed.
struct Candidate {
  std::size_t sample;
  SampleOrigin origin;
  std::optional<quantity::Date> date;
  NutrientValue value;
};

bool isGuarantee(Qualifier qualifier) {
  return qualifier == Qualifier::AtLeast || qualifier == Qualifier::AtMost;
}

/// A sum of parts is worked out anew of what a food states; what a recipe says only "at least" is no amount.
bool isStated(const DerivedValue& derived) {
  const bool isBoundOfMix = derived.by == DerivedBy::Recipe && derived.value.qualifier == Qualifier::AtLeast;
  return derived.by != DerivedBy::BoundOnly && derived.by != DerivedBy::SumOfParts && !isBoundOfMix;
}

bool isMeasured(const Candidate& candidate) {
  return candidate.value.qualifier == Qualifier::Equal;
}

const SampleValue* find(const Sample& sample, NutrientId nutrient) {
  const auto place = std::ranges::find(sample.values, nutrient, &SampleValue::nutrient);
  return place == sample.values.end() ? nullptr : &*place;
}

std::optional<AsFedContent> measuredAsFed(const Sample& sample, NutrientId nutrient) {
  const SampleValue* value = find(sample, nutrient);
  if (value == nullptr || value->qualifier != Qualifier::Equal) return std::nullopt;
  const auto* asFed = std::get_if<AsFedContent>(&value->amount);
  return asFed ? std::optional(*asFed) : std::nullopt;
}

BasisFacts factsOf(const Sample& sample, const Derivation& food) {
  Composition known;
  for (const NutrientId nutrient : {nutrients::water(), nutrients::energy()}) {
    auto own = measuredAsFed(sample, nutrient);
    const DerivedValue* general = food.find(nutrient);
    if (!own && general != nullptr && general->value.qualifier == Qualifier::Equal)
      own = general->value.amount;
    if (own) known.set(nutrient, {.amount = *own});
  }
  BasisFacts facts{known.dryMatter(), std::nullopt};
  if (const auto energy = known.amountPer100g(nutrients::energy()))
    facts.energyPer100g = quantity::Kilocalories(*energy);
  return facts;
}

std::optional<NutrientValue> asFed(const Sample& sample, const SampleValue& value, const Derivation& food) {
  if (const auto* amount = std::get_if<AsFedContent>(&value.amount)) {  // keeps its digits
    return NutrientValue{*amount, value.sd ? std::optional(AsFedContent(*value.sd)) : std::nullopt,
                         value.count, value.qualifier, sample.source};
  }
  const quantity::Basis basis = basisOf(value.amount);
  const StatedValue stated{.amount = amountOf(value.amount),
                           .sd = value.sd,
                           .unit = describe(value.nutrient).unit,
                           .per = basis == quantity::Basis::Energy ? 1000.0 : 100.0,
                           .basis = basis,
                           .sampleCount = value.count,
                           .qualifier = value.qualifier,
                           .source = sample.source};
  auto read = toAsFed(value.nutrient, stated, factsOf(sample, food));
  if (auto* known = std::get_if<NutrientValue>(&read)) return std::move(*known);
  return std::nullopt;
}

/// Moves what `stays` refuses to the list of what was left out.
template <class Predicate>
void keep(std::vector<Candidate>& candidates, DerivedValue& result, LeftOutBecause otherwise,
          Predicate stays) {
  const auto gone = std::stable_partition(candidates.begin(), candidates.end(), stays);
  for (auto place = gone; place != candidates.end(); ++place)
    result.leftOut.push_back({place->sample, otherwise});
  candidates.erase(gone, candidates.end());
}

std::vector<Candidate> collect(NutrientId nutrient, std::span<const Sample> samples, const Derivation& food,
                               DerivedValue& result) {
  std::vector<Candidate> candidates;
  for (std::size_t i = 0; i < samples.size(); ++i) {
    const SampleValue* value = find(samples[i], nutrient);
    if (value == nullptr) continue;
    const auto read = asFed(samples[i], *value, food);
    if (samples[i].excluded)
      result.leftOut.push_back({i, LeftOutBecause::Excluded});
    else if (!read)
      result.leftOut.push_back({i, LeftOutBecause::BasisUnknown});
    else
      candidates.push_back({i, samples[i].origin, samples[i].date, *read});
  }
  return candidates;
}

void keepMostTrusted(std::vector<Candidate>& candidates, DerivedValue& result) {
  const auto isResult = [](const Candidate& c) { return !isGuarantee(c.value.qualifier); };
  if (std::ranges::any_of(candidates, isResult))
    keep(candidates, result, LeftOutBecause::Guarantee, isResult);
  const SampleOrigin best = std::ranges::min(candidates, {}, &Candidate::origin).origin;
  keep(candidates, result, LeftOutBecause::LessTrusted, [&](const Candidate& c) { return c.origin == best; });
  result.origin = best;
}

/// Leaves the newest last.
void keepNewest(std::vector<Candidate>& candidates, DerivedValue& result, const DerivationRule& rule) {
  const auto isDated = [](const Candidate& c) { return c.date.has_value(); };
  if (std::ranges::any_of(candidates, isDated)) keep(candidates, result, LeftOutBecause::Undated, isDated);
  std::ranges::stable_sort(candidates, {}, &Candidate::date);
  const Candidate newest = candidates.back();
  const bool pools = result.origin == SampleOrigin::OwnLab && !isGuarantee(newest.value.qualifier);
  keep(candidates, result, LeftOutBecause::Older, [&](const Candidate& c) {
    if (!pools) return c.sample == newest.sample;
    return !newest.date || *c.date >= quantity::plusMonths(*newest.date, -12 * rule.pooledYears);
  });
}

std::string sourcesOf(std::span<const Candidate> candidates) {
  std::string text;
  for (const Candidate& candidate : candidates) {
    if (text.find(candidate.value.source) != std::string::npos) continue;
    text += (text.empty() ? "" : "; ") + candidate.value.source;
  }
  return text;
}

void poolMeasured(std::span<const Candidate> measured, DerivedValue& result) {
  std::vector<ReportedMean> reports;
  for (const auto& [sample, origin, date, value] : measured) {
    const auto sd = value.sd ? std::optional(value.sd->value()) : std::nullopt;
    reports.push_back({value.amount.value(), sd, value.sampleCount});
  }
  const ReportedMean pooled = pool(reports);
  result.value.amount = AsFedContent(pooled.mean);
  if (pooled.sd) result.value.sd = AsFedContent(*pooled.sd);
  result.value.sampleCount = pooled.count;
  result.value.source = sourcesOf(measured);
  result.by = result.origin == SampleOrigin::OwnLab ? DerivedBy::PooledOwnLab : DerivedBy::NewestResult;
}

void settle(std::vector<Candidate>& candidates, DerivedValue& result) {
  if (std::ranges::any_of(candidates, isMeasured)) {
    keep(candidates, result, LeftOutBecause::NotMeasured, isMeasured);
    poolMeasured(candidates, result);
  } else {
    const Candidate newest = candidates.back();
    keep(candidates, result, LeftOutBecause::Older,
         [&](const Candidate& c) { return c.sample == newest.sample; });
    result.value = newest.value;
    result.by = newest.value.qualifier == Qualifier::Trace ? DerivedBy::NewestResult : DerivedBy::BoundOnly;
  }
  for (const Candidate& candidate : candidates) result.used.push_back(candidate.sample);
}

std::optional<DerivedValue> deriveOne(NutrientId nutrient, std::span<const Sample> samples,
                                      std::span<const Override> overrides, const Derivation& food,
                                      const DerivationRule& rule) {
  DerivedValue result{.nutrient = nutrient};
  std::vector<Candidate> candidates = collect(nutrient, samples, food, result);
  if (const auto over = std::ranges::find(overrides, nutrient, &Override::nutrient);
      over != overrides.end()) {
    result.value = {.amount = over->amount, .sd = over->sd, .source = over->reason};
    result.by = DerivedBy::Override;
    result.reason = over->reason;
    return result;
  }
  if (candidates.empty()) return std::nullopt;
  keepMostTrusted(candidates, result);
  keepNewest(candidates, result, rule);
  settle(candidates, result);
  std::ranges::sort(result.leftOut, {}, &LeftOut::sample);
  return result;
}

}  // namespace

const DerivedValue* Derivation::find(NutrientId nutrient) const {
  const auto place = std::ranges::find(values, nutrient, &DerivedValue::nutrient);
  return place == values.end() ? nullptr : &*place;
}

Composition Derivation::composition() const {
  Composition composition = stated();
  for (const DerivedValue& derived : values)
    if (derived.by == DerivedBy::SumOfParts && derived.value.qualifier == Qualifier::Equal)
      composition.set(derived.nutrient, derived.value);
  return composition;
}

Composition Derivation::stated() const {
  Composition composition;
  for (const DerivedValue& derived : values)
    if (isStated(derived)) composition.set(derived.nutrient, derived.value);
  return composition;
}

Derivation derive(std::span<const Sample> samples, std::span<const Override> overrides,
                  const DerivationRule& rule) {
  std::set<NutrientId> stated;
  for (const Sample& sample : samples)
    for (const SampleValue& value : sample.values) stated.insert(value.nutrient);
  for (const Override& over : overrides) stated.insert(over.nutrient);
  // Water and energy first: values on dry matter or per 1000 kcal are read with them.
  std::vector<NutrientId> order{nutrients::water(), nutrients::energy()};
  for (const NutrientId nutrient : stated)
    if (std::ranges::find(order, nutrient) == order.end()) order.push_back(nutrient);
  Derivation food;
  for (const NutrientId nutrient : order)
    if (auto derived = deriveOne(nutrient, samples, overrides, food, rule))
      food.values.push_back(std::move(*derived));
  std::ranges::sort(food.values, {}, &DerivedValue::nutrient);
  return food;
}

}  // namespace tarebowl::food
