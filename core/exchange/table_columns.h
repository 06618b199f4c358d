// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/column_mapping.h"
#include "core/exchange/table_input.h"

#include <cstddef>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace tarebowl::exchange {

/// A nutrient in a unit, with what it takes to judge an amount of it.
struct ValueReading {
  food::NutrientId nutrient{0};
  UnitText unit{};             ///< with the table's defaults for what its text leaves open
  bool fits = true;            ///< the nutrient has this unit
  double toGramsPer100 = 0.0;  ///< grams in 100 g = amount as written times this; 0 where it is no mass
};

/// Puts nutrient, unit and the table's defaults together.
[[nodiscard]] ValueReading readingOf(food::NutrientId nutrient, const std::optional<UnitText>& unit,
                                     const TableMapping& mapping);

/// The same for something that is no nutrient of ours.
[[nodiscard]] ValueReading readingOf(const UnitText& unit, const TableMapping& mapping);

/// A column of the table at hand.
struct LocatedColumn {
  ColumnUse use;
  std::size_t index = 0;  ///< from 0
};

/// Finds the mapping's columns in a header: by number where one is given, else by title. Throws FormatError,
/// with the header's line, for a column that is missing or a title that stands twice.
[[nodiscard]] std::vector<LocatedColumn> locate(const std::vector<ColumnUse>& columns, const TableRow* header,
                                                const std::string& tableName);

/// The record of the header, read up to and including the units line; nothing where the table has none.
struct TableHead {
  std::optional<TableRow> titles{};
  std::optional<TableRow> units{};
};
/// Throws FormatError where the table ends before it.
[[nodiscard]] TableHead readHead(TableReader& reader, std::size_t headerLine, bool unitsLine,
                                 const std::string& tableName);

struct ListedFood {
  std::string name;
  std::string group;
  std::string form;
};
using FoodNames = std::unordered_map<std::string, ListedFood>;

/// The second table of a mapping. Throws FormatError.
[[nodiscard]] FoodNames readFoodList(const TableInput& table, const TableMapping& mapping);

}  // namespace tarebowl::exchange
