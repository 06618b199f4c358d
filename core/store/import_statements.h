// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/food_rows.h"
#include "core/store/prepared_statement.h"

namespace tarebowl::store {

/// What an import asks and writes for each food, sample and value of its table, compiled once. Inside
/// guarded(), as food_rows.h, which has the same for single verbs.
class ImportStatements {
 public:
  explicit ImportStatements(Connection& connection);

  [[nodiscard]] std::optional<long long> foodWithCode(const std::string& code);
  [[nodiscard]] std::optional<long long> sampleOf(const std::string& source, const std::string& code);
  /// rows.values is not read.
  void insertSample(const SampleRows& rows);
  /// Whether it was written: a sample states each component once.
  bool insertValue(long long sample, const ValueRow& row);

 private:
  PreparedStatement findFood_;
  PreparedStatement findSample_;
  PreparedStatement insertSample_;
  PreparedStatement insertValue_;
};

}  // namespace tarebowl::store
