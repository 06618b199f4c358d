// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/larder_reading.h"

#include "core/food/proximates.h"
#include "core/food/sums.h"
#include "core/store/food_reading.h"
#include "core/store/food_rows.h"
#include "core/store/prepared_statement.h"
#include "core/store/reading.h"

#include <algorithm>
#include <map>
#include <set>

namespace tarebowl::store {

namespace {

/// Which component of the file is which nutrient, and which of them are read: those asked for, the parts of
/// sums that were asked for, and what values on dry matter or per energy are read with.
class WantedComponents {
 public:
  WantedComponents(Collection::Inner& inner, const std::vector<food::NutrientId>& asked)
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

  [[nodiscard]] std::optional<food::NutrientId> find(long long component) const {
    const auto found = nutrients_.find(component);
    return found == nutrients_.end() ? std::nullopt : std::optional(found->second);
  }
  [[nodiscard]] bool wasAsked(food::NutrientId nutrient) const { return asked_.contains(nutrient); }

 private:
  std::set<food::NutrientId> asked_;
  std::map<long long, food::NutrientId> nutrients_;
};

class LarderReader {
 public:
  /// Its lists are asked together.
  [[nodiscard]] static LarderReader begun(Collection::Inner& inner,
                                          const std::vector<food::NutrientId>& nutrients,
                                          ValueSources sources) {
    const AskedTogether together(inner.connection);
    LarderReader reader(inner, nutrients, sources);
    together.end();
    return reader;
  }
  LarderReader(Collection::Inner& inner, const std::vector<food::NutrientId>& nutrients, ValueSources sources)
      : inner_(inner),
        sources_(sources),
        components_(inner, nutrients),
        samples_(inner.connection,
                 "SELECT id, origin, sampled_on, excluded, source FROM sample WHERE food_id = ? ORDER BY id"),
        values_(inner.connection,
                "SELECT sample_id, component_id, amount, basis, qualifier, sd, determinations FROM "
                "sample_value WHERE sample_id IN (SELECT id FROM sample WHERE food_id = ?) ORDER BY "
                "sample_id, component_id") {
    PreparedStatement made(inner.connection,
                           "SELECT food_id FROM food_cooking UNION SELECT food_id FROM food_recipe");
    while (made.step()) made_.insert(made.number(0));
    PreparedStatement decided(inner.connection,
                              "SELECT food_id FROM food_caution UNION SELECT food_id FROM food_override");
    while (decided.step()) decided_.insert(decided.number(0));
  }

  /// The food with its row, whose own words are there already.
  [[nodiscard]] diet::DietFood read(const Collection& collection, long long id, food::Food food) {
    if (made_.contains(id)) return lean(asDietFood(knowFood(collection, FoodId{id}).value()));
    KnownFood known;
    known.food.record.food = std::move(food);
    if (decided_.contains(id)) known.food = loadFood(inner_, id).value();
    known.derivation = food::derive(samplesOf(id), known.food.record.overrides);
    food::addSums(known.derivation);
    known.composition = known.derivation.composition();
    return lean(asDietFood(known));
  }

 private:
  /// No more than was asked for: a sum over parts that were not all read would be another number.
  [[nodiscard]] diet::DietFood lean(diet::DietFood food) const {
    food::Composition asked;
    for (const food::NutrientId nutrient : food.composition.knownNutrients()) {
      if (!components_.wasAsked(nutrient)) continue;
      food::NutrientValue value = *food.composition.find(nutrient);
      if (sources_ == ValueSources::LeftOut) value.source.clear();
      asked.set(nutrient, std::move(value));
    }
    food.composition = std::move(asked);
    return food;
  }

  [[nodiscard]] std::vector<food::Sample> samplesOf(long long food) {
    std::vector<long long> ids;
    std::vector<food::Sample> samples;
    const AskedTogether together(inner_.connection);
    samples_.bind(1, food);
    while (samples_.step()) {
      ids.push_back(samples_.number(0));
      food::Sample& sample = samples.emplace_back();
      sample.origin = food::parseSampleOrigin(samples_.text(1)).value_or(food::SampleOrigin::Estimate);
      sample.date = quantity::parseDate(samples_.text(2));
      if (!samples_.isNull(3)) sample.excluded = samples_.text(3);
      if (sources_ == ValueSources::Kept) sample.source = samples_.text(4);
    }
    readValues(food, ids, samples);
    together.end();
    return samples;
  }

  /// Samples and their values come in one order.
  void readValues(long long food, const std::vector<long long>& ids, std::vector<food::Sample>& samples) {
    std::size_t at = 0;
    values_.bind(1, food);
    while (values_.step()) {
      while (at < ids.size() && ids[at] != values_.number(0)) ++at;
      if (at == ids.size()) continue;  // the samples are not there yet
      const auto nutrient = components_.find(values_.number(1));
      if (!nutrient) continue;
      const auto amount = contentOf(static_cast<int>(values_.number(3)), values_.real(2));
      if (!amount) continue;
      food::SampleValue value{.nutrient = *nutrient, .amount = *amount};
      value.qualifier = qualifierOf(static_cast<int>(values_.number(4)));
      if (!values_.isNull(5)) value.sd = values_.real(5);
      if (!values_.isNull(6)) value.count = static_cast<int>(values_.number(6));
      samples[at].values.push_back(value);
    }
  }

  Collection::Inner& inner_;
  ValueSources sources_;
  WantedComponents components_;
  PreparedStatement samples_;
  PreparedStatement values_;
  std::set<long long> made_;     // worked out from other foods
  std::set<long long> decided_;  // with cautions or overrides of their own
};

}  // namespace

std::vector<diet::DietFood> readLarder(const Collection& collection, const LarderWish& wish) {
  return guarded(collection.file(), [&] {
    Collection::Inner& inner = collection.inner();
    LarderReader reader = LarderReader::begun(inner, wish.nutrients, ValueSources::LeftOut);
    std::vector<diet::DietFood> foods;
    for (auto& [id, food] : foodRows(inner)) {
      if (wish.stop.stop_requested()) break;
      if (!wish.wants || wish.wants(food)) foods.push_back(reader.read(collection, id, std::move(food)));
    }
    return foods;
  });
}

class NamedFoodReader::Inner {
 public:
  Inner(const Collection& collection, const std::vector<food::NutrientId>& nutrients, ValueSources sources)
      : collection_(collection), nutrients_(nutrients), sources_(sources) {}

  [[nodiscard]] const std::filesystem::path& file() const { return collection_.file(); }

  std::optional<diet::DietFood> find(const std::string& code) {
    askAhead(collection_, [&] { begin(); });
    auto row = foodRow(collection_.inner(), code);
    begin();
    if (!row) return std::nullopt;
    return reader_->read(collection_, row->first, std::move(row->second));
  }

 private:
  void begin() {
    if (!reader_) reader_.emplace(LarderReader::begun(collection_.inner(), nutrients_, sources_));
  }

  const Collection& collection_;
  std::vector<food::NutrientId> nutrients_;
  ValueSources sources_;
  std::optional<LarderReader> reader_;  ///< once a food is asked for
};

NamedFoodReader::NamedFoodReader(const Collection& collection, const std::vector<food::NutrientId>& nutrients,
                                 ValueSources sources)
    : inner_(std::make_unique<Inner>(collection, nutrients, sources)) {}
NamedFoodReader::NamedFoodReader(NamedFoodReader&& other) noexcept = default;
NamedFoodReader& NamedFoodReader::operator=(NamedFoodReader&& other) noexcept = default;
NamedFoodReader::~NamedFoodReader() = default;

std::optional<diet::DietFood> NamedFoodReader::find(const std::string& code) {
  return guarded(inner_->file(), [&] { return inner_->find(code); });
}

}  // namespace tarebowl::store
