// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_examples.h"

#include "core/exchange/plain_text.h"
#include "core/exchange/table_columns.h"

#include <algorithm>

namespace tarebowl::exchange {

namespace {

constexpr std::size_t kRecordsRead = 400;
constexpr std::size_t kExamples = 3;
constexpr std::size_t kLongestExample = 60;

/// At most so many bytes, cut between two characters.
std::string cut(std::string_view text) {
  if (text.size() <= kLongestExample) return std::string(text);
  std::size_t end = kLongestExample;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) --end;
  return std::string(text.substr(0, end)) + "…";
}

void collect(const TableRow& row, std::vector<ColumnExamples>& columns) {
  if (row.size() > columns.size()) columns.resize(row.size());
  for (std::size_t c = 0; c < row.size(); ++c) {
    std::vector<std::string>& examples = columns[c].examples;
    if (examples.size() >= kExamples || trimmed(row[c]).empty()) continue;
    std::string example = cut(trimmed(row[c]));
    if (std::ranges::find(examples, example) == examples.end()) examples.push_back(std::move(example));
  }
}

}  // namespace

std::vector<ColumnExamples> columnExamples(const TableInput& input, const TableMapping& mapping) {
  const auto reader = openTable(input, mapping.form);
  const TableHead head = readHead(*reader, mapping.headerLine, mapping.unitsLine, input.name);
  std::vector<ColumnExamples> columns;
  if (head.titles) columns.resize(head.titles->size());
  for (std::size_t c = 0; c < columns.size(); ++c) {
    columns[c].title = trimmed((*head.titles)[c]);
    if (head.units) columns[c].unit = trimmed((*head.units)[c]);
  }
  TableRow row;
  for (std::size_t read = 0; read < kRecordsRead && reader->next(row); ++read) collect(row, columns);
  return columns;
}

}  // namespace tarebowl::exchange
