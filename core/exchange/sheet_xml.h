// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/table_row.h"
#include "core/exchange/xml_reader.h"

#include <deque>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::exchange {

/// What the cells of a workbook's sheets refer to.
struct Workbook {
  std::string sheetPath;             ///< of the first sheet, inside the archive
  std::vector<std::string> strings;  ///< shared strings
  std::vector<bool> styleIsDate;     ///< by cell style
};

/// Throws FormatError.
[[nodiscard]] Workbook readWorkbook(const std::filesystem::path& file);

/// The rows of a sheet's XML.
class SheetParser {
 public:
  /// book must outlive it. fileName is used in messages.
  SheetParser(const Workbook& book, const std::string& fileName);

  /// Throws FormatError.
  void feed(std::string_view piece, bool last) { xml_.feed(piece, last); }
  /// Those complete and not yet taken.
  [[nodiscard]] std::deque<TableRow>& rows() { return rows_; }

 private:
  void startElement(std::string_view name, const XmlAttributes& attributes);
  void endElement(std::string_view name);
  void addText(std::string_view text);
  void beginCell(const XmlAttributes& attributes);
  void endCell();
  [[nodiscard]] std::string cellText() const;
  [[noreturn]] void refuse(const std::string& expected) const;

  const Workbook& book_;
  std::string fileName_;
  std::deque<TableRow> rows_;
  TableRow row_;
  std::size_t line_ = 0;
  std::size_t column_ = 0;  ///< of the open cell, from 0
  std::string type_;
  std::size_t style_ = 0;
  std::string value_;
  std::string formula_;
  bool hasFormula_ = false;
  std::string* open_ = nullptr;  ///< where text goes
  XmlReader xml_;
};

}  // namespace tarebowl::exchange
