// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <filesystem>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>

/// Where a collection lies that several desks share: postgresql://person@server/database. It stands where the
/// path of a file does.
namespace tarebowl::store {

[[nodiscard]] bool isServerAddress(const std::filesystem::path& place);

/// The address as libpq and SOCI take it, with the password and what Tarebowl adds: where the server is
/// another machine and the address does not say otherwise, the connection is encrypted and the server proves
/// who it is (sslmode=verify-full). Throws StoreError (Failed) for what is no address, and for one with a
/// password in it: addresses are seen by others, and are remembered.
[[nodiscard]] std::string connectionWords(const std::filesystem::path& address,
                                          const std::optional<std::string>& password);

/// Asks a person for the password of an address; nothing where they would rather not.
using PasswordAsker = std::function<std::optional<std::string>(const std::filesystem::path& address)>;

/// The same, but for each address once: a window and its workers open one collection several times. What was
/// typed is kept in memory only. May be called by several threads.
[[nodiscard]] PasswordAsker askedOnce(PasswordAsker ask);

/// An address by its parts, as a form asks for them.
struct ServerPlace {
  std::string host{};      ///< a name or number; a folder with a socket; empty: this machine
  std::string port{};      ///< empty: as is usual, 5432
  std::string database{};  ///< empty: named like the person
  std::string person{};    ///< as the server knows them; empty: as this machine does
  std::string security{};  ///< libpq's sslmode; empty: as is usual (connectionWords)
  std::map<std::string, std::string> further{};  ///< what else the address says, in libpq's words

  friend bool operator==(const ServerPlace&, const ServerPlace&) = default;
};

/// Of libpq's sslmode, from the safest on.
inline constexpr std::array<std::string_view, 6> kSecurities{"verify-full", "verify-ca", "require",
                                                             "prefer",      "allow",     "disable"};

/// Throws StoreError as connectionWords does; of a password in an address nothing is kept.
[[nodiscard]] ServerPlace placeOf(const std::filesystem::path& address);
[[nodiscard]] std::filesystem::path addressOf(const ServerPlace& place);

/// The name of the database, as a person calls such a collection.
[[nodiscard]] std::string databaseOf(const std::filesystem::path& address);

}  // namespace tarebowl::store
