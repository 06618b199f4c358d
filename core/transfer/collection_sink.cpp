// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/collection_sink.h"

#include "core/food/sample.h"

#include <fmt/format.h>

#include <cctype>
#include <stdexcept>
#include <string_view>
#include <utility>
#include <variant>

namespace tarebowl::transfer {

namespace {

/// "Kale, curly" -> "kale-curly": a code for a food that has none.
std::string slugOf(std::string_view text) {
  std::string slug;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (byte > 127 || std::isalnum(byte) != 0) {
      slug += byte > 127 ? c : static_cast<char>(std::tolower(byte));
    } else if (!slug.empty() && slug.back() != '-') {
      slug += '-';
    }
  }
  while (!slug.empty() && slug.back() == '-') slug.pop_back();
  return slug;
}

/// Codes of two tables must not meet: the collection's code of a food names its table too.
std::string codeOf(const exchange::ImportedFood& food) {
  const std::string own =
      food.code.empty() ? slugOf(food.form.empty() ? food.name : food.name + " " + food.form) : food.code;
  const std::string table = slugOf(food.source);
  return table.empty() ? own : table + "-" + own;
}

const std::string& sourceOf(const food::StatedValue& stated, const exchange::ImportedFood& food) {
  return stated.source.empty() ? food.source : stated.source;
}

quantity::Unit keptUnit(quantity::Unit stated) {
  switch (quantity::dimensionOf(stated)) {
    case quantity::Dimension::Mass:
      return quantity::Unit::Milligram;
    case quantity::Dimension::Energy:
      return quantity::Unit::Kilocalorie;
    case quantity::Dimension::Activity:
      break;
  }
  return stated;
}

/// More names than any table has; a hostile one must not fill the memory.
constexpr std::size_t kMostOthersKnown = 10'000;

}  // namespace

CollectionSink::CollectionSink(store::Collection& collection, store::ImportSource source,
                               store::Author author)
    : import_(collection, std::move(source), std::move(author)) {}

std::optional<std::int64_t> CollectionSink::commit() {
  (void)import_.commit();
  return import_.change();
}

exchange::FoodOutcome CollectionSink::put(const exchange::ImportedFood& food) {
  exchange::FoodOutcome outcome;
  const std::size_t samplesBefore = import_.counts().samplesAdded;
  food_.food = {.code = codeOf(food), .name = food.name, .form = food.form, .group = food.group};
  food_.sample.sourceCode = food_.food.code;
  samples_.clear();
  const std::size_t named = food.values.size();
  for (std::size_t i = 0; i < named; ++i) {
    const exchange::ImportedValue& value = food.values[i];
    add(sampleFrom(sourceOf(value.stated, food)), asStored(value), i, outcome);
  }
  for (std::size_t i = 0; i < food.others.size(); ++i) {
    const exchange::ImportedOther& other = food.others[i];
    add(sampleFrom(sourceOf(other.stated, food)), asStored(other), named + i, outcome);
  }
  const bool isNew = import_.counts().samplesAdded > samplesBefore;
  const bool isChanged = outcome.valuesNew + outcome.valuesChanged > 0;
  outcome.change = isNew       ? exchange::FoodChange::New
                   : isChanged ? exchange::FoodChange::Changed
                               : exchange::FoodChange::Unchanged;
  return outcome;
}

store::SampleId CollectionSink::sampleFrom(const std::string& source) {
  const auto known = samples_.find(source);
  if (known != samples_.end()) return known->second;
  food_.sample.source = source;
  return samples_.emplace(source, import_.sample(food_)).first->second;
}

store::ImportedValue CollectionSink::asStored(const exchange::ImportedValue& value) {
  const auto read = food::toSampleValue(value.nutrient, value.stated);
  const auto* const known = std::get_if<food::SampleValue>(&read);
  if (known == nullptr) throw std::logic_error("a value that was read as an amount is none");
  auto component = components_.find(value.nutrient.index());
  if (component == components_.end())
    component = components_.emplace(value.nutrient.index(), import_.component(value.nutrient)).first;
  return {component->second, known->amount, known->sd, known->count, known->qualifier, known->reported};
}

store::ImportedValue CollectionSink::asStored(const exchange::ImportedOther& other) {
  const food::StatedValue& stated = other.stated;
  const quantity::Unit unit = keptUnit(stated.unit);
  // Masses of one name are kept in one unit; what is no mass is another thing than the mass of that name.
  const std::string name =
      unit == quantity::Unit::Milligram ? other.name : fmt::format("{} ({})", other.name, symbolOf(unit));
  auto component = others_.find(name);
  if (component == others_.end()) {
    if (others_.size() >= kMostOthersKnown) others_.clear();
    component = others_.emplace(name, import_.component(name, symbolOf(unit))).first;
  }
  const double per = stated.basis == quantity::Basis::Energy ? 1000.0 : 100.0;
  const bool asReported = stated.unit == unit && stated.per == per;
  const double scale =
      asReported ? 1.0 : quantity::conversionFactor(stated.unit, unit).value() / stated.per * per;
  store::ImportedValue value{.component = component->second,
                             .amount = food::contentOn(stated.basis, stated.amount * scale).value(),
                             .count = stated.sampleCount,
                             .qualifier = stated.qualifier};
  if (stated.sd) value.sd = *stated.sd * scale;
  if (!asReported) value.reported = food::Reported{stated.amount, stated.unit, stated.per};
  return value;
}

void CollectionSink::add(store::SampleId sample, const store::ImportedValue& value, std::size_t place,
                         exchange::FoodOutcome& outcome) {
  using Outcome = store::FoodImport::Outcome;
  switch (import_.add(sample, value)) {
    case Outcome::Added:
      ++outcome.valuesNew;
      break;
    case Outcome::Changed:
      ++outcome.valuesChanged;
      break;
    case Outcome::Unchanged:
      ++outcome.valuesUnchanged;
      break;
    case Outcome::Twice:
      outcome.saidTwice.push_back(place);
      break;
  }
}

}  // namespace tarebowl::transfer
