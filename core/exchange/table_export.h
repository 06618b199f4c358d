// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/unit_text.h"
#include "core/food/composition.h"

#include <cstddef>
#include <filesystem>
#include <functional>
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::exchange {

/// A value of what is no nutrient of ours, in a unit on a basis.
struct ExportedOther {
  std::string name{};
  UnitText unit{};
  double amount = 0.0;
  std::optional<double> sd{};
  std::optional<int> count{};
  food::Qualifier qualifier = food::Qualifier::Equal;
  std::string source{};
  bool operator==(const ExportedOther&) const = default;
};

/// A food as it leaves the program.
struct ExportedFood {
  std::string code{};
  std::string name{};
  std::string form{};
  std::string group{};
  food::Composition composition{};
  std::vector<ExportedOther> others{};
};

/// The next food; nothing at the end. So that a collection need not be in memory.
using ExportSource = std::function<std::optional<ExportedFood>()>;

/// Long: a row a value, with unit, sd, n, qualifier and source; what importTable reads back without loss by
/// the mapping that it guesses. Wide: a row a food and a column a nutrient, for people and for calculations;
/// it leaves out sd, n, source and what is no nutrient of ours, and writes a bound as "<0.05" or "≥26".
enum class TableLayout { Long, Wide };

/// Comma-separated text in UTF-8 (RFC 4180). Returns how many values were written.
std::size_t writeCsv(const ExportSource& foods, TableLayout layout, std::ostream& out);
/// A spreadsheet (XLSX, ECMA-376). Throws FormatError where the file cannot be written.
std::size_t writeXlsx(const ExportSource& foods, TableLayout layout, const std::filesystem::path& file);

/// The foods of a list, for a ExportSource.
[[nodiscard]] ExportSource eachOf(const std::vector<ExportedFood>& foods);

}  // namespace tarebowl::exchange
