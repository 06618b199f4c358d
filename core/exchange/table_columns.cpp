// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_columns.h"

#include "core/exchange/plain_text.h"
#include "core/exchange/problem_json.h"
#include "core/food/vitamin_units.h"

#include <algorithm>
#include <utility>

namespace tarebowl::exchange {

using quantity::Basis;
using quantity::Unit;

ValueReading readingOf(food::NutrientId nutrient, const std::optional<UnitText>& unit,
                       const TableMapping& mapping) {
  ValueReading reading = readingOf(unit.value_or(UnitText{.unit = food::describe(nutrient).unit}), mapping);
  reading.nutrient = nutrient;
  reading.fits = food::toOwnUnitFactor(nutrient, reading.unit.unit).has_value();
  return reading;
}

ValueReading readingOf(const UnitText& unit, const TableMapping& mapping) {
  ValueReading reading{.unit = unit};
  if (!reading.unit.basis) reading.unit.basis = mapping.basis;
  if (!reading.unit.per) reading.unit.per = mapping.per;
  const auto grams = quantity::conversionFactor(reading.unit.unit, Unit::Gram);
  if (grams && *reading.unit.basis != Basis::Energy)
    reading.toGramsPer100 = reading.unit.factor * *grams * 100.0 / *reading.unit.per;
  return reading;
}

std::vector<LocatedColumn> locate(const std::vector<ColumnUse>& columns, const TableRow* header,
                                  const std::string& tableName) {
  std::vector<LocatedColumn> located;
  for (const ColumnUse& use : columns) {
    if (use.role == ColumnRole::Ignored) continue;
    if (use.number) {
      located.push_back({use, *use.number - 1});
      continue;
    }
    std::vector<std::size_t> places;
    for (std::size_t c = 0; header != nullptr && c < header->size(); ++c)
      if (trimmed((*header)[c]) == use.title) places.push_back(c);
    const std::size_t line = header == nullptr ? 1 : header->line();
    if (places.empty())
      throw FormatError(tableName, "line " + std::to_string(line), "a column called " + shownText(use.title));
    if (places.size() > 1)
      throw FormatError(tableName, placeText(line, places[1] + 1),
                        "one column called " + shownText(use.title) + ", found two");
    located.push_back({use, places.front()});
  }
  return located;
}

TableHead readHead(TableReader& reader, std::size_t headerLine, bool unitsLine,
                   const std::string& tableName) {
  TableHead head;
  if (headerLine == 0) return head;
  TableRow row;
  while (reader.next(row)) {
    if (row.line() < headerLine) continue;
    if (head.titles) {
      head.units = std::move(row);
      return head;
    }
    head.titles = std::move(row);
    if (!unitsLine) return head;
  }
  if (!head.titles)
    throw FormatError(tableName, "line " + std::to_string(headerLine),
                      "a header, found the end of the table");
  return head;
}

FoodNames readFoodList(const TableInput& table, const TableMapping& mapping) {
  FoodNames names;
  if (!mapping.foods) return names;
  const TableInput list = tableFile(table.folder / mapping.foods->file);
  const auto reader = openTable(list, mapping.foods->form);
  const TableHead head = readHead(*reader, mapping.foods->headerLine, false, list.name);
  const auto columns = locate(mapping.foods->columns, head.titles ? &*head.titles : nullptr, list.name);
  TableRow row;
  while (reader->next(row)) {
    std::string code;
    ListedFood food;
    for (const LocatedColumn& column : columns) {
      const std::string text(trimmed(row[column.index]));
      if (column.use.role == ColumnRole::Code) code = text;
      if (column.use.role == ColumnRole::Food) food.name = text;
      if (column.use.role == ColumnRole::Form) food.form = text;
      if (column.use.role != ColumnRole::Group) continue;
      const auto meant = mapping.groups.find(text);
      food.group = meant == mapping.groups.end() ? text : meant->second;
    }
    names.emplace(std::move(code), std::move(food));
  }
  return names;
}

}  // namespace tarebowl::exchange
