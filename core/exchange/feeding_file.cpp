// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/feeding_file.h"

#include "core/exchange/fixed_table.h"
#include "core/intake/intake_words.h"

#include <array>
#include <charconv>

namespace tarebowl::exchange {

namespace {

constexpr std::array<std::string_view, 14> kFeedingTitles{
    "date", "bowl",      "meal",      "purpose", "diet",   "animals", "item",
    "food", "planned_g", "weighed_g", "left",    "left_g", "lost_g",  "by"};
constexpr std::array<std::string_view, 5> kRemainderTitles{"date", "group", "bowl", "left_g", "by"};
constexpr std::array<std::string_view, 7> kPanTitles{"date",    "place", "food", "food_class",
                                                     "start_g", "end_g", "by"};

int countAt(const FixedRecord& record, std::size_t column) {
  const std::string text = record.text(column);
  int count = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), count);
  if (error != std::errc() || end != text.data() + text.size() || count < 1)
    record.refuse(column, "a whole number, 1 or more");
  return count;
}

quantity::Grams gramsAt(const FixedRecord& record, std::size_t column) {
  const double grams = record.number(column);
  if (!(grams >= 0.0)) record.refuse(column, "grams, 0 or more");
  return quantity::Grams(grams);
}

std::optional<quantity::Grams> someGramsAt(const FixedRecord& record, std::size_t column) {
  if (record.row[column].empty()) return std::nullopt;
  return gramsAt(record, column);
}

std::optional<intake::LeftoverKind> leftoverAt(const FixedRecord& record, std::size_t column) {
  if (record.row[column].empty()) return std::nullopt;
  const auto kind = animal::parseWord<intake::LeftoverKind>(record.row[column]);
  if (!kind) record.refuse(column, "weighed, all-eaten, not-weighed, estimated, spilled or stolen");
  return kind;
}

/// "fennec-evening/2".
void readDiet(const FixedRecord& record, std::size_t column, FeedingLine& line) {
  const std::string text = record.text(column);
  if (text.empty()) return;
  const std::size_t slash = text.rfind('/');
  const char* end = text.data() + text.size();
  if (slash == std::string::npos || std::from_chars(text.data() + slash + 1, end, line.version).ptr != end ||
      line.version < 1)
    record.refuse(column, "CODE/VERSION");
  line.diet = text.substr(0, slash);
}

FeedingLine lineOf(const FixedRecord& record) {
  FeedingLine line;
  line.day = record.date(0);
  line.bowl = countAt(record, 1);
  line.meal = record.text(2);
  line.purpose = record.text(3);
  readDiet(record, 4, line);
  line.animals = countAt(record, 5);
  line.item = countAt(record, 6);
  line.food = record.text(7);
  line.planned = gramsAt(record, 8);
  line.weighed = someGramsAt(record, 9);
  line.leftover = leftoverAt(record, 10);
  line.left = someGramsAt(record, 11);
  line.lost = someGramsAt(record, 12);
  line.by = record.text(13);
  return line;
}

intake::ControlPan panOf(const FixedRecord& record) {
  intake::ControlPan pan;
  pan.day = record.date(0);
  pan.place = record.text(1);
  pan.food = record.text(2);
  pan.foodClass = record.text(3);
  pan.start = gramsAt(record, 4);
  pan.end = someGramsAt(record, 5);
  pan.who = record.text(6);
  return pan;
}

}  // namespace

std::vector<FeedingLine> readFeedingLines(const std::filesystem::path& file) {
  return readFixedTable(file, kFeedingTitles, lineOf);
}

std::vector<RemainderLine> readRemainders(const std::filesystem::path& file) {
  return readFixedTable(file, kRemainderTitles, [](const FixedRecord& record) {
    return RemainderLine{
        {record.text(1), record.date(0), countAt(record, 2)}, gramsAt(record, 3), record.text(4)};
  });
}

std::vector<intake::ControlPan> readControlPans(const std::filesystem::path& file) {
  return readFixedTable(file, kPanTitles, panOf);
}

}  // namespace tarebowl::exchange
