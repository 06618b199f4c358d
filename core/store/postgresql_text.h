// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

/// Values as a server reads them in text.
namespace tarebowl::store {

/// So that it reads back as it was.
[[nodiscard]] std::string serverText(long long value);
/// The same; what is no number is nothing, as SQLite has it.
[[nodiscard]] std::optional<std::string> serverText(double value);

/// Throws soci::postgresql_soci_error where a text holds what the server does not keep.
void refuseUnkept(const std::string& text);

}  // namespace tarebowl::store
