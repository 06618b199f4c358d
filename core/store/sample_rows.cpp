// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/unit.h"
#include "core/store/food_rows.h"
#include "core/store/row_query.h"

#include <array>
#include <map>

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

/// samples: which, with one place for the number.
std::map<long long, std::vector<ValueRow>> loadValues(Collection::Inner& inner, const std::string& samples,
                                                      long long number) {
  ValueRow row;
  long long sample = 0;
  RowQuery rows(
      inner.connection,
      "SELECT sample_id, component_id, amount, basis, qualifier, sd, determinations, reported_amount, "
      "reported_unit, reported_per FROM sample_value WHERE sample_id " +
          samples + " ORDER BY sample_id, component_id",
      number);
  std::map<long long, std::vector<ValueRow>> values;
  while (rows.next(sample, row.component, row.amount, row.basis, row.qualifier, row.sd, row.count,
                   row.reportedAmount, row.reportedUnit, row.reportedPer))
    values[sample].push_back(row);
  return values;
}

std::vector<SampleRows> loadRows(Collection::Inner& inner, const std::string& condition, long long number) {
  SampleRows rows;
  food::Sample& sample = rows.sample;
  std::string origin;
  std::optional<std::string> code;
  std::optional<std::string> date;
  RowQuery query(inner.connection,
                 "SELECT id, food_id, revision, origin, source, source_code, sampled_on, lab, method, batch, "
                 "note, excluded FROM sample " +
                     condition,
                 number);
  std::vector<SampleRows> found;
  while (query.next(rows.id, rows.food, rows.revision, origin, sample.source, code, date, sample.lab,
                    sample.method, sample.batch, sample.note, sample.excluded)) {
    sample.origin = food::parseSampleOrigin(origin).value_or(food::SampleOrigin::Estimate);
    sample.sourceCode = code.value_or("");
    sample.date = date ? quantity::parseDate(*date) : std::nullopt;
    found.push_back(rows);
  }
  return found;
}

void giveValues(std::vector<SampleRows>& samples, std::map<long long, std::vector<ValueRow>> values) {
  for (SampleRows& sample : samples) sample.values = std::move(values[sample.id]);
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
  const auto nutrient = inner.components.nutrientOf(inner.connection, row.component);
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
  const AskedTogether together(inner.connection);
  auto found = loadRows(inner, "WHERE id = :id", id);
  giveValues(found, loadValues(inner, "= :id", id));
  together.end();
  return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
}

std::vector<SampleRows> samplesOfFood(Collection::Inner& inner, long long food) {
  const AskedTogether together(inner.connection);
  auto found = loadRows(inner, "WHERE food_id = :food ORDER BY id", food);
  giveValues(found, loadValues(inner, "IN (SELECT id FROM sample WHERE food_id = :food)", food));
  together.end();
  return found;
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
