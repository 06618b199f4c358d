// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/sample.h"

#include <filesystem>
#include <string>
#include <vector>

namespace tarebowl::exchange {

/// A report of the house's own laboratory on one food.
struct LabReport {
  std::string food{};  ///< food::Food::code
  food::Sample sample{};
};

/// CSV, a value a row: food, report, date, laboratory, method, batch, tagname, per_100_g, unit, n, set_aside
/// (why the report is left out). Throws FormatError (problem_json.h).
[[nodiscard]] std::vector<LabReport> readLabReports(const std::filesystem::path& file);

}  // namespace tarebowl::exchange
