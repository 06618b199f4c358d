// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/food_stream.h"

#include "core/exchange/long_meanings.h"
#include "core/exchange/plain_text.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/value_reader.h"
#include "core/exchange/wide_columns.h"

#include <algorithm>
#include <functional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

namespace tarebowl::exchange {

namespace {

constexpr std::size_t kMostValuesAtOnce = 4096;

/// The columns of what is said of a food, as distinct from its values.
struct FoodPlaces {
  std::optional<std::size_t> name, code, group, form, source;
};

}  // namespace

class FoodStream::Work {
 public:
  Work(const TableInput& table, const TableMapping& mapping, ImportPlan& plan, const ImportOptions& options)
      : table_(table),
        mapping_(mapping),
        names_(readFoodList(table, mapping)),
        options_(options),
        values_(mapping, plan, options),
        reader_(openTable(table, mapping.form)),
        mayBeShort_(!table.spreadsheet.empty()) {
    TableHead head = readHead(*reader_, mapping.headerLine, mapping.unitsLine, table.name);
    columns_ = locate(mapping.columns, head.titles ? &*head.titles : nullptr, table.name);
    if (head.titles) width_ = head.titles->size();
    food_ = {placeOf(columns_, ColumnRole::Food), placeOf(columns_, ColumnRole::Code),
             placeOf(columns_, ColumnRole::Group), placeOf(columns_, ColumnRole::Form),
             placeOf(columns_, ColumnRole::Source)};
    requireColumns(head);
    if (mapping.isLong) {
      findLongPlaces();
    } else {
      wide_ = wideColumns(columns_, head.units ? &*head.units : nullptr, mapping, table.name);
    }
    seenAt_.resize(food::allNutrients().size());
  }

  bool next(ImportedFood& food) {
    while (true) {
      food = {};
      if (!(mapping_.isLong ? nextLong(food) : nextWide(food)) || values_.plan().stopped) return false;
      if (!food.values.empty() || !food.others.empty()) return true;
    }
  }

 private:
  void requireColumns(const TableHead& head) const {
    const std::size_t line = head.titles ? head.titles->line() : 1;
    const auto require = [&](bool is, const char* what) {
      if (!is) throw FormatError(table_.name, "line " + std::to_string(line), what);
    };
    require(food_.name || food_.code, "a column with the foods' names or codes");
    const bool hasValues = std::ranges::any_of(columns_, [&](const LocatedColumn& it) {
      return it.use.role == ColumnRole::Value && (mapping_.isLong || it.use.nutrient);
    });
    require(hasValues, "a column with values of a nutrient");
    require(!mapping_.isLong || placeOf(columns_, ColumnRole::Nutrient),
            "a column with the nutrients' names");
  }

  void findLongPlaces() {
    longPlaces_ = {.value = placeOf(columns_, ColumnRole::Value).value_or(0), .title = {}};
    longPlaces_.sd = placeOf(columns_, ColumnRole::Sd);
    longPlaces_.standardError = placeOf(columns_, ColumnRole::StandardError);
    longPlaces_.count = placeOf(columns_, ColumnRole::Count);
    longPlaces_.qualifier = placeOf(columns_, ColumnRole::Qualifier);
    longPlaces_.source = food_.source;
    nutrientAt_ = placeOf(columns_, ColumnRole::Nutrient).value_or(0);
    LongMeanings::Places places{.nutrient = nutrientAt_,
                                .unit = placeOf(columns_, ColumnRole::Unit),
                                .basis = placeOf(columns_, ColumnRole::Basis)};
    for (const LocatedColumn& column : columns_)
      if (column.use.role == ColumnRole::Value) places.valueUnit = column.use.unit;
    meanings_.emplace(mapping_, places);
  }

  /// The next record that is as wide as the header; what is not is remarked on.
  bool nextRow() {
    while (reader_->next(row_)) {
      if (options_.stop.stop_requested()) {
        values_.plan().stopped = true;
        return false;
      }
      constexpr std::size_t kBetweenReports = 256;
      if (options_.progress && values_.plan().records % kBetweenReports == 0)
        options_.progress(reader_->progress());
      ++values_.plan().records;
      if (width_ == 0) width_ = row_.size();
      if (row_.filledCells() == 1) {
        values_.remark(ImportIssue::NoValues, {.line = row_.line(), .found = std::string(firstText())});
        continue;
      }
      bool fits = row_.size() >= width_ || mayBeShort_;
      for (std::size_t c = width_; c < row_.size(); ++c) fits = fits && row_[c].empty();
      if (fits) return true;
      values_.remark(ImportIssue::RaggedRow, {.line = row_.line(),
                                              .column = std::min(row_.size(), width_) + 1,
                                              .title = std::to_string(width_),
                                              .found = std::to_string(row_.size())});
    }
    return false;
  }

  [[nodiscard]] std::string_view firstText() const {
    for (std::size_t c = 0; c < row_.size(); ++c)
      if (!row_[c].empty()) return row_[c];
    return {};
  }

  [[nodiscard]] std::string_view cell(std::optional<std::size_t> place) const {
    return place ? trimmed(row_[*place]) : std::string_view();
  }

  /// Names the food of the record; false where there is none that can be taken.
  bool nameFood(ImportedFood& food) {
    food.line = row_.line();
    food.code = onOneLine(cell(food_.code));
    food.name = onOneLine(cell(food_.name));
    food.form = onOneLine(cell(food_.form));
    food.group = onOneLine(cell(food_.group));
    food.source = mapping_.source;
    if (!mapping_.isLong && food_.source && !cell(food_.source).empty())
      food.source = onOneLine(cell(food_.source));
    if (const auto meant = mapping_.groups.find(food.group); meant != mapping_.groups.end())
      food.group = meant->second;
    if (mapping_.foods && !takeListed(food)) return false;
    const std::size_t column = food_.name ? *food_.name : *food_.code;
    if (food.name.empty() && food.code.empty()) {
      values_.remark(ImportIssue::NoFood, row_, column);
      return false;
    }
    if (food.name.empty()) food.name = food.code;
    const bool sound =
        food.name.size() <= kLongestName && food.code.size() <= kLongestName && food.name.front() != '=';
    if (!sound) values_.remark(ImportIssue::BadName, row_, column);
    return sound;
  }

  bool takeListed(ImportedFood& food) {
    const auto listed = names_.find(food.code);
    if (listed == names_.end()) {
      values_.remark(ImportIssue::Unlisted, row_, food_.code.value_or(0));
      return false;
    }
    food.name = listed->second.name;
    food.group = listed->second.group;
    food.form = listed->second.form;
    return true;
  }

  [[nodiscard]] std::string keyOfRow() const {
    std::string key(cell(food_.code));
    if (key.empty()) ((key += cell(food_.name)) += '\x1f') += cell(food_.form);
    return key;
  }

  bool nextWide(ImportedFood& food) {
    if (!nextRow()) return false;
    if (!nameFood(food)) return true;
    for (const WideColumn& column : wide_) values_.read(row_, column.places, column.reading, food);
    if (food.values.empty()) {
      values_.remark(ImportIssue::NoValues, {.line = row_.line(), .found = food.name});
      return true;
    }
    const auto [place, isNew] = foodSeenOn_.emplace(std::hash<std::string>()(keyOfRow()), row_.line());
    if (isNew) return true;
    values_.remark(ImportIssue::RepeatedFood, {.line = row_.line(),
                                               .column = food_.name.value_or(food_.code.value_or(0)) + 1,
                                               .found = food.name,
                                               .earlierLine = place->second});
    food.values.clear();
    return true;
  }

  /// All records of a food that follow each other.
  bool nextLong(ImportedFood& food) {
    if (!rowWaits_ && !nextRow()) return false;
    rowWaits_ = false;
    const std::string key = keyOfRow();
    const bool named = nameFood(food);
    std::ranges::fill(seenAt_, 0);
    do {
      if (keyIsOther(key)) {
        rowWaits_ = true;
        return true;
      }
      if (named) readLongValue(food);
      // The rest of a food without end comes as if the table returned to it.
      if (food.values.size() + food.others.size() >= kMostValuesAtOnce) return true;
    } while (nextRow());
    return true;
  }

  [[nodiscard]] bool keyIsOther(const std::string& key) const {
    const std::string_view code = cell(food_.code);
    return code.empty() ? keyOfRow() != key : code != key;
  }

  void readLongValue(ImportedFood& food) {
    const LongMeanings::Meaning& meaning = meanings_->of(row_);
    const auto remark = [&] {
      if (meaning.issue)
        values_.remark(*meaning.issue,
                       {.line = row_.line(), .column = meaning.column + 1, .found = meaning.found});
    };
    if (!meaning.reading) return remark();
    auto stated = values_.readStated(row_, longPlaces_, *meaning.reading);
    if (!stated) return;
    if (!meaning.otherName.empty()) {
      if (takeOther(meaning.otherName, std::move(*stated), food)) remark();
      return;
    }
    const food::NutrientId nutrient = meaning.reading->nutrient;
    std::size_t& seen = seenAt_[nutrient.index()];
    const auto isSaid = [&](const ImportedValue& it) {
      return it.nutrient == nutrient && it.stated.source == stated->source;
    };
    const auto earlier = seen == 0 ? food.values.end() : std::ranges::find_if(food.values, isSaid);
    if (earlier != food.values.end()) return repeat(earlier->stated, earlier->line, *stated);
    food.values.push_back({nutrient, std::move(*stated), row_.line(), longPlaces_.value + 1});
    seen = food.values.size();
  }

  /// False where the food has a value of this name already, which is remarked on.
  bool takeOther(const std::string& name, food::StatedValue stated, ImportedFood& food) {
    const auto earlier = std::ranges::find_if(food.others, [&](const ImportedOther& it) {
      return it.name == name && it.stated.source == stated.source;
    });
    if (earlier != food.others.end()) {
      repeat(earlier->stated, earlier->line, stated);
      return false;
    }
    food.others.push_back({name, std::move(stated), row_.line(), longPlaces_.value + 1});
    return true;
  }

  void repeat(const food::StatedValue& earlier, std::size_t earlierLine, const food::StatedValue& now) {
    const bool same = earlier.amount == now.amount && earlier.unit == now.unit && earlier.per == now.per &&
                      earlier.basis == now.basis;
    values_.remark(same ? ImportIssue::SaidTwice : ImportIssue::RepeatedValue,
                   {.line = row_.line(),
                    .column = longPlaces_.value + 1,
                    .title = std::string(cell(nutrientAt_)),
                    .found = std::string(row_[longPlaces_.value]),
                    .earlierLine = earlierLine});
  }

  const TableInput& table_;
  const TableMapping& mapping_;
  FoodNames names_;
  const ImportOptions& options_;
  ValueReader values_;
  std::unique_ptr<TableReader> reader_;
  bool mayBeShort_;  ///< a spreadsheet leaves out the empty cells at the end of a row
  std::vector<LocatedColumn> columns_;
  FoodPlaces food_;
  std::size_t width_ = 0;
  TableRow row_;
  std::unordered_map<std::size_t, std::size_t> foodSeenOn_;  ///< hash of the food -> line

  std::vector<WideColumn> wide_;

  ValueReader::Places longPlaces_;
  std::size_t nutrientAt_ = 0;
  std::optional<LongMeanings> meanings_;
  std::vector<std::size_t> seenAt_;  ///< by nutrient: place in the food's values, from 1
  bool rowWaits_ = false;
};

FoodStream::FoodStream(const TableInput& table, const TableMapping& mapping, ImportPlan& plan,
                       const ImportOptions& options)
    : work_(std::make_unique<Work>(table, mapping, plan, options)) {}

FoodStream::~FoodStream() = default;

bool FoodStream::next(ImportedFood& food) {
  return work_->next(food);
}

}  // namespace tarebowl::exchange
