// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/food_import.h"

#include "core/store/food_json.h"
#include "core/store/fresh_id.h"
#include "core/store/import_statements.h"
#include "core/store/imported_range.h"
#include "core/store/write.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <set>
#include <unordered_map>
#include <utility>

namespace tarebowl::store {

namespace {

/// Samples of an earlier import that are compared at a time; a table in the order of its foods needs one.
constexpr std::size_t kMostFormers = 256;

bool isAmount(double value) {
  return std::isfinite(value) && value >= 0.0;
}

bool isSound(const ImportedValue& value) {
  return isAmount(food::amountOf(value.amount)) && isAmount(value.sd.value_or(0.0)) &&
         value.count.value_or(1) > 0;
}

/// A value that is stated as it is stored, as an export does, says nothing new of how it was reported.
bool saysTheSame(const ValueRow& before, ValueRow now) {
  if (!now.reportedAmount) {
    now.reportedAmount = before.reportedAmount;
    now.reportedUnit = before.reportedUnit;
    now.reportedPer = before.reportedPer;
  }
  return before == now;
}

}  // namespace

class FoodImport::Inner {
 public:
  Inner(Collection& collection, ImportSource from, Author by)
      : store(collection.inner()),
        source(std::move(from)),
        author(std::move(by)),
        transaction(store.connection),
        statements(store.connection) {
    range.firstFood = freshFoodId(store);
    range.lastFood = range.firstFood - 1;
    range.firstSample = freshSampleId(store);
    range.lastSample = range.firstSample - 1;
  }

  /// A sample of an earlier import, which this one may change.
  struct Former {
    SampleRows before;
    SampleRows after;
    std::set<long long> stated;  // components this import has spoken of
  };

  [[nodiscard]] const std::string& sourceOf(const ImportedFood& imported) const {
    return imported.sample.source.empty() ? source.name : imported.sample.source;
  }
  long long addFoodOf(const ImportedFood& imported);
  long long addSampleOf(const ImportedFood& imported);
  Outcome addToFormer(Former& former, const ValueRow& row);
  void recall(long long id);
  void settle(const Former& former);
  void settleAll();
  [[nodiscard]] std::string summary() const;

  Collection::Inner& store;
  ImportSource source;
  Author author;
  WriteTransaction transaction;
  ImportedRange range;
  ImportCounts counts;
  std::unordered_map<long long, Former> formers;  // at most kMostFormers
  std::unordered_map<long long, bool> settled;    // whether it was changed
  std::string lastCode;
  std::string lastSource;
  long long lastSample = 0;
  std::optional<std::int64_t> firstEdit;  // the entry for the first sample of an earlier import it changed
  std::optional<std::int64_t> change;
  ImportStatements statements;
};

long long FoodImport::Inner::addFoodOf(const ImportedFood& imported) {
  if (const auto known = statements.foodWithCode(imported.food.code)) return *known;
  if (food::problemWith(imported.food)) refuse(store, "the food " + imported.food.code + " is not sound");
  insertFood(store, ++range.lastFood, 1, {.food = imported.food});
  ++counts.foodsAdded;
  return range.lastFood;
}

long long FoodImport::Inner::addSampleOf(const ImportedFood& imported) {
  SampleRows rows{
      .id = range.lastSample + 1, .food = addFoodOf(imported), .revision = 1, .sample = imported.sample};
  rows.sample.origin = source.origin;
  rows.sample.source = sourceOf(imported);
  statements.insertSample(rows);
  ++range.lastSample;
  ++counts.samplesAdded;
  return rows.id;
}

FoodImport::Outcome FoodImport::Inner::addToFormer(Former& former, const ValueRow& row) {
  if (!former.stated.insert(row.component).second) return Outcome::Twice;
  auto& values = former.after.values;
  const auto place = std::ranges::lower_bound(values, row.component, {}, &ValueRow::component);
  if (place == values.end() || place->component != row.component) {
    values.insert(place, row);
    return Outcome::Added;
  }
  if (saysTheSame(*place, row)) return Outcome::Unchanged;
  *place = row;
  return Outcome::Changed;
}

void FoodImport::Inner::recall(long long id) {
  if (formers.contains(id)) return;
  if (formers.size() >= kMostFormers) settleAll();
  const SampleRows rows = loadSample(store, id).value();
  formers.emplace(id, Former{rows, rows, {}});
}

void FoodImport::Inner::settle(const Former& former) {
  const bool changes = former.after.values != former.before.values;
  const auto [known, isFirst] = settled.try_emplace(former.before.id, changes);
  if (isFirst) {
    ++(changes ? counts.samplesChanged : counts.samplesUnchanged);
  } else if (changes && !std::exchange(known->second, true)) {
    --counts.samplesUnchanged;
    ++counts.samplesChanged;
  }
  if (!changes) return;
  SampleRows after = former.after;
  ++after.revision;
  updateSample(store, after);
  const auto edit = record(store, {0, author, "edit sample by import", "sample", after.id,
                                   toJson(store, former.before), toJson(store, after)});
  if (!firstEdit) firstEdit = edit;
}

void FoodImport::Inner::settleAll() {
  for (const auto& [id, former] : formers) settle(former);
  formers.clear();
}

std::string FoodImport::Inner::summary() const {
  const nlohmann::ordered_json json{{"source", source.name},
                                    {"file", source.fileName},
                                    {"hash", source.fileHash},
                                    {"foods_added", counts.foodsAdded},
                                    {"samples_added", counts.samplesAdded},
                                    {"samples_changed", counts.samplesChanged},
                                    {"values_added", counts.valuesAdded},
                                    {"values_changed", counts.valuesChanged},
                                    {"first_edit", firstEdit ? nlohmann::json(*firstEdit) : nlohmann::json()},
                                    {"first_food", range.firstFood},
                                    {"last_food", range.lastFood},
                                    {"first_sample", range.firstSample},
                                    {"last_sample", range.lastSample}};
  return json.dump(-1, ' ', false, nlohmann::ordered_json::error_handler_t::replace);
}

ImportedRange importedRange(const std::string& text) {
  const auto json = nlohmann::json::parse(text);
  ImportedRange range{json.at("first_food"), json.at("last_food"), json.at("first_sample"),
                      json.at("last_sample"), std::nullopt};
  if (const auto first = json.find("first_edit"); first != json.end() && first->is_number_integer())
    range.firstEdit = first->get<std::int64_t>();
  return range;
}

FoodImport::FoodImport(Collection& collection, ImportSource source, Author author)
    : inner_(guarded(collection.file(), [&] {
        return std::make_unique<Inner>(collection, std::move(source), std::move(author));
      })) {
  if (inner_->source.name.empty()) refuse(inner_->store, "an import needs the name of its source");
}

FoodImport::~FoodImport() {
  inner_->store.components.forget();  // right after a commit too: it only costs asking again
}

ComponentId FoodImport::component(food::NutrientId nutrient) {
  return guarded(inner_->store.file(), [&] {
    return ComponentId{inner_->store.components.numberOf(inner_->store.sql(), nutrient)};
  });
}

ComponentId FoodImport::component(std::string_view name, std::string_view unit) {
  return guarded(inner_->store.file(), [&] {
    return ComponentId{inner_->store.components.numberOf(inner_->store.sql(), name, unit)};
  });
}

SampleId FoodImport::sample(const ImportedFood& food) {
  Inner& inner = *inner_;
  const std::string& code = food.sample.sourceCode;
  if (code.empty()) refuse(inner.store, "an imported food needs its code in the table");
  const std::string& source = inner.sourceOf(food);
  if (code == inner.lastCode && source == inner.lastSource) return SampleId{inner.lastSample};
  return guarded(inner.store.file(), [&] {
    const auto known = inner.statements.sampleOf(source, code);
    const long long id = known ? *known : inner.addSampleOf(food);
    inner.lastCode = code;
    inner.lastSource = source;
    inner.lastSample = id;
    return SampleId{id};
  });
}

FoodImport::Outcome FoodImport::add(SampleId sample, const ImportedValue& value) {
  Inner& inner = *inner_;
  if (!isSound(value))
    refuse(inner.store, "a value must be a number of 0 or more, of 1 determination or more");
  return guarded(inner.store.file(), [&] {
    const auto id = static_cast<long long>(sample);
    const ValueRow row = valueRow(static_cast<long long>(value.component), value);
    Outcome outcome = Outcome::Added;
    if (id < inner.range.firstSample) {
      inner.recall(id);
      outcome = inner.addToFormer(inner.formers.at(id), row);
    } else if (!inner.statements.insertValue(id, row)) {
      outcome = Outcome::Twice;
    }
    inner.counts.valuesAdded += outcome == Outcome::Added ? 1U : 0U;
    inner.counts.valuesChanged += outcome == Outcome::Changed ? 1U : 0U;
    inner.counts.valuesUnchanged += outcome == Outcome::Unchanged ? 1U : 0U;
    inner.counts.valuesTwice += outcome == Outcome::Twice ? 1U : 0U;
    return outcome;
  });
}

ImportCounts FoodImport::counts() const {
  return inner_->counts;
}

ImportCounts FoodImport::commit() {
  return guarded(inner_->store.file(), [&] {
    inner_->settleAll();
    const ImportCounts& counts = inner_->counts;
    // The same table again changes nothing, not even the log.
    if (counts.samplesAdded + counts.samplesChanged + counts.foodsAdded > 0)
      inner_->change =
          record(inner_->store, {0, inner_->author, "import table", "table", {}, {}, inner_->summary()});
    inner_->transaction.commit();
    return counts;
  });
}

std::optional<std::int64_t> FoodImport::change() const {
  return inner_->change;
}

}  // namespace tarebowl::store
