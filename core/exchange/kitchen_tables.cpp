// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/kitchen_tables.h"

#include "core/exchange/fixed_table.h"
#include "core/exchange/text_file.h"
#include "core/intake/intake_words.h"

#include <array>
#include <cmath>
#include <sstream>

namespace tarebowl::exchange {

namespace {

constexpr std::array<std::string_view, 5> kWeightTitles{"group", "bowl", "food", "g", "reason"};
constexpr std::array<std::string_view, 7> kLeftoverTitles{"group",  "bowl",   "food",  "how",
                                                          "left_g", "lost_g", "reason"};

int bowlOf(const FixedRecord& record, std::size_t column) {
  constexpr double kMostBowls = 1000;
  if (record.row[column].empty()) return 1;
  const double number = record.number(column);
  if (number < 1 || number > kMostBowls || number != std::floor(number))
    record.refuse(column, "the number of a bowl of the sheet, from 1 on");
  return static_cast<int>(number);
}

std::optional<quantity::Grams> gramsOf(const FixedRecord& record, std::size_t column) {
  if (record.row[column].empty()) return std::nullopt;
  return quantity::Grams(record.number(column));
}

void refuseEmpty(const FixedRecord& record, std::size_t column, const char* expected) {
  if (record.row[column].empty()) record.refuse(column, expected);
}

WeightLine weightOf(const FixedRecord& record) {
  refuseEmpty(record, 0, "the code of a group");
  refuseEmpty(record, 2, "the code of a food, or its number in the bowl");
  return {
      record.row.line(), record.text(0), bowlOf(record, 1), record.text(2), quantity::Grams(record.number(3)),
      record.text(4)};
}

LeftoverLine leftoverOf(const FixedRecord& record) {
  refuseEmpty(record, 0, "the code of a group");
  refuseEmpty(record, 2, "the code of a food, its number in the bowl, or * for all together");
  const auto kind = animal::parseWord<intake::LeftoverKind>(record.row[3]);
  if (!kind) record.refuse(3, "weighed, all-eaten, not-weighed, estimated, spilled or stolen");
  return {record.row.line(),  record.text(0),     bowlOf(record, 1), record.text(2), *kind,
          gramsOf(record, 4), gramsOf(record, 5), record.text(6)};
}

TextTableReader readerOf(std::istream& table, const std::string& name) {
  return {std::make_unique<std::istringstream>(readText(table, name)), name, {}};
}

}  // namespace

std::vector<WeightLine> readWeights(std::istream& table, const std::string& name) {
  TextTableReader reader = readerOf(table, name);
  return readFixedTable(reader, name, kWeightTitles, weightOf);
}

std::vector<LeftoverLine> readLeftovers(std::istream& table, const std::string& name) {
  TextTableReader reader = readerOf(table, name);
  return readFixedTable(reader, name, kLeftoverTitles, leftoverOf);
}

}  // namespace tarebowl::exchange
