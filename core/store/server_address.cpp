// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/server_address.h"

#include "core/store/store_error.h"

#include <fmt/format.h>
#include <libpq-fe.h>

#include <array>
#include <cctype>
#include <map>
#include <memory>
#include <mutex>
#include <string_view>
#include <utility>

namespace tarebowl::store {

namespace {

namespace fs = std::filesystem;

constexpr std::array<std::string_view, 2> kSchemes{"postgresql://", "postgres://"};
constexpr const char* kPatienceInSeconds = "10";

using Words = std::map<std::string, std::string>;

/// What the address says, without libpq's own defaults.
Words wordsOf(const fs::path& address) {
  char* complaint = nullptr;
  const std::unique_ptr<PQconninfoOption, decltype(&PQconninfoFree)> options(
      PQconninfoParse(address.string().c_str(), &complaint), &PQconninfoFree);
  const std::unique_ptr<char, decltype(&PQfreemem)> owned(complaint, &PQfreemem);
  if (!options) {
    std::string why = complaint != nullptr ? complaint : "it cannot be read";
    while (!why.empty() && why.back() == '\n') why.pop_back();
    throw StoreError(
        StoreErrorCode::Failed, "postgresql://…",
        fmt::format("this is no address of a server ({}); write postgresql://PERSON@SERVER/DATABASE", why));
  }
  Words words;
  for (const PQconninfoOption* option = options.get(); option->keyword != nullptr; ++option)
    if (option->val != nullptr) words[option->keyword] = option->val;
  return words;
}

bool isHere(const Words& words) {
  const auto host = words.find("host");
  if (host == words.end()) return !words.contains("hostaddr");
  return host->second.empty() || host->second.starts_with('/') || host->second == "localhost" ||
         host->second == "127.0.0.1" || host->second == "::1";
}

std::string encoded(const std::string& text) {
  std::string made;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (std::isalnum(byte) != 0 || c == '-' || c == '.' || c == '_' || c == '~')
      made += c;
    else
      made += fmt::format("%{:02X}", byte);
  }
  return made;
}

}  // namespace

bool isServerAddress(const fs::path& place) {
  const std::string text = place.string();
  for (const std::string_view scheme : kSchemes)
    if (text.starts_with(scheme)) return true;
  return false;
}

std::string connectionWords(const fs::path& address, const std::optional<std::string>& password) {
  Words words = wordsOf(address);
  if (words.contains("password"))
    throw StoreError(
        StoreErrorCode::Failed, "postgresql://…",
        "a password does not belong in an address, where others can read it; leave it out, and it is "
        "asked for, or read from ~/.pgpass");
  if (password) words["password"] = *password;
  words.try_emplace("connect_timeout", kPatienceInSeconds);
  words.try_emplace("application_name", "tarebowl");
  words["client_encoding"] = "UTF8";
  if (!isHere(words)) {
    words.try_emplace("sslmode", "verify-full");
    // A network that is gone without a word is noticed by the system within a minute, not after two hours.
    words.try_emplace("keepalives_idle", "30");
    words.try_emplace("keepalives_interval", "10");
    words.try_emplace("keepalives_count", "3");
    words.try_emplace("tcp_user_timeout", "15000");  // while something is said, within a quarter of it (ms)
  }
  // SOCI takes words apart at blanks, which a password may hold: as an address nothing of it has one.
  std::string made = "postgresql://";
  char mark = '?';
  for (const auto& [word, value] : words) {
    made += fmt::format("{}{}={}", mark, word, encoded(value));
    mark = '&';
  }
  return made;
}

PasswordAsker askedOnce(PasswordAsker ask) {
  struct Typed {
    std::mutex mutex{};
    std::map<std::string, std::string> passwords{};
  };
  return [ask = std::move(ask), typed = std::make_shared<Typed>()](const fs::path& address) {
    const std::lock_guard lock(typed->mutex);
    const auto known = typed->passwords.find(address.string());
    if (known != typed->passwords.end()) return std::optional(known->second);
    const auto answer = ask(address);
    if (answer) typed->passwords.emplace(address.string(), *answer);
    return answer;
  };
}

ServerPlace placeOf(const fs::path& address) {
  Words words = wordsOf(address);
  words.erase("password");
  const auto taken = [&](const char* word) {
    const auto node = words.extract(word);
    return node ? node.mapped() : std::string();
  };
  ServerPlace place{.host = taken("host"),
                    .port = taken("port"),
                    .database = taken("dbname"),
                    .person = taken("user"),
                    .security = taken("sslmode")};
  place.further = std::move(words);
  return place;
}

fs::path addressOf(const ServerPlace& place) {
  Words words = place.further;
  std::string made = std::string(kSchemes.front());
  if (!place.person.empty()) made.append(encoded(place.person)).append("@");
  // A folder cannot stand where a name does, and a number with colons only in brackets.
  if (place.host.starts_with('/'))
    words["host"] = place.host;
  else
    made += place.host.find(':') == std::string::npos ? encoded(place.host) : fmt::format("[{}]", place.host);
  if (!place.port.empty() && place.host.starts_with('/'))
    words["port"] = place.port;
  else if (!place.port.empty())
    made.append(":").append(place.port);
  made.append("/").append(encoded(place.database));
  if (!place.security.empty()) words["sslmode"] = place.security;
  char mark = '?';
  for (const auto& [word, value] : words) {
    made += fmt::format("{}{}={}", mark, word, encoded(value));
    mark = '&';
  }
  return made;
}

std::string databaseOf(const fs::path& address) {
  const Words words = wordsOf(address);
  const auto name = words.find("dbname");
  return name == words.end() ? "" : name->second;
}

}  // namespace tarebowl::store
