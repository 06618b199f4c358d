// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/known_statements.h"
#include "core/store/postgresql_failure.h"
#include "core/store/prepared_statement.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::store {

class PostgresqlConnection;

/// A statement of PostgreSQL, by libpq. One that comes again is kept ready by the server, for the connection
/// and not for this object: what is run once takes one way there and back.
class PostgresqlStatement final : public EngineStatement {
 public:
  PostgresqlStatement(PostgresqlConnection& connection, std::shared_ptr<KnownStatement> statement);

  void bind(int place, double value) override;
  void bind(int place, long long value) override;
  void bind(int place, const std::string& text) override;
  void bindNull(int place) override;
  int run() override;
  [[nodiscard]] std::optional<long long> runForNumber() override;
  [[nodiscard]] bool step() override;
  void reset() override;
  [[nodiscard]] long long number(int column) const override;
  [[nodiscard]] std::optional<long long> numberOrNull(int column) const override;
  [[nodiscard]] double real(int column) const override;
  [[nodiscard]] bool isNull(int column) const override;
  [[nodiscard]] std::string text(int column) const override;

 private:
  std::optional<std::string>& at(int place);

  PostgresqlConnection& connection_;
  std::shared_ptr<KnownStatement> statement_;
  std::vector<std::optional<std::string>> values_;
  std::shared_ptr<pg_result> rows_;
  int row_ = 0;
};

}  // namespace tarebowl::store
