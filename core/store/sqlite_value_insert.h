// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/food_rows.h"

#include <memory>

namespace tarebowl::store {

/// Writes values of samples as fast as SQLite takes them. SOCI copies what it binds, which a table of
/// hundreds of thousands of values feels: it would double the time. Inside guarded(), as food_rows.h.
class ValueInsert {
 public:
  explicit ValueInsert(SqliteConnection& connection);
  ~ValueInsert();
  ValueInsert(const ValueInsert&) = delete;
  ValueInsert& operator=(const ValueInsert&) = delete;

  /// Whether it was written: a sample states each component once.
  bool insert(long long sample, const ValueRow& row);

 private:
  struct Statement;
  std::unique_ptr<Statement> statement_;
};

}  // namespace tarebowl::store
