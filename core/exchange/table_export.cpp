// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_export.h"

#include "core/exchange/problem_words.h"
#include "core/exchange/row_writer.h"

#include <fmt/format.h>

#include <ostream>

namespace tarebowl::exchange {

namespace {

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
  XlsxWriter writer(file, "Foods");
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
