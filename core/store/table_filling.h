// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <variant>
#include <vector>

namespace tarebowl::store {

using ColumnValue = std::variant<std::monostate, long long, double, std::string>;
using TableRow = std::vector<ColumnValue>;

/// Rows on their way into a table, over a connection that takes nothing else until it ends. Inside guarded().
class TableFilling {
 public:
  virtual ~TableFilling() = default;
  TableFilling() = default;
  TableFilling(const TableFilling&) = delete;
  TableFilling& operator=(const TableFilling&) = delete;

  virtual void add(const TableRow& row) = 0;
  /// After the last row. What the engine refuses is thrown here at the latest; without an end, what was added
  /// is not kept.
  virtual void end() = 0;
};

}  // namespace tarebowl::store
