// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/migration.h"

#include <span>
#include <string>
#include <vector>

namespace tarebowl::store {

enum class ColumnType { Whole, Real, Text };

struct TableColumn {
  std::string name{};
  ColumnType type = ColumnType::Text;
  bool operator==(const TableColumn&) const = default;
};

/// A table as the migrations make it, on every engine.
struct TableShape {
  std::string name{};
  std::vector<TableColumn> columns{};  ///< in their order
  std::vector<std::string> key{};      ///< whole numbers, all of them
  bool operator==(const TableShape&) const = default;
};

/// The tables that a list of steps ends with; what others refer to comes before them.
[[nodiscard]] std::vector<TableShape> tablesOf(std::span<const Migration> steps);

}  // namespace tarebowl::store
