// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/fixed_table.h"

#include "core/exchange/problem_json.h"

#include <charconv>
#include <cmath>
#include <fstream>
#include <memory>

namespace tarebowl::exchange {

quantity::Date FixedRecord::date(std::size_t column) const {
  const auto date = quantity::parseDate(row[column]);
  if (!date) refuse(column, "a day as YYYY-MM-DD");
  return *date;
}

double FixedRecord::number(std::size_t column) const {
  const std::string_view cell = row[column];
  double value = 0.0;
  const auto [end, fault] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
  if (fault != std::errc{} || end != cell.data() + cell.size() || !std::isfinite(value) || value < 0.0)
    refuse(column, "a number of 0 or more, with a decimal point");
  return value;
}

void FixedRecord::refuse(std::size_t column, const std::string& expected) const {
  throw FormatError(file_, placeText(row.line(), column + 1, titles_[column]),
                    expected + ", found " + shownText(row[column]));
}

TextTableReader openTable(const std::filesystem::path& path) {
  auto bytes = std::make_unique<std::ifstream>(path, std::ios::binary);
  if (!*bytes) throw FormatError(path.string(), "", "a readable table, found none");
  return {std::move(bytes), path.string(), {}};
}

bool readTitles(TextTableReader& reader, FixedRecord& record, std::span<const std::string_view> titles) {
  if (!reader.next(record.row)) return false;
  for (std::size_t column = 0; column < titles.size(); ++column)
    if (record.row[column] != titles[column])
      record.refuse(column, "the title " + std::string(titles[column]));
  return true;
}

}  // namespace tarebowl::exchange
