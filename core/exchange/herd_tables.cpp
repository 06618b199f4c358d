// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/animal_words.h"
#include "core/exchange/herd_file.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/text_table.h"

#include <array>
#include <charconv>
#include <cmath>
#include <fstream>
#include <memory>
#include <span>

namespace tarebowl::exchange {

namespace {

constexpr std::array<std::string_view, 7> kMassTitles{"individual", "group", "date",    "mass_kg",
                                                      "method",     "note",  "excluded"};
constexpr std::array<std::string_view, 6> kConditionTitles{"individual", "group", "date",
                                                           "scale",      "score", "note"};

/// Cells of one record of a table whose columns are known, and how to refuse them.
class Record {
 public:
  Record(const std::string& file, std::span<const std::string_view> titles) : file_(file), titles_(titles) {}

  TableRow row;

  [[nodiscard]] std::string text(std::size_t column) const { return std::string(row[column]); }
  [[nodiscard]] quantity::Date date(std::size_t column) const {
    const auto date = quantity::parseDate(row[column]);
    if (!date) refuse(column, "a day as YYYY-MM-DD");
    return *date;
  }
  [[nodiscard]] double number(std::size_t column) const {
    const std::string_view cell = row[column];
    double value = 0.0;
    const auto [end, fault] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
    if (fault != std::errc{} || end != cell.data() + cell.size() || !std::isfinite(value) || value < 0.0)
      refuse(column, "a number of 0 or more, with a decimal point");
    return value;
  }
  [[noreturn]] void refuse(std::size_t column, const std::string& expected) const {
    throw FormatError(file_, placeText(row.line(), column + 1, titles_[column]),
                      expected + ", found " + shownText(row[column]));
  }

 private:
  const std::string& file_;
  std::span<const std::string_view> titles_;
};

template <class Read>
auto readTable(const std::filesystem::path& path, std::span<const std::string_view> titles, Read read) {
  const std::string file = path.string();
  auto bytes = std::make_unique<std::ifstream>(path, std::ios::binary);
  if (!*bytes) throw FormatError(file, "", "a readable table, found none");
  TextTableReader reader(std::move(bytes), file, {});
  Record record(file, titles);
  std::vector<decltype(read(record))> rows;
  if (!reader.next(record.row)) return rows;
  for (std::size_t column = 0; column < titles.size(); ++column)
    if (record.row[column] != titles[column])
      record.refuse(column, "the title " + std::string(titles[column]));
  while (reader.next(record.row)) rows.push_back(read(record));
  return rows;
}

HerdMass massOf(const Record& record) {
  HerdMass mass{.individual = record.text(0), .group = record.text(1)};
  mass.reading.on = record.date(2);
  mass.reading.mass = quantity::Kilograms(record.number(3));
  const auto method = animal::parseWord<animal::MassMethod>(record.row[4]);
  if (!method) record.refuse(4, "scale, trained-on-scale, carried, under-anaesthesia or estimated");
  mass.reading.method = *method;
  mass.reading.note = record.text(5);
  if (!record.row[6].empty()) mass.reading.excluded = record.text(6);
  return mass;
}

HerdCondition conditionOf(const Record& record) {
  return {record.text(0),
          record.text(1),
          {.on = record.date(2), .scale = record.text(3), .score = record.number(4), .note = record.text(5)}};
}

}  // namespace

std::vector<HerdMass> readMasses(const std::filesystem::path& file) {
  return readTable(file, kMassTitles, massOf);
}

std::vector<HerdCondition> readConditions(const std::filesystem::path& file) {
  return readTable(file, kConditionTitles, conditionOf);
}

}  // namespace tarebowl::exchange
