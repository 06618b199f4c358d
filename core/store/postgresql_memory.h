// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/known_statements.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

struct pg_result;  // libpq's result

namespace tarebowl::store {

/// A statement that reads, with what stands in its places.
struct PostgresqlQuestion {
  using Values = std::vector<std::optional<std::string>>;

  PostgresqlQuestion(std::shared_ptr<KnownStatement> asked, Values places, std::string_view keyOfBoth)
      : statement(std::move(asked)), values(std::move(places)), key(keyOfBoth) {}

  std::shared_ptr<KnownStatement> statement;
  Values values;
  std::string key;  ///< two questions are the same where their keys are
};
/// The key of a question, written over what is there.
void writeKey(std::string& key, const KnownStatement& statement, const PostgresqlQuestion::Values& values);
using PostgresqlAnswer = std::shared_ptr<pg_result>;

/// What former readings were answered. As long as nobody has written it holds; after that it still tells what
/// a reading is going to ask, so that all of it is asked at once.
class PostgresqlMemory {
 public:
  struct Kept {
    std::shared_ptr<const PostgresqlQuestion> question;
    PostgresqlAnswer answer;
    std::uint64_t moment = 0;   ///< the count of moments at which it was answered
    std::uint64_t lastUse = 0;  ///< the count of uses
  };

  [[nodiscard]] bool isEmpty() const { return kept_.empty(); }
  /// Nothing where the question was not asked, or its answer was too large or asked for too long ago.
  [[nodiscard]] const Kept* find(const std::string& key);
  /// Whether it was answered at the moment that was named last.
  [[nodiscard]] bool holds(const Kept& kept) const { return kept.moment == moments_; }
  /// Names the moment at which is read from here on, as the server does (pg_current_snapshot: two moments of
  /// one name see the same rows). Returns whether it is the same as before.
  bool turnTo(const std::string& moment);
  /// Somebody has written: the next moment is another one.
  void doubt() { isDoubted_ = true; }
  [[nodiscard]] bool isDoubted() const { return isDoubted_; }
  void keep(std::shared_ptr<const PostgresqlQuestion> question, PostgresqlAnswer answer);
  void forget();

 private:
  void makeRoom();

  std::unordered_map<std::string_view, Kept> kept_;  ///< by their questions' keys
  std::string moment_{};
  std::uint64_t moments_ = 0;
  std::uint64_t uses_ = 0;
  std::size_t size_ = 0;  ///< bytes
  bool isDoubted_ = false;
};

}  // namespace tarebowl::store
