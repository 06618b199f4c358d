// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/unit.h"
#include "core/store/food_rows.h"

#include <array>

namespace tarebowl::store {

namespace {

using food::Qualifier;
using quantity::Basis;

// What the columns hold, by number: part of the file's format, so neither order changes with the program's.
constexpr std::array kBases{Basis::AsFed, Basis::DryMatter, Basis::Energy};
constexpr std::array kQualifiers{
    Qualifier::Equal, Qualifier::AtLeast, Qualifier::AtMost, Qualifier::BelowQuantification,
    Qualifier::Trace, Qualifier::Below,   Qualifier::Above,  Qualifier::NotDetected};

template <class List, class Item>
int placeIn(const List& list, Item item) {
  int place = 0;
  for (const auto& entry : list) {
    if (entry == item) return place;
    ++place;
  }
  throw std::logic_error("an enumerator without a number in the file format");
}

/// A text column that may hold nothing.
std::optional<std::string> orNull(const std::string& text) {
  return text.empty() ? std::nullopt : std::optional(text);
}

std::optional<std::string> isoText(const std::optional<quantity::Date>& date) {
  return date ? std::optional(quantity::isoDate(*date)) : std::nullopt;
}

void insertValues(Collection::Inner& inner, const SampleRows& rows) {
  ValueRow row;
  soci::statement insert =
      (inner.sql().prepare
           << "INSERT INTO sample_value (sample_id, component_id, amount, basis, qualifier, sd, "
              "determinations, reported_amount, reported_unit, reported_per) VALUES (:sample, "
              ":component, :amount, :basis, :qualifier, :sd, :count, :r_amount, :r_unit, :r_per)",
       soci::use(rows.id), soci::use(row.component), soci::use(row.amount), soci::use(row.basis),
       soci::use(row.qualifier), soci::use(row.sd), soci::use(row.count), soci::use(row.reportedAmount),
       soci::use(row.reportedUnit), soci::use(row.reportedPer));
  for (const ValueRow& value : rows.values) {
    row = value;
    insert.execute(true);
  }
}

std::vector<ValueRow> loadValues(Collection::Inner& inner, long long sample) {
  ValueRow row;
  soci::statement select =
      (inner.sql().prepare
           << "SELECT component_id, amount, basis, qualifier, sd, determinations, reported_amount, "
              "reported_unit, reported_per FROM sample_value WHERE sample_id = :id "
              "ORDER BY component_id",
       soci::use(sample), soci::into(row.component), soci::into(row.amount), soci::into(row.basis),
       soci::into(row.qualifier), soci::into(row.sd), soci::into(row.count), soci::into(row.reportedAmount),
       soci::into(row.reportedUnit), soci::into(row.reportedPer));
  select.execute();
  std::vector<ValueRow> values;
  while (select.fetch()) values.push_back(row);
  return values;
}

}  // namespace

int basisNumber(const food::SampleContent& content) {
  return placeIn(kBases, food::basisOf(content));
}

std::optional<food::SampleContent> contentOf(int basis, double amount) {
  if (basis < 0 || static_cast<std::size_t>(basis) >= kBases.size()) return std::nullopt;
  return food::contentOn(kBases.at(static_cast<std::size_t>(basis)), amount);
}

int qualifierNumber(Qualifier qualifier) {
  return placeIn(kQualifiers, qualifier);
}

Qualifier qualifierOf(int number) {
  return kQualifiers.at(static_cast<std::size_t>(number));
}

ValueRow toRow(Collection::Inner& inner, const food::SampleValue& value) {
  return valueRow(inner.components.numberOf(inner.sql(), value.nutrient), value);
}

std::optional<food::SampleValue> fromRow(Collection::Inner& inner, const ValueRow& row) {
  const auto nutrient = inner.components.nutrientOf(inner.sql(), row.component);
  const auto amount = contentOf(row.basis, row.amount);
  if (!nutrient || !amount) return std::nullopt;
  food::SampleValue value{.nutrient = *nutrient, .amount = *amount, .sd = row.sd, .count = row.count};
  value.qualifier = qualifierOf(row.qualifier);
  const auto unit = quantity::parseUnit(row.reportedUnit.value_or(""));
  if (unit && row.reportedAmount && row.reportedPer)
    value.reported = food::Reported{*row.reportedAmount, *unit, *row.reportedPer};
  return value;
}

StoredSample toStored(Collection::Inner& inner, const SampleRows& rows) {
  StoredSample stored{SampleId{rows.id}, FoodId{rows.food}, rows.revision, rows.sample};
  for (const ValueRow& row : rows.values)
    if (const auto value = fromRow(inner, row)) stored.sample.values.push_back(*value);
  return stored;
}

std::optional<SampleRows> loadSample(Collection::Inner& inner, long long id) {
  SampleRows rows;
  food::Sample& sample = rows.sample;
  std::string origin;
  std::optional<std::string> code;
  std::optional<std::string> date;
  inner.sql()
      << "SELECT id, food_id, revision, origin, source, source_code, sampled_on, lab, method, batch, note, "
         "excluded FROM sample WHERE id = :id",
      soci::use(id), soci::into(rows.id), soci::into(rows.food), soci::into(rows.revision),
      soci::into(origin), soci::into(sample.source), soci::into(code), soci::into(date),
      soci::into(sample.lab), soci::into(sample.method), soci::into(sample.batch), soci::into(sample.note),
      soci::into(sample.excluded);
  if (!inner.sql().got_data()) return std::nullopt;
  sample.origin = food::parseSampleOrigin(origin).value_or(food::SampleOrigin::Estimate);
  sample.sourceCode = code.value_or("");
  if (date) sample.date = quantity::parseDate(*date);
  rows.values = loadValues(inner, id);
  return rows;
}

std::vector<long long> samplesOfFood(Collection::Inner& inner, long long food) {
  const soci::rowset<long long> ids =
      (inner.sql().prepare << "SELECT id FROM sample WHERE food_id = :food ORDER BY id", soci::use(food));
  return {ids.begin(), ids.end()};
}

void insertSample(Collection::Inner& inner, const SampleRows& rows) {
  const food::Sample& sample = rows.sample;
  const std::string origin(food::symbolOf(sample.origin));
  const auto code = orNull(sample.sourceCode);
  const auto date = isoText(sample.date);
  inner.sql()
      << "INSERT INTO sample (id, revision, food_id, origin, source, source_code, sampled_on, lab, method, "
         "batch, note, excluded) VALUES (:id, :revision, :food, :origin, :source, :code, :date, :lab, "
         ":method, :batch, :note, :excluded)",
      soci::use(rows.id), soci::use(rows.revision), soci::use(rows.food), soci::use(origin),
      soci::use(sample.source), soci::use(code), soci::use(date), soci::use(sample.lab),
      soci::use(sample.method), soci::use(sample.batch), soci::use(sample.note), soci::use(sample.excluded);
  insertValues(inner, rows);
}

void updateSample(Collection::Inner& inner, const SampleRows& rows) {
  const food::Sample& sample = rows.sample;
  const std::string origin(food::symbolOf(sample.origin));
  const auto code = orNull(sample.sourceCode);
  const auto date = isoText(sample.date);
  inner.sql()
      << "UPDATE sample SET revision = :revision, food_id = :food, origin = :origin, source = :source, "
         "source_code = :code, sampled_on = :date, lab = :lab, method = :method, batch = :batch, "
         "note = :note, excluded = :excluded WHERE id = :id",
      soci::use(rows.revision), soci::use(rows.food), soci::use(origin), soci::use(sample.source),
      soci::use(code), soci::use(date), soci::use(sample.lab), soci::use(sample.method),
      soci::use(sample.batch), soci::use(sample.note), soci::use(sample.excluded), soci::use(rows.id);
  inner.sql() << "DELETE FROM sample_value WHERE sample_id = :id", soci::use(rows.id);
  insertValues(inner, rows);
}

void deleteSample(Collection::Inner& inner, long long id) {
  inner.sql() << "DELETE FROM sample_value WHERE sample_id = :id", soci::use(id);
  inner.sql() << "DELETE FROM sample WHERE id = :id", soci::use(id);
}

}  // namespace tarebowl::store
