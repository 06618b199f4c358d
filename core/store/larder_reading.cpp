// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/larder_reading.h"

#include "core/food/sums.h"
#include "core/store/food_reading.h"
#include "core/store/food_rows.h"
#include "core/store/larder_samples.h"
#include "core/store/prepared_statement.h"
#include "core/store/reading.h"

#include <algorithm>
#include <map>
#include <set>

namespace tarebowl::store {

namespace {

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
      : inner_(inner), sources_(sources), samples_(inner, nutrients, sources) {
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
    known.derivation = food::derive(samples_.of(id), known.food.record.overrides);
    food::addSums(known.derivation);
    known.composition = known.derivation.composition();
    return lean(asDietFood(known));
  }
  [[nodiscard]] LarderSamples& samples() { return samples_; }

 private:
  /// No more than was asked for: a sum over parts that were not all read would be another number.
  [[nodiscard]] diet::DietFood lean(diet::DietFood food) const {
    food::Composition asked;
    for (const food::NutrientId nutrient : food.composition.knownNutrients()) {
      if (!samples_.components().wasAsked(nutrient)) continue;
      food::NutrientValue value = *food.composition.find(nutrient);
      if (sources_ == ValueSources::LeftOut) value.source.clear();
      asked.set(nutrient, std::move(value));
    }
    food.composition = std::move(asked);
    return food;
  }

  Collection::Inner& inner_;
  ValueSources sources_;
  LarderSamples samples_;
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

  void expect(const std::vector<std::string>& codes) {
    const auto isKnown = [this](const std::string& code) { return expected_.contains(code); };
    if (!asksTogether(collection_) || std::ranges::all_of(codes, isKnown)) return;
    const CodeList list(codes);
    askAhead(collection_, [&] { begin(); });
    const auto rows = askFor(list);
    begin();
    std::vector<long long> numbers;
    numbers.reserve(rows.size());
    for (const auto& [number, food] : rows) numbers.push_back(number);
    reader_->samples().load(list, numbers);
    for (const std::string& code : codes) expected_[code].reset();
    for (const auto& row : rows) expected_[row.second.code] = row;
  }

  std::optional<diet::DietFood> find(const std::string& code) {
    askAhead(collection_, [&] { begin(); });
    const auto expected = expected_.find(code);
    auto row = expected != expected_.end() ? expected->second : foodRow(collection_.inner(), code);
    begin();
    if (!row) return std::nullopt;
    return reader_->read(collection_, row->first, std::move(row->second));
  }

 private:
  [[nodiscard]] std::vector<std::pair<long long, food::Food>> askFor(const CodeList& list) {
    const AskedTogether together(collection_.inner().connection);
    auto rows = foodRowsOf(collection_.inner(), list);
    LarderSamples::ask(collection_.inner(), list);
    together.end();
    return rows;
  }

  /// Not among what is asked together with other things: it must know whether its own lists are there.
  void begin() {
    if (!reader_) reader_.emplace(LarderReader::begun(collection_.inner(), nutrients_, sources_));
  }

  const Collection& collection_;
  std::vector<food::NutrientId> nutrients_;
  ValueSources sources_;
  std::optional<LarderReader> reader_;  ///< once a food is asked for
  /// By their codes, numbers and rows of what expect() was told; nothing of what the collection does not
  /// hold.
  std::map<std::string, std::optional<std::pair<long long, food::Food>>> expected_;
};

NamedFoodReader::NamedFoodReader(const Collection& collection, const std::vector<food::NutrientId>& nutrients,
                                 ValueSources sources)
    : inner_(std::make_unique<Inner>(collection, nutrients, sources)) {}
NamedFoodReader::NamedFoodReader(NamedFoodReader&& other) noexcept = default;
NamedFoodReader& NamedFoodReader::operator=(NamedFoodReader&& other) noexcept = default;
NamedFoodReader::~NamedFoodReader() = default;

void NamedFoodReader::expect(const std::vector<std::string>& codes) {
  guarded(inner_->file(), [&] { inner_->expect(codes); });
}

std::optional<diet::DietFood> NamedFoodReader::find(const std::string& code) {
  return guarded(inner_->file(), [&] { return inner_->find(code); });
}

}  // namespace tarebowl::store
