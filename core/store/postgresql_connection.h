// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

#include <chrono>
#include <cstddef>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <unordered_map>

struct pg_conn;  // libpq's connection

namespace tarebowl::store {

/// One connection to one collection on a server, with everything that is PostgreSQL's alone.
class PostgresqlConnection final : public Connection {
 public:
  struct Options {
    Access access = Access::ReadWrite;
    std::chrono::milliseconds patience{10'000};
    /// Asked where the server wants a password that libpq does not find by itself.
    std::function<std::optional<std::string>(const std::filesystem::path& address)> password{};
  };
  /// Throws StoreError (NoServer, PasswordNeeded, NotFound, NoPermission) with what to do.
  PostgresqlConnection(std::filesystem::path address, const Options& options);

  [[nodiscard]] std::unique_ptr<EngineStatement> prepare(const std::string& sql) override;
  [[nodiscard]] std::vector<std::string> translated(std::string_view migration) const override;
  /// 0 where the database holds no collection.
  [[nodiscard]] int schemaVersion() override;
  void setSchemaVersion(int version) override;
  [[nodiscard]] bool heardOfWrite() override;
  [[nodiscard]] int number() override;
  /// Whether the server has hung up, as far as it is known here.
  [[nodiscard]] bool isLost() override;
  void refuseLost() override;
  void takeUpAgain() override;

  [[nodiscard]] pg_conn* handle();
  /// The name under which the server keeps a statement ready that comes again; nothing at its first run.
  [[nodiscard]] const std::string* nameFor(const std::string& statement);

 private:
  struct Kept {
    std::size_t runs = 0;
    std::string name{};
  };
  void open(const Options& options);
  void setUp();
  void beginWriting() override;
  void commit() override;

  std::chrono::milliseconds patience_;
  std::unordered_map<std::string, Kept> kept_;
  std::size_t named_ = 0;
};

}  // namespace tarebowl::store
