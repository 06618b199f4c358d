// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/postgresql_failure.h"

#include "core/store/engine_error.h"
#include "core/store/server_address.h"

#include <fmt/format.h>
#include <libpq-fe.h>
#include <soci/postgresql/soci-postgresql.h>

#include <cstdlib>
#include <regex>
#include <system_error>

namespace tarebowl::store {

namespace {

constexpr const char* kNoState = "     ";  // as SOCI says that the server said nothing

bool isOf(std::string_view state, std::string_view family) {
  return state.starts_with(family);
}

StoreErrorCode codeOf(std::string_view state) {
  if (isOf(state, "23") || isOf(state, "22")) return StoreErrorCode::Refused;
  if (state == "42501" || state == "25006") return StoreErrorCode::NoPermission;
  if (state == "55P03" || isOf(state, "40") || state == "57014" || state == "53300")
    return StoreErrorCode::Busy;
  if (state == "42P01" || state == "3F000") return StoreErrorCode::Gone;
  if (state == "53100") return StoreErrorCode::DiskFull;
  if (isOf(state, "58")) return StoreErrorCode::DiskError;
  if (isOf(state, "XX")) return StoreErrorCode::Damaged;
  if (isOf(state, "08") || isOf(state, "57P") || state == kNoState) return StoreErrorCode::NoServer;
  return StoreErrorCode::Failed;
}

std::string wordsFor(StoreErrorCode code, const std::string& said) {
  switch (code) {
    case StoreErrorCode::Refused:
      return "the change breaks a rule of the collection";
    case StoreErrorCode::NoPermission:
      return fmt::format("your role on the server may not do this, and nothing was written ({})", said);
    case StoreErrorCode::Busy:
      return "is being written by another window or command";
    case StoreErrorCode::Gone:
      return "was moved or removed on the server while it was open; nothing was written. Open it where it is "
             "now";
    case StoreErrorCode::DiskFull:
      return "cannot be written: the server's disk is full; nothing was written. Tell whoever runs the "
             "server";
    case StoreErrorCode::DiskError:
      return "cannot be read or written: the server's disk reports an error";
    case StoreErrorCode::Damaged:
      return "is damaged on the server; tell whoever runs it";
    case StoreErrorCode::NoServer:
      return "the connection to the server was lost; what was not said to be saved was not written";
    default:
      return "the collection could not be read or written";
  }
}

bool isClear(StoreErrorCode code) {
  return code == StoreErrorCode::NoPermission || code == StoreErrorCode::Busy ||
         code == StoreErrorCode::Gone || code == StoreErrorCode::DiskFull || code == StoreErrorCode::NoServer;
}

/// Which authorities are trusted: as libpq looks for them.
std::filesystem::path trustedIn(const std::filesystem::path& address) {
  const ServerPlace place = placeOf(address);
  if (const auto named = place.further.find("sslrootcert"); named != place.further.end())
    return named->second;
  const char* const home = std::getenv("HOME");
  return std::filesystem::path(home != nullptr ? home : "") / ".postgresql" / "root.crt";
}

/// Of a connection that came about as far as to the server's certificate; words of libpq, which may be in the
/// person's language, so that no more than the stem of "certificate" is looked for. Nothing: that is not it.
const char* whyNotSecure(const std::filesystem::path& address, const std::string& words) {
  const auto says = [&words](const char* word) { return words.find(word) != std::string::npos; };
  std::error_code ignored;
  if (says("verify failed"))  // of OpenSSL, which speaks English
    return "the server's certificate was not accepted: it has expired by this machine's clock, or it is "
           "signed by "
           "nobody whom this machine trusts. Look at the clock, and ask whoever runs the server for a valid "
           "one, "
           "or for the certificate of who signs for it, which belongs in ~/.postgresql/root.crt";
  if (says("ertifi") && !std::filesystem::exists(trustedIn(address), ignored))
    return "the certificate of who signs for the server is not there; ask whoever runs the server for it and "
           "put it "
           "into ~/.postgresql/root.crt";
  if (says("ertifi"))
    return "the server's certificate is of another name than the address; write the server's name as it "
           "stands "
           "there, or ask whoever runs the server";
  if (says("SSL"))
    return "no secure connection came about; ask whoever runs the server whether it offers one";
  return nullptr;
}

std::string stateIn(const std::string& message) {
  static const std::regex kState(R"(:  ([0-9A-Z]{5}): )");
  std::smatch match;
  return std::regex_search(message, match, kState) ? match[1].str() : "";
}

}  // namespace

std::string firstLineOf(std::string_view message) {
  static const std::regex kLead(
      R"(\S+:  ([0-9A-Z]{5}: )?)");  // two blanks: a word of the server's, in its language
  const std::string text(message);
  std::smatch match;
  const bool isLed = std::regex_search(text, match, kLead);
  std::string line = isLed ? match.suffix().str() : text;
  line = line.substr(0, line.find('\n'));
  return line;
}

std::optional<EngineError> meaningInPostgresql(const soci::soci_error& error) {
  const auto* engine = dynamic_cast<const soci::postgresql_soci_error*>(&error);
  // SOCI's own words, after it tried in vain to connect again.
  if (engine == nullptr && std::string_view(error.what()).starts_with("Session is not connected"))
    return EngineError{StoreErrorCode::NoServer, wordsFor(StoreErrorCode::NoServer, error.what()),
                       isClear(StoreErrorCode::NoServer)};
  if (engine == nullptr) return std::nullopt;
  const StoreErrorCode code = codeOf(engine->sqlstate());
  return EngineError{code, wordsFor(code, firstLineOf(error.what())), isClear(code)};
}

ConnectFailure whyNot(const std::string& connectionWords) {
  const std::unique_ptr<PGconn, decltype(&PQfinish)> attempt(PQconnectStart(connectionWords.c_str()),
                                                             &PQfinish);
  if (!attempt) return {.words = "there is no memory left"};
  PQsetErrorVerbosity(attempt.get(), PQERRORS_VERBOSE);  // with its SQLSTATE
  PQreset(attempt.get());                                // anew, and to its end
  ConnectFailure failure;
  if (PQstatus(attempt.get()) == CONNECTION_OK) {
    failure.words = "it answered the second time; try again";
    return failure;
  }
  const std::string message = PQerrorMessage(attempt.get());
  failure.state = stateIn(message);
  failure.words = firstLineOf(message);
  failure.wantsPassword = PQconnectionNeedsPassword(attempt.get()) != 0;
  return failure;
}

StoreError connectError(const std::filesystem::path& address, const ConnectFailure& failure) {
  const auto because = [&](StoreErrorCode code, const char* what) {
    return StoreError(code, address, fmt::format("{} ({})", what, failure.words));
  };
  if (failure.wantsPassword)
    return {StoreErrorCode::PasswordNeeded, address,
            "the server asks for a password, and none was given; open it again and type it, or put it into "
            "~/.pgpass"};
  if (failure.state == "28P01")
    return because(StoreErrorCode::PasswordNeeded,
                   "the server does not accept the password; open it again and type it anew, or look into "
                   "~/.pgpass");
  if (failure.state.starts_with("28"))
    return because(StoreErrorCode::NoPermission, "the server does not let you in; ask whoever runs it");
  if (failure.state == "3D000")
    return because(
        StoreErrorCode::NotFound,
        "the server has no such database; look at its name, or ask whoever runs the server to make "
        "one");
  if (failure.state == "42501")
    return because(StoreErrorCode::NoPermission,
                   "you may not open this database; ask whoever runs the server");
  if (const char* why = whyNotSecure(address, failure.words)) return because(StoreErrorCode::NoServer, why);
  return because(StoreErrorCode::NoServer,
                 "the server does not answer; look at its name, at the network, and whether it runs");
}

void ResultDeleter::operator()(pg_result* result) const {
  PQclear(result);
}

PostgresqlResult checked(pg_result* result) {
  PostgresqlResult owned(result);
  const ExecStatusType status = PQresultStatus(result);
  if (status == PGRES_COMMAND_OK || status == PGRES_TUPLES_OK || status == PGRES_COPY_IN) return owned;
  const char* state = PQresultErrorField(result, PG_DIAG_SQLSTATE);
  throw soci::postgresql_soci_error(PQresultErrorMessage(result), state != nullptr ? state : kNoState);
}

}  // namespace tarebowl::store
