// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/sheet_xml.h"

#include "core/exchange/problem_json.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cmath>
#include <optional>
#include <utility>

namespace tarebowl::exchange {

namespace {

/// "AB12" -> 27; nothing where there are no letters.
std::optional<std::size_t> columnOf(std::string_view reference) {
  std::size_t column = 0;
  std::size_t letters = 0;
  while (letters < reference.size() && reference[letters] >= 'A' && reference[letters] <= 'Z') {
    column = column * 26 + static_cast<std::size_t>(reference[letters] - 'A' + 1);
    if (column > kMostColumns) return kMostColumns;
    ++letters;
  }
  return letters == 0 ? std::nullopt : std::optional(column - 1);
}

template <class Number>
std::optional<Number> numberOf(std::string_view text) {
  Number number{};
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  return error == std::errc() && end == text.data() + text.size() ? std::optional(number) : std::nullopt;
}

/// Days since 30 December 1899, as spreadsheets count (right from March 1900 on).
std::string dateText(double serial) {
  constexpr double kLast = 2'958'465.0;  // 9999-12-31
  if (!(serial >= 0.0 && serial <= kLast)) return fmt::format("#DATE {}", serial);
  using namespace std::chrono;
  const sys_days day = sys_days{year{1899} / December / 30} + days{static_cast<int>(std::floor(serial))};
  const year_month_day date{day};
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                     static_cast<unsigned>(date.day()));
}

}  // namespace

SheetParser::SheetParser(const Workbook& book, const std::string& fileName)
    : book_(book),
      fileName_(fileName),
      xml_({.start = [this](std::string_view name,
                            const XmlAttributes& attributes) { startElement(name, attributes); },
            .end = [this](std::string_view name) { endElement(name); },
            .text = [this](std::string_view text) { addText(text); }},
           fileName, book.sheetPath) {}

void SheetParser::refuse(const std::string& expected) const {
  throw FormatError(fileName_, placeText(line_, column_ + 1), expected);
}

void SheetParser::startElement(std::string_view name, const XmlAttributes& attributes) {
  if (name == "row") {
    const auto stated = attributes.find("r");
    const auto line = stated ? numberOf<std::size_t>(*stated) : std::nullopt;
    line_ = line.value_or(line_ + 1);
    row_.begin(line_);
    column_ = 0;
  } else if (name == "c") {
    beginCell(attributes);
  } else if (name == "v" || name == "t") {
    open_ = &value_;
  } else if (name == "f") {
    hasFormula_ = true;
    open_ = &formula_;
  } else if (name == "rPh") {
    open_ = nullptr;
  }
}

void SheetParser::beginCell(const XmlAttributes& attributes) {
  const auto reference = attributes.find("r");
  column_ = (reference ? columnOf(*reference) : std::nullopt).value_or(row_.size());
  if (column_ >= kMostColumns) refuse(fmt::format("at most {} columns", kMostColumns));
  if (column_ < row_.size()) refuse("cells from left to right");
  type_ = attributes.find("t").value_or("n");
  style_ = numberOf<std::size_t>(attributes.find("s").value_or("0")).value_or(0);
  value_.clear();
  formula_.clear();
  hasFormula_ = false;
}

void SheetParser::addText(std::string_view text) {
  if (open_ == nullptr) return;
  if (open_->size() + text.size() > kLongestCell)
    refuse(fmt::format("a cell of at most {} characters", kLongestCell));
  open_->append(text);
}

void SheetParser::endElement(std::string_view name) {
  if (name == "v" || name == "t" || name == "f") open_ = nullptr;
  if (name == "c") endCell();
  if (name == "row") rows_.push_back(std::exchange(row_, {}));
}

void SheetParser::endCell() {
  while (row_.size() < column_) row_.add({});
  row_.add(cellText());
  if (row_.bytes() > kLongestRecord) refuse(fmt::format("a record of at most {} MB", kLongestRecord >> 20U));
}

std::string SheetParser::cellText() const {
  if (hasFormula_) return "=" + formula_;
  if (type_ == "s") {
    const auto index = numberOf<std::size_t>(value_);
    if (!index || *index >= book_.strings.size()) refuse("text of the workbook, found no such text");
    return book_.strings[*index];
  }
  if (type_ != "n" || value_.empty()) return type_ == "b" ? (value_ == "1" ? "true" : "false") : value_;
  const auto number = numberOf<double>(value_);
  if (!number) return value_;
  const bool isDate = style_ < book_.styleIsDate.size() && book_.styleIsDate[style_];
  // The shortest text of the same number: what was typed, not 0.10000000000000001.
  return isDate ? dateText(*number) : fmt::format("{}", *number);
}

}  // namespace tarebowl::exchange
