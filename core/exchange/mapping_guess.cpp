// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/mapping_guess.h"

#include "core/exchange/plain_text.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/title_meaning.h"

#include <algorithm>
#include <map>
#include <utility>

namespace tarebowl::exchange {

namespace {

constexpr std::size_t kRecordsRead = 5000;
constexpr std::size_t kBytesRead = std::size_t{4} << 20U;

/// The first records of the table.
std::vector<TableRow> firstRecords(const TableInput& input, const TextTableForm& form) {
  const auto reader = openTable(input, form);
  std::vector<TableRow> rows;
  std::size_t bytes = 0;
  TableRow row;
  while (rows.size() < kRecordsRead && bytes < kBytesRead && reader->next(row)) {
    bytes += row.bytes();
    rows.push_back(row);
  }
  return rows;
}

std::size_t commonWidth(const std::vector<TableRow>& rows) {
  std::map<std::size_t, std::size_t> count;
  for (const TableRow& row : rows) ++count[row.size()];
  return std::ranges::max_element(count, {}, [](const auto& entry) { return entry.second; })->first;
}

bool isNumber(std::string_view text) {
  return std::holds_alternative<NumberText>(readNumber(text, DecimalMark::Point)) ||
         std::holds_alternative<NumberText>(readNumber(text, DecimalMark::Comma));
}

/// The first record that is as wide as most and mostly filled; nothing where that one holds numbers.
std::optional<std::size_t> headerIn(const std::vector<TableRow>& rows) {
  const std::size_t width = commonWidth(rows);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const std::size_t filled = rows[i].filledCells();
    if (rows[i].size() < width || filled * 2 < rows[i].size()) continue;
    std::size_t numbers = 0;
    for (std::size_t c = 0; c < rows[i].size(); ++c) numbers += isNumber(rows[i][c]) ? 1 : 0;
    return numbers * 2 < filled ? std::optional(i) : std::nullopt;
  }
  return std::nullopt;
}

bool holdsUnits(const TableRow& row) {
  std::size_t units = 0;
  for (std::size_t c = 1; c < row.size(); ++c) {
    if (trimmed(row[c]).empty()) continue;
    if (!parseUnitText(row[c])) return false;
    ++units;
  }
  return units > 0 && !isNumber(row[0]);
}

/// Puts the meanings of the titles together into columns.
class Guess {
 public:
  Guess(const std::vector<TableRow>& rows, TextTableForm form) : rows_(rows) { guess_.mapping.form = form; }

  MappingGuess make(std::optional<std::size_t> headerLine) {
    if (rows_.empty()) return std::move(guess_);
    const auto header = headerLine ? recordOn(*headerLine) : headerIn(rows_);
    TableMapping& mapping = guess_.mapping;
    firstRecord_ = header ? *header + 1 : 0;
    mapping.headerLine = header ? rows_[*header].line() : 0;
    if (header) readTitles(rows_[*header]);
    decideMark();
    return std::move(guess_);
  }

 private:
  [[nodiscard]] std::optional<std::size_t> recordOn(std::size_t line) const {
    const auto place = std::ranges::find(rows_, line, &TableRow::line);
    return place == rows_.end() ? std::nullopt
                                : std::optional(static_cast<std::size_t>(place - rows_.begin()));
  }

  void readTitles(const TableRow& titles) {
    TableMapping& mapping = guess_.mapping;
    if (firstRecord_ < rows_.size() && holdsUnits(rows_[firstRecord_])) {
      mapping.unitsLine = true;
      ++firstRecord_;
    }
    for (std::size_t c = 0; c < titles.size(); ++c) meanings_.push_back(meaningOf(titles[c]));
    const auto has = [&](ColumnRole role) {
      return std::ranges::any_of(meanings_, [&](const TitleMeaning& it) { return it.word == role; });
    };
    mapping.isLong = has(ColumnRole::Nutrient) && has(ColumnRole::Value);
    for (std::size_t c = 0; c < titles.size(); ++c) addColumn(c, titles);
    dropOrphans();
    noteWhatIsMissing();
  }

  void addColumn(std::size_t c, const TableRow& titles) {
    ColumnUse column{.title = std::string(trimmed(titles[c]))};
    const bool twice = column.title.empty() || isRepeated(c, titles);
    if (twice) column.number = c + 1;
    const TitleMeaning& meaning = meanings_[c];
    column.unit = meaning.unit;
    if (meaning.word && (guess_.mapping.isLong || !meaning.nutrient)) {
      column.role = *meaning.word;
      if (!guess_.mapping.isLong && isOfOneValue(column.role)) column.role = ColumnRole::Ignored;
      if (column.role != ColumnRole::Ignored && isTaken(column.role)) column.role = ColumnRole::Ignored;
    } else if (meaning.nutrient && !guess_.mapping.isLong) {
      column.role = meaning.ofNutrient;
      column.nutrient = meaning.nutrient;
      settleRivals(c, column);
    }
    if (column.role == ColumnRole::Ignored) {
      if (!column.title.empty() && !column.nutrient) note(GuessDoubt::NotUnderstood, c, column.title);
      column.unit.reset();
      column.nutrient.reset();
    }
    guess_.mapping.columns.push_back(std::move(column));
  }

  static bool isRepeated(std::size_t c, const TableRow& titles) {
    for (std::size_t other = 0; other < titles.size(); ++other)
      if (other != c && trimmed(titles[other]) == trimmed(titles[c])) return true;
    return false;
  }

  static bool isOfOneValue(ColumnRole role) {
    return role == ColumnRole::Value || role == ColumnRole::Unit || role == ColumnRole::Sd ||
           role == ColumnRole::StandardError || role == ColumnRole::Nutrient ||
           role == ColumnRole::Qualifier || role == ColumnRole::Count;
  }

  [[nodiscard]] bool isTaken(ColumnRole role) const {
    return std::ranges::any_of(guess_.mapping.columns, [&](const ColumnUse& it) { return it.role == role; });
  }

  /// Of two columns of one nutrient the one that is called by the tagname counts, else the first.
  void settleRivals(std::size_t c, ColumnUse& column) {
    auto& columns = guess_.mapping.columns;
    for (std::size_t other = 0; other < columns.size(); ++other) {
      ColumnUse& rival = columns[other];
      if (rival.role != column.role || rival.nutrient != column.nutrient) continue;
      const bool newOneIsBetter = meanings_[c].byTagname && !meanings_[other].byTagname;
      const std::size_t loser = newOneIsBetter ? other : c;
      note(GuessDoubt::SecondOfNutrient, loser, newOneIsBetter ? rival.title : column.title);
      if (newOneIsBetter) {
        rival = {.title = rival.title, .number = rival.number};
      } else {
        column.role = ColumnRole::Ignored;
        return;
      }
    }
  }

  /// The sd, n … of a nutrient that has no value column says nothing.
  void dropOrphans() {
    if (guess_.mapping.isLong) return;
    auto& columns = guess_.mapping.columns;
    for (std::size_t c = 0; c < columns.size(); ++c) {
      if (!columns[c].nutrient || columns[c].role == ColumnRole::Value) continue;
      const bool hasValue = std::ranges::any_of(columns, [&](const ColumnUse& it) {
        return it.role == ColumnRole::Value && it.nutrient == columns[c].nutrient;
      });
      if (hasValue) continue;
      note(GuessDoubt::NotUnderstood, c, columns[c].title);
      columns[c] = {.title = columns[c].title, .number = columns[c].number};
    }
  }

  void noteWhatIsMissing() {
    const TableMapping& mapping = guess_.mapping;
    if (!isTaken(ColumnRole::Food) && !isTaken(ColumnRole::Code)) note(GuessDoubt::NoFoodColumn, 0, "");
    if (!isTaken(ColumnRole::Value)) note(GuessDoubt::NoValueColumn, 0, "");
    if (mapping.isLong) return;
    for (std::size_t c = 0; c < mapping.columns.size(); ++c) {
      const ColumnUse& column = mapping.columns[c];
      const bool unitBelow = mapping.unitsLine && !trimmed(rows_[firstRecord_ - 1][c]).empty();
      if (column.role == ColumnRole::Value && !column.unit && !unitBelow)
        note(GuessDoubt::UnitAssumed, c, column.title);
    }
  }

  void decideMark() {
    const TableMapping& mapping = guess_.mapping;
    DecimalMarkEvidence evidence;
    for (std::size_t i = firstRecord_; i < rows_.size(); ++i) {
      for (std::size_t c = 0; c < mapping.columns.size(); ++c) {
        const ColumnRole role = mapping.columns[c].role;
        if (role == ColumnRole::Value || role == ColumnRole::Sd || role == ColumnRole::StandardError)
          evidence.look(rows_[i][c], rows_[i].line());
      }
    }
    guess_.mapping.decimalMark = evidence.mark();
    if (evidence.mark()) return;
    GuessNote open{.doubt = GuessDoubt::DecimalMarkOpen, .line = evidence.openLine()};
    if (open.line == 0) open.line = evidence.lineFor(DecimalMark::Comma);
    guess_.notes.push_back(open);
  }

  void note(GuessDoubt doubt, std::size_t c, const std::string& title) {
    guess_.notes.push_back({.doubt = doubt, .column = c + 1, .title = title});
  }

  const std::vector<TableRow>& rows_;
  MappingGuess guess_;
  std::vector<TitleMeaning> meanings_;
  std::size_t firstRecord_ = 0;
};

}  // namespace

MappingGuess guessMapping(const TableInput& input, const KnownOfTable& known) {
  const TextTableForm form = known.form ? *known.form : guessForm(input);
  const std::vector<TableRow> rows = firstRecords(input, form);
  if (rows.empty()) throw FormatError(input.name, "", "a table of foods, found nothing in it");
  return Guess(rows, form).make(known.headerLine);
}

}  // namespace tarebowl::exchange
