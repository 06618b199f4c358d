// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::store {

/// The statements of a migration as SQLite takes them: tables are STRICT, a table marked /* clustered */ is
/// kept in the order of its key, and one marked /* append-only */ refuses UPDATE and DELETE. Statements end
/// with a semicolon at the end of a line.
[[nodiscard]] std::vector<std::string> toSqlite(std::string_view migration);

}  // namespace tarebowl::store
