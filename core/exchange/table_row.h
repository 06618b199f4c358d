// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::exchange {

/// One record of a table: its cells as text, and the line on which it begins.
class TableRow {
 public:
  /// Lines are counted from 1 as an editor shows them, those inside quotes and blank ones too; a
  /// spreadsheet's are its rows.
  [[nodiscard]] std::size_t line() const { return line_; }
  [[nodiscard]] std::size_t size() const { return ends_.size(); }
  /// Without spaces around it; empty for a cell that the record does not have.
  [[nodiscard]] std::string_view operator[](std::size_t column) const {
    if (column >= ends_.size()) return {};
    const std::size_t begin = column == 0 ? 0 : ends_[column - 1];
    return std::string_view(text_).substr(begin, ends_[column] - begin);
  }
  [[nodiscard]] std::size_t bytes() const { return text_.size(); }
  [[nodiscard]] std::size_t filledCells() const;

  void begin(std::size_t line);
  void add(std::string_view cell);

 private:
  std::size_t line_ = 0;
  std::string text_;
  std::vector<std::size_t> ends_;
};

/// A table read one record at a time, so that memory does not grow with the file.
class TableReader {
 public:
  TableReader() = default;
  TableReader(const TableReader&) = delete;
  TableReader& operator=(const TableReader&) = delete;
  virtual ~TableReader() = default;

  /// The next record that is not blank; false at the end. Throws FormatError with line and column where the
  /// text is no table.
  [[nodiscard]] virtual bool next(TableRow& row) = 0;
  /// How far the reading is, 0 … 1; for progress only.
  [[nodiscard]] virtual double progress() const = 0;
};

/// More than a spreadsheet can hold, and more than a table of foods needs.
inline constexpr std::size_t kMostColumns = 16'384;
inline constexpr std::size_t kLongestCell = std::size_t{1} << 20U;
inline constexpr std::size_t kLongestRecord = std::size_t{1} << 24U;

/// "line 12, column 5 (Calcium)"; columns are counted from 1.
[[nodiscard]] std::string placeText(std::size_t line, std::size_t column, std::string_view title = {});
/// The text as a message shows it: cut after 40 characters, without line breaks, in quotes.
[[nodiscard]] std::string shownText(std::string_view text);

}  // namespace tarebowl::exchange
