// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/number_text.h"
#include "core/exchange/text_table.h"
#include "core/exchange/unit_text.h"
#include "core/food/nutrient.h"

#include <array>
#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::exchange {

/// What a column of a table of foods holds. Sd, StandardError, Count, Qualifier and Source belong to a
/// nutrient in a wide table (a row a food) and to the row's one value in a long table (a row a value).
enum class ColumnRole {
  Ignored,
  Food,
  Code,
  Group,
  Form,
  Source,
  Nutrient,
  Value,
  Unit,
  Sd,
  StandardError,
  Count,
  Qualifier,
  Basis
};
inline constexpr std::array<std::string_view, 14> kRoleWords{
    "ignored", "food", "code", "group", "form", "source",    "nutrient",
    "value",   "unit", "sd",   "se",    "n",    "qualifier", "basis"};

/// One column and how it is read.
struct ColumnUse {
  std::string title{};                  ///< as the header writes it; empty in a table without one
  std::optional<std::size_t> number{};  ///< from 1; where there is no title or it stands twice
  ColumnRole role = ColumnRole::Ignored;
  std::optional<food::NutrientId> nutrient{};  ///< in a wide table
  std::optional<UnitText> unit{};              ///< nothing: the nutrient's own, which is then an assumption
  bool operator==(const ColumnUse&) const = default;
};

/// What a code or name of a nutrient in a long table means; without a nutrient it is left out on purpose.
struct CodedNutrient {
  std::optional<food::NutrientId> nutrient{};
  std::optional<UnitText> unit{};
  std::string reason{};  ///< why it is left out
  bool operator==(const CodedNutrient&) const = default;
};

/// A second table that says what the food codes of the first mean: columns code, food, group, form.
struct FoodList {
  std::string file;  ///< beside the first table
  TextTableForm form{};
  std::size_t headerLine = 1;
  std::vector<ColumnUse> columns{};
  bool operator==(const FoodList&) const = default;
};

/// How a table of foods is read: guessed from it first, then seen, edited and kept by a person
/// ("tarebowl-mapping/1").
struct TableMapping {
  TextTableForm form{};
  std::optional<DecimalMark> decimalMark{};  ///< nothing: the table can be read both ways, so it is not read
  std::size_t headerLine = 1;                ///< 0: the table has no header
  bool unitsLine = false;                    ///< the record after the header holds units
  bool isLong = false;
  std::vector<ColumnUse> columns{};
  quantity::Basis basis = quantity::Basis::AsFed;  ///< where neither title nor column says it
  double per = 100.0;                              ///< g or kcal; likewise
  bool zeroIsUnknown = false;                      ///< the table writes 0 for what nobody measured
  std::string source{};                            ///< where no column says it
  std::map<std::string, CodedNutrient> nutrients{};
  std::map<std::string, std::string> groups{};   ///< what the table's codes of food groups mean
  std::map<std::string, std::string> sources{};  ///< what the table's codes of sources mean
  std::optional<FoodList> foods{};
  bool operator==(const TableMapping&) const = default;
};

/// Reads and writes "tarebowl-mapping/1". fileName is only used in messages. Throws FormatError.
[[nodiscard]] TableMapping parseMapping(std::string_view json, const std::string& fileName);
[[nodiscard]] std::string writeMapping(const TableMapping& mapping);

}  // namespace tarebowl::exchange
