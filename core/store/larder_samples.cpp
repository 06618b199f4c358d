// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/larder_samples.h"

#include "core/food/proximates.h"
#include "core/food/sums.h"
#include "core/store/food_rows.h"

#include <fmt/format.h>

#include <cstddef>
#include <unordered_map>
#include <utility>

namespace tarebowl::store {

namespace {

/// foods: their numbers, in SQL.
std::string sampleQuery(const std::string& foods) {
  return fmt::format(
      "SELECT id, origin, sampled_on, excluded, source, food_id FROM sample WHERE food_id {} ORDER BY id",
      foods);
}

std::string valueQuery(const std::string& foods) {
  return fmt::format(
      "SELECT sample_id, component_id, amount, basis, qualifier, sd, determinations FROM sample_value WHERE "
      "sample_id IN (SELECT id FROM sample WHERE food_id {}) ORDER BY sample_id, component_id",
      foods);
}

std::string numbersOf(const CodeList& foods) {
  return fmt::format("IN (SELECT id FROM food WHERE code IN ({}))", foods.places());
}

PreparedStatement samplesOf(Collection::Inner& inner, const CodeList& foods) {
  PreparedStatement statement(inner.connection, sampleQuery(numbersOf(foods)));
  foods.bindTo(statement);
  return statement;
}

PreparedStatement valuesOf(Collection::Inner& inner, const CodeList& foods) {
  PreparedStatement statement(inner.connection, valueQuery(numbersOf(foods)));
  foods.bindTo(statement);
  return statement;
}

void askOnly(PreparedStatement& statement) {
  (void)statement.step();
  statement.reset();
}

}  // namespace

WantedComponents::WantedComponents(Collection::Inner& inner, const std::vector<food::NutrientId>& asked)
    : asked_(asked.begin(), asked.end()) {
  std::set<food::NutrientId> read = asked_;
  for (const food::NutrientId nutrient : food::proximates()) read.insert(nutrient);
  for (const food::NutrientSum& sum : food::nutrientSums())
    if (asked_.contains(sum.sum))
      for (const food::SumPart& part : sum.parts) read.insert(part.nutrient);
  PreparedStatement all(inner.connection, "SELECT id FROM component");
  while (all.step()) {
    const auto nutrient = inner.components.nutrientOf(inner.connection, all.number(0));
    if (nutrient && read.contains(*nutrient)) nutrients_.emplace(all.number(0), *nutrient);
  }
}

std::optional<food::NutrientId> WantedComponents::find(long long component) const {
  const auto found = nutrients_.find(component);
  return found == nutrients_.end() ? std::nullopt : std::optional(found->second);
}

LarderSamples::LarderSamples(Collection::Inner& inner, const std::vector<food::NutrientId>& nutrients,
                             ValueSources sources)
    : inner_(inner),
      sources_(sources),
      components_(inner, nutrients),
      samples_(inner.connection, sampleQuery("= ?")),
      values_(inner.connection, valueQuery("= ?")) {}

food::Sample LarderSamples::sampleIn(const PreparedStatement& row) const {
  food::Sample sample;
  sample.origin = food::parseSampleOrigin(row.text(1)).value_or(food::SampleOrigin::Estimate);
  sample.date = quantity::parseDate(row.text(2));
  if (!row.isNull(3)) sample.excluded = row.text(3);
  if (sources_ == ValueSources::Kept) sample.source = row.text(4);
  return sample;
}

std::optional<food::SampleValue> LarderSamples::valueIn(const PreparedStatement& row) const {
  const auto nutrient = components_.find(row.number(1));
  if (!nutrient) return std::nullopt;
  const auto amount = contentOf(static_cast<int>(row.number(3)), row.real(2));
  if (!amount) return std::nullopt;
  food::SampleValue value{.nutrient = *nutrient, .amount = *amount};
  value.qualifier = qualifierOf(static_cast<int>(row.number(4)));
  if (!row.isNull(5)) value.sd = row.real(5);
  if (!row.isNull(6)) value.count = static_cast<int>(row.number(6));
  return value;
}

std::vector<food::Sample> LarderSamples::of(long long food) {
  if (const auto known = loaded_.find(food); known != loaded_.end()) return known->second;
  std::vector<long long> ids;
  std::vector<food::Sample> samples;
  const AskedTogether together(inner_.connection);
  samples_.bind(1, food);
  while (samples_.step()) {
    ids.push_back(samples_.number(0));
    samples.push_back(sampleIn(samples_));
  }
  readValues(food, ids, samples);
  together.end();
  return samples;
}

/// Samples and their values come in one order.
void LarderSamples::readValues(long long food, const std::vector<long long>& ids,
                               std::vector<food::Sample>& samples) {
  std::size_t at = 0;
  values_.bind(1, food);
  while (values_.step()) {
    while (at < ids.size() && ids[at] != values_.number(0)) ++at;
    if (at == ids.size()) continue;  // the samples are not there yet
    if (auto value = valueIn(values_)) samples[at].values.push_back(*value);
  }
}

void LarderSamples::ask(Collection::Inner& inner, const CodeList& foods) {
  PreparedStatement samples = samplesOf(inner, foods);
  PreparedStatement values = valuesOf(inner, foods);
  askOnly(samples);
  askOnly(values);
}

void LarderSamples::load(const CodeList& foods, std::span<const long long> numbers) {
  struct Place {
    long long food;
    std::size_t at;
  };
  std::map<long long, std::vector<food::Sample>> read;
  for (const long long number : numbers) read[number];  // also where none was taken
  std::unordered_map<long long, Place> places;          // by the samples' numbers
  PreparedStatement samples = samplesOf(inner_, foods);
  while (samples.step()) {
    std::vector<food::Sample>& ofFood = read[samples.number(5)];
    places.emplace(samples.number(0), Place{samples.number(5), ofFood.size()});
    ofFood.push_back(sampleIn(samples));
  }
  PreparedStatement values = valuesOf(inner_, foods);
  while (values.step()) {
    const auto place = places.find(values.number(0));
    if (place == places.end()) continue;
    if (auto value = valueIn(values)) read[place->second.food][place->second.at].values.push_back(*value);
  }
  for (auto& [food, ofFood] : read) loaded_.insert_or_assign(food, std::move(ofFood));
}

}  // namespace tarebowl::store
