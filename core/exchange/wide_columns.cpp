// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/wide_columns.h"

#include "core/exchange/problem_json.h"
#include "core/food/vitamin_units.h"

#include <map>
#include <utility>

namespace tarebowl::exchange {

namespace {

/// What one unit as written is in the nutrient's own unit per 1 of the basis.
double scaleOf(const ValueReading& reading) {
  return reading.unit.factor * food::toOwnUnitFactor(reading.nutrient, reading.unit.unit).value_or(1.0) /
         reading.unit.per.value_or(1.0);
}

/// A scatter may be stated in a unit of its own.
double scatterScale(const std::vector<LocatedColumn>& columns, const ValueReading& reading,
                    const TableMapping& mapping) {
  double scale = 1.0;
  for (const LocatedColumn& other : columns)
    if (other.use.role == ColumnRole::Sd && other.use.nutrient == reading.nutrient && other.use.unit)
      scale = scaleOf(readingOf(reading.nutrient, other.use.unit, mapping)) / scaleOf(reading);
  return scale;
}

}  // namespace

std::optional<std::size_t> placeOf(const std::vector<LocatedColumn>& columns, ColumnRole role,
                                   std::optional<food::NutrientId> nutrient) {
  for (const LocatedColumn& column : columns)
    if (column.use.role == role && column.use.nutrient == nutrient) return column.index;
  return std::nullopt;
}

std::vector<WideColumn> wideColumns(const std::vector<LocatedColumn>& columns, const TableRow* units,
                                    const TableMapping& mapping, const std::string& tableName) {
  std::vector<WideColumn> wide;
  std::map<food::NutrientId, std::size_t> taken;
  for (const LocatedColumn& column : columns) {
    if (column.use.role != ColumnRole::Value || !column.use.nutrient) continue;
    const food::NutrientId nutrient = *column.use.nutrient;
    if (const auto [place, isNew] = taken.emplace(nutrient, column.index); !isNew)
      throw FormatError(tableName, placeText(mapping.headerLine, column.index + 1),
                        "one column of " + food::describe(nutrient).tagname + ", found another in column " +
                            std::to_string(place->second + 1));
    auto unit = column.use.unit;
    if (!unit && units != nullptr) unit = parseUnitText((*units)[column.index]);
    WideColumn one;
    one.reading = readingOf(nutrient, unit, mapping);
    one.places.value = column.index;
    one.places.title = column.use.title;
    one.places.sd = placeOf(columns, ColumnRole::Sd, nutrient);
    one.places.sdScale = scatterScale(columns, one.reading, mapping);
    one.places.standardError = placeOf(columns, ColumnRole::StandardError, nutrient);
    one.places.count = placeOf(columns, ColumnRole::Count, nutrient);
    one.places.qualifier = placeOf(columns, ColumnRole::Qualifier, nutrient);
    one.places.source = placeOf(columns, ColumnRole::Source, nutrient);
    wide.push_back(std::move(one));
  }
  return wide;
}

}  // namespace tarebowl::exchange
