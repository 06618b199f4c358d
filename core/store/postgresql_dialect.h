// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::store {

/// The statements of a migration as PostgreSQL takes them: whole numbers have 64 bits and fractions 53, as in
/// SQLite; text is compared and ordered by its bytes, as there; a table marked /* append-only */ refuses
/// UPDATE, DELETE and TRUNCATE. It keeps no table in the order of its key.
[[nodiscard]] std::vector<std::string> toPostgresql(std::string_view migration);

/// The places of a prepared statement, ?, ?1 or :name, as PostgreSQL numbers them: $1.
[[nodiscard]] std::string withNumberedPlaces(std::string_view statement);

}  // namespace tarebowl::store
