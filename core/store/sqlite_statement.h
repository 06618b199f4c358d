// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/sqlite_connection.h"

#include <memory>
#include <optional>
#include <string>

namespace tarebowl::store {

/// A statement of SQLite that is compiled once and run many times. SOCI compiles at each run or copies what
/// it binds, which a table of hundreds of thousands of values feels: it would double the time. Inside
/// guarded(), as everything that speaks to the engine.
class PreparedStatement {
 public:
  PreparedStatement(SqliteConnection& connection, const std::string& sql);
  ~PreparedStatement();
  PreparedStatement(const PreparedStatement&) = delete;
  PreparedStatement& operator=(const PreparedStatement&) = delete;

  // Places count from 1. A text must live until run() returns.
  void bind(int place, double value);
  void bind(int place, long long value);
  void bind(int place, int value);
  void bind(int place, const std::string& text);
  template <class T>
  void bind(int place, const std::optional<T>& value) {
    if (value)
      bind(place, *value);
    else
      bindNull(place);
  }
  void bindNull(int place);

  /// Runs it to its end; how many rows it wrote.
  int run();
  /// Runs it for the number in the first column of the first row; nothing where there is no row.
  [[nodiscard]] std::optional<long long> runForNumber();

  /// The next row; false after the last one, and then it is ready for its next run. Columns count from 0.
  [[nodiscard]] bool step();
  /// Ready for its next run before the last row was reached.
  void reset();
  [[nodiscard]] long long number(int column) const;
  [[nodiscard]] std::optional<long long> numberOrNull(int column) const;
  [[nodiscard]] double real(int column) const;
  [[nodiscard]] std::string text(int column) const;

 private:
  struct Inner;
  std::unique_ptr<Inner> inner_;
};

}  // namespace tarebowl::store
