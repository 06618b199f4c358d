// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/collection_sink.h"

#include "core/food/sample.h"

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
  store::ImportedFood target;
  target.food = {.code = codeOf(food), .name = food.name, .form = food.form, .group = food.group};
  std::string_view from;  // values of another source are another sample
  std::optional<store::SampleId> sample;
  for (std::size_t i = 0; i < food.values.size(); ++i) {
    const exchange::ImportedValue& value = food.values[i];
    if (!sample || value.stated.source != from) {
      from = value.stated.source;
      target.sample.lab = from;
      target.sample.sourceCode =
          from.empty() ? target.food.code : target.food.code + " / " + std::string(from);
      sample = import_.sample(target);
    }
    putValue(*sample, value, i, outcome);
  }
  const bool isNew = import_.counts().samplesAdded > samplesBefore;
  const bool isChanged = outcome.valuesNew + outcome.valuesChanged > 0;
  outcome.change = isNew       ? exchange::FoodChange::New
                   : isChanged ? exchange::FoodChange::Changed
                               : exchange::FoodChange::Unchanged;
  return outcome;
}

void CollectionSink::putValue(store::SampleId sample, const exchange::ImportedValue& value, std::size_t place,
                              exchange::FoodOutcome& outcome) {
  const auto read = food::toSampleValue(value.nutrient, value.stated);
  const auto* const known = std::get_if<food::SampleValue>(&read);
  if (known == nullptr) throw std::logic_error("a value that was read as an amount is none");
  auto component = components_.find(value.nutrient.index());
  if (component == components_.end())
    component = components_.emplace(value.nutrient.index(), import_.component(value.nutrient)).first;
  using Outcome = store::FoodImport::Outcome;
  switch (import_.add(sample, {component->second, known->amount, known->sd, known->count, known->qualifier,
                               known->reported})) {
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
