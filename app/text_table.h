// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace tarebowl::app {

/// Columns of text for a terminal, aligned by characters (not bytes), two spaces apart, under a ruled
/// heading.
class TextTable {
 public:
  enum class Align { Left, Right };
  struct Column {
    std::string title;
    Align align = Align::Left;
  };

  explicit TextTable(std::vector<Column> columns);
  /// One text per column; control characters are shown as spaces.
  void addRow(std::vector<std::string> cells);
  /// A rule across the table, before a sum.
  void addRule();
  [[nodiscard]] std::string text() const;

 private:
  std::vector<Column> columns_;
  std::vector<std::vector<std::string>> rows_;  // an empty row is a rule
};

}  // namespace tarebowl::app
