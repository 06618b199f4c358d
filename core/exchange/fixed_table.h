// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/text_table.h"
#include "core/quantity/date.h"

#include <filesystem>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// Tables of the house's own, whose columns are known by their titles and their order.
namespace tarebowl::exchange {

/// Cells of one record, and how to refuse them (FormatError).
class FixedRecord {
 public:
  FixedRecord(std::string file, std::span<const std::string_view> titles)
      : file_(std::move(file)), titles_(titles) {}

  TableRow row;

  [[nodiscard]] std::string text(std::size_t column) const { return std::string(row[column]); }
  [[nodiscard]] quantity::Date date(std::size_t column) const;
  [[nodiscard]] double number(std::size_t column) const;
  [[noreturn]] void refuse(std::size_t column, const std::string& expected) const;

 private:
  std::string file_;
  std::span<const std::string_view> titles_;
};

[[nodiscard]] TextTableReader openTable(const std::filesystem::path& path);
/// Refuses other titles; false where the table is empty.
[[nodiscard]] bool readTitles(TextTableReader& reader, FixedRecord& record,
                              std::span<const std::string_view> titles);

/// What `read` makes of each record. name is what messages call the table.
template <class Read>
[[nodiscard]] auto readFixedTable(TextTableReader& reader, const std::string& name,
                                  std::span<const std::string_view> titles, Read read) {
  FixedRecord record(name, titles);
  std::vector<decltype(read(std::as_const(record)))> rows;
  if (!readTitles(reader, record, titles)) return rows;
  while (reader.next(record.row)) rows.push_back(read(std::as_const(record)));
  return rows;
}

template <class Read>
[[nodiscard]] auto readFixedTable(const std::filesystem::path& path, std::span<const std::string_view> titles,
                                  Read read) {
  TextTableReader reader = openTable(path);
  return readFixedTable(reader, path.string(), titles, read);
}

}  // namespace tarebowl::exchange
