// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/postgresql_failure.h"

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace tarebowl::store {

class PostgresqlConnection;

/// What a reading (store/reading.h) has asked and was answered, as the collection was at one moment.
class PostgresqlReading {
 public:
  using Values = std::vector<std::optional<std::string>>;
  using Answer = std::shared_ptr<pg_result>;

  explicit PostgresqlReading(PostgresqlConnection& connection) : connection_(connection) {}
  ~PostgresqlReading();
  PostgresqlReading(const PostgresqlReading&) = delete;
  PostgresqlReading& operator=(const PostgresqlReading&) = delete;

  /// The answer where it is there; else nothing, and it is asked with the next fetch().
  [[nodiscard]] Answer answer(const std::string& statement, const Values& values);
  /// False where the rest is asked one by one: what is held would grow too much, or the server did not take
  /// something.
  [[nodiscard]] bool gathers() const { return gathers_; }
  void fetch();

 private:
  struct Question {
    std::string key{};
    std::string statement{};
    Values values{};
  };
  void send();
  void send(const Question& question, bool comesAgain);
  void take();
  [[nodiscard]] PostgresqlResult next();

  PostgresqlConnection& connection_;
  std::unordered_map<std::string, Answer> answers_;
  std::vector<Question> missing_;
  std::unordered_set<std::string> asked_;               ///< their keys
  std::unordered_map<std::string, std::string> named_;  ///< statements that this fetch makes ready, by text
  std::unordered_set<const Question*> preparing_;       ///< before which it does so
  std::size_t held_ = 0;                                ///< bytes
  int fetches_ = 0;
  bool hasBegun_ = false;  ///< its transaction
  bool gathers_ = true;
};

}  // namespace tarebowl::store
