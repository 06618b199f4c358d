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

std::string keyOf(const std::string& statement, const PostgresqlReading::Values& values) {
  std::string key = statement;
  for (const auto& value : values) {
    key += '\0';
    key += value ? std::to_string(value->size()) + ':' + *value : "null";
  }
  return key;
}

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

/// Nobody waits for the answer: who asks next takes it out of the way.
PostgresqlReading::~PostgresqlReading() {
  if (hasBegun_ && PQstatus(connection_.handle()) == CONNECTION_OK) {
    PQsendQuery(connection_.handle(), "COMMIT");
    PQflush(connection_.handle());
  }
}

PostgresqlReading::Answer PostgresqlReading::answer(const std::string& statement, const Values& values) {
  std::string key = keyOf(statement, values);
  if (const auto known = answers_.find(key); known != answers_.end()) return known->second;
  if (!gathers_) return connection_.execute(statement, values);
  if (asked_.insert(key).second) missing_.push_back({std::move(key), statement, values});
  return nullptr;
}

void PostgresqlReading::fetch() {
  connection_.takeWhatIsLeft();
  if (PQenterPipelineMode(connection_.handle()) == 0)
    throw soci::postgresql_soci_error(PQerrorMessage(connection_.handle()), kLost);
  send();
  try {
    take();
  } catch (const soci::postgresql_soci_error&) {
    if (connection_.isLost()) throw;
    // Asked one by one it is said of which question it is.
    answers_.clear();
    gathers_ = false;
    hasBegun_ = false;
    checked(PQexec(connection_.handle(), "ROLLBACK"));
  }
  missing_.clear();
  asked_.clear();
  if (held_ > kMostHeld || ++fetches_ == kMostFetches) gathers_ = false;
}

void PostgresqlReading::send() {
  pg_conn* const handle = connection_.handle();
  if (!hasBegun_)
    PQsendQueryParams(handle, "BEGIN ISOLATION LEVEL REPEATABLE READ, READ ONLY", 0, nullptr, nullptr,
                      nullptr, nullptr, kAsText);
  std::unordered_map<std::string_view, int> counts;
  for (const Question& question : missing_) ++counts[question.statement];
  for (const Question& question : missing_) send(question, counts.at(question.statement) > 1);
  PQpipelineSync(handle);
}

/// What comes again is made ready on the way.
void PostgresqlReading::send(const Question& question, bool comesAgain) {
  pg_conn* const handle = connection_.handle();
  const std::vector<const char*> values = pointersTo(question.values);
  const int count = static_cast<int>(values.size());
  const std::string& text = question.statement;
  std::string name = connection_.keptName(text);
  if (const auto made = named_.find(text); made != named_.end()) name = made->second;
  if (name.empty() && comesAgain) {
    name = connection_.freshName();
    PQsendPrepare(handle, name.c_str(), text.c_str(), 0, nullptr);
    named_.emplace(text, name);
    preparing_.insert(&question);
  }
  if (name.empty())
    PQsendQueryParams(handle, text.c_str(), count, nullptr, values.data(), nullptr, nullptr, kAsText);
  else
    PQsendQueryPrepared(handle, name.c_str(), count, values.data(), nullptr, nullptr, kAsText);
}

/// The result of what was sent next, and what ends it.
PostgresqlResult PostgresqlReading::next() {
  PostgresqlResult result(PQgetResult(connection_.handle()));
  while (const PostgresqlResult end{PQgetResult(connection_.handle())}) continue;
  return result;
}

/// All of them are taken out of the way, also after one that is an error.
void PostgresqlReading::take() {
  pg_conn* const handle = connection_.handle();
  PostgresqlResult wrong;
  const auto look = [&wrong](PostgresqlResult result) -> Answer {
    if (result && isDone(result.get())) return Answer(std::move(result));
    if (!wrong) wrong = std::move(result);
    return nullptr;
  };
  if (!std::exchange(hasBegun_, true)) (void)look(next());
  for (Question& question : missing_) {
    if (preparing_.contains(&question)) (void)look(next());
    if (Answer answer = look(next())) {
      held_ += PQresultMemorySize(answer.get());
      answers_.emplace(std::move(question.key), std::move(answer));
    }
  }
  while (const PostgresqlResult sync{PQgetResult(handle)})
    if (PQresultStatus(sync.get()) == PGRES_PIPELINE_SYNC) break;
  PQexitPipelineMode(handle);
  preparing_.clear();
  auto named = std::exchange(named_, {});
  if (wrong || PQstatus(handle) != CONNECTION_OK) {
    checked(wrong.release());
    throw soci::postgresql_soci_error(PQerrorMessage(handle), kLost);
  }
  for (auto& [text, name] : named) connection_.keepName(text, std::move(name));
}

}  // namespace tarebowl::store
