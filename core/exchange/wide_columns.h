// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/value_reader.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::exchange {

/// The place of the first column of this role, and nutrient.
[[nodiscard]] std::optional<std::size_t> placeOf(const std::vector<LocatedColumn>& columns, ColumnRole role,
                                                 std::optional<food::NutrientId> nutrient = std::nullopt);

/// A nutrient's column of a wide table: where its values stand, with scatter, count, qualifier and source,
/// and how they are read.
struct WideColumn {
  ValueReader::Places places{};
  ValueReading reading{};
};

/// units: the line below the titles, where there is one. tableName is used in messages. Throws FormatError
/// for two columns of one nutrient.
[[nodiscard]] std::vector<WideColumn> wideColumns(const std::vector<LocatedColumn>& columns,
                                                  const TableRow* units, const TableMapping& mapping,
                                                  const std::string& tableName);

}  // namespace tarebowl::exchange
