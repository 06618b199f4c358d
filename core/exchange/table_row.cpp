// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_row.h"

#include <fmt/format.h>

namespace tarebowl::exchange {

std::size_t TableRow::filledCells() const {
  std::size_t filled = 0;
  for (std::size_t i = 0; i < size(); ++i) filled += (*this)[i].empty() ? 0 : 1;
  return filled;
}

void TableRow::begin(std::size_t line) {
  line_ = line;
  text_.clear();
  ends_.clear();
}

void TableRow::add(std::string_view cell) {
  text_.append(cell);
  ends_.push_back(text_.size());
}

std::string placeText(std::size_t line, std::size_t column, std::string_view title) {
  if (title.empty()) return fmt::format("line {}, column {}", line, column);
  return fmt::format("line {}, column {} ({})", line, column, title);
}

std::string shownText(std::string_view text) {
  constexpr std::size_t kLongest = 40;
  std::string shown = "\"";
  std::size_t count = 0;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    const bool beginsLetter = (byte & 0xC0U) != 0x80U;
    if (beginsLetter && ++count > kLongest) return shown + "…\"";
    shown += byte < 0x20 || byte == 0x7F ? ' ' : c;
  }
  return shown + "\"";
}

}  // namespace tarebowl::exchange
