// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_export.h"

#include "core/exchange/problem_json.h"
#include "core/exchange/problem_words.h"

#include <csv.h>
#include <fmt/format.h>
#include <xlsxwriter.h>

#include <charconv>
#include <cstdio>
#include <ostream>
#include <utility>
#include <variant>

namespace tarebowl::exchange {

namespace {

using Cell = std::variant<std::string, double>;

std::string numberText(double number) {
  return fmt::format("{}", number);
}

/// Where rows go.
class RowWriter {
 public:
  RowWriter() = default;
  RowWriter(const RowWriter&) = delete;
  RowWriter& operator=(const RowWriter&) = delete;
  virtual ~RowWriter() = default;
  virtual void write(const std::vector<Cell>& row) = 0;
};

class CsvWriter : public RowWriter {
 public:
  explicit CsvWriter(std::ostream& out) : out_(out) {}

  void write(const std::vector<Cell>& row) override {
    for (std::size_t c = 0; c < row.size(); ++c) {
      if (c > 0) out_ << ',';
      if (const auto* number = std::get_if<double>(&row[c])) {
        out_ << numberText(*number);
      } else {
        writeText(std::get<std::string>(row[c]));
      }
    }
    out_ << "\r\n";
  }

 private:
  void writeText(const std::string& text) {
    if (text.find_first_of(",\"\r\n;\t|^~ ") == std::string::npos) {
      out_ << text;
      return;
    }
    std::string quoted(2 * text.size() + 2, '\0');
    quoted.resize(csv_write2(quoted.data(), quoted.size(), text.data(), text.size(), '"'));
    out_ << quoted;
  }

  std::ostream& out_;
};

class XlsxWriter : public RowWriter {
 public:
  explicit XlsxWriter(const std::filesystem::path& file) : name_(file.string()) {
    lxw_workbook_options options{};
    options.constant_memory = LXW_TRUE;
    book_ = workbook_new_opt(name_.c_str(), &options);
    sheet_ = book_ == nullptr ? nullptr : workbook_add_worksheet(book_, "Foods");
    if (sheet_ == nullptr) throw FormatError(name_, "", "a spreadsheet that can be written");
  }
  XlsxWriter(const XlsxWriter&) = delete;
  XlsxWriter& operator=(const XlsxWriter&) = delete;
  ~XlsxWriter() override {
    if (book_ != nullptr) workbook_close(book_);
  }

  void write(const std::vector<Cell>& row) override {
    for (std::size_t c = 0; c < row.size(); ++c) {
      const auto* number = std::get_if<double>(&row[c]);
      const auto error =
          number != nullptr ? writeNumber(c, *number) : writeText(c, std::get<std::string>(row[c]));
      if (error != LXW_NO_ERROR) refuse(error);
    }
    ++line_;
  }

  void close() {
    const auto error = workbook_close(std::exchange(book_, nullptr));
    if (error != LXW_NO_ERROR) refuse(error);
  }

 private:
  [[noreturn]] void refuse(lxw_error error) const {
    throw FormatError(name_, "",
                      std::string("a spreadsheet that can be written, found: ") + lxw_strerror(error));
  }

  /// The library writes 16 digits; the few numbers that need 17 go as text, so that none is changed.
  lxw_error writeNumber(std::size_t column, double number) {
    const std::string written = fmt::format("{:.16G}", number);
    double readBack = 0.0;
    std::from_chars(written.data(), written.data() + written.size(), readBack);
    if (readBack != number) return writeText(column, numberText(number));
    return worksheet_write_number(sheet_, line_, static_cast<lxw_col_t>(column), number, nullptr);
  }

  lxw_error writeText(std::size_t column, const std::string& text) {
    if (text.empty()) return LXW_NO_ERROR;
    return worksheet_write_string(sheet_, line_, static_cast<lxw_col_t>(column), text.c_str(), nullptr);
  }

  std::string name_;
  lxw_workbook* book_ = nullptr;
  lxw_worksheet* sheet_ = nullptr;
  lxw_row_t line_ = 0;
};

std::string unitTextOf(food::NutrientId id) {
  return fmt::format("{}/100 g as fed", symbolOf(food::describe(id).unit));
}

Cell orBlank(std::optional<double> number) {
  return number ? Cell(*number) : Cell(std::string());
}

/// n, qualifier and source, the last cells of a long row.
void addOrigin(std::vector<Cell>& row, std::optional<int> count, food::Qualifier qualifier,
               const std::string& source) {
  row.emplace_back(count ? std::to_string(*count) : std::string());
  row.emplace_back(qualifier == food::Qualifier::Equal ? std::string() : std::string(symbolOf(qualifier)));
  row.emplace_back(source);
}

std::vector<Cell> longRow(const ExportedFood& food, food::NutrientId id, const food::NutrientValue& value) {
  std::vector<Cell> row{food.code,
                        food.name,
                        food.form,
                        food.group,
                        food::describe(id).tagname,
                        value.amount.value(),
                        unitTextOf(id),
                        orBlank(value.sd ? std::optional(value.sd->value()) : std::nullopt)};
  addOrigin(row, value.sampleCount, value.qualifier, value.source);
  return row;
}

std::vector<Cell> longRow(const ExportedFood& food, const ExportedOther& other) {
  std::vector<Cell> row{
      food.code,        food.name, food.form, food.group, other.name, other.amount, unitText(other.unit),
      orBlank(other.sd)};
  addOrigin(row, other.count, other.qualifier, other.source);
  return row;
}

std::size_t writeLong(const ExportSource& foods, RowWriter& writer) {
  writer.write(
      {"Code", "Food", "Form", "Group", "Nutrient", "Value", "Unit", "SD", "n", "Qualifier", "Source"});
  std::size_t count = 0;
  while (const auto food = foods()) {
    const auto known = food->composition.knownNutrients();
    for (const food::NutrientId id : known) writer.write(longRow(*food, id, *food->composition.find(id)));
    for (const ExportedOther& other : food->others) writer.write(longRow(*food, other));
    count += known.size() + food->others.size();
  }
  return count;
}

Cell wideCell(const food::NutrientValue& value) {
  const std::string number = numberText(value.amount.value());
  switch (value.qualifier) {
    case food::Qualifier::Equal:
      return value.amount.value();
    case food::Qualifier::Below:
    case food::Qualifier::BelowQuantification:
      return "<" + number;
    case food::Qualifier::Above:
      return ">" + number;
    case food::Qualifier::AtLeast:
      return "≥" + number;
    case food::Qualifier::AtMost:
      return "≤" + number;
    case food::Qualifier::Trace:
      return "tr";
    case food::Qualifier::NotDetected:
      return "n.d.";
  }
  return number;
}

/// All nutrients get a column: which ones the foods have is known only when all were read.
std::size_t writeWide(const ExportSource& foods, RowWriter& writer) {
  std::vector<Cell> titles{"Code", "Food", "Form", "Group"};
  const std::size_t nutrients = food::allNutrients().size();
  for (std::size_t n = 0; n < nutrients; ++n)
    titles.emplace_back(
        fmt::format("{} ({})", food::allNutrients()[n].tagname, unitTextOf(food::NutrientId(n))));
  writer.write(titles);
  std::size_t count = 0;
  while (const auto food = foods()) {
    std::vector<Cell> row{food->code, food->name, food->form, food->group};
    for (std::size_t n = 0; n < nutrients; ++n) {
      const food::NutrientValue* const value = food->composition.find(food::NutrientId(n));
      row.push_back(value == nullptr ? Cell(std::string()) : wideCell(*value));
      count += value == nullptr ? 0 : 1;
    }
    writer.write(row);
  }
  return count;
}

std::size_t write(const ExportSource& foods, TableLayout layout, RowWriter& writer) {
  return layout == TableLayout::Long ? writeLong(foods, writer) : writeWide(foods, writer);
}

}  // namespace

std::size_t writeCsv(const ExportSource& foods, TableLayout layout, std::ostream& out) {
  CsvWriter writer(out);
  return write(foods, layout, writer);
}

std::size_t writeXlsx(const ExportSource& foods, TableLayout layout, const std::filesystem::path& file) {
  XlsxWriter writer(file);
  const std::size_t count = write(foods, layout, writer);
  writer.close();
  return count;
}

ExportSource eachOf(const std::vector<ExportedFood>& foods) {
  return [&foods, next = std::size_t{0}]() mutable -> std::optional<ExportedFood> {
    if (next == foods.size()) return std::nullopt;
    return foods[next++];
  };
}

}  // namespace tarebowl::exchange
