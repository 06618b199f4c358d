// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/imported_food.h"
#include "core/exchange/table_columns.h"

#include <cstddef>
#include <optional>
#include <string>
#include <unordered_map>

namespace tarebowl::exchange {

/// What nutrient and unit the records of a long table name. The meaning of each set of texts is worked out
/// once.
class LongMeanings {
 public:
  /// Where a record says it.
  struct Places {
    std::size_t nutrient = 0;
    std::optional<std::size_t> unit{};
    std::optional<std::size_t> basis{};
    std::optional<UnitText> valueUnit{};  ///< of the column of values, where a record names none
  };
  /// How the record's value is read; nothing where it cannot be, and why in `issue`. Both are there where it
  /// is kept though no nutrient of its name is known.
  struct Meaning {
    std::optional<ValueReading> reading{};
    std::optional<ImportIssue> issue{};
    std::size_t column = 0;
    std::string found{};
    std::string otherName{};  ///< of what is no nutrient of ours and has a unit
  };

  /// The mapping must outlive it.
  LongMeanings(const TableMapping& mapping, Places places);

  /// Holds until the next call.
  [[nodiscard]] const Meaning& of(const TableRow& row);

 private:
  [[nodiscard]] Meaning read(const TableRow& row) const;

  const TableMapping& mapping_;
  Places places_;
  std::unordered_map<std::string, Meaning> meanings_;
  std::string key_;
};

}  // namespace tarebowl::exchange
