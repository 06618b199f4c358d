// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/cooking.h"

#include <filesystem>
#include <string>
#include <vector>

namespace tarebowl::exchange {

/// What a food is cooked from.
struct CookedFood {
  std::string food{};  ///< food::Food::code
  food::Cooking cooking{};
};

/// CSV, a food a row: food, raw (codes), mass_yield (grams cooked per gram raw), source. Throws FormatError
/// (problem_json.h).
[[nodiscard]] std::vector<CookedFood> readCookingYields(const std::filesystem::path& file);

}  // namespace tarebowl::exchange
