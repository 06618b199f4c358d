// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/postgresql_reading.h"

#include "core/store/postgresql_connection.h"

#include <libpq-fe.h>
#include <soci/postgresql/soci-postgresql.h>

#include <string_view>
#include <utility>

namespace tarebowl::store {

namespace {

/// More is not held: ten years of feeding take no more memory than half a year.
constexpr std::size_t kMostHeld = 32'000'000;
/// A job that is none of few steps is not run again and again: the rest is asked one by one.
constexpr int kMostFetches = 8;
constexpr int kAsText = 0;
constexpr const char* kLost = "08006";
/// Two transactions that see the same rows are told the same.
constexpr const char* kMoment = "SELECT CAST(pg_current_snapshot() AS TEXT)";

std::vector<const char*> pointersTo(const PostgresqlReading::Values& values) {
  std::vector<const char*> pointers;
  pointers.reserve(values.size());
  for (const auto& value : values) pointers.push_back(value ? value->c_str() : nullptr);
  return pointers;
}

bool isDone(const pg_result* result) {
  const ExecStatusType status = PQresultStatus(result);
  return status == PGRES_COMMAND_OK || status == PGRES_TUPLES_OK;
}

}  // namespace

PostgresqlReading::PostgresqlReading(PostgresqlConnection& connection, PostgresqlMemory& memory)
    : connection_(connection), memory_(memory), guesses_(!memory.isEmpty()) {}

/// Nobody waits for the answer to its end: who asks next takes it out of the way.
PostgresqlReading::~PostgresqlReading() {
  try {
    settle();
  } catch (const soci::soci_error&) {
    return;  // it is lost, and whoever asks next is told
  }
  if (!hasBegun_ || PQstatus(connection_.handle()) != CONNECTION_OK) return;
  keep();
  PQsendQuery(connection_.handle(), "COMMIT");
  PQflush(connection_.handle());
}

PostgresqlReading::Answer PostgresqlReading::answer(const std::shared_ptr<KnownStatement>& statement,
                                                    const Values& values) {
  writeKey(key_, *statement, values);
  while (awaitedKeys_.contains(key_)) takeNext();
  if (isSpoilt_) return nullptr;
  if (const auto known = answers_.find(key_); known != answers_.end()) return known->second.answer;
  if (!gathers_) return connection_.execute(*statement, values);
  const PostgresqlMemory::Kept* kept = memory_.find(key_);
  if (kept != nullptr && guesses_) used_.emplace(kept->question->key, kept->question);
  if (kept != nullptr && (guesses_ || (hasBegun_ && memory_.holds(*kept)))) return kept->answer;
  if (!asked_.contains(key_)) note(std::make_shared<const PostgresqlQuestion>(statement, values, key_));
  return nullptr;
}

void PostgresqlReading::note(Question question) {
  if (!asked_.insert(question->key).second) return;
  missing_.push_back(std::move(question));
}

void PostgresqlReading::fetch() {
  settle();
  isSpoilt_ = false;
  if (!gathers_) {
    missing_.clear();
    asked_.clear();
    return;
  }
  connection_.takeWhatIsLeft();
  connection_.noticeWrites();
  if (hasBegun_)
    fetchNoted();
  else
    fetchFirst();
  if (++fetches_ == kMostFetches) gathers_ = false;
}

/// What was guessed with is asked anew: at once where it is known not to hold, else when that has turned out.
void PostgresqlReading::fetchFirst() {
  guesses_ = false;
  const auto used = std::exchange(used_, {});
  const auto askAgain = [&] {
    for (const auto& [key, question] : used) {
      const PostgresqlMemory::Kept* kept = memory_.find(question->key);
      if (answers_.contains(key) || (kept != nullptr && memory_.holds(*kept) && !memory_.isDoubted()))
        continue;
      note(question);
    }
  };
  askAgain();
  missing_.insert(missing_.begin(), std::make_shared<const PostgresqlQuestion>(
                                        connection_.statements().of(kMoment), Values{}, kMoment));
  fetchNoted();
  takeNext();
  if (isSpoilt_ || memory_.turnTo(momentOfAnswers())) return;
  askAgain();
  if (missing_.empty()) return;
  settle();
  if (!isSpoilt_) fetchNoted();
}

/// Which it is no answer to keep.
std::string PostgresqlReading::momentOfAnswers() {
  const auto known = answers_.extract(kMoment);
  return PQgetvalue(known.mapped().answer.get(), 0, 0);
}

void PostgresqlReading::keep() {
  for (auto& [key, known] : answers_) memory_.keep(std::move(known.question), std::move(known.answer));
  answers_.clear();
}

void PostgresqlReading::fetchNoted() {
  if (missing_.empty()) return;
  if (PQenterPipelineMode(connection_.handle()) == 0)
    throw soci::postgresql_soci_error(PQerrorMessage(connection_.handle()), kLost);
  send();
  missing_.clear();
  asked_.clear();
}

void PostgresqlReading::send() {
  pg_conn* const handle = connection_.handle();
  begins_ = !hasBegun_;
  if (begins_)
    PQsendQueryParams(handle, "BEGIN ISOLATION LEVEL REPEATABLE READ, READ ONLY", 0, nullptr, nullptr,
                      nullptr, nullptr, kAsText);
  std::unordered_set<std::uint64_t> again;
  for (const Question& question : missing_)
    if (connection_.statements().countRun(*question->statement)) again.insert(question->statement->number);
  for (const Question& question : missing_) {
    awaited_.push_back(send(question, again.contains(question->statement->number)));
    awaitedKeys_.insert(question->key);
  }
  PQpipelineSync(handle);
}

/// What comes again is made ready on the way.
PostgresqlReading::Awaited PostgresqlReading::send(Question question, bool comesAgain) {
  pg_conn* const handle = connection_.handle();
  const std::vector<const char*> values = pointersTo(question->values);
  const int count = static_cast<int>(values.size());
  const KnownStatement& statement = *question->statement;
  std::string name = connection_.statements().nameOf(statement);
  if (const auto made = named_.find(statement.number); made != named_.end()) name = made->second;
  const bool isPrepared = name.empty() && comesAgain;
  if (isPrepared) {
    name = connection_.statements().freshName();
    PQsendPrepare(handle, name.c_str(), statement.text.c_str(), 0, nullptr);
    named_.emplace(statement.number, name);
  }
  if (name.empty())
    PQsendQueryParams(handle, statement.text.c_str(), count, nullptr, values.data(), nullptr, nullptr,
                      kAsText);
  else
    PQsendQueryPrepared(handle, name.c_str(), count, values.data(), nullptr, nullptr, kAsText);
  return {std::move(question), isPrepared};
}

/// The result of what was sent next, and what ends it.
PostgresqlResult PostgresqlReading::next() {
  PostgresqlResult result(PQgetResult(connection_.handle()));
  while (const PostgresqlResult end{PQgetResult(connection_.handle())}) continue;
  return result;
}

void PostgresqlReading::settle() {
  while (!awaited_.empty()) takeNext();
}

void PostgresqlReading::takeNext() {
  PostgresqlResult wrong;
  const auto look = [&wrong](PostgresqlResult result) -> Answer {
    if (result && isDone(result.get())) return Answer(std::move(result));
    if (!wrong) wrong = std::move(result);
    return nullptr;
  };
  if (std::exchange(begins_, false)) (void)look(next());
  hasBegun_ = true;
  const Awaited awaited = std::move(awaited_.front());
  awaited_.pop_front();
  awaitedKeys_.erase(awaited.question->key);
  if (awaited.isPrepared) (void)look(next());
  if (Answer answer = look(next())) {
    held_ += PQresultMemorySize(answer.get());
    answers_.emplace(awaited.question->key, Known{awaited.question, std::move(answer)});
  }
  if (wrong || PQstatus(connection_.handle()) != CONNECTION_OK) return giveUp(std::move(wrong));
  if (held_ > kMostHeld) gathers_ = false;
  if (awaited_.empty()) endPipeline();
}

void PostgresqlReading::endPipeline() {
  while (const PostgresqlResult sync{PQgetResult(connection_.handle())})
    if (PQresultStatus(sync.get()) == PGRES_PIPELINE_SYNC) break;
  PQexitPipelineMode(connection_.handle());
  for (auto& [number, name] : std::exchange(named_, {}))
    connection_.statements().keepName(number, std::move(name));
}

/// The server did not take something. What follows it is taken out of the way, and all is asked again one by
/// one: so it is said of which question it is.
void PostgresqlReading::giveUp(PostgresqlResult wrong) {
  for (const Awaited& awaited : std::exchange(awaited_, {}))
    for (int results = awaited.isPrepared ? 2 : 1; results > 0; --results) (void)next();
  awaitedKeys_.clear();
  named_.clear();
  endPipeline();
  gathers_ = false;
  hasBegun_ = false;
  isSpoilt_ = true;
  answers_.clear();
  if (connection_.isLost()) {
    checked(wrong.release());
    throw soci::postgresql_soci_error(PQerrorMessage(connection_.handle()), kLost);
  }
  checked(PQexec(connection_.handle(), "ROLLBACK"));
}

}  // namespace tarebowl::store
