// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <iosfwd>
#include <memory>
#include <string>
#include <variant>
#include <vector>

/// Tables as they leave the program, row by row.
namespace tarebowl::exchange {

using Cell = std::variant<std::string, double>;

/// The shortest text that reads back as the number.
[[nodiscard]] std::string numberText(double number);

/// Where rows go.
class RowWriter {
 public:
  RowWriter() = default;
  RowWriter(const RowWriter&) = delete;
  RowWriter& operator=(const RowWriter&) = delete;
  virtual ~RowWriter() = default;
  virtual void write(const std::vector<Cell>& row) = 0;
};

/// RFC 4180; a text that a spreadsheet would take for a formula is guarded (formula_guard.h).
class CsvWriter : public RowWriter {
 public:
  explicit CsvWriter(std::ostream& out) : out_(out) {}
  void write(const std::vector<Cell>& row) override;

 private:
  std::ostream& out_;
};

/// A workbook of one sheet. Throws FormatError (problem_json.h) where the file cannot be written. A number
/// that needs 17 digits goes as text, so that none is changed.
class XlsxWriter : public RowWriter {
 public:
  XlsxWriter(const std::filesystem::path& file, const std::string& sheet);
  ~XlsxWriter() override;
  void write(const std::vector<Cell>& row) override;
  /// Printed, the sheet is as wide as one page.
  void fitToPage();
  void close();

 private:
  class Book;
  std::unique_ptr<Book> book_;
};

}  // namespace tarebowl::exchange
