// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/code_list.h"
#include "core/store/food_records.h"
#include "core/store/opening.h"

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

/// The SQL of foods and samples: what the verbs, the import and reading share. All of it runs inside
/// guarded().
namespace tarebowl::store {

/// A value as the collection holds it; its component may be one that this program does not know.
struct ValueRow {
  long long component = 0;
  double amount = 0.0;
  int basis = 0;
  int qualifier = 0;
  std::optional<double> sd{};
  std::optional<int> count{};
  std::optional<double> reportedAmount{};
  std::optional<std::string> reportedUnit{};
  std::optional<double> reportedPer{};
  bool operator==(const ValueRow&) const = default;
};

/// A sample as the collection holds it. sample.values is empty: they stand in `values`.
struct SampleRows {
  long long id = 0;
  long long food = 0;
  int revision = 0;
  food::Sample sample{};
  std::vector<ValueRow> values{};
};

// What stands in the columns basis and qualifier.
[[nodiscard]] int basisNumber(const food::SampleContent& content);
[[nodiscard]] std::optional<food::SampleContent> contentOf(int basis, double amount);
[[nodiscard]] int qualifierNumber(food::Qualifier qualifier);
/// A stated value, a food::SampleValue or an ImportedValue, as the row of a component.
template <class Stated>
[[nodiscard]] ValueRow valueRow(long long component, const Stated& value) {
  ValueRow row{.component = component,
               .amount = food::amountOf(value.amount),
               .basis = basisNumber(value.amount),
               .qualifier = qualifierNumber(value.qualifier),
               .sd = value.sd,
               .count = value.count};
  if (value.reported) {
    row.reportedAmount = value.reported->amount;
    row.reportedUnit = quantity::symbolOf(value.reported->unit);
    row.reportedPer = value.reported->per;
  }
  return row;
}
[[nodiscard]] food::Qualifier qualifierOf(int number);

[[nodiscard]] ValueRow toRow(Collection::Inner& inner, const food::SampleValue& value);
/// Nothing for a component or a unit that this program does not know.
[[nodiscard]] std::optional<food::SampleValue> fromRow(Collection::Inner& inner, const ValueRow& row);
[[nodiscard]] StoredSample toStored(Collection::Inner& inner, const SampleRows& rows);

[[nodiscard]] long long nextId(soci::session& sql, const std::string& table);

[[nodiscard]] std::optional<StoredFood> loadFood(Collection::Inner& inner, long long id);
/// Every food's own row, without its cautions, in the order in which they were added.
[[nodiscard]] std::vector<std::pair<long long, food::Food>> foodRows(Collection::Inner& inner);
/// Those whose codes are in a list.
[[nodiscard]] std::vector<std::pair<long long, food::Food>> foodRowsOf(Collection::Inner& inner,
                                                                       const CodeList& codes);
/// One of them; nothing where there is no such food.
[[nodiscard]] std::optional<std::pair<long long, food::Food>> foodRow(Collection::Inner& inner,
                                                                      const std::string& code);
[[nodiscard]] std::optional<long long> foodWithCode(Collection::Inner& inner, const std::string& code);
void insertFood(Collection::Inner& inner, long long id, int revision, const FoodRecord& record);
void updateFood(Collection::Inner& inner, long long id, int revision, const FoodRecord& record);
void deleteFood(Collection::Inner& inner, long long id);

[[nodiscard]] std::optional<SampleRows> loadSample(Collection::Inner& inner, long long id);
[[nodiscard]] std::vector<SampleRows> samplesOfFood(Collection::Inner& inner, long long food);
void insertSample(Collection::Inner& inner, const SampleRows& rows);
void updateSample(Collection::Inner& inner, const SampleRows& rows);
void deleteSample(Collection::Inner& inner, long long id);

}  // namespace tarebowl::store
