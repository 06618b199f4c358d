// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/server_backup.h"

#include "core/store/change_log.h"
#include "core/store/child_program.h"
#include "core/store/former_collection.h"
#include "core/store/new_file.h"
#include "core/store/opening.h"
#include "core/store/postgresql_connection.h"
#include "core/store/server_address.h"
#include "core/store/server_opening.h"
#include "core/store/sqlite_tables.h"

#include <fmt/format.h>
#include <libpq-fe.h>

#include <optional>
#include <regex>
#include <utility>
#include <vector>

namespace tarebowl::store {

namespace {

namespace fs = std::filesystem;

constexpr int kVersionsInOne = 10'000;  // 150004 is 15.4

std::string lastLineOf(std::string text) {
  while (!text.empty() && std::isspace(static_cast<unsigned char>(text.back())) != 0) text.pop_back();
  return text.substr(text.rfind('\n') + 1);
}

[[noreturn]] void fail(const fs::path& place, std::string why) {
  throw StoreError(StoreErrorCode::Failed, place, std::move(why));
}

/// "pg_dump (PostgreSQL) 15.4 (Debian …)": 15.
int versionOf(const std::string& program, const fs::path& place) {
  const ChildOutcome outcome = runProgram({program, "--version"});
  static const std::regex kVersion(R"(PostgreSQL\) (\d+))");
  std::smatch match;
  if (!outcome.wasFound || outcome.status != 0 || !std::regex_search(outcome.out, match, kVersion))
    fail(place, fmt::format("{} of PostgreSQL is needed here and was not found; install PostgreSQL's client "
                            "programs (Debian: postgresql-client)",
                            program));
  return std::stoi(match[1].str());
}

/// PostgreSQL's programs, as one person who may have typed a password.
class Programs {
 public:
  Programs(fs::path address, const OpenOptions& options) : address_(std::move(address)), options_(options) {
    if (!options_.password) return;
    options_.password = [this, ask = options.password](const fs::path& at) {
      typed_ = ask(at);
      return typed_;
    };
  }
  Programs(const Programs&) = delete;
  Programs& operator=(const Programs&) = delete;

  /// To connect with; what is typed then is known to the programs as well.
  [[nodiscard]] const OpenOptions& options() const { return options_; }

  void refuseOlder(const std::string& program, PostgresqlConnection& connection) const {
    const int server = PQserverVersion(connection.handle()) / kVersionsInOne;
    const int here = versionOf(program, address_);
    if (here < server)
      fail(address_, fmt::format("the server is PostgreSQL {}, and {} here is of {}; install "
                                 "postgresql-client-{} or a newer one",
                                 server, program, here, server));
  }

  void run(std::vector<std::string> arguments, const char* what) const {
    arguments.emplace_back("--no-password");
    arguments.push_back("--dbname=" + connectionWords(address_, std::nullopt));
    std::vector<std::string> environment;
    if (typed_) environment.push_back("PGPASSWORD=" + *typed_);
    const ChildOutcome outcome = runProgram(arguments, environment);
    if (outcome.status != 0) fail(address_, fmt::format("{} ({})", what, lastLineOf(outcome.errors)));
  }

 private:
  fs::path address_;
  OpenOptions options_;
  std::optional<std::string> typed_;
};

/// pg_restore's list of what a dump holds.
std::string contentsOf(const fs::path& dump) {
  std::error_code ignored;
  if (!fs::is_regular_file(dump, ignored))
    throw StoreError(StoreErrorCode::NotFound, dump, "there is no such file");
  (void)versionOf("pg_restore", dump);
  ChildOutcome listed = runProgram({"pg_restore", "--list", dump.string()});
  if (listed.status != 0)
    throw StoreError(
        StoreErrorCode::Damaged, dump,
        fmt::format("is no whole backup of a collection on a server ({})", lastLineOf(listed.errors)));
  return std::move(listed.out);
}

void refuseMissingTable(const fs::path& dump, const std::string& contents,
                        const std::vector<std::string>& tables) {
  for (const std::string& table : tables)
    if (contents.find(" TABLE DATA tarebowl " + table + " ") == std::string::npos)
      throw StoreError(StoreErrorCode::NotACollection, dump,
                       fmt::format("is a dump, but of no whole collection: the table {} is missing", table));
}

std::vector<std::string> allTables() {
  std::vector<std::string> names{"collection_state"};
  for (const TableShape& table : tablesOf(migrations())) names.push_back(table.name);
  return names;
}

/// isRestored: the collection in the place is what was restored just now.
void putBack(PostgresqlConnection& connection, const std::string& former, bool isRestored) {
  WriteTransaction transaction(connection);
  if (isRestored) connection.sql() << "DROP SCHEMA tarebowl CASCADE";
  if (!former.empty()) connection.sql() << "ALTER SCHEMA " + former + " RENAME TO tarebowl";
  transaction.commit();
}

}  // namespace

void refuseUnsoundDump(const fs::path& dump) {
  refuseMissingTable(dump, contentsOf(dump), {"collection_state", "change_log"});
}

void dumpServer(const fs::path& address, const OpenOptions& options, const fs::path& file) {
  std::error_code error;
  if (fs::exists(file, error)) throw StoreError(StoreErrorCode::AlreadyThere, file, "is there already");
  Programs programs(address, options);
  OpenOptions reading = programs.options();
  reading.access = OpenOptions::Access::ReadOnly;
  const Collection collection = Collection::open(address, {}, reading);
  auto& connection = dynamic_cast<PostgresqlConnection&>(collection.inner().connection);
  programs.refuseOlder("pg_dump", connection);
  programs.refuseOlder("pg_restore", connection);
  const fs::path part = file.string() + ".part";
  fs::remove(part, error);
  try {
    makeOwnFile(part);
    programs.run({"pg_dump", "--format=custom", "--schema=tarebowl", "--file=" + part.string()},
                 "was not backed up: pg_dump says why");
    refuseMissingTable(part, contentsOf(part), allTables());
    putInPlace(part, file);
  } catch (...) {
    fs::remove(part, error);
    throw;
  }
}

std::string restoreServer(const fs::path& address, const OpenOptions& options, const fs::path& dump,
                          const Author& author) {
  refuseUnsoundDump(dump);
  Programs programs(address, options);
  const auto connection = connectToServer(address, programs.options());
  programs.refuseOlder("pg_restore", *connection);
  const std::string former = guarded(address, [&] { return setFormerAside(*connection, author.at); });
  bool isRestored = false;
  try {
    programs.run({"pg_restore", "--single-transaction", "--exit-on-error", "--no-owner", "--no-privileges",
                  dump.string()},
                 "was not restored and is as it was: pg_restore says why");
    isRestored = true;
    (void)raiseServer(address, programs.options(), migrations());
    const Collection restored = Collection::open(address, author.at, programs.options());
    guarded(address, [&] {
      WriteTransaction transaction(restored.inner().connection);
      record(restored.inner(), {.author = author,
                                .verb = "restore backup",
                                .subject = "collection",
                                .after = '"' + dump.filename().string() + '"'});
      transaction.commit();
    });
  } catch (...) {
    guarded(address, [&] { putBack(*connection, former, isRestored); });
    throw;
  }
  return former;
}

}  // namespace tarebowl::store
