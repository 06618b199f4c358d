// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::exchange {

/// The foods on hand: {"format": "tarebowl-larder/1", "foods": […]}, each food as in a problem, with its
/// limits per animal and day, group and scale step where they count. "title", "notes" and "invented" are
/// allowed beside them.
struct Larder {
  std::string title;
  bool invented = false;
  std::vector<diet::DietFood> foods;
};

/// A larder may hold the whole of a national table.
inline constexpr std::size_t kMostLarderFoods = 100'000;

/// fileName is only used in messages. Throws FormatError (problem_json.h), also where an id stands twice.
[[nodiscard]] Larder parseLarder(std::string_view json, const std::string& fileName);
[[nodiscard]] Larder readLarder(const std::filesystem::path& file);

}  // namespace tarebowl::exchange
