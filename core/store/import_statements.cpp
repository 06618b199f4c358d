// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/import_statements.h"

namespace tarebowl::store {

namespace {

constexpr const char* kInsertSample =
    "INSERT INTO sample (id, revision, food_id, origin, source, source_code, sampled_on, lab, method, batch, "
    "note, excluded) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
constexpr const char* kInsertValue =
    "INSERT INTO sample_value (sample_id, component_id, amount, basis, qualifier, sd, determinations, "
    "reported_amount, reported_unit, reported_per) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?) "
    "ON CONFLICT (sample_id, component_id) DO NOTHING";

}  // namespace

ImportStatements::ImportStatements(Connection& connection)
    : findFood_(connection, "SELECT id FROM food WHERE code = ?"),
      findSample_(connection, "SELECT id FROM sample WHERE source = ? AND source_code = ?"),
      insertSample_(connection, kInsertSample),
      insertValue_(connection, kInsertValue) {}

std::optional<long long> ImportStatements::foodWithCode(const std::string& code) {
  findFood_.bind(1, code);
  return findFood_.runForNumber();
}

std::optional<long long> ImportStatements::sampleOf(const std::string& source, const std::string& code) {
  findSample_.bind(1, source);
  findSample_.bind(2, code);
  return findSample_.runForNumber();
}

void ImportStatements::insertSample(const SampleRows& rows) {
  const food::Sample& sample = rows.sample;
  const std::string origin(food::symbolOf(sample.origin));
  std::optional<std::string> date;
  if (sample.date) date = quantity::isoDate(*sample.date);
  PreparedStatement& insert = insertSample_;
  insert.bind(1, rows.id);
  insert.bind(2, rows.revision);
  insert.bind(3, rows.food);
  insert.bind(4, origin);
  insert.bind(5, sample.source);
  insert.bind(6, sample.sourceCode);
  insert.bind(7, date);
  insert.bind(8, sample.lab);
  insert.bind(9, sample.method);
  insert.bind(10, sample.batch);
  insert.bind(11, sample.note);
  insert.bind(12, sample.excluded);
  insert.run();
}

bool ImportStatements::insertValue(long long sample, const ValueRow& row) {
  PreparedStatement& insert = insertValue_;
  insert.bind(1, sample);
  insert.bind(2, row.component);
  insert.bind(3, row.amount);
  insert.bind(4, row.basis);
  insert.bind(5, row.qualifier);
  insert.bind(6, row.sd);
  insert.bind(7, row.count);
  insert.bind(8, row.reportedAmount);
  insert.bind(9, row.reportedUnit);
  insert.bind(10, row.reportedPer);
  return insert.run() > 0;
}

}  // namespace tarebowl::store
