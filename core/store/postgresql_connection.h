// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/known_statements.h"
#include "core/store/postgresql_memory.h"

#include <chrono>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

struct pg_conn;    // libpq's connection
struct pg_result;  // and its result

namespace tarebowl::store {

class PostgresqlReading;

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
  ~PostgresqlConnection() override;

  [[nodiscard]] std::unique_ptr<EngineStatement> prepare(const std::string& sql) override;
  [[nodiscard]] std::unique_ptr<TableFilling> fill(const TableShape& table) override;
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

  [[nodiscard]] bool beginReading() override;
  [[nodiscard]] bool gathers() const override;
  [[nodiscard]] bool guesses() const override;
  void fetchAnswers() override;
  void endReading() noexcept override;

  [[nodiscard]] pg_conn* handle();
  using Values = std::vector<std::optional<std::string>>;
  /// Runs a statement now. What comes again the server keeps ready from its second run on.
  [[nodiscard]] std::shared_ptr<pg_result> execute(KnownStatement& statement, const Values& values);
  /// What a statement that reads is answered: at once, or within a Reading once it was fetched. Nothing: not
  /// yet, and it goes on without rows.
  [[nodiscard]] std::shared_ptr<pg_result> answer(const std::shared_ptr<KnownStatement>& statement,
                                                  const Values& values);
  [[nodiscard]] KnownStatements& statements() { return statements_; }
  /// Takes answers out of the way for which nobody waited.
  void takeWhatIsLeft();
  /// Takes note of what the server has said meanwhile of others' writes and our own.
  void noticeWrites();

 private:
  void open(const Options& options);
  void setUp();
  void settle() override;
  void beginWriting() override;
  void commit() override;

  std::chrono::milliseconds patience_;
  KnownStatements statements_;
  bool heard_ = false;  ///< of others' writes
  PostgresqlMemory memory_;
  std::unique_ptr<PostgresqlReading> reading_;
};

}  // namespace tarebowl::store
