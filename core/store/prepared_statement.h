// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

#include <memory>
#include <optional>
#include <string>

namespace tarebowl::store {

/// How an engine does what a PreparedStatement is told.
class EngineStatement {
 public:
  virtual ~EngineStatement() = default;
  EngineStatement() = default;
  EngineStatement(const EngineStatement&) = delete;
  EngineStatement& operator=(const EngineStatement&) = delete;

  virtual void bind(int place, double value) = 0;
  virtual void bind(int place, long long value) = 0;
  virtual void bind(int place, const std::string& text) = 0;
  virtual void bindNull(int place) = 0;
  virtual int run() = 0;
  [[nodiscard]] virtual std::optional<long long> runForNumber() = 0;
  [[nodiscard]] virtual bool step() = 0;
  virtual void reset() = 0;
  [[nodiscard]] virtual long long number(int column) const = 0;
  [[nodiscard]] virtual std::optional<long long> numberOrNull(int column) const = 0;
  [[nodiscard]] virtual double real(int column) const = 0;
  [[nodiscard]] virtual bool isNull(int column) const = 0;
  [[nodiscard]] virtual std::string text(int column) const = 0;
};

/// A statement that is compiled once and run many times. SOCI compiles at each run or copies what it binds,
/// which a table of hundreds of thousands of values feels: it would double the time. Inside guarded(), as
/// everything that speaks to the engine.
class PreparedStatement {
 public:
  PreparedStatement(Connection& connection, const std::string& sql) : engine_(connection.prepare(sql)) {}

  // Places count from 1. A text must live until run() returns.
  void bind(int place, double value) { engine_->bind(place, value); }
  void bind(int place, long long value) { engine_->bind(place, value); }
  void bind(int place, int value) { engine_->bind(place, static_cast<long long>(value)); }
  void bind(int place, const std::string& text) { engine_->bind(place, text); }
  template <class T>
  void bind(int place, const std::optional<T>& value) {
    if (value)
      bind(place, *value);
    else
      bindNull(place);
  }
  void bindNull(int place) { engine_->bindNull(place); }

  /// Runs it to its end; how many rows it wrote.
  int run() { return engine_->run(); }
  /// Runs it for the number in the first column of the first row; nothing where there is no row.
  [[nodiscard]] std::optional<long long> runForNumber() { return engine_->runForNumber(); }

  /// The next row; false after the last one, and then it is ready for its next run. Columns count from 0.
  [[nodiscard]] bool step() { return engine_->step(); }
  /// Ready for its next run before the last row was reached.
  void reset() { engine_->reset(); }
  [[nodiscard]] long long number(int column) const { return engine_->number(column); }
  [[nodiscard]] std::optional<long long> numberOrNull(int column) const {
    return engine_->numberOrNull(column);
  }
  [[nodiscard]] double real(int column) const { return engine_->real(column); }
  [[nodiscard]] bool isNull(int column) const { return engine_->isNull(column); }
  [[nodiscard]] std::string text(int column) const { return engine_->text(column); }

 private:
  std::unique_ptr<EngineStatement> engine_;
};

}  // namespace tarebowl::store
