// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store_error.h"

#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

struct pg_result;  // libpq's result

namespace tarebowl::store {

/// Why a server did not let a program in.
struct ConnectFailure {
  std::string state{};         ///< SQLSTATE, where the server said one
  std::string words{};         ///< of the server, or of libpq where there was no answer
  bool wantsPassword = false;  ///< it asked for one, and none was known
};

/// Tries once more, to learn why it did not work.
[[nodiscard]] ConnectFailure whyNot(const std::string& connectionWords);

/// With what a person can do about it.
[[nodiscard]] StoreError connectError(const std::filesystem::path& address, const ConnectFailure& failure);

struct ResultDeleter {
  void operator()(pg_result* result) const;
};
using PostgresqlResult = std::unique_ptr<pg_result, ResultDeleter>;

/// Takes a result over. Throws soci::postgresql_soci_error where it is an error.
PostgresqlResult checked(pg_result* result);

/// "ERROR: " and what comes after the first line are for programmers.
[[nodiscard]] std::string firstLineOf(std::string_view message);

}  // namespace tarebowl::store
