// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/table_rows.h"

#include <boost/crc.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <bit>
#include <cstring>

namespace tarebowl::store {

namespace {

constexpr int kRowsAPage = 4096;

std::vector<std::string> namesOf(const TableShape& table) {
  std::vector<std::string> names;
  for (const TableColumn& column : table.columns) names.push_back(column.name);
  return names;
}

std::string places(std::size_t count) {
  return fmt::format("{}", fmt::join(std::vector<std::string>(count, "?"), ", "));
}

std::string pageOf(const TableShape& table, const std::string& condition, bool isFirst) {
  const auto key = fmt::format("{}", fmt::join(table.key, ", "));
  std::string after;
  if (!condition.empty()) after = fmt::format(" WHERE ({})", condition);
  if (!isFirst)
    after += fmt::format(" {} ({}) > ({})", after.empty() ? "WHERE" : "AND", key, places(table.key.size()));
  return fmt::format("SELECT {} FROM {}{} ORDER BY {} LIMIT {}", fmt::join(namesOf(table), ", "), table.name,
                     after, key, kRowsAPage);
}

}  // namespace

std::vector<std::size_t> keyColumns(const TableShape& table) {
  std::vector<std::size_t> key;
  for (const std::string& name : table.key) {
    const auto place = std::ranges::find(table.columns, name, &TableColumn::name);
    key.push_back(static_cast<std::size_t>(place - table.columns.begin()));
  }
  return key;
}

TableRows::TableRows(Connection& connection, const TableShape& table, const std::string& condition)
    : table_(table),
      first_(connection, pageOf(table, condition, true)),
      further_(connection, pageOf(table, condition, false)),
      page_(&first_),
      key_(keyColumns(table)),
      last_(table.key.size()) {}

bool TableRows::next(TableRow& row) {
  if (!page_->step()) {
    if (onPage_ < kRowsAPage) return false;
    onPage_ = 0;
    page_ = &further_;
    for (std::size_t i = 0; i < last_.size(); ++i) further_.bind(static_cast<int>(i) + 1, last_[i]);
    if (!further_.step()) return false;
  }
  ++onPage_;
  read(row);
  for (std::size_t i = 0; i < key_.size(); ++i) last_[i] = std::get<long long>(row[key_[i]]);
  return true;
}

void TableRows::read(TableRow& row) {
  row.resize(table_.columns.size());
  for (std::size_t i = 0; i < row.size(); ++i) {
    const int column = static_cast<int>(i);
    if (page_->isNull(column))
      row[i] = std::monostate{};
    else if (table_.columns[i].type == ColumnType::Whole)
      row[i] = page_->number(column);
    else if (table_.columns[i].type == ColumnType::Real)
      row[i] = page_->real(column);
    else
      row[i] = page_->text(column);
  }
}

TableWriter::TableWriter(Connection& connection, const TableShape& table)
    : insert_(connection, fmt::format("INSERT INTO {} ({}) VALUES ({})", table.name,
                                      fmt::join(namesOf(table), ", "), places(table.columns.size()))) {}

void TableWriter::add(const TableRow& row) {
  for (std::size_t i = 0; i < row.size(); ++i) {
    const int place = static_cast<int>(i) + 1;
    if (const auto* number = std::get_if<long long>(&row[i]))
      insert_.bind(place, *number);
    else if (const auto* real = std::get_if<double>(&row[i]))
      insert_.bind(place, *real);
    else if (const auto* text = std::get_if<std::string>(&row[i]))
      insert_.bind(place, *text);
    else
      insert_.bindNull(place);
  }
  insert_.run();
}

TableEraser::TableEraser(Connection& connection, const TableShape& table)
    : remove_(connection, fmt::format("DELETE FROM {} WHERE ({}) = ({})", table.name,
                                      fmt::join(table.key, ", "), places(table.key.size()))) {}

void TableEraser::remove(const std::vector<long long>& key) {
  for (std::size_t i = 0; i < key.size(); ++i) remove_.bind(static_cast<int>(i) + 1, key[i]);
  remove_.run();
}

void RowChecksum::add(std::string_view bytes) {
  constexpr std::uint64_t kPolynomial = 0x42F0E1EBA9EA3693;
  boost::crc_optimal<64, kPolynomial, 0, 0, false, false> crc(value_);
  crc.process_bytes(bytes.data(), bytes.size());
  value_ = crc.checksum();
}

/// Each value with its type and, where it may be of any length, its length: no two rows read the same.
void RowChecksum::add(const TableRow& row) {
  std::string bytes;
  const auto put = [&bytes](char mark, std::uint64_t word) {
    bytes += mark;
    for (int shift = 0; shift < 64; shift += 8) bytes += static_cast<char>((word >> shift) & 0xFFU);
  };
  for (const ColumnValue& value : row) {
    if (const auto* number = std::get_if<long long>(&value)) {
      put('n', static_cast<std::uint64_t>(*number));
    } else if (const auto* real = std::get_if<double>(&value)) {
      put('r', std::bit_cast<std::uint64_t>(*real));
    } else if (const auto* text = std::get_if<std::string>(&value)) {
      put('t', text->size());
      bytes += *text;
    } else {
      bytes += '-';
    }
  }
  add(std::string_view(bytes));
}

}  // namespace tarebowl::store
