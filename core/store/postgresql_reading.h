// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/postgresql_failure.h"
#include "core/store/postgresql_memory.h"

#include <cstddef>
#include <deque>
#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace tarebowl::store {

class PostgresqlConnection;

/// What a reading (store/reading.h) has asked and was answered, as the collection was at one moment.
///
/// First it guesses: questions of former readings are answered as they were then, only to learn what is going
/// to be asked. The first fetch asks whether those answers hold; where they do not, all of them are asked
/// again together.
///
/// What was fetched is taken off the connection answer by answer, as the job comes to them: the server works
/// on those that follow meanwhile.
class PostgresqlReading {
 public:
  using Values = PostgresqlQuestion::Values;
  using Answer = PostgresqlAnswer;

  PostgresqlReading(PostgresqlConnection& connection, PostgresqlMemory& memory);
  ~PostgresqlReading();
  PostgresqlReading(const PostgresqlReading&) = delete;
  PostgresqlReading& operator=(const PostgresqlReading&) = delete;

  /// The answer where it is there or under way; else nothing, and it is asked with the next fetch().
  [[nodiscard]] Answer answer(const std::shared_ptr<KnownStatement>& statement, const Values& values);
  /// False where the rest is asked one by one: what is held would grow too much, or the server did not take
  /// something.
  [[nodiscard]] bool gathers() const { return gathers_; }
  /// Whether answers are those of a former moment, or not all of one: what is made of them is worth nothing.
  [[nodiscard]] bool guesses() const { return guesses_ || isSpoilt_; }
  /// Sends what was noted.
  void fetch();
  /// Takes all that is under way, so that the connection can be spoken to by others.
  void settle();

 private:
  using Question = std::shared_ptr<const PostgresqlQuestion>;
  struct Known {
    Question question;
    Answer answer;
  };
  struct Awaited {
    Question question;
    bool isPrepared = false;  ///< on the way, which is answered before it
  };
  void note(Question question);
  void fetchFirst();
  void fetchNoted();
  void send();
  [[nodiscard]] Awaited send(Question question, bool comesAgain);
  void takeNext();
  void endPipeline();
  void giveUp(PostgresqlResult wrong);
  void keep();
  [[nodiscard]] std::string momentOfAnswers();
  [[nodiscard]] PostgresqlResult next();

  PostgresqlConnection& connection_;
  PostgresqlMemory& memory_;
  std::unordered_map<std::string_view, Known> answers_;  ///< by their questions' keys
  std::vector<Question> missing_;
  std::unordered_set<std::string_view> asked_;  ///< keys of what is missing
  std::deque<Awaited> awaited_;                 ///< under way, in the order of their answers
  std::unordered_set<std::string_view> awaitedKeys_;
  std::unordered_map<std::string_view, Question> used_;  ///< while it guesses: what the memory answered
  std::unordered_map<std::uint64_t, std::string>
      named_;             ///< made ready by this fetch, by statements' numbers
  std::string key_{};     ///< of what is asked now: it keeps its room
  std::size_t held_ = 0;  ///< bytes
  int fetches_ = 0;
  bool guesses_;
  bool isSpoilt_ = false;  ///< what was answered until the next fetch
  bool begins_ = false;    ///< its transaction, whose answer is under way
  bool hasBegun_ = false;
  bool gathers_ = true;
};

}  // namespace tarebowl::store
