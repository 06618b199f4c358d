// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/composition.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>
#include <variant>

namespace tarebowl::exchange {

/// Which mark parts whole from fraction in a table. The other one of the two may group thousands; spaces and
/// apostrophes always may.
enum class DecimalMark { Point, Comma };

/// A value as the cell states it.
struct NumberText {
  double amount = 0.0;
  std::optional<double> sd{};  ///< "12.3 ± 0.4", "12.3 (0.4)"
  food::Qualifier qualifier = food::Qualifier::Equal;
  bool operator==(const NumberText&) const = default;
};

/// A cell that says that nothing is known: blank, "-", "n.d.", "n/a", "?".
struct NothingKnown {
  bool operator==(const NothingKnown&) const = default;
};

/// Why a cell is refused.
enum class NumberFault {
  NotANumber,         ///< letters, or two numbers
  MisplacedGrouping,  ///< "1,23,4": thousands are not grouped by three
  Formula,            ///< "=A1*2": what it was worked out to is not in the table
  SpreadsheetError,   ///< "#REF!"
  Date,               ///< "12-Mar": a spreadsheet's idea of 12.3
  NotFinite,          ///< "NaN", "inf", "1e999"
  Negative
};

/// What was expected, for a message: "a number, found a formula".
[[nodiscard]] std::string_view expectationOf(NumberFault fault);

using NumberReading = std::variant<NumberText, NothingKnown, NumberFault>;

/// Reads a cell of a table of nutrients. "<0.05" is the limit with the qualifier Below, "tr" is
/// 0 with the qualifier Trace, "≥ 26" and "min. 26" are what a label guarantees. "12.3 (0.4)" is taken as
/// mean and sd. Unicode's minus, dashes and narrow spaces are read as what they look like.
[[nodiscard]] NumberReading readNumber(std::string_view text, DecimalMark mark);

/// Which decimal mark a table's numbers speak for, cell by cell.
class DecimalMarkEvidence {
 public:
  void look(std::string_view text, std::size_t line);

  /// The mark; nothing where cells contradict each other (none has three times the other's), or where all
  /// that was seen is like "1,234".
  [[nodiscard]] std::optional<DecimalMark> mark() const;
  /// A line that speaks for a mark, and one that can be read either way; 0 where none does.
  [[nodiscard]] std::size_t lineFor(DecimalMark mark) const;
  [[nodiscard]] std::size_t openLine() const { return openComma_; }

 private:
  std::size_t points_ = 0;
  std::size_t commas_ = 0;
  std::size_t point_ = 0;  // first lines
  std::size_t comma_ = 0;
  std::size_t openPoint_ = 0;
  std::size_t openComma_ = 0;
};

}  // namespace tarebowl::exchange
