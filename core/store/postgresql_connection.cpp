// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/postgresql_connection.h"

#include "core/store/postgresql_copy.h"
#include "core/store/postgresql_dialect.h"
#include "core/store/postgresql_failure.h"
#include "core/store/postgresql_reading.h"
#include "core/store/postgresql_statement.h"
#include "core/store/server_address.h"

#include <fmt/format.h>
#include <libpq-fe.h>
#include <soci/postgresql/soci-postgresql.h>

#include <utility>

namespace tarebowl::store {

namespace {

namespace fs = std::filesystem;

/// "TARE": the write lock of a collection; locks of one database do not meet those of another.
constexpr long long kWriteLock = 0x54415245;
constexpr const char* kConnectionLost = "08006";
/// Whose triggers can be made again as they are (server/rights.sql).
constexpr int kOldestServer = 140'000;

void stayQuiet(void* /*unused*/, const char* /*notice*/) {}

}  // namespace

PostgresqlConnection::PostgresqlConnection(fs::path address, const Options& options)
    : Connection(std::move(address), options.access), patience_(options.patience) {
  open(options);
  guarded(file(), [&] { setUp(); });
  if (PQserverVersion(handle()) < kOldestServer)
    throw StoreError(StoreErrorCode::Failed, file(),
                     "the server is older than PostgreSQL 14, which is the least");
}

/// SOCI says of a connection that does not come about no more than the server's sentence.
void PostgresqlConnection::open(const Options& options) {
  const std::string words = connectionWords(file(), std::nullopt);
  try {
    sql().open(soci::postgresql, words);
    return;
  } catch (const soci::soci_error&) {
    const ConnectFailure failure = whyNot(words);
    if (!failure.wantsPassword || !options.password) throw connectError(file(), failure);
  }
  const auto password = options.password(file());
  if (!password) throw connectError(file(), {.wantsPassword = true});
  const std::string again = connectionWords(file(), password);
  try {
    sql().open(soci::postgresql, again);
  } catch (const soci::soci_error&) {
    throw connectError(file(), whyNot(again));
  }
}

PostgresqlConnection::~PostgresqlConnection() = default;

/// SOCI has none after it tried in vain to connect again; libpq takes that for a connection that is lost.
pg_conn* PostgresqlConnection::handle() {
  const auto* const backend = static_cast<soci::postgresql_session_backend*>(session().get_backend());
  return backend != nullptr ? backend->conn_ : nullptr;
}

/// What comes again is planned once, for any value: to plan it for each takes longer than to run it.
void PostgresqlConnection::setUp() {
  PQsetNoticeProcessor(handle(), &stayQuiet, nullptr);
  sql() << fmt::format(
      "SET search_path = tarebowl, pg_temp; SET lock_timeout = {}; SET synchronous_commit = on; "
      "SET plan_cache_mode = force_generic_plan; "
      "SET default_transaction_read_only = {}; LISTEN tarebowl_written",
      patience_.count(), access() == Access::ReadWrite ? "off" : "on");
}

std::unique_ptr<EngineStatement> PostgresqlConnection::prepare(const std::string& statement) {
  return std::make_unique<PostgresqlStatement>(*this, statements_.of(statement));
}

std::unique_ptr<TableFilling> PostgresqlConnection::fill(const TableShape& table) {
  return std::make_unique<PostgresqlCopy>(handle(), table);
}

std::shared_ptr<pg_result> PostgresqlConnection::execute(KnownStatement& statement, const Values& values) {
  std::vector<const char*> pointers;
  pointers.reserve(values.size());
  for (const auto& value : values) pointers.push_back(value ? value->c_str() : nullptr);
  const int count = static_cast<int>(pointers.size());
  settle();
  constexpr int kAsText = 0;
  const bool comesAgain = statements_.countRun(statement);
  std::string name = statements_.nameOf(statement);
  if (!comesAgain && name.empty())
    return checked(PQexecParams(handle(), statement.text.c_str(), count, nullptr, pointers.data(), nullptr,
                                nullptr, kAsText));
  if (name.empty()) {
    name = statements_.freshName();
    checked(PQprepare(handle(), name.c_str(), statement.text.c_str(), 0, nullptr));
    statements_.keepName(statement.number, name);
  }
  return checked(PQexecPrepared(handle(), name.c_str(), count, pointers.data(), nullptr, nullptr, kAsText));
}

void PostgresqlConnection::takeWhatIsLeft() {
  while (const PostgresqlResult left{PQgetResult(handle())}) continue;
}

bool PostgresqlConnection::beginReading() {
  if (isWriting() || reading_ || isLost()) return false;
  reading_ = std::make_unique<PostgresqlReading>(*this, memory_);
  return true;
}

bool PostgresqlConnection::gathers() const {
  return reading_ && reading_->gathers();
}

std::shared_ptr<pg_result> PostgresqlConnection::answer(const std::shared_ptr<KnownStatement>& statement,
                                                        const Values& values) {
  if (!reading_) return execute(*statement, values);
  auto found = reading_->answer(statement, values);
  if (!found) goOnUnanswered();
  return found;
}

bool PostgresqlConnection::guesses() const {
  return reading_ && reading_->guesses();
}

void PostgresqlConnection::fetchAnswers() {
  if (reading_) reading_->fetch();
}

void PostgresqlConnection::settle() {
  if (reading_) reading_->settle();
}

void PostgresqlConnection::endReading() noexcept {
  reading_.reset();
}

std::vector<std::string> PostgresqlConnection::translated(std::string_view migration) const {
  return toPostgresql(migration);
}

int PostgresqlConnection::schemaVersion() {
  int isThere = 0;
  sql() << "SELECT COUNT(*) FROM pg_catalog.pg_class c JOIN pg_catalog.pg_namespace n ON n.oid = "
           "c.relnamespace WHERE n.nspname = 'tarebowl' AND c.relname = 'collection_state'",
      soci::into(isThere);
  if (isThere == 0) return 0;
  int version = 0;
  sql() << "SELECT schema_version FROM tarebowl.collection_state", soci::into(version);
  return version;
}

void PostgresqlConnection::setSchemaVersion(int version) {
  sql() << "UPDATE collection_state SET schema_version = :version", soci::use(version);
}

bool PostgresqlConnection::heardOfWrite() {
  takeWhatIsLeft();
  if (PQconsumeInput(handle()) == 0)
    throw soci::postgresql_soci_error(PQerrorMessage(handle()), kConnectionLost);
  noticeWrites();
  return std::exchange(heard_, false);
}

void PostgresqlConnection::noticeWrites() {
  (void)PQconsumeInput(handle());  // a connection that is lost shows where it is asked for something
  const int self = PQbackendPID(handle());
  while (const std::unique_ptr<PGnotify, decltype(&PQfreemem)> note{PQnotifies(handle()), &PQfreemem}) {
    if (note->be_pid == self) continue;  // commit() knows
    memory_.doubt();
    heard_ = true;
  }
}

int PostgresqlConnection::number() {
  return PQbackendPID(handle());
}

bool PostgresqlConnection::isLost() {
  return PQstatus(handle()) != CONNECTION_OK;
}

void PostgresqlConnection::refuseLost() {
  if (!isLost()) return;
  if (isWriting())
    throw StoreError(
        StoreErrorCode::NoServer, file(),
        "the connection to the server was lost while it was being written; nothing was kept of it");
  takeUpAgain();
}

void PostgresqlConnection::takeUpAgain() {
  statements_.forgetNames();
  memory_.forget();
  try {
    sql().reconnect();
  } catch (const soci::soci_error& error) {
    throw StoreError(StoreErrorCode::NoServer, file(),
                     fmt::format("the connection to the server was lost, and it does not answer ({})",
                                 firstLineOf(error.what())));
  }
  guarded(file(), [&] { setUp(); });
}

/// The lock is held until the transaction ends: whoever writes is the only one, as with a file.
void PostgresqlConnection::beginWriting() {
  if (reading_) throw StoreError(StoreErrorCode::Failed, file(), "what only reads does not write");
  sql() << "BEGIN";
  try {
    sql() << fmt::format("SELECT pg_advisory_xact_lock({})", kWriteLock);
  } catch (const soci::soci_error&) {
    sql() << "ROLLBACK";
    throw;
  }
}

void PostgresqlConnection::commit() {
  // NOTIFY is refused in a transaction that has failed, where COMMIT would roll back without a word.
  sql() << "NOTIFY tarebowl_written; COMMIT";
  memory_.doubt();
}

}  // namespace tarebowl::store
