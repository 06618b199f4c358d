// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/text_table.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace tarebowl::app {

namespace {

constexpr std::size_t kGap = 2;

std::size_t widthOf(const std::string& text) {
  return static_cast<std::size_t>(std::count_if(
      text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

void appendCell(std::string& line, const std::string& cell, std::size_t width, TextTable::Align align) {
  const std::string padding(width - widthOf(cell), ' ');
  line += align == TextTable::Align::Right ? padding + cell : cell + padding;
}

void endLine(std::string& text, std::string line) {
  line.erase(line.find_last_not_of(' ') + 1);
  text += line + '\n';
}

}  // namespace

TextTable::TextTable(std::vector<Column> columns) : columns_(std::move(columns)) {}

void TextTable::addRow(std::vector<std::string> cells) {
  if (cells.size() != columns_.size())
    throw std::logic_error("text table: a row has not one cell per column");
  for (std::string& cell : cells) {
    std::replace_if(
        cell.begin(), cell.end(), [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; },
        ' ');
  }
  rows_.push_back(std::move(cells));
}

void TextTable::addRule() {
  rows_.emplace_back();
}

std::string TextTable::text() const {
  std::vector<std::size_t> widths;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    std::size_t width = widthOf(columns_[i].title);
    for (const auto& row : rows_) width = std::max(width, row.empty() ? 0 : widthOf(row[i]));
    widths.push_back(width);
  }
  std::size_t total = 0;
  for (const std::size_t width : widths) total += width + kGap;
  std::string rule;
  for (std::size_t i = kGap; i < total; ++i) rule += "─";

  std::string text;
  const auto addLine = [&](auto cellOf) {
    std::string line;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      if (i > 0) line.append(kGap, ' ');
      appendCell(line, cellOf(i), widths[i], columns_[i].align);
    }
    endLine(text, std::move(line));
  };
  addLine([&](std::size_t i) { return columns_[i].title; });
  endLine(text, rule);
  for (const auto& row : rows_) {
    if (row.empty()) {
      endLine(text, rule);
    } else {
      addLine([&](std::size_t i) { return row[i]; });
    }
  }
  return text;
}

}  // namespace tarebowl::app
