// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/number_text.h"
#include "core/food/nutrient.h"
#include "core/food/stated_value.h"

#include <cstddef>
#include <string>
#include <vector>

namespace tarebowl::exchange {

/// Bytes of a name or code that a table may give.
inline constexpr std::size_t kLongestName = 500;

/// One nutrient of one food as the table states it, and where.
struct ImportedValue {
  food::NutrientId nutrient{0};
  food::StatedValue stated{};  ///< source is empty where the food's holds
  std::size_t line = 0;
  std::size_t column = 0;  ///< from 1
};

/// A value of something that is no nutrient of ours, under the table's own name for it.
struct ImportedOther {
  std::string name{};
  food::StatedValue stated{};
  std::size_t line = 0;
  std::size_t column = 0;  ///< from 1
};

/// What a table says of one food: a wide table's record, or the records of a long table that follow each
/// other. A long table may return to a food; its values then come in several of these.
struct ImportedFood {
  std::string code{};  ///< in the table; empty where it has none
  std::string name{};
  std::string form{};
  std::string group{};
  std::string source{};
  std::size_t line = 0;
  std::vector<ImportedValue> values{};
  std::vector<ImportedOther> others{};
};

/// Why something will not be imported as it stands. Those up to Unlisted refuse the table; the rest is left
/// out, or kept with a note.
enum class ImportIssue {
  BadNumber,        ///< see Remark::fault
  RaggedRow,        ///< more or fewer cells than the header
  NoFood,           ///< values that belong to no food
  RepeatedFood,     ///< a second record of a food in a wide table
  RepeatedValue,    ///< a second, other value of a nutrient of a food from the same source
  UnknownUnit,      ///< a unit cell that is not understood
  UnitDoesNotFit,   ///< mg of energy, IU of calcium
  MoreThanFood,     ///< more than 105 g in 100 g
  BadWord,          ///< a qualifier, basis or count that is none
  BadName,          ///< a formula, or beyond all measure
  Unlisted,         ///< a food code that the list of foods does not have
  UnknownNutrient,  ///< no nutrient of this name is known here, and its unit is none: left out
  KeptByName,       ///< no nutrient of this name is known here: the value is kept under it
  LeftOut,          ///< the mapping says so
  SaidTwice,        ///< the same value again
  NoValues,         ///< a record without any value: a heading, a footnote, or a food nobody measured
  ScatterUnread     ///< a standard error without a count says no sd
};
inline constexpr ImportIssue kLastRefusal = ImportIssue::Unlisted;
inline constexpr std::size_t kImportIssues = 17;

[[nodiscard]] constexpr bool refuses(ImportIssue issue) {
  return issue <= kLastRefusal;
}

/// One place and what is wrong there.
struct Remark {
  std::size_t line = 0;
  std::size_t column = 0;  ///< from 1; 0: the whole record
  std::string title{};     ///< the column's
  std::string found{};
  NumberFault fault = NumberFault::NotANumber;  ///< for BadNumber
  std::size_t earlierLine = 0;                  ///< for RepeatedFood and RepeatedValue
  bool operator==(const Remark&) const = default;
};

/// All of one kind, counted; the first of them kept.
struct RemarkGroup {
  std::size_t count = 0;
  std::vector<Remark> first{};
};

}  // namespace tarebowl::exchange
