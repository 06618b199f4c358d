// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/column_mapping.h"

#include <optional>
#include <string>
#include <string_view>

namespace tarebowl::exchange {

/// What a column's title says. Where it is both a word of tables and a nutrient ("SE": standard error,
/// selenium), both are given and the layout decides.
struct TitleMeaning {
  std::optional<ColumnRole> word{};            ///< food, code, nutrient, value, sd …
  std::optional<food::NutrientId> nutrient{};  ///< the nutrient that it names
  bool byTagname = false;                      ///< in its own tagname and not in a synonym
  ColumnRole ofNutrient = ColumnRole::Value;   ///< value, or what is said of the nutrient: sd, n …
  std::optional<UnitText> unit{};
};

[[nodiscard]] TitleMeaning meaningOf(std::string_view title);

/// A nutrient by tagname, synonym or name, as it stands in a cell or in a title: "Calcium (mg)", "ca".
struct NutrientMeaning {
  food::NutrientId nutrient{0};
  bool byTagname = false;
  std::optional<UnitText> unit{};
};
[[nodiscard]] std::optional<NutrientMeaning> nutrientIn(std::string_view text);

}  // namespace tarebowl::exchange
