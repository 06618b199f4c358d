// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/column_mapping.h"
#include "core/exchange/table_input.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::exchange {

/// What a person should look at before trusting a guessed mapping.
enum class GuessDoubt {
  NotUnderstood,     ///< a column whose title says nothing known: left out
  SecondOfNutrient,  ///< a second column of a nutrient: left out
  UnitAssumed,       ///< no unit in title or units line: the nutrient's own is assumed
  DecimalMarkOpen,   ///< the numbers can be read both ways: the mapping must say
  NoFoodColumn,      ///< nothing says which food a row is about
  NoValueColumn
};

struct GuessNote {
  GuessDoubt doubt;
  std::size_t column = 0;  ///< from 1; for DecimalMarkOpen 0
  std::string title{};
  std::size_t line = 0;  ///< where it shows, for DecimalMarkOpen
  bool operator==(const GuessNote&) const = default;
};

struct MappingGuess {
  TableMapping mapping;
  std::vector<GuessNote> notes;
};

/// The delimiter and the quote by which the records come out most alike, from the head of the table.
[[nodiscard]] TextTableForm guessForm(const TableInput& input);

/// What a person has said already, so that it is not guessed.
struct KnownOfTable {
  std::optional<TextTableForm> form{};
  std::optional<std::size_t> headerLine{};  ///< 0: the table has none
};

/// Reads the head of a table (at most some thousand records) and says how it seems to be meant. Throws
/// FormatError where it is no table at all.
[[nodiscard]] MappingGuess guessMapping(const TableInput& input, const KnownOfTable& known = {});

}  // namespace tarebowl::exchange
