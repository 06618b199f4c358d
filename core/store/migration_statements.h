// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::store {

/// One statement of a migration, in the SQL that engines have in common.
struct MigrationStatement {
  std::string text{};       ///< without its marks
  std::string table{};      ///< that it makes; empty where it makes none
  bool clustered = false;   ///< rows are kept in the order of their key, where the engine can do so
  bool appendOnly = false;  ///< the table refuses UPDATE and DELETE
};

/// Statements end with a semicolon at the end of a line. Comments to the end of a line are left out; a table
/// is marked /* clustered */ and /* append-only */.
[[nodiscard]] std::vector<MigrationStatement> statementsOf(std::string_view migration);

}  // namespace tarebowl::store
